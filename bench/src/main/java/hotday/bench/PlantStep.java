package hotday.bench;

import hotday.study.demo.DemoShop;
import hotday.vehicle.cases.AmbientCeiling;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealVector;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One step of the plant and one ambient ceiling, beside what a step would cost if its seven node balances were solved by
 * a general library (Hipparchus LU) instead of by elimination along the tree.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class PlantStep {
    private static final int NODES = 7;

    private VehicleSpec spec;
    private Plant plant;
    private Run run;
    private Array2DRowRealMatrix balances;
    private RealVector right;

    /** A climbing demo build and a diagonally dominant system of the same size. */
    @Setup
    public void prepare() throws IOException {
        Path folder = Files.createTempDirectory("bench");
        spec = BuildSheet.read(DemoShop.create(folder).build("oxbow")).vehicle();
        plant = Plant.compile(spec);
        run = new Run(plant);
        run.start(plant.soaked(353.15), 0.0);
        run.set(Input.SPEED, 18.0);
        run.set(Input.ENGINE_SPEED, 260.0);
        run.set(Input.FUEL_POWER, 150e3);
        run.set(Input.AMBIENT, 308.15);
        run.set(Input.PRESSURE, 98e3);
        run.set(Input.FAN_DEMAND, 0.8);
        balances = new Array2DRowRealMatrix(NODES, NODES);
        right = new ArrayRealVector(NODES, 1.0);
        for (int i = 0; i < NODES; i++) {
            for (int j = 0; j < NODES; j++) {
                balances.setEntry(i, j, i == j ? 10.0 : -1.0 / (1 + i + j));
            }
        }
    }

    /** The product: everything of one step. */
    @Benchmark
    public double step() {
        run.step(0.1);
        return run.coolantReading();
    }

    /** The peer: only the linear solve of such a step. */
    @Benchmark
    public double generalSolveOnly() {
        return new LUDecomposition(balances).getSolver().solve(right).getEntry(0);
    }

    /** The outside temperature at which the loaded climb gives way. */
    @Benchmark
    public Ceiling ceiling() {
        return new AmbientCeiling(spec).find(plant, StandardCases.all().get(3), 0.0);
    }
}
