package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;

/**
 * Integral correlation time of an AR(1) series: with neighbours correlated by phi the sum over all lags is phi / (1 -
 * phi), a textbook geometric series, and half a sample for lag nought.
 */
class CorrelationTimeTest {
    private static final double LEAST = FitResiduals.CORRELATION_TIME;

    private static double[] series(double phi, int n, long seed) {
        Well19937c random = new Well19937c(seed);
        double[] out = new double[n];
        double fresh = Math.sqrt(1.0 - phi * phi);
        out[0] = random.nextGaussian();
        for (int i = 1; i < n; i++) {
            out[i] = phi * out[i - 1] + fresh * random.nextGaussian();
        }
        return out;
    }

    @Test
    void ofALongSeriesIsTheKnownOne() {
        double phi = Math.exp(-FitResiduals.EVERY / 100.0);
        double known = FitResiduals.EVERY * (0.5 + phi / (1.0 - phi));
        assertThat(known).isCloseTo(100.0, within(0.1));
        double sum = 0.0;
        for (int seed = 0; seed < 8; seed++) {
            sum += FittedVehicle.correlationTime(List.of(series(phi, 40_000, seed)));
        }
        assertThat(sum / 8.0).isCloseTo(known, within(0.1 * known));
    }

    @Test
    void doesNotLeapFromOneRunToTheNext() {
        double phi = Math.exp(-FitResiduals.EVERY / 100.0);
        double[] a = series(phi, 20_000, 1);
        double[] b = series(phi, 20_000, 2);
        assertThat(FittedVehicle.correlationTime(List.of(a, b)))
                .isEqualTo(FittedVehicle.correlationTime(List.of(b, a)), within(1e-9));
    }

    @Test
    void isNeverTakenShorterThanTheFitTookIt() {
        assertThat(FittedVehicle.correlationTime(List.of(series(0.0, 5_000, 5))))
                .isEqualTo(LEAST);
        assertThat(FittedVehicle.correlationTime(List.of(new double[100]))).isEqualTo(LEAST);
        assertThat(FittedVehicle.correlationTime(List.of())).isEqualTo(LEAST);
    }
}
