package hotday.physics.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WaxThermostatTest {
    private static final WaxThermostat STAT = new WaxThermostat(361.15, 373.15, 4, 10);

    @Test
    void opensAlongAStraightLine() {
        assertThat(STAT.opening(300)).isEqualTo(0);
        assertThat(STAT.opening(361.15)).isEqualTo(0);
        assertThat(STAT.opening(367.15)).isCloseTo(0.5, within(1e-12));
        assertThat(STAT.opening(373.15)).isEqualTo(1);
        assertThat(STAT.opening(500)).isEqualTo(1);
    }

    @Test
    void roundedLineStaysCloseAndHasNoCorner() {
        double rounding = 0.1;
        double h = 1e-5;
        double slopeBefore = 0;
        for (double t = 350; t < 385; t += 0.01) {
            double x = STAT.opening(t, rounding);
            assertThat(x).isBetween(0.0, 1.0).isCloseTo(STAT.opening(t), within(rounding / 4 + 1e-12));
            double slope = (STAT.opening(t + h, rounding) - STAT.opening(t - h, rounding)) / (2 * h);
            assertThat(slope).isGreaterThanOrEqualTo(-1e-9);
            assertThat(slope - slopeBefore).isBetween(-0.001, 0.001);
            slopeBefore = slope;
        }
        assertThat(STAT.opening(367, 0)).isCloseTo(STAT.opening(367), within(1e-12));
        assertThat(STAT.opening(361.15, 0)).isEqualTo(0);
    }

    @Test
    void waxLagsFirstOrderWhateverTheStep() {
        double once = STAT.lagged(350, 370, 10);
        assertThat(once).isCloseTo(370 - 20 / Math.E, within(1e-12));
        double wax = 350;
        for (int i = 0; i < 100; i++) {
            wax = STAT.lagged(wax, 370, 0.1);
        }
        assertThat(wax).isCloseTo(once, within(1e-9));
        assertThat(new WaxThermostat(361, 373, 0, 0).lagged(350, 370, 0.1)).isEqualTo(370);
    }

    @Test
    void shutsLowerThanItOpens() {
        double played = 340;
        double openedAt = 0;
        for (double t = 340; t <= 370; t += 0.01) {
            played = STAT.played(played, t);
            openedAt = openedAt == 0 && STAT.opening(played) > 0 ? t : openedAt;
        }
        double top = STAT.opening(played);
        double shutAt = 0;
        for (double t = 370; t >= 340; t -= 0.01) {
            played = STAT.played(played, t);
            assertThat(STAT.opening(played)).isLessThanOrEqualTo(top + 1e-9);
            shutAt = shutAt == 0 && STAT.opening(played) == 0 ? t : shutAt;
        }
        assertThat(openedAt).isCloseTo(361.15, within(0.02));
        assertThat(shutAt).isCloseTo(357.15, within(0.02));
    }

    @Test
    void smallSwingsDoNotMoveTheValve() {
        double played = STAT.played(STAT.played(340, 368), 366);
        assertThat(played).isEqualTo(368);
        assertThat(STAT.played(played, 367.5)).isEqualTo(368);
        assertThat(STAT.played(played, 364.5)).isEqualTo(368);
        assertThat(STAT.played(played, 363)).isEqualTo(367);
    }

    @Test
    void refusesARangeUpsideDown() {
        assertThatThrownBy(() -> new WaxThermostat(373, 361, 4, 10)).hasMessageContaining("full must be the higher");
        assertThatThrownBy(() -> new WaxThermostat(361, 373, -1, 10)).hasMessageContaining("-1.0 K");
        assertThatThrownBy(() -> new WaxThermostat(361, Double.NaN, 1, 10))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
