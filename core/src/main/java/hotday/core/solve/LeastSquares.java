package hotday.core.solve;

import hotday.core.solve.Fit.Status;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import org.hipparchus.exception.LocalizedCoreFormats;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.optim.LocalizedOptimFormats;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Precision;

/**
 * Maximum-posterior fit: the parameters that make {@code sum r_i^2 + sum ((p_j - mean_j) / sd_j)^2} least, by
 * Levenberg-Marquardt on difference quotients. Parameters are counted in units of their prior width inside. Finds the
 * minimum downhill of its start; {@link PriorSearch} finds good starts.
 *
 * <p>Not converging is an answer ({@link Fit#status()}), not an exception. An exception of the model itself passes
 * through.
 */
public final class LeastSquares {
    private LeastSquares() {}

    /**
     * The fit from the starts written in the parameters.
     *
     * @param factory called once a thread; see {@link Residuals}
     * @param parameters at least one
     */
    public static Fit fit(Supplier<? extends Residuals> factory, List<Parameter> parameters, FitOptions options) {
        if (parameters.isEmpty()) {
            throw new IllegalArgumentException("a fit needs at least one parameter");
        }
        try (ScaledModel model = new ScaledModel(factory, parameters, options)) {
            return new Descent(model, parameters, options).run();
        }
    }

    /** The best fit of several starts, each a full set of values; ties go to the earlier start. */
    public static Fit fit(
            Supplier<? extends Residuals> factory,
            List<Parameter> parameters,
            List<PriorSearch.Start> starts,
            FitOptions options) {
        if (starts.isEmpty()) {
            throw new IllegalArgumentException("a fit needs at least one start");
        }
        Fit best = fit(factory, starts.get(0).apply(parameters), options);
        for (PriorSearch.Start start : starts.subList(1, starts.size())) {
            if (best.status() == Status.CANCELLED) {
                return best;
            }
            Fit next = fit(factory, start.apply(parameters), options);
            if (next.cost() < best.cost()) {
                best = next;
            }
        }
        return best;
    }

    /** One way down from one start. */
    private static final class Descent {
        private final ScaledModel model;
        private final List<Parameter> parameters;
        private final FitOptions options;
        private int iterations;

        Descent(ScaledModel model, List<Parameter> parameters, FitOptions options) {
            this.model = model;
            this.parameters = parameters;
            this.options = options;
        }

        Fit run() {
            try {
                double[] start = model.start();
                model.valuesAt(start);
                if (Double.isInfinite(model.bestCost())) {
                    return noStart(Status.NO_START, "the model gives no finite residuals at the start values");
                }
                return descend(start);
            } catch (Workers.Stopped e) {
                return stopped();
            }
        }

        private Fit descend(double[] start) {
            double tolerance = options.tolerance();
            LevenbergMarquardtOptimizer optimizer = new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(tolerance)
                    .withParameterRelativeTolerance(tolerance)
                    .withOrthoTolerance(Precision.EPSILON);
            try {
                optimizer.optimize(problem(start));
                return ended(Status.CONVERGED, "converged");
            } catch (MathIllegalStateException e) {
                if (e.getSpecifier() == LocalizedCoreFormats.MAX_COUNT_EXCEEDED) {
                    return ended(
                            Status.ITERATIONS_SPENT, "not converged in " + options.maxIterations() + " iterations");
                }
                if (endOfPrecision(e)) {
                    return ended(Status.CONVERGED, "converged as far as the precision of the model allows");
                }
                throw e;
            }
        }

        private LeastSquaresProblem problem(double[] start) {
            return new LeastSquaresBuilder()
                    .model(model)
                    .target(new double[model.size()])
                    .start(new ArrayRealVector(start))
                    .lazyEvaluation(true)
                    .maxEvaluations(Integer.MAX_VALUE)
                    .maxIterations(options.maxIterations())
                    .checker((iteration, before, after) -> {
                        iterations = iteration;
                        options.progress().accepted(iteration, model.bestCost(), model.evaluations());
                        return false;
                    })
                    .build();
        }

        private static boolean endOfPrecision(MathIllegalStateException e) {
            return e.getSpecifier() == LocalizedOptimFormats.TOO_SMALL_COST_RELATIVE_TOLERANCE
                    || e.getSpecifier() == LocalizedOptimFormats.TOO_SMALL_PARAMETERS_RELATIVE_TOLERANCE
                    || e.getSpecifier() == LocalizedOptimFormats.TOO_SMALL_ORTHOGONALITY_TOLERANCE;
        }

        private Fit ended(Status status, String message) {
            double[][] jacobian = model.jacobianAt(model.bestPoint());
            Spread spread = Spread.of(jacobian, model.dataSize(), parameters);
            return fit(status, message, spread);
        }

        private Fit stopped() {
            if (Double.isInfinite(model.bestCost())) {
                return noStart(Status.CANCELLED, "cancelled before the first model run");
            }
            return fit(Status.CANCELLED, "cancelled; widths are those of the priors", Spread.priors(parameters));
        }

        private Fit fit(Status status, String message, Spread spread) {
            double[] values = model.bestValues();
            return new Fit(
                    model.physical(model.bestPoint()),
                    model.bestCost(),
                    ScaledModel.squares(values, model.dataSize()),
                    Arrays.copyOf(values, model.dataSize()),
                    spread.information(),
                    spread.covariance(),
                    spread.sd(),
                    model.evaluations(),
                    iterations,
                    status,
                    message);
        }

        private Fit noStart(Status status, String message) {
            Spread spread = Spread.priors(parameters);
            return new Fit(
                    parameters.stream().mapToDouble(Parameter::start).toArray(),
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    new double[0],
                    spread.information(),
                    spread.covariance(),
                    spread.sd(),
                    model.evaluations(),
                    0,
                    status,
                    message);
        }
    }
}
