package hotday.signals.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ChecksumTest {
    private static final byte[] DIGITS = "123456789".getBytes(StandardCharsets.US_ASCII);

    private static long of(Checksum rule, byte[] data) {
        int register = rule.start();
        for (byte b : data) {
            register = rule.add(register, b);
        }
        return rule.end(register);
    }

    /** Usual check values of the text "123456789" from public catalogues of such checks, from memory. */
    @ParameterizedTest
    @CsvSource({
        "8, 1D, FF, FF, false, 4B",
        "8, 07, 00, 00, false, F4",
        "8, 31, 00, 00, true, A1",
        "8, 9B, FF, 00, false, DA",
        "16, 1021, FFFF, 0, false, 29B1",
        "16, 8005, 0, 0, true, BB3D",
        "16, 1021, FFFF, FFFF, true, 906E",
        "16, 1021, 1D0F, 0, false, E5CC",
        "16, 1021, B2AA, 0, true, 63D0",
        "32, 04C11DB7, FFFFFFFF, FFFFFFFF, true, CBF43926",
        "32, 04C11DB7, FFFFFFFF, FFFFFFFF, false, FC891918"
    })
    void cyclic(int bits, String generator, String init, String inverted, boolean reflected, String expected) {
        Checksum rule = Checksum.crc(bits, hex(generator), hex(init), hex(inverted), reflected);
        assertThat(of(rule, DIGITS)).isEqualTo(hex(expected));
    }

    private static long hex(String text) {
        return Long.parseLong(text, 16);
    }

    @Test
    void theRuleOfTheStandardIsTheOneAmongTheFixedOnes() {
        Random random = new Random(3);
        for (int i = 0; i < 200; i++) {
            byte[] data = new byte[random.nextInt(9)];
            random.nextBytes(data);
            assertThat(of(Checksum.crc8J1850(), data)).isEqualTo(Crc.CRC8_1D.of(data, 0, data.length));
        }
    }

    /** By hand: 31 ^ 32 ... ^ 39 = 31, 31 + ... + 39 = 1DD. */
    @Test
    void plainOnes() {
        assertThat(of(Checksum.xor(0, 0), DIGITS)).isEqualTo(0x31);
        assertThat(of(Checksum.xor(0x10, 0xFF), DIGITS)).isEqualTo(0xDE);
        assertThat(of(Checksum.sum(8, 0, 0), DIGITS)).isEqualTo(0xDD);
        assertThat(of(Checksum.sum(8, 3, 0xFF), DIGITS)).isEqualTo(0x1F);
        assertThat(of(Checksum.sum(16, 0, 0), DIGITS)).isEqualTo(0x1DD);
        assertThat(of(Checksum.sum(32, 0xFFFF_FFFFL, 0), DIGITS)).isEqualTo(0x1DC);
    }

    @Test
    void refusesWhatDoesNotFit() {
        assertThatThrownBy(() -> Checksum.crc(12, 1, 0, 0, false)).hasMessageContaining("12 bits");
        assertThatThrownBy(() -> Checksum.xor(0x100, 0)).hasMessageContaining("0x100", "0xFF");
    }
}
