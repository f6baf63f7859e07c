package hotday.signals.log;

import java.math.BigInteger;

/**
 * The double nearest to a whole number times a power of ten, for what is too long to be exact by one multiplication. Method: Lemire 2021, "Number
 * parsing at a gigabyte per second" (Software: Practice and Experience 51, 1700), after Eisel. Where the method does not decide, or
 * the result is no ordinary double, it says so.
 */
final class NearestDouble {
    static final int LOWEST = -65;
    static final int HIGHEST = 65;

    /** Below, the power's reciprocal is not exact in 128 bits with one unit added. */
    private static final int EXACT_RECIPROCAL = -27;

    private static final int MANTISSA_BITS = 52;
    private static final int BIAS = 1023;
    /** Bits of a product that are looked at beyond mantissa and rounding. */
    private static final long BEYOND = 0x1FF;

    /** Upper and lower 64 bits of 5^q, highest bit set, from {@link #LOWEST} on. */
    private static final long[] POWERS = powers();

    private NearestDouble() {}

    private static long[] powers() {
        long[] powers = new long[2 * (HIGHEST - LOWEST + 1)];
        for (int q = LOWEST; q <= HIGHEST; q++) {
            BigInteger power = q < 0
                    ? reciprocal(BigInteger.valueOf(5).pow(-q), q)
                    : BigInteger.valueOf(5).pow(q);
            BigInteger placed = power.shiftRight(power.bitLength() - 128);
            powers[2 * (q - LOWEST)] = placed.shiftRight(64).longValue();
            powers[2 * (q - LOWEST) + 1] = placed.longValue();
        }
        return powers;
    }

    private static BigInteger reciprocal(BigInteger power, int q) {
        int bits = power.bitLength();
        int shift = q >= EXACT_RECIPROCAL ? bits + 127 : 2 * bits + 128;
        return BigInteger.ONE.shiftLeft(shift).divide(power).add(BigInteger.ONE);
    }

    /**
     * @param digits not 0; all 64 bits are of the number
     * @param scale power of ten, from {@link #LOWEST} to {@link #HIGHEST}
     * @return NaN where it cannot be told so
     */
    static double of(long digits, int scale) {
        int shift = Long.numberOfLeadingZeros(digits);
        long w = digits << shift;
        long power = POWERS[2 * (scale - LOWEST)];
        long high = multiplyHigh(w, power);
        long low = w * power;
        if ((high & BEYOND) == BEYOND) {
            long more = multiplyHigh(w, POWERS[2 * (scale - LOWEST) + 1]);
            low += more;
            high += Long.compareUnsigned(more, low) > 0 ? 1 : 0;
            if (low == -1L) {
                return Double.NaN;
            }
        }
        int upper = (int) (high >>> 63);
        int cut = upper + 64 - MANTISSA_BITS - 3;
        long mantissa = high >>> cut;
        int exponent = (217706 * scale >> 16) + 63 + upper - shift + BIAS;
        if (exponent <= 0 || exponent >= 2 * BIAS) {
            return Double.NaN;
        }
        boolean half = Long.compareUnsigned(low, 1) <= 0 && (mantissa & 3) == 1 && mantissa << cut == high;
        // half way between two doubles goes to the even one
        mantissa = half && scale >= -4 && scale <= 23 ? mantissa & ~1L : mantissa;
        mantissa = mantissa + (mantissa & 1) >>> 1;
        if (mantissa >>> MANTISSA_BITS + 1 != 0) {
            mantissa = 1L << MANTISSA_BITS;
            exponent++;
        }
        return Double.longBitsToDouble(mantissa & ~(1L << MANTISSA_BITS) | (long) exponent << MANTISSA_BITS);
    }

    /** Of numbers without a sign. */
    private static long multiplyHigh(long a, long b) {
        return Math.multiplyHigh(a, b) + (a >> 63 & b) + (b >> 63 & a);
    }
}
