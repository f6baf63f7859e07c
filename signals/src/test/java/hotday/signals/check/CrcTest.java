package hotday.signals.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Random;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

final class CrcTest {
    private static final byte[] DIGITS = "123456789".getBytes(StandardCharsets.US_ASCII);

    /** Example table of a public specification of CRC routines for vehicles, from memory; every value recomputed. */
    @ParameterizedTest
    @CsvSource({
        "313233343536373839, 4B, DF",
        "00000000, 59, 12",
        "F20183, 37, C2",
        "0FAA0055, 79, C6",
        "00FF5511, B8, 77",
        "332255AABBCCDDEEFF, CB, 11",
        "926B55, 8C, 33",
        "FFFFFFFF, 74, 6C"
    })
    void eightBits(String data, String with1d, String with2f) {
        byte[] bytes = HexFormat.of().parseHex(data);
        assertThat(hex(Crc.CRC8_1D, bytes)).isEqualTo(with1d);
        assertThat(hex(Crc.CRC8_2F, bytes)).isEqualTo(with2f);
    }

    /** A line of a public page, written by others. */
    @Test
    void independentLine() {
        assertThat(hex(Crc.CRC8_1D, HexFormat.of().parseHex("00C0DFACAA0740"))).isEqualTo("6C");
    }

    /** Usual check values, each of the text "123456789". */
    @ParameterizedTest
    @CsvSource({"CRC8_1D_FROM_ZERO, 37", "CRC16_1021, 29B1", "CRC32_04C11DB7, CBF43926", "CRC32_F4ACFB13, 1697D06A"})
    void ofTheDigits(Crc crc, String expected) {
        assertThat(hex(crc, DIGITS)).isEqualTo(expected);
    }

    @Test
    void thirtyTwoBitsAsTheJdk() {
        Random random = new Random(11);
        for (int i = 0; i < 200; i++) {
            byte[] data = new byte[random.nextInt(70)];
            random.nextBytes(data);
            CRC32 jdk = new CRC32();
            jdk.update(data);
            assertThat(Crc.CRC32_04C11DB7.of(data, 0, data.length)).isEqualTo(jdk.getValue());
        }
    }

    @ParameterizedTest
    @EnumSource
    void inPiecesAsInOne(Crc crc) {
        int register = crc.add(crc.start(), DIGITS[0]);
        register = crc.add(register, DIGITS, 1, 3);
        register = crc.add(register, DIGITS, 4, 5);
        assertThat(crc.end(register)).isEqualTo(crc.of(DIGITS, 0, 9));
        assertThat(crc.add(crc.start(), 0x7F)).isEqualTo(crc.add(crc.start(), 0x17F));
    }

    /** Every single flipped bit shows: what a checksum is for. */
    @ParameterizedTest
    @EnumSource
    void noFlippedBitGoesUnseen(Crc crc) {
        long right = crc.of(DIGITS, 0, 9);
        for (int bit = 0; bit < 72; bit++) {
            byte[] damaged = DIGITS.clone();
            damaged[bit / 8] ^= (byte) (1 << bit % 8);
            assertThat(crc.of(damaged, 0, 9)).isNotEqualTo(right);
        }
    }

    @Test
    void bytesOutsideTheArrayAreRefused() {
        assertThatThrownBy(() -> Crc.CRC8_1D.of(DIGITS, 5, 5)).isInstanceOf(IndexOutOfBoundsException.class);
    }

    private static String hex(Crc crc, byte[] data) {
        return String.format("%0" + crc.bits() / 4 + "X", crc.of(data, 0, data.length));
    }
}
