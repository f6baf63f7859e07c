package hotday.signals.bus;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ScheduleTest {
    private static final long MS = 1_000_000;
    private static final long BIT = 2_000; // 500 kbit/s

    private static Traffic frame(int id, int bytes, double period, double jitter) {
        return new Traffic(
                Traffic.priority(id, false),
                FrameLength.longest(false, bytes) * BIT,
                Math.round(period * MS),
                Math.round(jitter * MS));
    }

    private static double ms(long ns) {
        return (double) ns / MS;
    }

    /**
     * The three messages by which Davis, Burns, Bril and Lukkien 2007 refuted the older single-instance test (from memory,
     * recomputed): the second instance of the third is the late one, 3.5 ms, where the first takes 3.0.
     */
    @Test
    void findsTheLateSecondInstance() {
        Schedule bus = Schedule.of(
                List.of(
                        new Traffic(1, MS, 5 * MS / 2, 0),
                        new Traffic(2, MS, 7 * MS / 2, 0),
                        new Traffic(3, MS, 7 * MS / 2, 0)),
                1);
        assertThat(ms(bus.response(0))).isEqualTo(2.0);
        assertThat(ms(bus.response(1))).isEqualTo(3.0);
        assertThat(ms(bus.response(2))).isEqualTo(3.5);
    }

    /** Reference set of six frames with jitter, recomputed from the same equations outside this program. */
    @Test
    void respondsAsTheReferenceSet() {
        int[] bytes = {8, 8, 8, 4, 2, 8};
        double[] period = {10, 50, 100, 100, 100, 500};
        double[] jitter = {0.2, 0.5, 1, 1, 1, 5};
        double[] expected = {0.74, 1.31, 2.08, 2.27, 2.42, 6.42};
        List<Traffic> traffic = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            traffic.add(frame(0x100 + i, bytes[i], period[i], jitter[i]));
        }
        Schedule bus = Schedule.of(traffic, BIT);
        for (int i = 0; i < 6; i++) {
            assertThat(ms(bus.response(i))).isCloseTo(expected[i], within(1e-9));
        }
        assertThat(bus.load()).isCloseTo(0.0390, within(5e-5));
        assertThat(ms(bus.blocking(0))).isCloseTo(0.27, within(1e-9));
        assertThat(bus.blocking(5)).isZero();
    }

    /** Reference load of eight frames of eight bytes, 320 frames/s of 135 bits on 500 kbit/s. */
    @Test
    void loadsAsTheReferenceSet() {
        double[] rates = {100, 100, 50, 20, 20, 10, 10, 10};
        List<Traffic> traffic = new ArrayList<>();
        for (double rate : rates) {
            traffic.add(frame(traffic.size(), 8, 1000 / rate, 0));
        }
        assertThat(Schedule.of(traffic, BIT).load()).isCloseTo(0.0864, within(1e-9));
    }

    @Test
    void theOrderOfTheListDoesNotMatter() {
        Traffic fast = frame(0x10, 8, 10, 0);
        Traffic slow = frame(0x700, 8, 100, 0);
        assertThat(Schedule.of(List.of(slow, fast), BIT).response(1))
                .isEqualTo(Schedule.of(List.of(fast, slow), BIT).response(0));
    }

    @Test
    void aFullBusHasNoBoundForTheLastButForTheFirst() {
        Traffic first = new Traffic(1, MS, 2 * MS, 0);
        Traffic last = new Traffic(2, MS, 2 * MS, 0);
        Schedule full = Schedule.of(List.of(first, last), BIT);
        assertThat(full.response(0)).isEqualTo(2 * MS);
        assertThat(full.response(1)).isEqualTo(Schedule.UNBOUNDED);
        Schedule over = Schedule.of(List.of(last, new Traffic(1, 3 * MS, 2 * MS, 0)), BIT);
        assertThat(over.response(0)).isEqualTo(Schedule.UNBOUNDED);
        assertThat(over.load()).isEqualTo(2.0);
    }

    @Test
    void aBusyPeriodBeyondTheHorizonHasNoBound() {
        Traffic almost = new Traffic(1, MS - 1, MS, 0);
        Traffic rest = new Traffic(2, MS, Traffic.LONGEST, 0);
        assertThat(Schedule.of(List.of(almost, rest), 1).response(1)).isEqualTo(Schedule.UNBOUNDED);
    }

    /** ISO 11898-1: bit for bit, and behind eleven equal bits the standard frame wins. */
    @Test
    void lowerIdentifiersWin() {
        assertThat(Traffic.priority(0x100, false)).isLessThan(Traffic.priority(0x101, false));
        assertThat(Traffic.priority(0x100, false)).isLessThan(Traffic.priority(0x100 << 18, true));
        assertThat(Traffic.priority(0x100 << 18, true)).isLessThan(Traffic.priority(0x100 << 18 | 1, true));
        assertThat(Traffic.priority(0x1FFFFFFF, true)).isGreaterThan(Traffic.priority(0x7FF, false));
        assertThat(Traffic.priority(0x100 << 18 | 0x3FFFF, true)).isLessThan(Traffic.priority(0x101, false));
    }

    @Test
    void refusesTimesThatCannotBeAndTwoOfOnePriority() {
        assertThatThrownBy(() -> new Traffic(1, 0, MS, 0)).hasMessageContaining("transmission of 0 ns");
        assertThatThrownBy(() -> new Traffic(1, 1, 0, 0)).hasMessageContaining("period of 0 ns");
        assertThatThrownBy(() -> new Traffic(1, 1, 1, -1)).hasMessageContaining("jitter of -1 ns");
        assertThatThrownBy(() -> new Traffic(1, 1, Long.MAX_VALUE, 0)).hasMessageContaining("period");
        Traffic one = new Traffic(7, 1, MS, 0);
        assertThatThrownBy(() -> Schedule.of(List.of(one, one), 1)).hasMessageContaining("priority 7");
    }
}
