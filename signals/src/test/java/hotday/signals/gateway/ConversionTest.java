package hotday.signals.gateway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.signals.translator.Scaling;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConversionTest {
    /** Rounding of doubles beside half a step. */
    private static final double ROUNDING = 1e-6;

    private static final double[] STEPS = {0.001, 0.005, 0.01, 0.0625, 0.1, 0.125, 0.25, 0.4, 0.5, 1, 2, 5};
    private static final String[] STEP_TEXTS = {"0.001", "0.003", "0.0625", "0.1", "0.7", "0.4", "0.015625", "1", "7"};
    private static final String[][] UNITS = {
        {"degC", "degF"},
        {"degF", "degC"},
        {"km/h", "mph"},
        {"mph", "km/h"},
        {"kPa abs", "psia"},
        {"rpm", "1/min"},
        {"N m", "lb ft"},
        {"%", "%"}
    };

    private static UnitLink link(String from, String to) {
        Optional<String> measures = from.startsWith("deg") ? Optional.of("temperature") : Optional.empty();
        return UnitLink.between(from, to, measures).link().orElseThrow();
    }

    private static Scale scale(double step, double offset, int bits, boolean signed) {
        double low = signed ? -Math.scalb(1.0, bits - 1) : 0;
        return new Scale(step, offset, low, low + Math.scalb(1.0, bits) - 1, true);
    }

    private static Scaling scaling(Scale source, UnitLink link, Scale target) {
        return Conversion.of(source, link, 1, target).orElseThrow();
    }

    /** Common practice: what comes back is within half a step of what went, wherever nothing is cut off. */
    @Test
    void thereAndBackIsWithinHalfAStep() {
        Random random = new Random(9);
        int tried = 0;
        for (int n = 0; n < 20_000; n++) {
            String[] units = UNITS[random.nextInt(UNITS.length)];
            UnitLink link = link(units[0], units[1]);
            Scale source = scale(
                    STEPS[random.nextInt(STEPS.length)],
                    random.nextInt(5) * -10,
                    4 + random.nextInt(13),
                    random.nextBoolean());
            Scale target = scale(STEPS[random.nextInt(STEPS.length)], random.nextInt(5) * -10, 32, true);
            long raw = (long) source.rawLow() + random.nextInt((int) (source.rawHigh() - source.rawLow()) + 1);
            double physical = source.physical(raw);
            double got = target.physical(scaling(source, link, target).apply(raw));
            assertThat(Math.abs(got - link.apply(physical))).isLessThanOrEqualTo(target.step() * (0.5 + ROUNDING));
            double back = (got - link.offset()) / link.factor();
            if (target.step() <= source.step() * Math.abs(link.factor())) {
                assertThat(Math.abs(back - physical)).isLessThanOrEqualTo(source.step() * (0.5 + ROUNDING));
                tried++;
            }
        }
        assertThat(tried).isGreaterThan(5000);
    }

    @Test
    void isCutOffAtTheLimitsOfTheTarget() {
        Scaling c = scaling(scale(1, -40, 16, false), UnitLink.SAME, scale(0.5, 0, 8, false));
        assertThat(c.apply(0)).isZero();
        assertThat(c.apply(40)).isZero();
        assertThat(c.apply(41)).isEqualTo(2);
        assertThat(c.apply(65_535)).isEqualTo(255);
    }

    @ParameterizedTest
    @CsvSource({
        "0.5, 1",
        "-0.5, -1",
        "1.5, 2",
        "2.5, 3",
        "-2.5, -3",
        "0.49999999999999994, 0",
        "-7.2, -7",
        "4503599627370497, 4503599627370497"
    })
    void roundsHalvesAwayFromZero(double value, double expected) {
        assertThat(TypedValue.rounded(value)).isEqualTo(expected);
    }

    /** Definitions of the units: 212 degF = 100 degC, 1 mile = 1.609344 km, 1 bar = 100 kPa. */
    @Test
    void convertsUnitsByTheirDefinition() {
        assertThat(link("degF", "°C").apply(212)).isCloseTo(100, within(1e-9));
        assertThat(link("mph", "km/h").apply(1)).isCloseTo(1.609344, within(1e-12));
        assertThat(link("kPa abs", "bar abs").apply(250)).isCloseTo(2.5, within(1e-12));
        assertThat(link("gear", "gear")).isEqualTo(UnitLink.SAME);
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "degC, degF, -, unit-ambiguous",
                "degC, degF, temperature difference, ''",
                "kPa, bar abs, -, unit-ambiguous",
                "kPa, bar abs, absolute pressure, ''",
                "kPa, psi, -, ''",
                "bar, psia, -, unit-mismatch",
                "rpm, km/h, -, unit-mismatch",
                "rpm, U/min, -, ''",
                "rpm, turns, -, unit-unknown",
                "'', %, -, unit-missing",
                "%, '', -, unit-missing",
                "'', '', -, ''"
            })
    void neverGuessesAUnit(String from, String to, String measures, String key) {
        UnitLink.Answer answer = UnitLink.between(from, to, Optional.ofNullable(measures));
        assertThat(answer.key()).isEqualTo(key);
        assertThat(answer.link().isPresent()).isEqualTo(key.isEmpty());
    }

    /** Definitions of the units again: 9/5 and 32, 25146/15625 km/h to a mile an hour, 100. */
    @ParameterizedTest
    @CsvSource({
        "degC, degF, 9, 5, 32",
        "mph, km/h, 25146, 15625, 0",
        "bar abs, kPa abs, 100, 1, 0",
        "rpm, 1/min, 1, 1, 0"
    })
    void conversionsOfUnitsAreFractions(String from, String to, long numerator, long denominator, long offset) {
        UnitLink link = link(from, to);
        assertThat(Fraction.near(link.factor()))
                .isEqualTo(new Fraction(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator)));
        assertThat(Fraction.near(link.offset())).isEqualTo(new Fraction(BigInteger.valueOf(offset), BigInteger.ONE));
    }

    /** Beside the decimal numbers of the JDK, whose quotient is rounded once. */
    @Test
    void isTheExactQuotientRoundedOnce() {
        Random random = new Random(4);
        for (int n = 0; n < 20_000; n++) {
            String step = STEP_TEXTS[random.nextInt(STEP_TEXTS.length)];
            String other = STEP_TEXTS[random.nextInt(STEP_TEXTS.length)];
            int offset = random.nextInt(100) - 50;
            Scaling c = scaling(
                    scale(Double.parseDouble(step), offset, 24, true),
                    UnitLink.SAME,
                    scale(Double.parseDouble(other), 0, 62, true));
            long raw = random.nextInt(1 << 24) - (1 << 23);
            BigDecimal exact = new BigDecimal(step)
                    .multiply(BigDecimal.valueOf(raw))
                    .add(BigDecimal.valueOf(offset))
                    .divide(new BigDecimal(other), 60, RoundingMode.DOWN)
                    .setScale(40, RoundingMode.HALF_UP);
            assertThat(c.apply(raw))
                    .isEqualTo(exact.setScale(0, RoundingMode.HALF_UP).longValueExact());
        }
    }

    /** Halves, where doubles would round either way: 0.1 times 5 to steps of 1, 0.7 times 5 to steps of 7. */
    @Test
    void halvesGoAwayFromZero() {
        Scaling tenths = scaling(scale(0.1, 0, 16, true), UnitLink.SAME, scale(1, 0, 16, true));
        assertThat(tenths.apply(4)).isZero();
        assertThat(tenths.apply(5)).isEqualTo(1);
        assertThat(tenths.apply(-5)).isEqualTo(-1);
        assertThat(tenths.apply(-4)).isZero();
        assertThat(tenths.apply(25)).isEqualTo(3);
        Scaling sevenths = scaling(scale(0.7, 0, 16, true), UnitLink.SAME, scale(7, 0, 16, true));
        assertThat(sevenths.apply(5)).isEqualTo(1);
        assertThat(sevenths.apply(-15)).isEqualTo(-2);
    }

    @Test
    void whatDoesNotFitIsNotDone() {
        Scale fine = scale(0.000_000_123_457, 0, 40, false);
        assertThat(Conversion.of(fine, link("km/h", "mph"), 1.000_001, scale(0.003, 0, 32, false)))
                .isEmpty();
        Scale wide = new Scale(1, 0, 0, 0x1p64, true);
        assertThat(Conversion.of(wide, UnitLink.SAME, 1, wide)).isEmpty();
        Scale widest = new Scale(1, 0, -0x1p62, 0x1p62, true);
        assertThat(Conversion.of(widest, UnitLink.SAME, 1, widest).orElseThrow().apply(-(1L << 62)))
                .isEqualTo(-(1L << 62));
    }
}
