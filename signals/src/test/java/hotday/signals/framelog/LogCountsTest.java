package hotday.signals.framelog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.signals.frame.Frame;
import org.junit.jupiter.api.Test;

class LogCountsTest {
    private final LogCounts counts = new LogCounts();
    private final Frame frame = new Frame();
    private final byte[] data = new byte[64];

    private void add(double time, int id, int length, boolean known) {
        counts.add(frame.set(time, 0, id, false, data, 0, length), known, f -> "m" + f.id());
    }

    @Test
    void countsIdentifiersWithRateAndJitter() {
        add(0.0, 5, 8, true);
        add(0.1, 6, 1, false);
        add(0.2, 5, 4, true);
        add(0.5, 5, 8, true);
        // the clock goes back: that step counts for nothing
        add(0.1, 5, 8, true);
        IdentifierCount five = counts.identifiers().get(0);
        assertThat(five.name()).isEqualTo("m5");
        assertThat(five.count()).isEqualTo(4);
        assertThat(five.period()).isCloseTo(0.25, within(1e-12));
        assertThat(five.rate()).isCloseTo(4, within(1e-9));
        // steps 0.2 and 0.3: deviation of each 0.05, sqrt(2 * 0.05^2 / 1)
        assertThat(five.jitter()).isCloseTo(0.0707106781, within(1e-9));
        assertThat(five.longestStep()).isCloseTo(0.3, within(1e-12));
        assertThat(five.shortest()).isEqualTo(4);
        assertThat(five.longest()).isEqualTo(8);
        IdentifierCount six = counts.identifiers().get(1);
        assertThat(six.known()).isFalse();
        assertThat(six.rate()).isNaN();
        assertThat(counts.unknownShare()).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void countsBitsOfClassicFramesOnly() {
        add(0.0, 5, 8, true);
        add(0.9, 5, 0, true);
        add(1.5, 5, 8, true);
        counts.add(frame.set(1.6, 0, 7, true, data, 0, 8).as(Frame.Kind.REMOTE), false, f -> "");
        counts.add(frame.set(1.7, 0, 7, true, data, 0, 8).as(Frame.Kind.ERROR), false, f -> "");
        counts.add(frame.set(1.8, 0, 7, true, data, 0, 64).asFlexible(), false, f -> "");
        BusCount bus = counts.buses().get(0);
        // 8 bytes 111 to 135 bits, none 47 to 55, remote of 29 bits 67 to 80 (worst-case lengths of 2007, recomputed)
        assertThat(bus.fewestBits()).isEqualTo(111 + 47 + 111 + 67);
        assertThat(bus.mostBits()).isEqualTo(135 + 55 + 135 + 80);
        assertThat(bus.busiestSecond()).isEqualTo(135 + 80);
        assertThat(bus.frames()).isEqualTo(6);
        assertThat(bus.flexible()).isEqualTo(1);
        assertThat(bus.of(Frame.Kind.ERROR)).isEqualTo(1);
    }

    @Test
    void memoryIsBounded() {
        for (int i = 0; i < 70_000; i++) {
            counts.add(frame.set(i, 0, i, true, data, 0, 1), false, f -> "");
        }
        assertThat(counts.identifiers()).hasSize(65_536);
        assertThat(counts.untold()).isEqualTo(70_000 - 65_536);
        assertThat(counts.buses().get(0).frames()).isEqualTo(70_000);
    }
}
