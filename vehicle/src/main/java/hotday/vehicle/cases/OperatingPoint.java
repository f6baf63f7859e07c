package hotday.vehicle.cases;

import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import hotday.vehicle.plant.Unrest;
import java.util.Optional;

/**
 * What a settled vehicle reads, or at its worst instant a moving one. SI; what a vehicle does not have is NaN.
 *
 * @param ambient K
 * @param unrest why nothing settles there, the numbers being only where the search ended; empty when it does
 * @param coolant engine-out, K
 * @param gearbox sump, K
 * @param headPressure Pa absolute
 * @param evaporating saturation temperature, K
 * @param supply V
 * @param fan speed over full speed, 0..1
 * @param fanCurrent A
 * @param cabin air, K
 * @param vent air from the evaporator, K
 * @param opening of the thermostat, 0..1
 * @param engineSpeed rad/s
 * @param brakePower W
 * @param fuelPower W
 * @param compressorPower W
 * @param radiatorHeat W
 * @param condenserHeat W
 * @param gearboxHeat W
 * @param airFlow through the stack, kg/s
 * @param face air at the radiator, K
 * @param batteryCurrent A, positive while it discharges
 */
public record OperatingPoint(
        double ambient,
        Optional<Unrest> unrest,
        double coolant,
        double gearbox,
        double headPressure,
        double evaporating,
        double supply,
        double fan,
        double fanCurrent,
        double cabin,
        double vent,
        double opening,
        double engineSpeed,
        double brakePower,
        double fuelPower,
        double compressorPower,
        double radiatorHeat,
        double condenserHeat,
        double gearboxHeat,
        double airFlow,
        double face,
        double batteryCurrent) {

    /** Whether it is a rest. */
    public boolean settled() {
        return unrest.isEmpty();
    }

    /** What a run reads now; outputs must be those of its state. */
    public static OperatingPoint of(Run run, Optional<Unrest> unrest) {
        boolean conditioned = run.plant().conditioned();
        return new OperatingPoint(
                run.get(Input.AMBIENT),
                unrest,
                run.get(State.JACKET),
                run.get(State.SUMP),
                conditioned ? run.get(Output.HEAD_PRESSURE) : Double.NaN,
                conditioned ? run.get(State.EVAPORATING) : Double.NaN,
                run.get(Output.BUS),
                run.get(State.FAN),
                run.get(Output.FAN_CURRENT),
                conditioned ? run.get(State.CABIN) : Double.NaN,
                conditioned ? run.get(Output.VENT_TEMPERATURE) : Double.NaN,
                run.get(Output.OPENING),
                run.get(Input.ENGINE_SPEED),
                run.get(Output.BRAKE_POWER),
                run.get(Output.FUEL_POWER),
                run.get(Output.COMPRESSOR_POWER),
                run.get(Output.RADIATOR_HEAT),
                conditioned ? run.get(Output.CONDENSER_HEAT) : Double.NaN,
                run.get(Output.GEARBOX_LOSS),
                run.get(Output.AIR_FLOW),
                run.get(Output.FACE_TEMPERATURE),
                run.get(Output.BATTERY_CURRENT));
    }
}
