package hotday.signals.dbc;

import static hotday.signals.dbc.Typed.decoded;
import static hotday.signals.dbc.Typed.decoder;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hotday.signals.frame.Frame;
import java.math.BigInteger;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MessageDecoderTest {
    private static final double NOT_THERE = Double.NaN;

    /** Start bits as documentation pages of public parsers have them; values recomputed by hand from those rules. */
    @ParameterizedTest
    @CsvSource({
        "0|16@1+, 0x2211", "4|12@1+, 0x221", "8|16@1+, 0x3322", "24|16@1+, 0x5544", "12|8@1+, 0x32",
        "7|16@0+, 0x1122", "15|16@0+, 0x2233", "3|12@0+, 0x122", "39|16@0+, 0x5566", "7|12@0+, 0x112",
        "0|12@0+, 0x911", "11|10@0+, 0x8C"
    })
    void takesBitsAsPublishedExamplesDo(String place, String expected) {
        MessageDecoder decoder = decoder("BO_ 1 a: 8 x", " SG_ s : " + place + " (1,0) [0|0] \"\" x");
        assertThat(decoded(decoder, "11 22 33 44 55 66 77 88")).containsExactly((double) Integer.decode(expected));
    }

    /** SAE J1939-71 scalings; the first frame as published in a generator controller's manual, the others recomputed. */
    @ParameterizedTest
    @CsvSource({
        "24|16@1+ (0.125;0), FF 7D 7D E0 15 FF F0 FF, 700",
        "8|8@1+ (1;-125), FF 7D 7D E0 15 FF F0 FF, 0",
        "0|8@1+ (1;-40), 82 FF C0 2B FF FF FF FF, 90",
        "16|16@1+ (0.03125;-273), 82 FF C0 2B FF FF FF FF, 77",
        "32|16@1+ (0.03125;-273), FF FF FF FF A0 2D FF FF, 92",
        "0|8@1+ (0.4;0), C8 F2 80 4B FF FF FF FF, 80",
        "8|4@1+ (1;0), C8 F2 80 4B FF FF FF FF, 2",
        "16|16@1+ (0.125;0), C8 F2 80 4B FF FF FF FF, 2416",
        "8|16@1+ (0.00390625;0), FF 00 41 FF FF FF FF FF, 65"
    })
    void scalesAsPublished(String form, String data, double expected) {
        String typed = form.replace(';', ',');
        MessageDecoder decoder = decoder("BO_ 2364539904 a: 8 x", " SG_ s : " + typed + " [0|0] \"\" x");
        assertThat(decoded(decoder, data)[0]).isEqualTo(expected, within(1e-9));
    }

    /** Every place, length and form against bits picked one by one. */
    @Test
    void equalsBitsPickedOneByOne() {
        Random random = new Random(7);
        for (int round = 0; round < 20_000; round++) {
            int bytes = round % 3 == 0 ? 1 + random.nextInt(64) : 1 + random.nextInt(9);
            byte[] data = new byte[bytes + 2];
            random.nextBytes(data);
            int bits = 1 + random.nextInt(Math.min(64, 8 * bytes));
            int first = random.nextInt(8 * bytes - bits + 1);
            boolean bigEndian = random.nextBoolean();
            boolean signed = random.nextBoolean();
            int start = bigEndian ? 8 * (first / 8) + 7 - first % 8 : first;
            MessageDecoder decoder = decoder(
                    "BO_ 1 a: 64 x",
                    " SG_ s : " + start + "|" + bits + (bigEndian ? "@0" : "@1") + (signed ? "-" : "+")
                            + " (1,0) [0|0] \"\" x");
            BigInteger expected = picked(data, 1, first, bits, bigEndian, signed);
            double[] out = new double[1];
            decoder.decode(data, 1, bytes, out);
            assertThat(out[0]).as("%d|%d of %d", start, bits, bytes).isEqualTo(expected.doubleValue());
            assertThat(decoder.raw(0, data, 1, bytes)).isEqualTo(expected.longValue());
            int needed = (first + bits - 1) / 8 + 1;
            decoder.decode(data, 1, needed - 1, out);
            assertThat(out[0]).isNaN();
        }
    }

    private static BigInteger picked(byte[] data, int from, int first, int bits, boolean bigEndian, boolean signed) {
        BigInteger value = BigInteger.ZERO;
        for (int k = 0; k < bits; k++) {
            int bit = bigEndian ? first + k : first + bits - 1 - k;
            int mask = bigEndian ? 0x80 >> bit % 8 : 1 << bit % 8;
            value = value.shiftLeft(1).add((data[from + bit / 8] & mask) != 0 ? BigInteger.ONE : BigInteger.ZERO);
        }
        return signed && value.testBit(bits - 1) ? value.subtract(BigInteger.ONE.shiftLeft(bits)) : value;
    }

    /** IEEE 754: 1.5 is 3FC00000 and 3FF8000000000000. */
    @Test
    void takesFloatingPoint() {
        MessageDecoder decoder = decoder(
                "BO_ 1 a: 16 x",
                " SG_ little : 0|32@1- (2,1) [0|0] \"\" x",
                " SG_ big : 39|32@0- (1,0) [0|0] \"\" x",
                " SG_ wide : 71|64@0- (1,0) [0|0] \"\" x",
                "SIG_VALTYPE_ 1 little : 1;",
                "SIG_VALTYPE_ 1 big : 1;",
                "SIG_VALTYPE_ 1 wide : 2;");
        assertThat(decoded(decoder, "0000C03F 3FC00000 3FF8000000000000")).containsExactly(4.0, 1.5, 1.5);
        assertThat(decoded(decoder, "0000C07F 3FC00000 3FF8000000000000")).containsExactly(NOT_THERE, 1.5, 1.5);
    }

    @Test
    void whatIsBeyondThePayloadIsNotThere() {
        MessageDecoder decoder = decoder(
                "BO_ 1 a: 8 x", " SG_ near : 0|8@1+ (1,0) [0|0] \"\" x", " SG_ far : 8|9@1+ (1,0) [0|0] \"\" x");
        assertThat(decoded(decoder, "05 01")).containsExactly(5.0, NOT_THERE);
        assertThat(decoded(decoder, "")).containsExactly(NOT_THERE, NOT_THERE);
        assertThatThrownBy(() -> decoder.raw(1, new byte[2], 0, 2)).hasMessageContaining("'far'");
    }

    @Test
    void simpleMultiplexing() {
        MessageDecoder decoder = decoder(
                "BO_ 1 a: 8 x",
                " SG_ one m1 : 8|8@1+ (1,0) [0|0] \"\" x",
                " SG_ two m2 : 8|8@1+ (10,0) [0|0] \"\" x",
                " SG_ which M : 0|8@1+ (1,0) [0|0] \"\" x");
        assertThat(decoded(decoder, "01 07")).containsExactly(7.0, NOT_THERE, 1.0);
        assertThat(decoded(decoder, "02 07")).containsExactly(NOT_THERE, 70.0, 2.0);
        assertThat(decoded(decoder, "03 07")).containsExactly(NOT_THERE, NOT_THERE, 3.0);
    }

    /** A multiplexor that is itself multiplexed hides everything below it. */
    @Test
    void extendedMultiplexing() {
        MessageDecoder decoder = decoder(
                "BO_ 1 a: 8 x",
                " SG_ deep m0 : 16|8@1+ (1,0) [0|0] \"\" x",
                " SG_ inner m3M : 8|8@1+ (1,0) [0|0] \"\" x",
                " SG_ outer M : 0|8@1+ (1,0) [0|0] \"\" x",
                "SG_MUL_VAL_ 1 deep inner 2-4, 9-9;",
                "SG_MUL_VAL_ 1 inner outer 3-3;");
        assertThat(decoded(decoder, "03 04 2A")).containsExactly(42.0, 4.0, 3.0);
        assertThat(decoded(decoder, "03 09 2A")).containsExactly(42.0, 9.0, 3.0);
        assertThat(decoded(decoder, "03 05 2A")).containsExactly(NOT_THERE, 5.0, 3.0);
        assertThat(decoded(decoder, "02 04 2A")).containsExactly(NOT_THERE, NOT_THERE, 2.0);
    }

    @Test
    void decodesAFrame() {
        MessageDecoder decoder = decoder("BO_ 1 a: 8 x", " SG_ s : 0|8@1+ (1,0) [0|0] \"\" x");
        double[] out = new double[1];
        decoder.decode(new Frame().set(0, 0, 1, false, new byte[] {9, 5, 9}, 1, 1), out);
        assertThat(out).containsExactly(5.0);
        assertThat(decoder.index("s")).hasValue(0);
        assertThat(decoder.index("t")).isEmpty();
    }
}
