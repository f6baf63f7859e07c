package hotday.vehicle.cases;

import hotday.vehicle.cases.Case.Engine;
import hotday.vehicle.cases.Case.Phase;
import hotday.vehicle.drive.DriveTrain;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Run;
import hotday.vehicle.spec.VehicleSpec;

/** From a phase's road to what engine and gearbox do. One a thread; allocates nothing. */
final class Road {
    private static final double AIR_GAS_CONSTANT = 287.055;
    /** The gear is that of a mild day: a search over outside temperatures meets no shift on its way. */
    private static final double USUAL_DAY = 288.15; // K, ISA at sea level

    /** Of the converter's heat in gear, what the gearbox takes in park; common practice, no source. */
    private static final double PARK_SHARE = 0.25;

    private final DriveTrain train;
    private final double lowRange;
    private final double[] out = new double[DriveTrain.COUNT];

    Road(VehicleSpec spec) {
        this.train = new DriveTrain(spec);
        this.lowRange = spec.gearbox().lowRange();
    }

    void apply(Run run, Phase phase, double elapsed) {
        double speed = phase.speed();
        double grade = phase.grade();
        double acceleration = 0.0;
        if (phase.trace().isPresent()) {
            Trace trace = phase.trace().get();
            speed = trace.speed(elapsed);
            grade = trace.grade(elapsed);
            acceleration = trace.acceleration(elapsed);
        }
        double usual = run.get(Input.PRESSURE) / (AIR_GAS_CONSTANT * USUAL_DAY);
        double today = run.get(Input.PRESSURE) / (AIR_GAS_CONSTANT * run.get(Input.AMBIENT));
        train.solve(speed, acceleration, grade, usual, today, phase.lowRange() ? lowRange : 1.0, out);
        double share = phase.engine() == Engine.DRIVE ? 1.0 : PARK_SHARE;
        boolean off = phase.engine() == Engine.OFF;
        run.set(Input.SPEED, speed);
        run.set(Input.ENGINE_SPEED, off ? 0.0 : out[DriveTrain.ENGINE_SPEED]);
        run.set(
                Input.CRANK_POWER,
                off ? 0.0 : out[DriveTrain.CRANK_POWER] - (1.0 - share) * out[DriveTrain.CONVERTER_HEAT]);
        run.set(Input.CONVERTER_HEAT, off ? 0.0 : share * out[DriveTrain.CONVERTER_HEAT]);
        run.set(Input.GEAR_POWER, off ? 0.0 : out[DriveTrain.GEAR_POWER]);
        run.set(Input.GEARBOX_SPEED, run.get(Input.ENGINE_SPEED));
    }

    /** Crank power that the last road asked over the most there is at that speed. */
    double load() {
        return out[DriveTrain.LOAD];
    }
}
