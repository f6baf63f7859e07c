package hotday.vehicle.front;

import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;

/**
 * What the rest of the vehicle and the weather ask of the front.
 *
 * @param speed of the air against the face, m/s
 * @param ambient K
 * @param pressure of the air, Pa absolute
 * @param fanSpeed over full speed, 0..1
 * @param coolant temperature entering the radiator, K
 * @param coolantFlow through the radiator, kg/s
 * @param gearboxHeat from the gearbox cooler, W, 0 or more
 * @param condenserHeat W, 0 or more
 * @param chargeHeat from the charge-air cooler, W, 0 or more
 * @param surfaceHeat of engine and oil pan to the air in the bay, W
 */
public record FrontInputs(
        double speed,
        double ambient,
        double pressure,
        double fanSpeed,
        double coolant,
        double coolantFlow,
        double gearboxHeat,
        double condenserHeat,
        double chargeHeat,
        double surfaceHeat) {

    /** What a settled run asks of its front. */
    public static FrontInputs of(Run run) {
        return new FrontInputs(
                run.get(Input.SPEED),
                run.get(Input.AMBIENT),
                run.get(Input.PRESSURE),
                run.get(State.FAN),
                run.get(State.JACKET),
                run.get(Output.RADIATOR_FLOW),
                run.get(Input.GEARBOX_HEAT),
                run.get(Output.CONDENSER_HEAT),
                run.get(Output.CHARGE_HEAT),
                Math.max(0.0, run.get(Output.SURFACE_HEAT)));
    }
}
