package hotday.study.events;

import java.util.Optional;

/**
 * A number met several times.
 *
 * @param mean SI
 * @param low end of the 90 % interval of the mean
 * @param high end of the 90 % interval of the mean
 * @param count how often it was seen
 */
public record Estimate(double mean, double low, double high, int count) {
    /** Student's t, 5 % each side, for 1 to 9 degrees of freedom. Any table. */
    private static final double[] STUDENT = {6.314, 2.920, 2.353, 2.132, 2.015, 1.943, 1.895, 1.860, 1.833};

    private static final double NORMAL = 1.645;

    /**
     * Scatter of the mean and the gauge together. The gauge counts twice: the value lies anywhere inside its step, and nobody
     * knows whether it rounds or cuts off, so the sum has the variance step2 / 6. It does not shrink with more readings,
     * because every cycle meets the same step. One reading alone is given the scatter of one step.
     *
     * @param values SI, as shown by the gauge
     * @param resolution step of the gauge, SI; 0 when it is fine
     */
    static Optional<Estimate> of(double[] values, double resolution) {
        int n = values.length;
        if (n == 0) {
            return Optional.empty();
        }
        double mean = java.util.Arrays.stream(values).average().orElseThrow();
        double square = 0.0;
        for (double v : values) {
            square += (v - mean) * (v - mean);
        }
        double scatter = n == 1 ? NORMAL * resolution : student(n - 1) * Math.sqrt(square / (n - 1) / n);
        double half = Math.hypot(scatter, NORMAL * resolution / Math.sqrt(6.0));
        return Optional.of(new Estimate(mean, mean - half, mean + half, n));
    }

    private static double student(int freedom) {
        return freedom <= STUDENT.length ? STUDENT[freedom - 1] : NORMAL * (1.0 + 1.0 / freedom);
    }
}
