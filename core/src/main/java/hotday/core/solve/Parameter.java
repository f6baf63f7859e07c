package hotday.core.solve;

import java.util.Objects;

/**
 * An unknown of a fit, in whatever scale the model uses (positive quantities are best given as logarithms).
 *
 * @param name for messages and reports
 * @param start where the fit begins
 * @param priorMean expected value before any data; without meaning when {@code priorSd} is infinite
 * @param priorSd Gaussian width of that expectation, above 0; {@link Double#POSITIVE_INFINITY} for none
 * @param step of the difference quotient, absolute; 0 chooses it: 0.05 {@code priorSd} where there is a prior (small
 *     steps see the noise of switching models, large ones the curvature), else relative to the value
 */
public record Parameter(String name, double start, double priorMean, double priorSd, double step) {
    public Parameter {
        Objects.requireNonNull(name, "name");
        require(name, Double.isFinite(start), "start", start, "finite");
        require(name, priorSd > 0, "prior sd", priorSd, "above 0");
        require(name, Double.isInfinite(priorSd) || Double.isFinite(priorMean), "prior mean", priorMean, "finite");
        require(name, step >= 0 && Double.isFinite(step), "step", step, "0 or above and finite");
    }

    /** With a prior; starts at its mean, step chosen. */
    public static Parameter around(String name, double priorMean, double priorSd) {
        return new Parameter(name, priorMean, priorMean, priorSd, 0);
    }

    /** Without a prior, step chosen. */
    public static Parameter free(String name, double start) {
        return new Parameter(name, start, 0, Double.POSITIVE_INFINITY, 0);
    }

    public Parameter withStart(double value) {
        return new Parameter(name, value, priorMean, priorSd, step);
    }

    public Parameter withStep(double value) {
        return new Parameter(name, start, priorMean, priorSd, value);
    }

    public boolean hasPrior() {
        return priorSd < Double.POSITIVE_INFINITY;
    }

    /** The unit in which the solver counts this parameter: the prior's width, else the size of the start, else 1. */
    double scale() {
        if (hasPrior()) {
            return priorSd;
        }
        return start == 0 ? 1 : Math.abs(start);
    }

    /** The value the solver counts from. */
    double origin() {
        return hasPrior() ? priorMean : 0;
    }

    private static void require(String name, boolean holds, String what, double value, String limit) {
        if (!holds) {
            throw new IllegalArgumentException(
                    "parameter " + name + ": " + what + " is " + value + ", must be " + limit);
        }
    }
}
