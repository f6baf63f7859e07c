package hotday.bench;

import hotday.physics.component.Cabin;
import hotday.physics.component.Evaporator;
import hotday.physics.fluid.MoistAir;
import hotday.physics.fluid.WaterSaturation;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Evaporator coil and cabin rates, as one step of a vehicle asks for them; the inlet temperature wanders. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class CabinPass {
    private static final double STRIDE = 6.180339887;
    private static final double SPAN = 20.0;

    private final Evaporator evaporator = Evaporator.midSize();
    private final Cabin cabin = Cabin.midSize();
    private final double[] coil = new double[Evaporator.RESULTS];
    private final double[] in = {308.15, 0.0142, 101325.0, 14.0, 850.0, 2.0, 0.13, 283.15, 0.007, 0.0};
    private final double[] out = new double[Cabin.RESULTS];
    private double at;

    /** Coil shedding water, then the cabin behind it. */
    @Benchmark
    public double wetCoilAndCabin() {
        return pass(0.012);
    }

    /** Coil too warm for the dew point, then the cabin. */
    @Benchmark
    public double dryCoilAndCabin() {
        return pass(0.002);
    }

    private double pass(double humidity) {
        evaporator.exchange(0.13, next(), humidity, 101325.0, 277.15, coil);
        in[Cabin.VENT_TEMPERATURE] = coil[Evaporator.AIR_OUT];
        in[Cabin.VENT_HUMIDITY] = coil[Evaporator.HUMIDITY_OUT];
        cabin.rates(298.15, 303.15, 0.008, in, out);
        return out[Cabin.AIR_RATE] + out[Cabin.HUMIDITY_RATE] + coil[Evaporator.HEAT];
    }

    /** Saturation pressure by the tables of this program. */
    @Benchmark
    public double saturation() {
        return WaterSaturation.pressure(next());
    }

    /** The same by its formula. */
    @Benchmark
    public double formula() {
        return MoistAir.saturationPressure(next());
    }

    private double next() {
        at += STRIDE;
        if (at > SPAN) {
            at -= SPAN;
        }
        return 295.15 + at;
    }
}
