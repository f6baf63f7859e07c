package hotday.core.solve;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;

/**
 * One unknown between two ends where a function changes sign, by the bracketing Brent method of order five: never leaves
 * the ends, needs no derivative. For ceilings and design; not for time
 * loops (it allocates).
 */
public final class Bracket {
    private static final int ORDER = 5;

    private Bracket() {}

    /** What was found. */
    public enum Status {
        /** {@code value} is a root. */
        FOUND,
        /** Positive at both ends: no root between them. {@code value} is the end with the smaller function. */
        ABOVE,
        /** Negative at both ends: no root between them. {@code value} is the end nearer to zero. */
        BELOW,
        /** The function is not finite at an end or inside; {@code value} is the lower end. */
        NOT_FINITE,
        /** The evaluations were used up; {@code value} is the end nearer to zero. */
        SPENT
    }

    /**
     * Where the search ended.
     *
     * @param value the root, or the end named by the status
     * @param residual the function at {@code value}; infinite with {@link Status#NOT_FINITE}
     */
    public record Root(double value, double residual, int evaluations, Status status) {
        public boolean found() {
            return status == Status.FOUND;
        }
    }

    /** Passes the first value that is not finite out of the solver. */
    private static final class NotFinite extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NotFinite() {
            super("not finite", null, false, false);
        }
    }

    /**
     * Looks for the root between two ends.
     *
     * @param low, high ends, {@code low < high}, both finite
     * @param tolerance of the root, absolute, above 0
     * @param maxEvaluations at least 2
     */
    public static Root root(
            DoubleUnaryOperator function, double low, double high, double tolerance, int maxEvaluations) {
        if (!(low < high) || Double.isInfinite(low) || Double.isInfinite(high) || !(tolerance > 0)) {
            throw new IllegalArgumentException(
                    "bracket " + low + ".." + high + " with tolerance " + tolerance + " is not a bracket");
        }
        double atLow = function.applyAsDouble(low);
        double atHigh = function.applyAsDouble(high);
        if (!Double.isFinite(atLow) || !Double.isFinite(atHigh)) {
            return new Root(low, Double.POSITIVE_INFINITY, 2, Status.NOT_FINITE);
        }
        if (atLow == 0) {
            return new Root(low, 0, 2, Status.FOUND);
        }
        if (atHigh == 0) {
            return new Root(high, 0, 2, Status.FOUND);
        }
        if (atLow > 0 == atHigh > 0) {
            return nearer(low, atLow, high, atHigh, 2, atLow > 0 ? Status.ABOVE : Status.BELOW);
        }
        return inside(function, low, atLow, high, atHigh, tolerance, maxEvaluations);
    }

    private static Root inside(
            DoubleUnaryOperator function,
            double low,
            double atLow,
            double high,
            double atHigh,
            double tolerance,
            int maxEvaluations) {
        BracketingNthOrderBrentSolver solver = new BracketingNthOrderBrentSolver(0, tolerance, 0, ORDER);
        try {
            double value = solver.solve(
                    maxEvaluations, x -> finite(function.applyAsDouble(x)), low, high, AllowedSolution.ANY_SIDE);
            int evaluations = solver.getEvaluations() + 3;
            return new Root(value, finite(function.applyAsDouble(value)), evaluations, Status.FOUND);
        } catch (NotFinite e) {
            return new Root(low, Double.POSITIVE_INFINITY, solver.getEvaluations() + 2, Status.NOT_FINITE);
        } catch (MathRuntimeException e) {
            return nearer(low, atLow, high, atHigh, solver.getEvaluations() + 2, Status.SPENT);
        }
    }

    private static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw new NotFinite();
        }
        return value;
    }

    private static Root nearer(double low, double atLow, double high, double atHigh, int evaluations, Status status) {
        return Math.abs(atLow) <= Math.abs(atHigh)
                ? new Root(low, atLow, evaluations, status)
                : new Root(high, atHigh, evaluations, status);
    }
}
