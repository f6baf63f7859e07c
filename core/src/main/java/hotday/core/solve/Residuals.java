package hotday.core.solve;

/**
 * What a fit makes small: differences between model and measurement, each already divided by its standard deviation (so
 * that a good fit has residuals of about one). The same parameters must always give the same residuals to the last bit:
 * no memory of earlier calls. One instance is used by one thread at a time; a fit on several threads asks its factory
 * for one instance a thread.
 */
public interface Residuals {
    /** Number of residuals, the same for all parameters and all instances of one factory. */
    int size();

    /**
     * Fills {@code out} with the residuals at {@code parameters}. A model that cannot be evaluated there writes NaN or
     * an infinity anywhere in {@code out}: the fit then refuses the step.
     */
    void residuals(double[] parameters, double[] out);

    /**
     * The residuals after parameter {@code changed} alone was moved for a difference quotient. On entry {@code out}
     * holds the residuals before the move: a model of several runs may recompute only those runs that feel the
     * parameter. The result must equal that of {@link #residuals}.
     */
    default void moved(double[] parameters, int changed, double[] out) {
        residuals(parameters, out);
    }
}
