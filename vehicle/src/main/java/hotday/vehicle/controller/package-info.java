/**
 * The fan-demand controller that is calibrated and handed over: whole numbers only, ten ticks a second, exact semantics
 * in docs/controller.md. Start with {@link hotday.vehicle.controller.Schedule} (what is calibrated),
 * {@link hotday.vehicle.controller.Inputs} (what a tick sees) and {@link hotday.vehicle.controller.Controller} (one
 * running instance). No physics here; SI enters and leaves through {@code Inputs} and {@code Schedule.of} alone.
 */
package hotday.vehicle.controller;
