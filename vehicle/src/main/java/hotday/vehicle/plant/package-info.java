/**
 * The compiled vehicle: slots, coefficients, one step. Start with {@link hotday.vehicle.plant.Plant}; a thread drives it
 * through {@link hotday.vehicle.plant.Run}. No files, no cases, no fit here.
 */
package hotday.vehicle.plant;
