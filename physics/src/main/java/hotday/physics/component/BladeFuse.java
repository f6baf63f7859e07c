package hotday.physics.component;

/**
 * Time limits of blade fuses (SAE J1284, ISO 8820-3; from memory, to be compared with the standard in force before they decide anything): 110 % of the rating 100 h and
 * more, 135 % 0.75 to 600 s, 160 % 0.25 to 50 s, 200 % 0.15 to 5 s, 350 % 0.04 to 0.5 s, 600 % up to 0.1 s. Between them straight in the logarithms.
 */
public final class BladeFuse {
    private static final double[] SHARE = {1.10, 1.35, 1.60, 2.00, 3.50};
    private static final double[] LEAST = {360_000, 0.75, 0.25, 0.15, 0.04};
    /** Usual ratings, A; from memory. */
    private static final double[] RATINGS = {
        5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 250, 300
    };

    private BladeFuse() {}

    /**
     * What every fuse of the standard stands without opening, s: infinite below 110 %; above 350 % with the same square of current times time.
     *
     * @param share current over rating, 0 or more
     */
    public static double shortestTime(double share) {
        int last = SHARE.length - 1;
        if (share < SHARE[0]) {
            return Double.POSITIVE_INFINITY;
        }
        if (share >= SHARE[last]) {
            double over = SHARE[last] / share;
            return LEAST[last] * over * over;
        }
        int i = 0;
        while (share >= SHARE[i + 1]) {
            i++;
        }
        double at = Math.log(share / SHARE[i]) / Math.log(SHARE[i + 1] / SHARE[i]);
        return LEAST[i] * Math.pow(LEAST[i + 1] / LEAST[i], at);
    }

    /** Smallest usual rating of so much or more, A; NaN above all of them. */
    public static double ratingFrom(double current) {
        for (double rating : RATINGS) {
            if (rating >= current) {
                return rating;
            }
        }
        return Double.NaN;
    }

    /** Largest usual rating up to so much, A; NaN below all of them. */
    public static double ratingUpTo(double current) {
        double found = Double.NaN;
        for (double rating : RATINGS) {
            found = rating <= current ? rating : found;
        }
        return found;
    }
}
