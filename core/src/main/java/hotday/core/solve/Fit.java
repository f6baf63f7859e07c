package hotday.core.solve;

/**
 * Outcome of {@link LeastSquares}. Never holds NaN; a width that the data and the priors leave open is infinite. The
 * arrays belong to the reader and are not used again.
 *
 * @param parameters best found
 * @param cost {@code dataCost} plus the squares of all prior residuals; infinite with {@link Status#NO_START}
 * @param dataCost sum of the squared residuals
 * @param residuals at {@code parameters}; empty with {@link Status#NO_START}
 * @param information J'J of the data alone, no priors, in units of the parameters
 * @param covariance inverse of {@code information} plus the priors: right when the residuals are independent and of
 *     standard deviation one, too narrow when they are correlated
 * @param posteriorSd roots of the diagonal of {@code covariance}
 * @param evaluations model runs spent
 * @param iterations accepted steps
 * @param message one line for a person
 */
@SuppressWarnings("ArrayRecordComponent") // handed over, not kept: equality is not asked for
public record Fit(
        double[] parameters,
        double cost,
        double dataCost,
        double[] residuals,
        double[][] information,
        double[][] covariance,
        double[] posteriorSd,
        int evaluations,
        int iterations,
        Status status,
        String message) {

    /** Why the fit ended. */
    public enum Status {
        /** Neither cost nor parameters change any more. */
        CONVERGED,
        /** Ended by the largest number of iterations; the parameters are the best so far. */
        ITERATIONS_SPENT,
        /** Ended by the caller; the parameters are the best so far. */
        CANCELLED,
        /** The model gives no finite residuals at the start; the parameters are the start. */
        NO_START
    }

    public boolean converged() {
        return status == Status.CONVERGED;
    }
}
