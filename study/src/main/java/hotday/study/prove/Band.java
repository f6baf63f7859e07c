package hotday.study.prove;

import java.util.Arrays;

/**
 * The 90 % band of sample paths of one temperature over a run.
 *
 * @param lower, upper K, one value a grid step
 */
record Band(double[] lower, double[] upper) {
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    /** @param paths sample paths, K; all as long as the run */
    static Band of(double[][] paths) {
        int size = paths[0].length;
        Band band = new Band(new double[size], new double[size]);
        double[] column = new double[paths.length];
        for (int i = 0; i < size; i++) {
            for (int m = 0; m < column.length; m++) {
                column[m] = paths[m][i];
            }
            Arrays.sort(column);
            band.lower[i] = Quantile.of(column, LOW);
            band.upper[i] = Quantile.of(column, HIGH);
        }
        return band;
    }

    /** Share of the measured samples inside, 0..1; NaN without any. */
    double coverage(RunData run, double[] measured) {
        int inside = 0;
        int n = 0;
        for (int i = 0; i < run.size(); i++) {
            if (run.time()[i] >= run.scoredFrom() && !Double.isNaN(measured[i])) {
                n++;
                inside += measured[i] >= lower[i] && measured[i] <= upper[i] ? 1 : 0;
            }
        }
        return n == 0 ? Double.NaN : (double) inside / n;
    }

    /** Mean half width over the scored time, K. */
    double halfWidth(RunData run) {
        double sum = 0.0;
        int n = 0;
        for (int i = 0; i < run.size(); i++) {
            if (run.time()[i] >= run.scoredFrom()) {
                sum += 0.5 * (upper[i] - lower[i]);
                n++;
            }
        }
        return n == 0 ? Double.NaN : sum / n;
    }
}
