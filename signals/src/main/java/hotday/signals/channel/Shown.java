package hotday.signals.channel;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers of a recording as people write them in messages. */
final class Shown {
    private static final MathContext DIGITS = new MathContext(7);

    private Shown() {}

    /** Up to seven significant digits, at least one decimal: 88.0, 0.396, 1500.0. */
    static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        return (rounded.scale() < 1 ? rounded.setScale(1) : rounded).toPlainString();
    }

    /** A time stamp to a millisecond, however large, at least one decimal: 1700000000.25. */
    static String stamp(double value) {
        BigDecimal rounded =
                new BigDecimal(value).setScale(3, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return (rounded.scale() < 1 ? rounded.setScale(1) : rounded).toPlainString();
    }
}
