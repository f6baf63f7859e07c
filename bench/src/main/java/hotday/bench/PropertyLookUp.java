package hotday.bench;

import hotday.physics.refrigerant.FluidState;
import hotday.physics.refrigerant.PropertyTable;
import hotday.physics.refrigerant.Refrigerant;
import hotday.physics.refrigerant.TableError;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.hipparchus.analysis.BivariateFunction;
import org.hipparchus.analysis.interpolation.BicubicInterpolator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Temperature and density of a refrigerant from pressure and enthalpy, over random points of the working range (1 to 35 bar, a third of
 * them two-phase): by the table, by the equation of state, and by Hipparchus' bicubic interpolation on the same
 * grid. Prints the measured error of the table and of the peer.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class PropertyLookUp {
    private static final int POINTS = 4096;
    private static final int ROWS = 88;
    private static final int COLUMNS = 145;
    private static final double LOW = 1e5;
    private static final double HIGH = 35e5;

    @Param({"R134A", "R1234YF"})
    private Refrigerant refrigerant;

    private PropertyTable table;
    private BivariateFunction temperatures;
    private BivariateFunction densities;
    private final double[] pressure = new double[POINTS];
    private final double[] enthalpy = new double[POINTS];
    private final double[] out = new double[6];

    /** Points, table and peer. */
    @Setup
    public void prepare() {
        table = PropertyTable.of(refrigerant);
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < POINTS; i++) {
            double p = LOW + (HIGH - LOW) * random.nextDouble();
            FluidState s = i % 3 == 2
                    ? refrigerant.atPressureQuality(
                            Math.min(p, 0.999 * refrigerant.criticalPressure()), random.nextDouble())
                    : refrigerant.atPressureTemperature(p, 243.15 + 180.0 * random.nextDouble());
            pressure[i] = s.pressure();
            enthalpy[i] = s.enthalpy();
        }
        peer();
        System.out.println("# " + table.description());
        System.out.println("# " + TableError.of(table, 100_000, 1));
        System.out.println("# peer on the same grid: " + peerError());
    }

    private void peer() {
        double[] x = new double[ROWS];
        double[] y = new double[COLUMNS];
        double low = refrigerant.atTemperatureQuality(215.15, 0).enthalpy();
        double high = refrigerant.atPressureTemperature(0x1p15, 433.15).enthalpy();
        double[][] t = new double[ROWS][COLUMNS];
        double[][] rho = new double[ROWS][COLUMNS];
        for (int j = 0; j < COLUMNS; j++) {
            y[j] = low + (high - low) * j / (COLUMNS - 1);
        }
        for (int i = 0; i < ROWS; i++) {
            x[i] = 0x1p15 * (1 << i / 12) * (1.0 + i % 12 / 12.0);
            for (int j = 0; j < COLUMNS; j++) {
                table.look(x[i], y[j], out);
                t[i][j] = out[PropertyTable.TEMPERATURE];
                rho[i][j] = out[PropertyTable.DENSITY];
            }
        }
        temperatures = new BicubicInterpolator().interpolate(x, y, t);
        densities = new BicubicInterpolator().interpolate(x, y, rho);
    }

    private String peerError() {
        double worst = 0.0;
        double worstDensity = 0.0;
        for (int i = 0; i < POINTS; i++) {
            FluidState s = refrigerant.atPressureEnthalpy(pressure[i], enthalpy[i]);
            double ours = temperatures.value(pressure[i], enthalpy[i]);
            worst = Math.max(worst, Math.abs(ours - s.temperature()));
            double density = densities.value(pressure[i], enthalpy[i]);
            worstDensity = Math.max(worstDensity, Math.abs(density / s.density() - 1.0));
        }
        return "temperature within " + worst + " K, density within " + 100.0 * worstDensity + " %";
    }

    /** The product. */
    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double look() {
        double sum = 0.0;
        for (int i = 0; i < POINTS; i++) {
            table.look(pressure[i], enthalpy[i], out);
            sum += out[PropertyTable.TEMPERATURE] + out[PropertyTable.DENSITY];
        }
        return sum;
    }

    /** The product with the four slopes. */
    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double lookWithSlopes() {
        double sum = 0.0;
        for (int i = 0; i < POINTS; i++) {
            table.lookWithSlopes(pressure[i], enthalpy[i], out);
            sum += out[PropertyTable.TEMPERATURE] + out[PropertyTable.DENSITY_BY_PRESSURE];
        }
        return sum;
    }

    /** The equation of state, all properties. */
    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double flash() {
        double sum = 0.0;
        for (int i = 0; i < POINTS; i++) {
            FluidState s = refrigerant.atPressureEnthalpy(pressure[i], enthalpy[i]);
            sum += s.temperature() + s.density();
        }
        return sum;
    }

    /** The peer: a general library's bicubic interpolation, same grid. */
    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double generalBicubic() {
        double sum = 0.0;
        for (int i = 0; i < POINTS; i++) {
            sum += temperatures.value(pressure[i], enthalpy[i]) + densities.value(pressure[i], enthalpy[i]);
        }
        return sum;
    }
}
