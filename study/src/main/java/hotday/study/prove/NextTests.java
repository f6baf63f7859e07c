package hotday.study.prove;

import hotday.signals.channel.Fact;
import hotday.vehicle.cases.AmbientCeiling;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.drive.DriveTrain;
import hotday.vehicle.plant.Coefficient;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Which further step would narrow the worst ceiling most. Every candidate is driven by the fitted vehicle; how its coolant would answer to each unknown, weighed
 * as the fit weighs, adds to what is known, and the ceiling's doubt is that of its slope along the unknowns (linear, Gaussian: Chaloner and Verdinelli, Bayesian
 * Experimental Design: A Review, Statistical Science 1995, criterion c).
 */
final class NextTests {
    private static final double STEP = 0.5; // s
    private static final double DIFFERENCE = 0.2; // prior standard deviations
    private static final double AIR_GAS_CONSTANT = 287.055;
    private static final double LEAST_MISS = 0.2; // K
    private static final double WARM_OVER_OPENING = 2.0; // K

    private final FittedVehicle vehicle;
    private final VehicleSpec spec;
    private final double ambient;
    private final double pressure;

    /** @param like a run whose weather the next one will have */
    NextTests(FittedVehicle vehicle, VehicleSpec spec, RunData like) {
        this.vehicle = vehicle;
        this.spec = spec;
        this.ambient = like.meanAmbient();
        this.pressure = like.input(0, Input.PRESSURE);
    }

    /** All candidates, the most telling first. */
    List<NextTest> of(CeilingReport worst) {
        RealVector slope = slope(worst);
        RealMatrix known = covariance();
        double miss = missed(worst.best().binding());
        double now = variance(slope, known) + miss;
        RealMatrix precision = MatrixUtils.inverse(known);
        return TestStep.all().stream()
                .filter(this::canBeDriven)
                .map(step -> {
                    RealMatrix after = MatrixUtils.inverse(precision.add(information(step)));
                    double narrowing = 1.0 - Math.sqrt((variance(slope, after) + miss) / now);
                    return new NextTest(
                            step.id(),
                            step.title(),
                            step.duration(),
                            worst.best().kase().id(),
                            Math.max(0.0, narrowing),
                            step.caution());
                })
                .sorted(Comparator.comparingDouble(t -> -t.narrowing()))
                .toList();
    }

    private boolean canBeDriven(TestStep step) {
        boolean cooled = !step.airConditioning() || spec.airConditioning().isPresent();
        return cooled && (step.engineSpeed() > 0.0 || drive(step)[DriveTrain.LOAD] <= 1.0);
    }

    /** What no run mends: the model misses coolant by that much, a kelvin of it about a kelvin of the day, K2. */
    private double missed(Limit binding) {
        boolean coolant = binding == Limit.COOLANT || binding == Limit.BOILING;
        return coolant ? vehicle.discrepancy() * vehicle.discrepancy() : LEAST_MISS * LEAST_MISS;
    }

    private static double variance(RealVector slope, RealMatrix covariance) {
        return slope.dotProduct(covariance.operate(slope));
    }

    private RealMatrix covariance() {
        RealMatrix factor = new Array2DRowRealMatrix(vehicle.factor());
        RealMatrix c = factor.multiplyTransposed(factor);
        return c.add(MatrixUtils.createRealIdentityMatrix(c.getRowDimension()).scalarMultiply(1e-9));
    }

    /** Ceiling, K, by each unknown, along its remaining doubt. */
    private RealVector slope(CeilingReport worst) {
        AmbientCeiling ceiling = new AmbientCeiling(spec);
        double guess = worst.best().ambient();
        double[] out = IntStream.range(0, vehicle.z().length)
                .parallel()
                .mapToDouble(i -> {
                    double width = vehicle.posteriorSd()[i];
                    return (ceiling(ceiling, worst, i, width, guess) - ceiling(ceiling, worst, i, -width, guess))
                            / (2.0 * width);
                })
                .toArray();
        return new ArrayRealVector(out, false);
    }

    private double ceiling(AmbientCeiling ceiling, CeilingReport worst, int unknown, double by, double guess) {
        double[] z = moved(unknown, by);
        return ceiling.ambient(vehicle.unknowns().plant(z), worst.best().kase(), 0.0, guess);
    }

    private double[] moved(int unknown, double by) {
        double[] z = vehicle.z().clone();
        z[unknown] += by;
        return z;
    }

    /** What a step would add to the fit's information. */
    RealMatrix information(TestStep step) {
        RunData run = run(step);
        int n = vehicle.z().length;
        double[][] columns = new double[n][];
        IntStream.range(0, n).parallel().forEach(i -> columns[i] = answer(run, i));
        double weight = FitResiduals.EVERY
                / (2.0 * vehicle.correlationTime())
                / (FitResiduals.COOLANT_SIGMA * FitResiduals.COOLANT_SIGMA);
        RealMatrix j = new Array2DRowRealMatrix(columns, false);
        return j.multiplyTransposed(j).scalarMultiply(weight);
    }

