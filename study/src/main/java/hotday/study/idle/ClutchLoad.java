package hotday.study.idle;

import hotday.core.table.Curve;
import hotday.physics.refrigerant.Refrigerant;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;

/**
 * Torque of the compressor at the crank when its clutch closes. Suction is that of the vehicle settled at idle on the day that brings the head pressure; never
 * so near the freeze limit that the stroke is shortened, since a coil that waited is warm. Beyond the days tried, as on the last of them.
 */
final class ClutchLoad {
    private static final double KELVIN = 273.15;
    private static final double COOLEST = KELVIN + 16.0;
    private static final double HOTTEST = KELVIN + 56.0;
    private static final double STEP = 4.0;
    /** K above the freeze limit from which every compressor works with its whole stroke. */
    private static final double WHOLE_STROKE = 3.0;

    private final Run run;
    private final Refrigerant refrigerant;
    private final Curve evaporating; // K against Pa of the head
    private final double lowest;

    private ClutchLoad(Run run, Refrigerant refrigerant, Curve evaporating, double lowest) {
        this.run = run;
        this.refrigerant = refrigerant;
        this.evaporating = evaporating;
        this.lowest = lowest;
    }

    /** @param idle a steady case at rest with the compressor on */
    static ClutchLoad of(VehicleSpec spec, Case idle) {
        Trial trial = new Trial(spec, Plant.compile(spec), idle);
        List<Double> heads = new ArrayList<>();
        List<Double> coils = new ArrayList<>();
        for (double day = COOLEST; day <= HOTTEST; day += STEP) {
            boolean settled = trial.settleBySchedule(day);
            double head = trial.run().get(Output.HEAD_PRESSURE);
            boolean rises = heads.isEmpty() || head > heads.get(heads.size() - 1);
            if (settled && rises) {
                heads.add(head);
                coils.add(trial.run().get(State.EVAPORATING));
            }
        }
        VehicleSpec.RefrigerantCircuit circuit =
                spec.airConditioning().orElseThrow().circuit();
        double lowest = circuit.freezeLimit() + WHOLE_STROKE;
        Curve curve = heads.isEmpty() ? Curve.of(new double[] {0.0}, new double[] {lowest}) : Curve.of(heads, coils);
        return new ClutchLoad(trial.run(), circuit.refrigerant(), curve, lowest);
    }

    /**
     * @param torque at the crank, N m
     * @param suction Pa absolute
     */
    record At(double torque, double suction) {}

    /** @param head Pa absolute; @param engineSpeed rad/s */
    At at(double head, double engineSpeed) {
        run.set(State.CONDENSING, refrigerant.saturationTemperature(head));
        run.set(State.EVAPORATING, Math.max(lowest, evaporating.value(head)));
        run.set(Input.ENGINE_SPEED, engineSpeed);
        run.set(Input.COMPRESSOR, 1.0);
        run.set(Input.CYCLING_AVERAGED, 0.0);
        run.look();
        return new At(run.get(Output.COMPRESSOR_POWER) / engineSpeed, run.get(Output.SUCTION_PRESSURE));
    }
}
