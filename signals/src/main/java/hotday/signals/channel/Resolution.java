package hotday.signals.channel;

import java.util.HashSet;
import java.util.Set;

/** Finds the step in which a column was written, from the column itself. */
final class Resolution {
    private static final int MOST_LEVELS = 2000;
    private static final int FEWEST_LEVELS = 3;
    private static final double WHOLE = 0.02;

    private Resolution() {}

    /**
     * Smallest distance between the values of a column if all distances are multiples of it.
     *
     * @return 0 when nothing tells: fewer than three different values, very many, or no common step
     */
    static double of(double[] column) {
        double[] levels = levels(column);
        if (levels.length < FEWEST_LEVELS) {
            return 0.0;
        }
        double step = Double.POSITIVE_INFINITY;
        for (int i = 1; i < levels.length; i++) {
            step = Math.min(step, levels[i] - levels[i - 1]);
        }
        for (double level : levels) {
            double steps = (level - levels[0]) / step;
            if (Math.abs(steps - Math.rint(steps)) > WHOLE) {
                return 0.0;
            }
        }
        return step;
    }

    /** Different values in rising order; empty when there are very many. */
    private static double[] levels(double[] column) {
        Set<Double> seen = new HashSet<>();
        double last = Double.NaN;
        for (double v : column) {
            if (v != last && !Double.isNaN(v) && seen.add(v) && seen.size() > MOST_LEVELS) {
                return new double[0];
            }
            last = v;
        }
        return seen.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    }
}
