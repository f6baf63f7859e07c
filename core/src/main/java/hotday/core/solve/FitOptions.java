package hotday.core.solve;

import java.util.Objects;
import java.util.function.BooleanSupplier;

/**
 * How a fit is run. Nothing here changes the answer of a converged fit beyond its tolerance, and {@code threads} never
 * changes a single bit.
 *
 * @param difference one-sided costs one model run a parameter and iteration, central two
 * @param threads that compute the columns of the Jacobian, 1..256
 * @param maxIterations accepted steps, at least 1
 * @param tolerance relative change of cost and of parameters (in their scale) below which the fit has converged
 * @param cancelled asked before every model run, from any of the threads
 * @param progress told after every accepted step
 */
public record FitOptions(
        Difference difference,
        int threads,
        int maxIterations,
        double tolerance,
        BooleanSupplier cancelled,
        Progress progress) {

    /** Kind of difference quotient. */
    public enum Difference {
        FORWARD,
        CENTRAL
    }

    /** Listens to a running fit. */
    @FunctionalInterface
    public interface Progress {
        void accepted(int iteration, double cost, int evaluations);
    }

    public FitOptions {
        Objects.requireNonNull(difference, "difference");
        Objects.requireNonNull(cancelled, "cancelled");
        Objects.requireNonNull(progress, "progress");
        if (threads < 1 || threads > 256) {
            throw new IllegalArgumentException("threads is " + threads + ", must be 1..256");
        }
        if (maxIterations < 1) {
            throw new IllegalArgumentException("maxIterations is " + maxIterations + ", must be at least 1");
        }
        if (!(tolerance > 0 && tolerance < 1)) {
            throw new IllegalArgumentException("tolerance is " + tolerance + ", must be between 0 and 1");
        }
    }

    /** Central differences, one thread, 100 iterations, tolerance 1e-6. */
    public static FitOptions standard() {
        return new FitOptions(Difference.CENTRAL, 1, 100, 1e-6, () -> false, (iteration, cost, evaluations) -> {});
    }

    public FitOptions withDifference(Difference value) {
        return new FitOptions(value, threads, maxIterations, tolerance, cancelled, progress);
    }

    public FitOptions withThreads(int value) {
        return new FitOptions(difference, value, maxIterations, tolerance, cancelled, progress);
    }

    public FitOptions withMaxIterations(int value) {
        return new FitOptions(difference, threads, value, tolerance, cancelled, progress);
    }

    public FitOptions withTolerance(double value) {
        return new FitOptions(difference, threads, maxIterations, value, cancelled, progress);
    }

    public FitOptions withCancelled(BooleanSupplier value) {
        return new FitOptions(difference, threads, maxIterations, tolerance, value, progress);
    }

    public FitOptions withProgress(Progress value) {
        return new FitOptions(difference, threads, maxIterations, tolerance, cancelled, value);
    }
}
