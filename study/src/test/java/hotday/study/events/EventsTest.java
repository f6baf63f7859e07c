package hotday.study.events;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Made-up runs with known switchings. */
class EventsTest {
    private static final int SEEDS = 50;
    private static final double ON_TIME = 6.0; // s, mean of 1 s, medians over 6 s, gauge of whole degrees
    private static final double TURN_TIME = 12.0; // s, one step of the gauge at the slowest rise
    private static final double SWITCH_TIME = 3.0; // s

    @ParameterizedTest
    @ValueSource(doubles = {1.0, 5.0})
    void fanStartsAndThresholds(double hertz) {
        int inside = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            MadeRun made = new MadeRun(seed, hertz, 1500.0);
            double on = made.between(92.0, 106.0);
            double off = on - made.between(4.5, 8.0);
            made.fan(on, off, 0.08);
            Inferred seen = Events.of(made.trace());
            sameTimes(seed, seen.of(Kind.FAN_ON), made.fanOn, ON_TIME);
            Estimate start = seen.summary().fanOn().orElseThrow();
            assertThat(start.mean() - MadeRun.KELVIN).as("seed %d", seed).isCloseTo(on, within(1.0));
            assertThat(start.high() - start.low()).isBetween(1.3, 3.0);
            inside += start.low() - MadeRun.KELVIN <= on && on <= start.high() - MadeRun.KELVIN ? 1 : 0;
            assertThat(seen.of(Kind.FAN_ON)).allMatch(e -> e.confidence() > 0.8);
            assertThat(seen.of(Kind.COMPRESSOR_ON)).as("seed %d", seed).isEmpty();
        }
        assertThat(inside).as("of %d intervals of 90 %%", SEEDS).isGreaterThanOrEqualTo(43);
    }

    /** Two-sided: every true one is found, nothing else is; the last may be cut off by the end of the run. */
    private static void sameTimes(long seed, List<Event> found, List<Double> truth, double tolerance) {
        assertThat(found.size()).as("seed %d, count", seed).isBetween(truth.size() - 1, truth.size());
        for (int i = 0; i < found.size(); i++) {
            assertThat(found.get(i).time()).as("seed %d, no %d", seed, i).isCloseTo(truth.get(i), within(tolerance));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.0, 5.0})
    void fanFromCoolantAlone(double hertz) {
        for (int seed = 0; seed < SEEDS; seed++) {
            MadeRun made = new MadeRun(seed, hertz, 1500.0).fan(98.0, 92.5, 0.08);
            Inferred seen = Events.of(made.coolantAndSpeedOnly());
            sameTimes(seed, seen.of(Kind.FAN_ON), made.fanOn, TURN_TIME);
            assertThat(seen.of(Kind.FAN_ON)).allMatch(e -> e.confidence() > 0.5 && e.confidence() < 0.96);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.0, 5.0})
    void noFanIsInventedAtStandstill(double hertz) {
        for (int seed = 0; seed < SEEDS; seed++) {
            MadeRun made = new MadeRun(seed, hertz, 1500.0);
            made.held(made.between(84.0, 98.0));
            nothing(seed, Events.of(made.trace()));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.0, 5.0})
    void noFanIsInventedOnTheRoad(double hertz) {
        for (int seed = 0; seed < SEEDS; seed++) {
            MadeRun made = new MadeRun(seed, hertz, 2500.0);
            made.drive(made.between(84.0, 95.0));
            nothing(seed, Events.of(made.trace()));
        }
    }

    /** Without road speed a drive could be anything; a run that idles throughout stood. */
    @Test
    void withoutRoadSpeed() {
        for (int seed = 0; seed < SEEDS; seed++) {
            MadeRun driven = new MadeRun(seed, 1.0, 2500.0);
            driven.drive(driven.between(84.0, 95.0));
            nothing(seed, Events.of(driven.withoutSpeed()));
            MadeRun idled = new MadeRun(seed, 1.0, 1500.0).fan(98.0, 92.0, 0.08);
            sameTimes(seed, Events.of(idled.withoutSpeed()).of(Kind.FAN_ON), idled.fanOn, ON_TIME);
        }
    }

    private static void nothing(long seed, Inferred seen) {
        assertThat(seen.events()).as("seed %d", seed).isEmpty();
        assertThat(seen.summary().fanCycles()).isZero();
        assertThat(seen.summary().fanOn()).isEmpty();
        assertThat(seen.summary().compressorDuty()).isEmpty();
    }

    /** The cold slug behind an opening thermostat looks like a fan, and cold idle like a compressor. */
    @ParameterizedTest
    @ValueSource(doubles = {1.0, 5.0})
    void aWarmUpIsAThermostat(double hertz) {
        for (int seed = 0; seed < SEEDS; seed++) {
            MadeRun made = new MadeRun(seed, hertz, 2000.0);
            double opening = made.between(84.0, 95.0);
            double opened = made.warmUp(made.between(-5.0, 30.0), opening, 5.0);
            Inferred seen = Events.of(made.trace());
            assertThat(seen.events())
                    .as("seed %d", seed)
                    .extracting(Event::kind)
                    .containsExactly(Kind.THERMOSTAT_OPEN);
            Event open = seen.events().get(0);
            assertThat(open.time()).as("seed %d", seed).isCloseTo(opened, within(45.0));
            assertThat(open.value() - MadeRun.KELVIN).as("seed %d", seed).isCloseTo(opening, within(4.0));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.0, 5.0})
    void compressorCycles(double hertz) {
        for (int seed = 0; seed < SEEDS; seed++) {
            MadeRun made = new MadeRun(seed, hertz, 900.0);
            made.held(made.between(86.0, 92.0)).compressor(60.0);
            Inferred seen = Events.of(made.trace());
            sameTimes(seed, seen.of(Kind.COMPRESSOR_ON), made.compressorOn, SWITCH_TIME);
            sameTimes(seed, seen.of(Kind.COMPRESSOR_OFF), made.compressorOff, SWITCH_TIME);
            assertThat(seen.of(Kind.FAN_ON)).as("seed %d", seed).isEmpty();
            double duty = made.compressorSeconds / (900.0 - 60.0);
            assertThat(seen.summary().compressorDuty().orElseThrow())
                    .as("seed %d", seed)
                    .isCloseTo(duty, within(0.03));
            assertThat(seen.of(Kind.COMPRESSOR_ON)).allMatch(e -> e.confidence() > 0.6);
        }
    }

    /** A big fan on a small engine makes two levels as well; they go with the coolant. */
    @Test
    void theFanIsNotTakenForTheCompressor() {
        for (int seed = 0; seed < SEEDS; seed++) {
            MadeRun made = new MadeRun(seed, 1.0, 1500.0).fan(97.0, 91.0, 0.3);
            Inferred seen = Events.of(made.trace());
            assertThat(seen.of(Kind.COMPRESSOR_ON)).as("seed %d", seed).isEmpty();
            sameTimes(seed, seen.of(Kind.FAN_ON), made.fanOn, ON_TIME);
        }
    }

    @Test
    void coldFastIdleIsNoCompressor() {
        MadeRun made = new MadeRun(3, 1.0, 500.0);
        made.warmUp(10.0, 200.0, 0.0);
        made.compressor(60.0);
        assertThat(Events.of(made.trace()).of(Kind.COMPRESSOR_ON)).allMatch(e -> e.time() > 400.0);
    }

    /** A run is judged by where its vehicle's fan starts in another one. */
    @Test
    void aFallWhileRollingCountsWhenItStartsWhereTheFanDoes() {
        MadeRun idle = new MadeRun(1, 1.0, 900.0).fan(96.0, 90.0, 0.08);
        MadeRun rolling = new MadeRun(2, 1.0, 200.0).fan(96.0, 90.0, 0.0);
        for (int i = 0; i < rolling.time.length; i++) {
            rolling.speed[i] = rolling.time[i] < rolling.fanOn.get(0) - 10.0 ? 0.0 : 9.0;
        }
        assertThat(Events.of(rolling.trace()).of(Kind.FAN_ON)).isEmpty();
        List<Event> both = Events.of(List.of(idle.trace(), rolling.trace())).of(Kind.FAN_ON);
        assertThat(both).hasSizeGreaterThan(idle.fanOn.size() - 1);
        assertThat(both.get(both.size() - 1).confidence()).isLessThan(0.56);
    }

    @Test
    void heaterTapAtIdle() {
        MadeRun made = new MadeRun(5, 1.0, 500.0);
        double t = 30.0;
        for (int i = 0; i < made.time.length; i++) {
            made.coolant[i] = t += made.time[i] < 240.0 ? 0.1 : 0.02;
        }
        Inferred seen = Events.of(made.trace());
        assertThat(seen.events()).extracting(Event::kind).containsExactly(Kind.HEATER_ON);
        assertThat(seen.events().get(0).time()).isCloseTo(240.0, within(20.0));
        assertThat(seen.events().get(0).confidence()).isLessThan(0.5);
    }

    @Test
    void gapsAndNothingAtAll() {
        MadeRun made = new MadeRun(1, 1.0, 900.0).fan(96.0, 90.0, 0.08);
        Trace trace = made.trace();
        for (int i = 0; i < trace.time().length; i++) {
            boolean gap = Math.abs(trace.time()[i] - made.fanOn.get(1)) < 30.0;
            trace.coolant()[i] = gap ? Double.NaN : trace.coolant()[i];
        }
        assertThat(Events.of(trace).of(Kind.FAN_ON))
                .noneMatch(e -> Math.abs(e.time() - made.fanOn.get(1)) < 30.0)
                .hasSizeGreaterThanOrEqualTo(made.fanOn.size() - 2);
        double[] none = {};
        assertThat(Events.of(new Trace("empty", none, none, none, none, none, none, none, 0.0))
                        .events())
                .isEmpty();
        assertThat(Events.of(List.<Trace>of()).summary().fanCycles()).isZero();
    }
}
