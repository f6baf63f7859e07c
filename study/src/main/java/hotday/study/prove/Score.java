package hotday.study.prove;

/**
 * How a trace agrees with a measured one (coolant unless another is named), model minus measured, from the run's {@link RunData#scoredFrom()} on.
 *
 * @param rmse K
 * @param bias mean, K
 * @param maxError largest magnitude, K
 * @param samples scored
 * @param sumOfSquares K^2, for pooling
 * @param sum K, for pooling
 */
public record Score(double rmse, double bias, double maxError, int samples, double sumOfSquares, double sum) {
    /** No samples. */
    public static final Score NONE = new Score(Double.NaN, Double.NaN, Double.NaN, 0, 0.0, 0.0);

    /** Time between scored samples, s: runs on grids of their own weigh by their length. */
    private static final double EVERY = 1.0;

    static Score of(RunData run, double[] trace) {
        return of(run, trace, run.scoredFrom());
    }

    /** @param from s; samples before are left out */
    static Score of(RunData run, double[] trace, double from) {
        return of(run, run.coolant(), trace, from);
    }

    /** @param measured what the trace is compared with, K; NaN where not measured */
    static Score of(RunData run, double[] measured, double[] trace, double from) {
        double squares = 0.0;
        double sum = 0.0;
        double worst = 0.0;
        int n = 0;
        int stride = stride(run);
        for (int i = 0; i < run.size(); i += stride) {
            double error = trace[i] - measured[i];
            if (run.time()[i] >= from && !Double.isNaN(error)) {
                squares += error * error;
                sum += error;
                worst = Math.max(worst, Math.abs(error));
                n++;
            }
        }
        return n == 0 ? NONE : new Score(Math.sqrt(squares / n), sum / n, worst, n, squares, sum);
    }

    private static int stride(RunData run) {
        return Math.max(1, (int) Math.round(EVERY / run.step()));
    }

    /** Time between scored samples of a run, s. */
    static double spacing(RunData run) {
        return stride(run) * run.step();
    }

    /** All samples of several scores as one. */
    static Score pooled(Iterable<Score> scores) {
        double squares = 0.0;
        double sum = 0.0;
        double worst = 0.0;
        int n = 0;
        for (Score s : scores) {
            if (s.samples() > 0) {
                squares += s.sumOfSquares();
                sum += s.sum();
                worst = Math.max(worst, s.maxError());
                n += s.samples();
            }
        }
        return n == 0 ? NONE : new Score(Math.sqrt(squares / n), sum / n, worst, n, squares, sum);
    }
}
