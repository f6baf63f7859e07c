/**
 * Idle speed while a load comes on: {@link hotday.vehicle.idle.IdleStudy} runs one step of load through the governor of
 * {@link hotday.vehicle.idle.IdleSettings}, {@link hotday.vehicle.idle.FeedForwardTable} finds the torque and the lead with which the load should be
 * announced. Loads are plain torques; where they come from is told elsewhere.
 */
package hotday.vehicle.idle;
