package hotday.signals.translator;

/**
 * From a raw value to a raw value in whole numbers: (raw * numerator + offset) / denominator to the nearest, halves away
 * from zero, then cut off at two limits. Whoever makes one sees to it that raw * numerator + offset stays inside 64 bits
 * for every raw value it is asked for.
 *
 * @param denominator above 0
 * @param low lowest result
 * @param high highest result
 */
public record Scaling(long numerator, long offset, long denominator, long low, long high) {
    public Scaling {
        if (denominator <= 0 || low > high) {
            throw new IllegalArgumentException(
                    "denominator " + denominator + " must be above 0, limits " + low + " to " + high + " must rise");
        }
    }

    public long apply(long raw) {
        return Math.max(low, Math.min(high, quotient(raw * numerator + offset, denominator)));
    }

    private static long quotient(long n, long d) {
        long q = n / d;
        long rest = n % d; // has the sign of n
        if (rest > 0 && rest >= d - rest) {
            return q + 1;
        }
        return rest < 0 && -rest >= d + rest ? q - 1 : q;
    }
}
