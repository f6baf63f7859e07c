package hotday.signals.log;

import java.nio.charset.StandardCharsets;

/**
 * Decimal numbers straight from bytes: {@code [+-]digits[.digits][e[+-]digits]}. Digits up to 2^53 and small powers of
 * ten are exact by one multiplication or division (Clinger 1990, "How to read floating point numbers accurately"), up to 19 digits
 * go by {@link NearestDouble}, everything else through the JDK. All give the nearest double.
 */
public final class CellNumber {
    /** Up to here every whole number is a double. */
    private static final long EXACT = 1L << 53;
    /** So many digits always fit into 64 bits. */
    private static final int LONG_DIGITS = 19;

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
        int whole = at;
        long mantissa = 0;
        int c = 0;
        while (at < to && (c = bytes[at] - '0') >= 0 && c <= 9) {
            mantissa = 10 * mantissa + c;
            at++;
        }
        int digits = at - whole;
        int scale = 0;
        if (at < to && bytes[at] == mark) {
            int fraction = ++at;
            long eight;
            while (at + EightBytes.SIZE <= to && EightBytes.areDigits(eight = EightBytes.at(bytes, at))) {
                mantissa = 100_000_000 * mantissa + EightBytes.number(eight);
                at += EightBytes.SIZE;
            }
            while (at < to && (c = bytes[at] - '0') >= 0 && c <= 9) {
                mantissa = 10 * mantissa + c;
                at++;
            }
            scale = fraction - at;
            digits -= scale;
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
        if (digits > LONG_DIGITS && digits - zerosInFront(bytes, whole, to) > LONG_DIGITS) {
            return throughText(bytes, from, to, mark);
        }
        double size = size(mantissa, scale);
        if (Double.isNaN(size)) {
            return throughText(bytes, from, to, mark);
        }
        return negative ? -size : size;
    }

    /** Digits that say nothing but where the point is. */
    private static int zerosInFront(byte[] bytes, int from, int to) {
        int zeros = 0;
        for (int at = from; at < to && (bytes[at] < '1' || bytes[at] > '9'); at++) {
            zeros += bytes[at] == '0' ? 1 : 0;
        }
        return zeros;
    }

    /** @return NaN where the JDK must tell */
    private static double size(long mantissa, int scale) {
        if (mantissa >= 0 && mantissa <= EXACT && Math.abs(scale) < POWERS.length) {
            return scale < 0 ? mantissa / POWERS[-scale] : mantissa * POWERS[scale];
        }
        boolean inTable = scale >= NearestDouble.LOWEST && scale <= NearestDouble.HIGHEST;
        return inTable && mantissa != 0 ? NearestDouble.of(mantissa, scale) : Double.NaN;
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
