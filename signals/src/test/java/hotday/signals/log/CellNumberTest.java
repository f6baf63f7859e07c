package hotday.signals.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CellNumberTest {
    private static double parse(String text, char mark) {
        byte[] bytes = ("#" + text + "#").getBytes(StandardCharsets.ISO_8859_1);
        return CellNumber.parse(bytes, 1, bytes.length - 1, mark);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.032, -0.032",
        "+7, 7",
        "5., 5",
        ".5, 0.5",
        "101.000000, 101",
        "14.1176470588235, 14.1176470588235",
        "2485.39990234375, 2485.39990234375",
        "1e3, 1000",
        "1.5E-3, 0.0015",
        "1e400, NaN",
        "123456789012345678901234567890, 1.2345678901234568e29",
        "0.00000000000000000000000000001, 1e-29",
        "4.9e-324, 4.9e-324",
    })
    void numbers(String text, double expected) {
        assertThat(parse(text, '.')).isEqualTo(Double.valueOf(expected));
    }

    /** Several are numbers to the JDK and none to a logger. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "-",
                ".",
                "+.",
                "NaN",
                "Infinity",
                "1d",
                "1f",
                "0x1p3",
                "1e",
                "1e+",
                "1,5",
                "1 2",
                "1.2.3",
                "12:30",
                "--1",
                "1-",
                "e5",
                "1_000"
            })
    void noNumbers(String text) {
        assertThat(parse(text, '.')).isNaN();
    }

    /** Half way and close to it between two doubles, from Lemire 2021 and the ties that rounding to even is about; the JDK tells what is right. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "9007199254740993",
                "9007199254740995",
                "9007199254740993.0",
                "900719925474099.3e1",
                "4503599627370496.5",
                "4503599627370497.5",
                "1.00000000000000011",
                "1.000000000000000111",
                "7.2057594037927933e16",
                "18014398509481986",
                "9999999999999999999",
                "18446744073709551615",
                "18446744073709551616",
                "0.000000000000000000123456789012345678",
                "2.2250738585072011e-308",
                "1.7976931348623157e308",
                "1090544144181609348671888949248",
            })
    void nearestDouble(String text) {
        assertThat(parse(text, '.')).isEqualTo(Double.parseDouble(text));
    }

    /** As many digits as it takes and a few more, around every scale; the JDK tells what is right. */
    @Test
    void longNumbersAreTheNearestDouble() {
        Random random = new Random(11);
        for (int i = 0; i < 300_000; i++) {
            long digits = random.nextLong() >>> random.nextInt(64);
            String text = switch (i % 3) {
                case 0 -> Double.toString(random.nextGaussian() * Math.pow(10, random.nextInt(30) - 15));
                case 1 -> Long.toUnsignedString(digits) + "e" + (random.nextInt(150) - 75);
                default ->
                    new java.math.BigDecimal(java.math.BigInteger.valueOf(digits), random.nextInt(40)).toPlainString();
            };

            assertThat(parse(text, '.')).as(text).isEqualTo(Double.parseDouble(text));
        }
    }

    @Test
    void decimalComma() {
        assertThat(parse("-12,75", ',')).isEqualTo(-12.75);
        assertThat(parse("1234567890,123456789", ',')).isEqualTo(1234567890.123456789);
        assertThat(parse("12.75", ',')).isNaN();
    }

    /** Against the JDK's own parser, which gives the nearest double. */
    @Test
    void everyFormOfNumberIsReadToTheLastBit() {
        Random random = new Random(20260101);
        String[] forms = {"%.0f", "%.1f", "%.3f", "%.6f", "%.12f", "%.3e", "%.15e", "%s"};
        for (int i = 0; i < 100_000; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(40) - 20);
            String text = String.format(Locale.ROOT, forms[random.nextInt(forms.length)], value);
            if (parse(text, '.') != Double.parseDouble(text)) {
                fail(text + " is read as " + parse(text, '.'));
            }
        }
    }
}
