package hotday.study.property;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as written to property files: thirteen significant digits, no trailing zeros. */
final class Digits {
    private static final MathContext THIRTEEN = new MathContext(13);
    private static final double PLAIN_FROM = 1e-4;
    private static final double PLAIN_TO = 1e15;

    private Digits() {}

    /** Nothing for NaN. */
    static void append(StringBuilder out, double value) {
        if (Double.isNaN(value)) {
            return;
        }
        BigDecimal rounded = new BigDecimal(value).round(THIRTEEN).stripTrailingZeros();
        double size = Math.abs(value);
        boolean plain = value == 0 || size >= PLAIN_FROM && size < PLAIN_TO;
        out.append(plain ? rounded.toPlainString() : rounded.toString());
    }
}
