/**
 * What the calibrator takes to the car. {@link hotday.study.design.ScheduleDesign} designs a fan schedule or judges one, by running the vehicle
 * through cases with it; {@link hotday.study.design.Rendering} puts it the way the controller in the car wants it.
 */
package hotday.study.design;
