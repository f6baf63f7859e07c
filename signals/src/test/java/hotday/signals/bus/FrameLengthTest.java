package hotday.signals.bus;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.BitSet;
import java.util.Random;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrameLengthTest {
    /** Davis, Burns, Bril and Lukkien 2007, equations for 11 and 29 bits: 55 + 10 s and 80 + 10 s. */
    @ParameterizedTest
    @CsvSource({"0, 55, 80, 47, 67", "4, 95, 120, 79, 99", "8, 135, 160, 111, 131"})
    void isAsPublished(int bytes, int standard, int extended, int bareStandard, int bareExtended) {
        assertThat(FrameLength.longest(false, bytes)).isEqualTo(standard);
        assertThat(FrameLength.longest(true, bytes)).isEqualTo(extended);
        assertThat(FrameLength.shortest(false, bytes)).isEqualTo(bareStandard);
        assertThat(FrameLength.shortest(true, bytes)).isEqualTo(bareExtended);
    }

    @Test
    void fiveEqualBitsAndThenFoursNeedAsManyStuffBitsAsTheBound() {
        for (int bytes = 0; bytes <= 8; bytes++) {
            assertThat(stuffBits(34 + 8 * bytes, FrameLengthTest::fiveThenFours))
                    .isEqualTo(FrameLength.longest(false, bytes) - FrameLength.shortest(false, bytes));
            assertThat(stuffBits(54 + 8 * bytes, FrameLengthTest::fiveThenFours))
                    .isEqualTo(FrameLength.longest(true, bytes) - FrameLength.shortest(true, bytes));
        }
    }

    private static boolean fiveThenFours(int bit) {
        return bit == 0 || (bit + 3) / 4 % 2 == 1;
    }

    @Test
    void noOtherBitsNeedMore() {
        Random random = new Random(5);
        for (int n = 0; n < 20_000; n++) {
            BitSet bits = BitSet.valueOf(new long[] {random.nextLong() << random.nextInt(60), random.nextLong()});
            assertThat(stuffBits(98, bits::get)).isLessThanOrEqualTo(24);
        }
    }

    /** The complement follows after five equal bits, stuff bits counted in (ISO 11898-1). */
    private static int stuffBits(int bits, IntPredicate bit) {
        int run = 0;
        boolean last = false;
        int stuffed = 0;
        for (int i = 0; i < bits; i++) {
            run = i > 0 && bit.test(i) == last ? run + 1 : 1;
            last = bit.test(i);
            if (run == 5) {
                stuffed++;
                last = !last;
                run = 1;
            }
        }
        return stuffed;
    }

    @Test
    void refusesWhatNoClassicFrameHas() {
        assertThatThrownBy(() -> FrameLength.longest(false, 9))
                .hasMessageContaining("9 bytes")
                .hasMessageContaining("0 to 8");
        assertThatThrownBy(() -> FrameLength.shortest(true, -1)).hasMessageContaining("-1 bytes");
    }
}
