package hotday.physics.exchanger;

/** 1 - exp(-x), to rounding: what {@link Math#expm1} gives, at the price of the quicker {@link Math#exp}. */
public final class Decay {
    /** Below it the series of seven terms is exact to 3e-17. */
    private static final double SMALL = 0.02;

    private Decay() {}

    /** @param x 0 or more */
    public static double gone(double x) {
        if (x < SMALL) {
            return x * (1 - x / 2 * (1 - x / 3 * (1 - x / 4 * (1 - x / 5 * (1 - x / 6 * (1 - x / 7))))));
        }
        return 1.0 - Math.exp(-x);
    }
}
