package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What a logger did not record is not measured. */
class PausesTest {
    private static double[] seconds(int from, int to) {
        return IntStream.rangeClosed(from, to).asDoubleStream().toArray();
    }

    @Test
    void whatStandsInALongPauseIsBlankAndTheReadingsAroundItStay() {
        double[] recorded = IntStream.rangeClosed(0, 100)
                .filter(t -> t <= 40 || t >= 70)
                .asDoubleStream()
                .toArray();
        double[] measured = new double[100];
        Arrays.fill(measured, 350.0);
        Pauses.blank(measured, seconds(1, 100), 1.0, recorded);
        for (int i = 0; i < measured.length; i++) {
            double end = i + 1.0;
            assertThat(Double.isNaN(measured[i])).as("at " + end + " s").isEqualTo(end > 40.0 && end < 70.0);
        }
    }

    @Test
    void shortPausesAndSlowLoggersStay() {
        double[] measured = new double[120];
        Pauses.blank(measured, seconds(1, 120), 1.0, new double[] {0, 1, 2, 3, 4, 5, 14, 15, 16, 24, 34});
        assertThat(measured).doesNotContain(Double.NaN);
        double[] everyHalfMinute = {0, 30, 60, 90, 120};
        Pauses.blank(measured, seconds(1, 120), 1.0, everyHalfMinute);
        assertThat(measured).doesNotContain(Double.NaN);
    }
}
