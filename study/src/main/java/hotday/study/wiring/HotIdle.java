package hotday.study.wiring;

import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;
import java.util.Optional;

/**
 * The build standing at idle on its design day, as the whole vehicle's model has it. Empty where nothing settles.
 *
 * @param bySchedule currents with the fan where its schedule wants it
 * @param fullFan currents with the fan at full speed
 * @param enoughSpeed engine speed at which the alternator carries the loads of {@code bySchedule}, rad/s; NaN beyond {@value #HIGHEST} times idle
 */
record HotIdle(Optional<IdleBalance> bySchedule, Optional<IdleBalance> fullFan, double enoughSpeed) {
    private static final double HIGHEST = 2.0;
    private static final double STEP = 0.01;

    static HotIdle of(VehicleSpec spec, List<Case> cases) {
        Case idle = cases.stream()
                .filter(c -> c.id().equals("hot-idle"))
                .findFirst()
                .orElseThrow();
        Trial trial = new Trial(spec, Plant.compile(spec), idle);
        boolean scheduled = trial.settleBySchedule(spec.designAmbient());
        Optional<IdleBalance> by = scheduled ? Optional.of(balance(spec, trial.run())) : Optional.empty();
        double enough = by.map(b -> enough(spec, trial.run(), b.load())).orElse(Double.NaN);
        boolean full = trial.settle(spec.designAmbient(), 1.0);
        return new HotIdle(by, full ? Optional.of(balance(spec, trial.run())) : Optional.empty(), enough);
    }

    private static double capacity(VehicleSpec spec, Run run, double engineSpeed) {
        double air = run.get(State.BAY) + VehicleSpec.Electrical.ALTERNATOR_RISE;
        return spec.electrical().alternator().capacity(engineSpeed, air);
    }

    private static IdleBalance balance(VehicleSpec spec, Run run) {
        double load = run.get(Output.ALTERNATOR_CURRENT) + run.get(Output.BATTERY_CURRENT);
        double base = spec.electrical().baseCurrent();
        double fan = run.get(Output.FAN_CURRENT);
        double clutch = spec.airConditioning()
                .map(a -> run.get(Input.COMPRESSOR) * a.circuit().clutchCurrent())
                .orElse(0.0);
        double rest = Math.max(0.0, load - base - fan - clutch);
        return new IdleBalance(capacity(spec, run, run.get(Input.ENGINE_SPEED)), base, rest, fan, clutch);
    }

    private static double enough(VehicleSpec spec, Run run, double load) {
        double idle = run.get(Input.ENGINE_SPEED);
        for (double share = 1.0; share <= HIGHEST; share += STEP) {
            if (capacity(spec, run, share * idle) >= load) {
                return share * idle;
            }
        }
        return Double.NaN;
    }
}
