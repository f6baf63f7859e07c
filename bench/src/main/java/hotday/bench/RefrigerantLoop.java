package hotday.bench;

import hotday.physics.cycle.Compressor;
import hotday.physics.cycle.CycleLoop;
import hotday.physics.refrigerant.FluidState;
import hotday.physics.refrigerant.Refrigerant;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Compressor and condenser between two pressures that move from call to call, beside the compression alone by the equation of state. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class RefrigerantLoop {
    private static final double SPEED = 125.66; // rad/s

    @Param({"R134A", "R1234YF"})
    private Refrigerant refrigerant;

    private CycleLoop loop;
    private final double[] out = new double[CycleLoop.LENGTH];
    private int count;

    /** The loop of a 150 cm3 compressor. */
    @Setup
    public void prepare() {
        loop = new CycleLoop(refrigerant, Compressor.fixed(150e-6, 1.0));
    }

    private double low() {
        count = (count + 1) % 1000;
        return 3e5 + 10.0 * count;
    }

    private double high() {
        return 15e5 + 500.0 * count;
    }

    /** Compress and condense. */
    @Benchmark
    public double loop() {
        loop.compress(low(), high(), SPEED, 1.0, 8.0, out);
        loop.condense(out, 330.0, 450.0, 380.0, 308.15, 0.1);
        return out[CycleLoop.CONDENSING_SURPLUS];
    }

    /** Suction state and isentropic enthalpy by the equation of state. */
    @Benchmark
    public double compressionByEquationOfState() {
        double low = low();
        FluidState suction = refrigerant.atPressureTemperature(low, refrigerant.saturationTemperature(low) + 8.0);
        return refrigerant.atPressureEntropy(high(), suction.entropy()).enthalpy();
    }
}
