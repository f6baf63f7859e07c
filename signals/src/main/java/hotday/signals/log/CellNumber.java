package hotday.signals.log;

import java.nio.charset.StandardCharsets;

/**
 * Decimal numbers straight from bytes: {@code [+-]digits[.digits][e[+-]digits]}. Up to 15 digits and small powers of
 * ten are exact by one multiplication or division (Clinger 1990, "How to read floating point numbers accurately");
 * everything else goes through the JDK. Both give the nearest double.
 */
public final class CellNumber {
    private static final int EXACT_DIGITS = 15;
    private static final double[] POWERS = powers();

    private CellNumber() {}

    /** 10^0 to 10^22, the powers of ten that a double holds exactly. */
    private static double[] powers() {
        double[] powers = new double[23];
        for (int i = 0; i < powers.length; i++) {
            powers[i] = Double.parseDouble("1e" + i);
        }
        return powers;
    }

    /**
     * The number in {@code bytes[from..to)}; NaN when it is none, or too large for a double.
     *
     * @param mark decimal mark, point or comma
     */
    public static double parse(byte[] bytes, int from, int to, char mark) {
        int at = from;
        boolean negative = at < to && bytes[at] == '-';
        if (at < to && (bytes[at] == '-' || bytes[at] == '+')) {
            at++;
        }
        long mantissa = 0;
        int digits = 0;
        int significant = 0;
        int scale = 0;
        boolean fraction = false;
        for (; at < to; at++) {
            int c = bytes[at];
            if (c >= '0' && c <= '9') {
                digits++;
                significant += significant > 0 || c != '0' ? 1 : 0;
                scale -= fraction ? 1 : 0;
                mantissa = significant <= EXACT_DIGITS ? 10 * mantissa + (c - '0') : mantissa;
            } else if (c == mark && !fraction) {
                fraction = true;
            } else {
                break;
            }
        }
        if (digits == 0) {
            return Double.NaN;
        }
        if (at < to) {
            int exponent = exponent(bytes, at, to);
            if (exponent == Integer.MIN_VALUE) {
                return Double.NaN;
            }
            scale += exponent;
        }
        if (significant > EXACT_DIGITS || Math.abs(scale) >= POWERS.length) {
            return throughText(bytes, from, to, mark);
        }
        double size = scale < 0 ? mantissa / POWERS[-scale] : mantissa * POWERS[scale];
        return negative ? -size : size;
    }

    /** Value behind an e or E; {@link Integer#MIN_VALUE} when it is no exponent. */
    private static int exponent(byte[] bytes, int from, int to) {
        int at = from + 1;
        boolean negative = at < to && bytes[at] == '-';
        if (at < to && (bytes[at] == '-' || bytes[at] == '+')) {
            at++;
        }
        if ((bytes[from] != 'e' && bytes[from] != 'E') || at == to) {
            return Integer.MIN_VALUE;
        }
        int value = 0;
        for (; at < to; at++) {
            int c = bytes[at];
            if (c < '0' || c > '9') {
                return Integer.MIN_VALUE;
            }
            value = Math.min(9999, 10 * value + (c - '0'));
        }
        return negative ? -value : value;
    }

    private static double throughText(byte[] bytes, int from, int to, char mark) {
        String text = new String(bytes, from, to - from, StandardCharsets.ISO_8859_1).replace(mark, '.');
        double value = Double.parseDouble(text);
        return Double.isInfinite(value) ? Double.NaN : value;
    }
}
