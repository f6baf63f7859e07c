package hotday.bench;

import hotday.study.demo.DemoShop;
import hotday.vehicle.cases.AmbientCeiling;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.Warmup;

/**
 * An hour of the loaded climb with everything on, a settled operating point, and the ceilings of a build, beside the same hour by
 * an adaptive integrator of a library (Hipparchus, Dormand and Prince 8(5,3), 1e-8) from tick to tick. Before the first
 * measurement the largest gaps between the two over the hour are printed.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@org.openjdk.jmh.annotations.State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class WholeVehicle {
    private static final int HOUR = 36_000; // ticks
    private static final double TICK = 0.1; // s
    private static final double CLIMB_DAY = 311.15; // K, 100 degF at the base

    private VehicleSpec spec;
    private Plant plant;
    private VehicleSpec otherSpec;
    private Plant other;
    private Case climb;
    private Trial trial;
    private Trial steady;
    private List<Case> judged;
    private double[] soaked;
    private double ambient;

    /** The demo build that tows. */
    @Setup(Level.Trial)
    public void prepare() throws IOException {
        spec = BuildSheet.read(
                        DemoShop.create(Files.createTempDirectory("bench")).build("heron"))
                .vehicle();
        plant = Plant.compile(spec);
        otherSpec = BuildSheet.read(
                        DemoShop.create(Files.createTempDirectory("bench")).build("oxbow"))
                .vehicle();
        other = Plant.compile(otherSpec);
        climb = named("loaded-climb");
        judged = StandardCases.all().stream().filter(c -> !c.forCold()).toList();
        trial = new Trial(spec, plant, climb);
        steady = new Trial(spec, plant, named("hot-idle"));
        soaked = plant.soaked(CLIMB_DAY);
        ambient = CLIMB_DAY;
        compare();
    }

    private static Case named(String id) {
        return StandardCases.all().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private void compare() {
        Trial reference = new Trial(spec, plant, climb);
        start(trial);
        start(reference);
        DormandPrince853Integrator integrator = integrator();
        double coolant = 0.0;
        double head = 0.0;
        double suction = 0.0;
        for (int i = 0; i < HOUR; i++) {
            trial.tick(climb.first(), i * TICK);
            referenceTick(reference, integrator, i * TICK);
            trial.run().look();
            reference.run().look();
            coolant = Math.max(
                    coolant, gap(trial.run().get(State.JACKET), reference.run().get(State.JACKET)));
            head = Math.max(head, gap(trial, reference, Output.HEAD_PRESSURE));
            suction = Math.max(suction, gap(trial, reference, Output.SUCTION_PRESSURE));
        }
        System.out.printf(
                "# largest gap over the hour: coolant %.4f K, high side %.3f kPa, low side %.3f kPa%n",
                coolant, head / 1e3, suction / 1e3);
    }

    private static double gap(double a, double b) {
        return Math.abs(a - b);
    }

    private static double gap(Trial a, Trial b, Output output) {
        return gap(a.run().get(output), b.run().get(output));
    }

    private void start(Trial one) {
        one.begin(CLIMB_DAY);
        one.run().start(soaked, 0.0);
        one.run().look();
    }

    private static DormandPrince853Integrator integrator() {
        return new DormandPrince853Integrator(1e-9, TICK, 1e-8, 1e-8);
    }

    private void referenceTick(Trial one, DormandPrince853Integrator integrator, double elapsed) {
        Run run = one.run();
        one.control(climb.first(), elapsed);
        OrdinaryDifferentialEquation rates = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return State.COUNT;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                double[] out = new double[State.COUNT];
                run.rates(y, out);
                return out;
            }
        };
        double[] end = integrator
                .integrate(rates, new ODEState(0.0, run.state()), TICK)
                .getPrimaryState();
        run.put(end);
        run.look();
    }

    /** One hour of the climb from a soaked car, controllers included. */
    @Benchmark
    public double climbHour() {
        start(trial);
        for (int i = 0; i < HOUR; i++) {
            trial.tick(climb.first(), i * TICK);
        }
        return trial.run().get(State.JACKET);
    }

    /** The same hour by the adaptive integrator. */
    @Benchmark
    public double climbHourReference() {
        DormandPrince853Integrator integrator = integrator();
        start(trial);
        for (int i = 0; i < HOUR; i++) {
            referenceTick(trial, integrator, i * TICK);
        }
        return trial.run().get(State.JACKET);
    }

    /** A settled hot idle, 2 K away from the one before. */
    @Benchmark
    public double steadyPoint() {
        ambient = ambient > 315.0 ? 305.15 : ambient + 2.0;
        steady.settle(ambient, 1.0);
        return steady.run().get(State.JACKET);
    }

    /** Everything known about the ceiling of the hot idle. */
    @Benchmark
    public Ceiling oneCeiling() {
        return new AmbientCeiling(spec).find(plant, named("hot-idle"), 0.0);
    }

    /** Where the first limit gives way in each of the five steady cases. */
    @Benchmark
    public double steadyCeilings() {
        double sum = 0.0;
        for (Case kase : judged) {
            if (kase.steady()) {
                sum += new AmbientCeiling(spec).find(plant, kase, 0.0).ambient();
            }
        }
        return sum;
    }

    /** The same and the three cases that move in time, side by side on the machine's cores. */
    @Benchmark
    public double allCeilings() {
        return sum(spec, plant);
    }

    /** Those of the other demo build, whose moving cases take longer. */
    @Benchmark
    public double allCeilingsOfTheOther() {
        return sum(otherSpec, other);
    }

    private double sum(VehicleSpec build, Plant compiled) {
        return new AmbientCeiling(build)
                .find(compiled, judged, 0.0, build.designAmbient()).stream()
                        .mapToDouble(Ceiling::ambient)
                        .sum();
    }

    /** From a sheet in memory to a plant: what a dragged core costs before its ceilings. */
    @Benchmark
    public Plant compile() {
        return Plant.compile(spec);
    }
}