    private double[] answer(RunData run, int unknown) {
        double[] up = coolant(run, moved(unknown, DIFFERENCE));
        double[] down = coolant(run, moved(unknown, -DIFFERENCE));
        int stride = (int) Math.round(FitResiduals.EVERY / STEP);
        double[] out = new double[up.length / stride];
        for (int i = 0; i < out.length; i++) {
            out[i] = (up[i * stride] - down[i * stride]) / (2.0 * DIFFERENCE);
        }
        return out;
    }

    private double[] coolant(RunData run, double[] z) {
        double[] coolant = new double[run.size()];
        Simulation.run(
                vehicle.unknowns(),
                vehicle.unknowns().plant(z),
                z,
                run,
                Branches.plain(run, false),
                coolant,
                new double[run.size()]);
        return coolant;
    }

    /** What the step would record, but for the temperatures. */
    private RunData run(TestStep step) {
        RunData run = run(step, step.heldBack() ? Double.POSITIVE_INFINITY : 0.0);
        return step.heldBack() ? run(step, hotFrom(run)) : run;
    }

    /** When coolant is hot, s. */
    private double hotFrom(RunData run) {
        double[] coolant = coolant(run, vehicle.z());
        int i = 0;
        while (i < coolant.length && coolant[i] < TestStep.hot(spec)) {
            i++;
        }
        return i < coolant.length ? run.time()[i] : Double.POSITIVE_INFINITY;
    }

    private RunData run(TestStep step, double fanFrom) {
        int rows = (int) Math.round(step.duration() / STEP);
        double[] inputs = new double[rows * Input.COUNT];
        double[] time = new double[rows];
        double[] drive = drive(step);
        for (int i = 0; i < rows; i++) {
            time[i] = (i + 1) * STEP;
            row(step, drive, inputs, i * Input.COUNT);
            inputs[i * Input.COUNT + Input.FAN_DEMAND.index()] = time[i] >= fanFrom ? Math.max(0.0, step.fan()) : 0.0;
        }
        double start = spec.thermostat().opens() + WARM_OVER_OPENING;
        boolean scheduled = step.fan() < 0.0;
        double[] k = vehicle.unknowns().plant(vehicle.z()).coefficients();
        k[Coefficient.GEARBOX_HEAT_LEVEL.index()] = 1.0;
        Plant plant = vehicle.unknowns().nominal().with(k);
        new GivenHeats(step.thermostatBlocked() ? RunData.heldOpen(plant) : plant, inputs, STEP, false, scheduled)
                .fill(start);
        double[] unread = new double[rows];
        Arrays.fill(unread, Double.NaN);
        return new RunData(
                step.id(),
                time,
                STEP,
                inputs,
                unread,
                unread,
                1.0,
                start,
                Double.NaN,
                Fact.OFF,
                Fact.OFF,
                Fact.OFF,
                !scheduled,
                scheduled ? Optional.of(Schedule.of(spec.schedule())) : Optional.empty(),
                step.thermostatBlocked(),
                new double[0],
                Map.of(),
                List.of());
    }

    private double[] drive(TestStep step) {
        double[] drive = new double[DriveTrain.COUNT];
        double density = pressure / (AIR_GAS_CONSTANT * ambient);
        new DriveTrain(spec).solve(step.speed(), 0.0, step.grade(), density, density, 1.0, drive);
        return drive;
    }

    private void row(TestStep step, double[] drive, double[] inputs, int at) {
        boolean parked = step.engineSpeed() > 0.0;
        double engineSpeed = parked ? step.engineSpeed() : drive[DriveTrain.ENGINE_SPEED];
        double drag = spec.gearbox().idleDragPower();
        double crank = parked ? drag : drive[DriveTrain.CRANK_POWER];
        double slip = parked ? drag : drive[DriveTrain.CONVERTER_HEAT];
        double cooling =
                step.airConditioning() ? spec.airConditioning().orElseThrow().compressorPower() : 0.0;
        inputs[at + Input.AMBIENT.index()] = ambient;
        inputs[at + Input.PRESSURE.index()] = pressure;
        inputs[at + Input.SPEED.index()] = step.speed();
        inputs[at + Input.ENGINE_SPEED.index()] = engineSpeed;
        inputs[at + Input.FUEL_POWER.index()] =
                spec.engine().fuelLine().fuelPower(crank + Preparation.ACCESSORY_POWER + cooling, engineSpeed);
        inputs[at + Input.COMPRESSOR.index()] = step.airConditioning() ? 1.0 : 0.0;
        inputs[at + Input.CRANK_POWER.index()] = crank;
        inputs[at + Input.CONVERTER_HEAT.index()] = slip;
        inputs[at + Input.GEAR_POWER.index()] = crank - slip;
        inputs[at + Input.GEARBOX_SPEED.index()] = engineSpeed;
    }

    /**
     * The steady case whose doubt matters most: of those that may or may not hold the design day the widest, else the one that may be lowest.
     */
    static Optional<CeilingReport> worst(List<CeilingReport> ceilings) {
        List<CeilingReport> steady =
                ceilings.stream().filter(c -> c.best().kase().steady()).toList();
        Optional<CeilingReport> open = steady.stream()
                .filter(c -> c.low() < c.designAmbient() && c.designAmbient() < c.high())
                .max(Comparator.comparingDouble(c -> c.high() - c.low()));
        return open.or(() -> steady.stream().min(Comparator.comparingDouble(CeilingReport::low)));
    }
}
