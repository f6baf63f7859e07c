package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Type 7 of R. J. Hyndman and Y. Fan, Sample quantiles in statistical packages, The American Statistician 50 (1996):
 * p(k) = (k - 1) / (n - 1), straight lines between. Expected values worked out from that by hand.
 */
class QuantileTest {
    /** Sorted; n - 1 = 8, so that a share of 1/8 moves by one place. */
    private static final double[] NINE = {1, 2, 4, 7, 11, 16, 22, 29, 37};

    @ParameterizedTest
    @CsvSource({
        "0.00, 1",
        "0.05, 1.4", // 0.4 of the way from the first to the second
        "0.125, 2",
        "0.25, 4",
        "0.30, 5.2", // 2.4: 4 + 0.4 * 3
        "0.50, 11",
        "0.75, 22",
        "0.90, 30.6", // 7.2: 29 + 0.2 * 8
        "0.95, 33.8", // 7.6: 29 + 0.6 * 8
        "1.00, 37"
    })
    void followsTheDefinition(double share, double expected) {
        assertThat(Quantile.of(NINE, share)).isCloseTo(expected, within(1e-12));
    }

    @Test
    void ofOneValueIsThatValue() {
        assertThat(Quantile.of(new double[] {42.0}, 0.05)).isEqualTo(42.0);
        assertThat(Quantile.of(new double[] {42.0}, 0.95)).isEqualTo(42.0);
    }

    @Test
    void nextToPathsThatNeverGetThereStaysANumber() {
        double never = Double.POSITIVE_INFINITY;
        double[] times = {10, 20, 30, never, never};
        assertThat(Quantile.of(times, 0.5)).isEqualTo(30.0);
        assertThat(Quantile.of(times, 0.25)).isEqualTo(20.0);
        assertThat(Quantile.of(times, 0.6)).isEqualTo(never);
        assertThat(Quantile.of(times, 0.95)).isEqualTo(never);
    }

    @Test
    void risesWithTheShareAndStaysInsideTheSample() {
        SplittableRandom random = new SplittableRandom(11);
        for (int trial = 0; trial < 200; trial++) {
            double[] sample =
                    random.doubles(1 + random.nextInt(40), -50.0, 50.0).sorted().toArray();
            double[] shares = random.doubles(20).sorted().toArray();
            double[] found =
                    Arrays.stream(shares).map(p -> Quantile.of(sample, p)).toArray();
            assertThat(found).isSorted();
            assertThat(found[0]).isGreaterThanOrEqualTo(sample[0]);
            assertThat(found[found.length - 1]).isLessThanOrEqualTo(sample[sample.length - 1]);
        }
    }
}
