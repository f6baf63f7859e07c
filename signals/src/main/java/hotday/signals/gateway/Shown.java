package hotday.signals.gateway;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers in findings. */
final class Shown {
    private static final double MILLI = 1e6; // ns
    private static final int DIGITS = 6;

    private Shown() {}

    /** A time in ms, to the microsecond upwards: a bound must not look smaller than it is. */
    static String ms(long ns) {
        return BigDecimal.valueOf(ns / MILLI)
                        .setScale(3, RoundingMode.CEILING)
                        .stripTrailingZeros()
                        .toPlainString()
                + " ms";
    }

    static String percent(double share) {
        return number(Math.round(1000 * share) / 10.0) + " %";
    }

    /** With six significant digits at most. */
    static String number(double value) {
        if (!Double.isFinite(value) || Math.abs(value) >= 1e15 || value != 0 && Math.abs(value) < 1e-6) {
            return String.valueOf(value);
        }
        BigDecimal exact = BigDecimal.valueOf(value);
        int digits = Math.max(DIGITS, exact.precision() - exact.scale());
        return exact.round(new MathContext(digits)).stripTrailingZeros().toPlainString();
    }

    static String number(double value, String unit) {
        return unit.isBlank() ? number(value) : number(value) + " " + unit;
    }
}
