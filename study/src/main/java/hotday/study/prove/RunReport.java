package hotday.study.prove;

import hotday.core.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What the model says of one run and how it agrees.
 *
 * @param name run
 * @param role in the fit, or predicted from inputs and first readings only
 * @param time s
 * @param measured coolant, K; NaN where not measured
 * @param predicted coolant, K: the mean over the branches of what nobody recorded
 * @param lower, upper 90 % band, K
 * @param single false when the branches differ by more than the model's own band: then no single number stands and the
 *     band spans all branches
 * @param score of {@code predicted}
 * @param warm score from {@link #WARM_FROM} on, when most engines are warm
 * @param warmNull of the constant warm level over the same time
 * @param nullRmse of the constant warm level, K
 * @param coverage share of scored samples inside the band, 0..1
 * @param bandHalfWidth mean over the scored samples, K
 * @param peak measured, predicted and 90 % interval, K
 * @param reach times to levels
 * @param oil the same of oil, where the fit saw oil and the run has it
 * @param brackets one entry a branch of every unrecorded actuator
 * @param findings about this run
 */
public record RunReport(
        String name,
        Role role,
        double[] time,
        double[] measured,
        double[] predicted,
        double[] lower,
        double[] upper,
        boolean single,
        Score score,
        Score warm,
        Score warmNull,
        double nullRmse,
        double coverage,
        double bandHalfWidth,
        Peak peak,
        List<Reach> reach,
        Optional<Oil> oil,
        List<Bracket> brackets,
        List<Finding> findings) {

    /** From here on a run counts as warm, s. */
    public static final double WARM_FROM = 600.0;

    /** Whether the fit saw the run. */
    public enum Role {
        FIT,
        PREDICT
    }

    /** Highest coolant from the scored start on, K. */
    public record Peak(double measured, double predicted, double low, double high) {}

    /**
     * When coolant first reached a level.
     *
     * @param level K
     * @param measured s from the run's zero; NaN when it started above or never got there
     * @param predicted s, likewise
     * @param low, high 90 % interval, s; high is infinite when part of the paths never get there
     */
    public record Reach(double level, double measured, double predicted, double low, double high) {}

    /**
     * Oil over the same time.
     *
     * @param measured K; NaN where not measured
     * @param predicted K, mean over the branches
     * @param lower, upper 90 % band, K
     * @param score of {@code predicted}
     * @param coverage share of the scored samples inside the band, 0..1
     * @param bandHalfWidth mean over the scored samples, K
     */
    public record Oil(
            double[] measured,
            double[] predicted,
            double[] lower,
            double[] upper,
            Score score,
            double coverage,
            double bandHalfWidth) {}
}
