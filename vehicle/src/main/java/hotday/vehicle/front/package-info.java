/**
 * The front of a vehicle as one thing: air through the tiles of the face and heat of every core in it, settled together at one
 * operating point. Start at {@link hotday.vehicle.front.Front}. Not here: where things sit (the sheet), and what the engine
 * does (the plant).
 */
package hotday.vehicle.front;
