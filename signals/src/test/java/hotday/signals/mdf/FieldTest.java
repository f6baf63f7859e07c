package hotday.signals.mdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.math.BigInteger;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FieldTest {
    private static Field field(int type, int first, int shift, int bits) {
        return Field.of(
                new Channel(
                        0, "x", "", Channel.FIXED, 0, type, shift, first, bits, 0, 0, 0, 0, Channel.Composition.NONE),
                1000);
    }

    /** Bits counted one after the other in whole numbers of any size, the highest byte first for big-endian ones. */
    @Test
    void everyPlaceWidthAndOrder() {
        Random random = new Random(4);
        byte[] record = new byte[40];
        for (int trial = 0; trial < 100_000; trial++) {
            random.nextBytes(record);
            int type = random.nextInt(4);
            int first = random.nextInt(16);
            int shift = random.nextInt(8);
            int bits = 1 + random.nextInt(64);
            int bytes = (shift + bits + 7) / 8;
            BigInteger all = BigInteger.ZERO;
            for (int i = 0; i < bytes; i++) {
                int at = type % 2 == 1 ? first + i : first + bytes - 1 - i;
                all = all.shiftLeft(8).or(BigInteger.valueOf(record[3 + at] & 0xFF));
            }
            BigInteger value = all.shiftRight(shift).mod(BigInteger.ONE.shiftLeft(bits));
            if (type >= 2 && value.testBit(bits - 1)) {
                value = value.subtract(BigInteger.ONE.shiftLeft(bits));
            }
            assertThat(field(type, first, shift, bits).number(record, 3))
                    .as("type %d, byte %d, bit %d, %d bits", type, first, shift, bits)
                    .isEqualTo(value.doubleValue());
        }
    }

    /** Examples of IEEE 754-2019 binary16 as in the table of the article "Half-precision floating-point format". */
    @ParameterizedTest
    @CsvSource({
        "0x0001, 0.000000059604645", "0x03FF, 0.000060975552", "0x0400, 0.00006103515625", "0x3555, 0.33325195",
        "0x3C01, 1.00097656", "0x7BFF, 65504", "0xC000, -2", "0x8000, -0.0"
    })
    void halfPrecision(String bits, double value) {
        int raw = Integer.decode(bits);
        byte[] record = {(byte) raw, (byte) (raw >> 8)};

        assertThat((float) field(4, 0, 0, 16).number(record, 0))
                .isEqualTo((float) value, offset((float) Math.abs(value) * 1e-7f));
    }
}
