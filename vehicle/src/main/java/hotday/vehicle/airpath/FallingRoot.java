package hotday.vehicle.airpath;

/**
 * Root of one falling function, asked for step by step so that nothing is allocated: Newton while it halves the function, the
 * middle of the bracket otherwise. Always ends: the bracket shrinks with every value.
 */
final class FallingRoot {
    private double low;
    private double high;
    private double steepness;
    private double last;

    /** Begins without a bracket for a function that falls by {@code steepness} per unit or faster: |f| then gives one. */
    void begin(double steepness) {
        begin(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        this.steepness = steepness;
    }

    /** Begins with a bracket of a function that falls, however slowly. */
    void begin(double low, double high) {
        this.low = low;
        this.high = high;
        this.steepness = 0.0;
        this.last = Double.POSITIVE_INFINITY;
    }

    /** The next place to look at after the function gave f, not 0, with the slope at x; x itself when there is none. */
    double next(double x, double f, double slope) {
        double reach = x + f / steepness;
        if (f > 0.0) {
            low = x;
            high = Math.min(high, reach);
        } else {
            high = x;
            low = Math.max(low, reach);
        }
        double newton = x - f / slope;
        if (newton == x) { // steeper than numbers are fine: look just beyond, which shuts the bracket where the root is
            // here
            newton = x + Math.copySign(4.0 * Math.ulp(x), f);
        }
        boolean halved = Math.abs(f) <= 0.5 * last;
        if (halved && newton >= low && newton <= high) {
            last = Math.abs(f);
            return newton;
        }
        last = Double.POSITIVE_INFINITY;
        double middle = low + 0.5 * (high - low);
        return middle > low && middle < high ? middle : x;
    }

    double low() {
        return low;
    }

    double high() {
        return high;
    }
}
