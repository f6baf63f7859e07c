package hotday.bench;

import hotday.core.table.Curve;
import java.util.concurrent.TimeUnit;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One value from a curve of eight points, as a schedule or a pump map has them; the place asked for wanders. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class CurveLookUp {
    private static final double[] X = {0.0, 10.0, 25.0, 40.0, 55.0, 70.0, 85.0, 100.0};
    private static final double[] Y = {0.0, 0.0, 0.2, 0.3, 0.5, 0.6, 0.9, 1.0};
    /** Golden-section stride: visits the range evenly and in no order that a branch predictor could learn. */
    private static final double STRIDE = 61.80339887;

    private final Curve curve = Curve.of(X, Y);
    private final UnivariateFunction spline = new LinearInterpolator().interpolate(X, Y);
    private double at;

    /** The product. */
    @Benchmark
    public double own() {
        return curve.value(next());
    }

    /** The peer. */
    @Benchmark
    public double hipparchus() {
        return spline.value(next());
    }

    private double next() {
        at += STRIDE;
        if (at > 100.0) {
            at -= 100.0;
        }
        return at;
    }
}
