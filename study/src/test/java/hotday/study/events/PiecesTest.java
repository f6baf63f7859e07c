package hotday.study.events;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PiecesTest {
    @Test
    void swingsOfFourKelvin() {
        double[] t = {90, 91, 89, 94, 95, 95, 92, 90, 91, 89, 93, 92, 94, 90, Double.NaN, 99, 95};
        assertThat(Swing.of(t)).containsExactly(new Swing(2, 5, 9), new Swing(9, 12, 13), new Swing(15, 15, 16));
    }

    /** Two readings 1 K apart, t = 6.314 for one degree of freedom: 6.314 * 0.5; the gauge adds 1.645 / sqrt(6). */
    @Test
    void intervalOfAMean() {
        Estimate two = Estimate.of(new double[] {95.0, 96.0}, 1.0).orElseThrow();
        assertThat(two.mean()).isEqualTo(95.5);
        assertThat(two.high() - two.mean()).isCloseTo(Math.hypot(3.157, 0.67157), within(1e-4));
        Estimate many = Estimate.of(new double[] {95.0, 95.0, 95.0, 95.0}, 1.0).orElseThrow();
        assertThat(many.mean() - many.low()).isCloseTo(0.67157, within(1e-4));
        assertThat(Estimate.of(new double[0], 1.0)).isEmpty();
    }

    @Test
    void twoLevels() {
        TwoLevels levels = TwoLevels.of(new double[] {25, 26, 25, 24, 36, 35, 37, Double.NaN, 25});
        assertThat(levels.low()).isEqualTo(25.0);
        assertThat(levels.high()).isEqualTo(36.0);
        assertThat(levels.lesser()).isEqualTo(0.375);
        assertThat(levels.share(30.5)).isEqualTo(0.5);
        assertThat(TwoLevels.of(new double[] {3.0, 3.0}).separation()).isNaN();
    }

    @Test
    void wrongInputs() {
        double[] one = {0.0};
        double[] two = {0.0, 1.0};
        assertThatThrownBy(() -> new Trace("run", two, two, two, one, two, two, two, 1.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("1 samples, time has 2");
        assertThatThrownBy(() -> new Event("run", 0.0, Kind.FAN_ON, 368.0, "K", 1.2, ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("1.2");
        assertThat(Kind.FAN_ON.key()).isEqualTo("fan_on");
    }
}
