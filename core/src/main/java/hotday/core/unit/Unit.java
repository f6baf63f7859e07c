package hotday.core.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/**
 * A unit of one kind of quantity: SI = value * factor + offset.
 *
 * @param symbol as shown
 * @param quantity what it measures
 * @param factor SI units in one of this unit
 * @param offset SI value at the zero of this unit; not zero for temperatures only
 */
public record Unit(String symbol, Quantity quantity, double factor, double offset) {
    private static final int DIGITS = 4;
    private static final double PLAIN_FROM = 1e-4;
    private static final double PLAIN_TO = 1e9;

    public double toSi(double value) {
        return value * factor + offset;
    }

    public double fromSi(double si) {
        return (si - offset) / factor;
    }

    /** An SI value in this unit as it could be typed, four significant digits or all before the point: "1000 kW". */
    public String text(double si) {
        return (plain(fromSi(si)) + " " + symbol).trim();
    }

    /** No trailing zeros; powers of ten only where nobody would write zeros. */
    static String plain(double value) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "-" : value > 0 ? "no limit" : "-no limit";
        }
        if (value == 0) {
            return "0";
        }
        double size = Math.abs(value);
        if (size < PLAIN_FROM || size >= PLAIN_TO) {
            return String.format(Locale.ROOT, "%." + (DIGITS - 1) + "e", value);
        }
        BigDecimal exact = new BigDecimal(value);
        int digits = Math.max(DIGITS, exact.precision() - exact.scale());
        return exact.round(new MathContext(digits)).stripTrailingZeros().toPlainString();
    }
}
