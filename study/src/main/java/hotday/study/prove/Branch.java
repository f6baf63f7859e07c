package hotday.study.prove;

import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;

/**
 * One way the actuators that nobody recorded may have behaved during a run.
 *
 * @param fan who drives the fan
 * @param heater setting 0..1 put on top of what was recorded
 * @param airConditioning compressor engaged whenever the engine turns
 */
record Branch(FanRule fan, double heater, boolean airConditioning) {

    /** How the fan is driven when no channel tells. */
    enum FanRule {
        /** As recorded, or off when nothing is recorded. */
        AS_RECORDED,
        /** Full speed above 105 degC until below 97 degC: a published kind of two-point rule, placed late. */
        TWO_POINT
    }

    /** Least fan demand while the compressor runs and nobody recorded the fan; common practice, no source. */
    static final double FAN_WITH_COMPRESSOR = 0.5;

    private static final double FAN_ON = 273.15 + 105.0;
    private static final double FAN_OFF = 273.15 + 97.0;

    Branch withHeater(double setting) {
        return new Branch(fan, setting, airConditioning);
    }

    /** Sets what this branch adds to the recorded inputs of the coming step. */
    void apply(Run run) {
        if (heater > 0.0) {
            run.set(Input.HEATER, heater);
        }
        double demand = run.get(Input.FAN_DEMAND);
        if (!airConditioning && run.get(Input.COMPRESSOR) <= 0.0) {
            run.set(Input.CONDENSER_HEAT, 0.0);
        }
        if (airConditioning && run.get(Input.ENGINE_SPEED) > 0.0) {
            run.set(Input.COMPRESSOR, 1.0);
            demand = Math.max(demand, FAN_WITH_COMPRESSOR);
        }
        if (fan == FanRule.TWO_POINT) {
            boolean running = run.get(State.FAN) > FAN_WITH_COMPRESSOR + 1e-9;
            double coolant = run.coolantReading();
            if (coolant > FAN_ON || (running && coolant > FAN_OFF)) {
                demand = 1.0;
            }
        }
        run.set(Input.FAN_DEMAND, demand);
    }
}
