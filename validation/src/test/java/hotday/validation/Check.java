package hotday.validation;

import java.util.Locale;
import java.util.Objects;

/**
 * One number of ours beside one from outside.
 *
 * @param what the quantity and the conditions, in a technician's words
 * @param ours computed by this program
 * @param expected the outside number with its tolerance
 * @param unit of both; {@code -} for none
 * @param source where the outside number was published, or "common practice, no source"
 */
public record Check(String what, double ours, Expected expected, String unit, String source) {

    /** What holds for our number. */
    public sealed interface Expected {
        boolean holds(double ours);

        /** As printed in the column "published value". */
        String published();

        /** As printed in the column "tolerance". */
        String margin();
    }

    private record Near(double value, double tolerance, boolean relative) implements Expected {
        @Override
        public boolean holds(double ours) {
            double allowed = relative ? tolerance * Math.abs(value) : tolerance;
            return Math.abs(ours - value) <= allowed;
        }

        @Override
        public String published() {
            return number(value);
        }

        @Override
        public String margin() {
            if (tolerance == 0) {
                return "exact";
            }
            return relative ? "±" + number(100 * tolerance) + " %" : "±" + number(tolerance);
        }
    }

    private record Band(double low, double high) implements Expected {
        @Override
        public boolean holds(double ours) {
            return ours >= low && ours <= high;
        }

        @Override
        public String published() {
            if (Double.isInfinite(low)) {
                return "at most " + number(high);
            }
            return Double.isInfinite(high) ? "at least " + number(low) : number(low) + " to " + number(high);
        }

        @Override
        public String margin() {
            return "inside";
        }
    }

    public Check {
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(expected, "expected");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(source, "source");
    }

    /**
     * A number with an absolute tolerance.
     *
     * @param tolerance in {@code unit}; 0 for exact
     */
    public static Check near(String what, double ours, double published, double tolerance, String unit, String source) {
        return new Check(what, ours, new Near(published, tolerance, false), unit, source);
    }

    /**
     * A number with a relative tolerance.
     *
     * @param tolerance share of the published value, 0.01 = 1 %
     */
    public static Check relative(
            String what, double ours, double published, double tolerance, String unit, String source) {
        return new Check(what, ours, new Near(published, tolerance, true), unit, source);
    }

    /** For ranges; an end may be infinite. */
    public static Check inside(String what, double ours, double low, double high, String unit, String source) {
        return new Check(what, ours, new Band(low, high), unit, source);
    }

    public boolean ok() {
        return expected.holds(ours);
    }

    /** Up to nine significant digits, no trailing zeros; powers of ten where they are shorter. */
    static String number(double value) {
        if (value == 0 || !Double.isFinite(value)) {
            return value == 0 ? "0" : String.valueOf(value);
        }
        double size = Math.abs(value);
        String text = String.format(Locale.ROOT, size >= 1e-4 && size < 1e8 ? "%.9g" : "%.8e", value);
        int exponent = text.indexOf('e');
        String mantissa = exponent < 0 ? text : text.substring(0, exponent);
        String rest = exponent < 0 ? "" : text.substring(exponent);
        return mantissa.contains(".") ? mantissa.replaceAll("0+$", "").replaceAll("\\.$", "") + rest : text;
    }
}
