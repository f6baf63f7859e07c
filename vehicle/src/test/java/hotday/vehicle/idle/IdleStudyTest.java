package hotday.vehicle.idle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class IdleStudyTest {
    private static final double RPM = Math.PI / 30.0;
    private static final IdleSettings ENGINE = IdleSettings.of(4.8e-3, 700 * RPM);
    private static final IdleLoad CLUTCH = new IdleLoad(20, 0.04);

    /** A clutch engagement with the announcement on is hardly seen, below 30 rpm; off, more than 75 rpm (common practice, no source). */
    @Test
    void clutchWithAndWithoutAnnouncement() {
        IdleRun announced = IdleStudy.run(ENGINE, CLUTCH, new FeedForward(20, 0.3));
        IdleRun unannounced = IdleStudy.run(ENGINE, CLUTCH, FeedForward.NONE);
        assertThat(announced.sag()).isLessThan(30 * RPM);
        assertThat(announced.acceptable()).isTrue();
        assertThat(unannounced.sag()).isGreaterThan(75 * RPM);
        assertThat(unannounced.acceptable()).isFalse();
    }

    /** What the governor does with the load gone is the mirror of what it does with the load, while the reserves mirror too. */
    @Test
    void droppedLoadIsTheMirror() {
        IdleSettings even = new IdleSettings(0.28, 700 * RPM, 0.06, 0.35, 0.1 / RPM, 0.1 / RPM, 0.2 / RPM, 8, 8);
        IdleRun on = IdleStudy.run(even, CLUTCH, new FeedForward(15, 0.2));
        IdleRun off = IdleStudy.run(even, new IdleLoad(-20, 0.04), new FeedForward(-15, 0.2));
        assertThat(off.flare()).isCloseTo(on.sag(), within(1e-9));
        assertThat(off.sag()).isCloseTo(on.flare(), within(1e-9));
        assertThat(off.settling()).isCloseTo(on.settling(), within(1e-9));
    }

    /** Closed form: no governor at all; J w' = -b w - T (1 - exp(-t / lag)). */
    @Test
    void withoutAGovernor() {
        IdleSettings bare = new IdleSettings(0.28, 100, 0.5, 0.35, 0, 0, 0, 0, 0);
        IdleRun run = IdleStudy.run(bare, new IdleLoad(10, 0.02), FeedForward.NONE);
        double k = 0.5 / 0.28;
        for (int i = 100; i <= 1000; i += 5) {
            double t = i * IdleStudy.STEP - 1;
            double late = (Math.exp(-t / 0.02) - Math.exp(-k * t)) / (k - 1 / 0.02);
            double expected = 100 - 10 / 0.5 * -Math.expm1(-k * t) + 10 / 0.28 * late;
            assertThat(run.trace().speed(i)).isCloseTo(expected, within(2e-4));
        }
        assertThat(run.lowest()).isCloseTo(80, within(1e-6));
        assertThat(run.highest()).isEqualTo(100);
    }

    /** Closed form: air alone with the spark held at nothing; a step of feed-forward before any load lifts the speed by J w = F (t - lag (1 - exp(-t/lag))). */
    @Test
    void airLag() {
        IdleSettings bare = new IdleSettings(0.28, 100, 0, 0.35, 0, 0, 0, 0, 0);
        IdleRun run = IdleStudy.run(bare, new IdleLoad(0, 0.04), new FeedForward(5, 0.5));
        double expected = 100 + 5 / 0.28 * (0.5 + 0.35 * Math.expm1(-0.5 / 0.35));
        assertThat(run.trace().speed(100)).isCloseTo(expected, within(1e-5));
    }

    @Test
    void everythingPlausibleEnds() {
        Random random = new Random(3);
        for (int i = 0; i < 300; i++) {
            IdleSettings settings = new IdleSettings(
                    0.1 + random.nextDouble(),
                    (500 + 600 * random.nextDouble()) * RPM,
                    0.2 * random.nextDouble(),
                    0.1 + random.nextDouble(),
                    0.2 * random.nextDouble() / RPM,
                    0.1 * random.nextDouble() / RPM,
                    (i % 5 == 0 ? 0 : 0.4 * random.nextDouble()) / RPM,
                    i % 7 == 0 ? 0 : 20 * random.nextDouble(),
                    i % 11 == 0 ? 0 : 20 * random.nextDouble());
            IdleLoad load = new IdleLoad(60 * random.nextDouble() - 30, 0.02 + 0.5 * random.nextDouble());
            FeedForward forward = new FeedForward(load.torque() * random.nextDouble(), 2 * random.nextDouble() - 1);
            IdleRun run = IdleStudy.run(settings, load, forward);
            for (int k = 0; k < run.trace().size(); k++) {
                assertThat(run.trace().speed(k)).isBetween(run.lowest() - 1e-9, run.highest() + 1e-9);
            }
        }
    }

    @Test
    void restIsRest() {
        IdleRun run = IdleStudy.run(ENGINE, new IdleLoad(0, 0.04), FeedForward.NONE);
        assertThat(run.sag()).isZero();
        assertThat(run.flare()).isZero();
        assertThat(run.settling()).isZero();
    }

    @Test
    void badValues() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> IdleSettings.of(0, 70))
                .withMessage("idle displacement 0.0 m3 must be above 0");
        assertThatIllegalArgumentException().isThrownBy(() -> IdleSettings.of(1e-3, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new IdleSettings(1, 70, -1, 1, 0, 0, 0, 0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new IdleSettings(1, 70, 0, 0, 0, 0, 0, 0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new IdleLoad(10, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new IdleLoad(Double.NaN, 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FeedForward(10, 1.5))
                .withMessage("feed-forward lead 1.5 s must be from -1 to 1");
    }
}
