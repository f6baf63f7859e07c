/**
 * The fan-demand controller and the compressor's rules that are calibrated and handed over: whole numbers only, ten ticks
 * a second, exact semantics in docs/controller.md. Start with {@link hotday.vehicle.controller.Schedule} (what is
 * calibrated), {@link hotday.vehicle.controller.Inputs} (what a tick sees) and
 * {@link hotday.vehicle.controller.Controller} (one running instance); {@code CompressorLimits}, {@code CompressorInputs}
 * and {@code CompressorRules} are the same three for the compressor. No physics here; SI enters through the inputs and
 * through {@code Schedule.of} and {@code CompressorLimits.of} alone.
 */
package hotday.vehicle.controller;
