package hotday.study.events;

import java.util.Arrays;

/** Middles of stretches of a channel; NaN are passed over, NaN comes out where nothing is left. */
final class Middle {
    /** From the median distance to the median to a standard deviation, for normal noise. */
    private static final double TO_SIGMA = 1.4826;

    /** Values closer than this, in parts of themselves, are one. */
    private static final double HAIR = 1e-6;

    private Middle() {}

    static double median(double[] values) {
        double[] sorted = present(values);
        return sorted.length == 0 ? Double.NaN : 0.5 * (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]);
    }

    /** @param from first, @param to behind the last; cut to what there is */
    static double median(double[] values, int from, int to) {
        return median(stretch(values, from, to));
    }

    static double mean(double[] values, int from, int to) {
        return Arrays.stream(present(stretch(values, from, to))).average().orElse(Double.NaN);
    }

    static double greatest(double[] values, int from, int to) {
        return Arrays.stream(present(stretch(values, from, to))).max().orElse(Double.NaN);
    }

    static double least(double[] values, int from, int to) {
        return Arrays.stream(present(stretch(values, from, to))).min().orElse(Double.NaN);
    }

    /** Median of every three neighbours. */
    static double[] ofThree(double[] values) {
        double[] out = new double[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = median(values, i - 1, i + 2);
        }
        return out;
    }

    /** Robust standard deviation about a value. */
    static double sigma(double[] values, double about) {
        return TO_SIGMA
                * median(Arrays.stream(values).map(v -> Math.abs(v - about)).toArray());
    }

    static double[] present(double[] values) {
        return Arrays.stream(values).filter(v -> !Double.isNaN(v)).sorted().toArray();
    }

    /** Smallest distance between different values: the step a channel is written in; 0 when all are equal. */
    static double step(double[] values) {
        double[] sorted = present(values);
        double step = Double.POSITIVE_INFINITY;
        for (int i = 1; i < sorted.length; i++) {
            double d = sorted[i] - sorted[i - 1];
            step = d > HAIR * Math.abs(sorted[i]) ? Math.min(step, d) : step;
        }
        return Double.isInfinite(step) ? 0.0 : step;
    }

    private static double[] stretch(double[] values, int from, int to) {
        int first = Math.max(0, from);
        return Arrays.copyOfRange(values, first, Math.max(first, Math.min(values.length, to)));
    }
}
