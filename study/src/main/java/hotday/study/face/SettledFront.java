package hotday.study.face;

import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.front.Front;
import hotday.vehicle.front.FrontInputs;
import hotday.vehicle.front.FrontView;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.VehicleSpec;

/** The front of a vehicle tile by tile, on its design day. */
public final class SettledFront {
    private SettledFront() {}

    /** The first phase of a case, settled, fan at full speed. */
    public static FrontView of(VehicleSpec spec, Plant plant, Case kase) {
        Trial trial = new Trial(spec, plant, kase);
        trial.settle(spec.designAmbient(), 1.0);
        return Front.compile(spec).settle(asked(trial.run()));
    }

    /** What a settled run asks of its front. */
    private static FrontInputs asked(Run run) {
        return new FrontInputs(
                run.get(Input.SPEED),
                run.get(Input.AMBIENT),
                run.get(Input.PRESSURE),
                run.get(State.FAN),
                run.get(State.JACKET),
                run.get(Output.RADIATOR_FLOW),
                run.get(Output.GEARBOX_AIR_HEAT),
                run.get(Output.CONDENSER_HEAT),
                run.get(Output.CHARGE_HEAT),
                Math.max(0.0, run.get(Output.SURFACE_HEAT)));
    }
}
