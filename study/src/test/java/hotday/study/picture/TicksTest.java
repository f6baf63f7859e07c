package hotday.study.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Numbers along an axis are round, inside it, evenly spaced, neither too many nor too few, and read back. */
class TicksTest {
    @Test
    void ofOrdinaryAxesAreWhatAPersonWouldDraw() {
        assertThat(Ticks.between(0, 100, 5)).containsExactly(0.0, 20.0, 40.0, 60.0, 80.0, 100.0);
        assertThat(Ticks.between(78.2, 97.9, 5)).containsExactly(80.0, 85.0, 90.0, 95.0);
        assertThat(Ticks.between(-2, 2, 4)).containsExactly(-2.0, -1.0, 0.0, 1.0, 2.0);
    }

    @Test
    void keepTheirPropertiesOnAnyAxis() {
        SplittableRandom random = new SplittableRandom(23);
        for (int trial = 0; trial < 5000; trial++) {
            double low = random.nextDouble(-1, 1) * Math.pow(10, random.nextInt(-3, 5));
            double length = random.nextDouble(0.1, 1) * Math.pow(10, random.nextInt(-2, 5));
            int most = random.nextInt(2, 12);
            double step = Ticks.step(low, low + length, most);
            double leading = step / Math.pow(10, Math.floor(Math.log10(step) + 1e-9));
            assertThat(List.of(1L, 2L, 5L)).contains(Math.round(leading));
            assertThat(leading).isCloseTo(Math.round(leading), within(1e-9));
            List<Double> ticks = Ticks.between(low, low + length, most);
            assertThat(ticks.size()).isBetween((int) (most / 2.5) - 1, most + 1);
            for (int i = 0; i < ticks.size(); i++) {
                double tick = ticks.get(i);
                assertThat(tick).isBetween(low - 1e-6 * length, low + length * (1 + 1e-6));
                assertThat(tick / step).isCloseTo(Math.rint(tick / step), within(1e-6));
                if (i > 0) {
                    assertThat(tick - ticks.get(i - 1)).isCloseTo(step, within(1e-6 * step));
                }
                assertThat(Double.parseDouble(Ticks.label(tick, step))).isCloseTo(tick, within(1e-6 * step));
                assertThat(Ticks.label(tick, step)).doesNotMatch("-0(\\.0*)?");
            }
        }
    }

    @Test
    void ofAnEmptyOrEndlessAxisAreNone() {
        assertThat(Ticks.between(5, 5, 4)).isEmpty();
        assertThat(Ticks.between(6, 5, 4)).isEmpty();
        assertThat(Ticks.between(Double.NaN, 5, 4)).isEmpty();
        assertThat(Ticks.between(0, Double.POSITIVE_INFINITY, 4)).isEmpty();
    }
}
