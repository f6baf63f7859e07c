package hotday.study.prove;

import hotday.core.finding.Finding;
import hotday.study.events.Inferred;
import java.util.ArrayList;
import java.util.List;

/**
 * What recorded runs showed of a build and what that means for the hot day.
 *
 * @param build name
 * @param runs fitted ones first
 * @param pooledFit over the fit runs; @param pooledPrediction over predicted runs that carry a single number
 * @param pooledWarm the same from {@link RunReport#WARM_FROM} on; @param pooledWarmNull constant warm level over that time
 * @param pooledNull of the same predicted runs, K
 * @param pooledCoverage over the samples of the same predicted runs, 0..1
 * @param warmLevel of the null model, K
 * @param correlationTime of the residuals, s
 * @param discrepancy standard deviation of what an unseen run will show beyond the parameters, K
 * @param parameters one entry an unknown
 * @param ceilings one entry a case
 * @param ceilingsBefore the same before any run
 * @param inferred what switched though nobody recorded it
 * @param nextTests what to drive next, the most telling first
 * @param findings about the whole
 * @param seed of everything random
 * @param converged whether the descent ended by itself
 */
public record Proof(
        String build,
        List<RunReport> runs,
        Score pooledFit,
        Score pooledPrediction,
        Score pooledWarm,
        Score pooledWarmNull,
        double pooledNull,
        double pooledCoverage,
        double warmLevel,
        double correlationTime,
        double discrepancy,
        List<ParameterReport> parameters,
        List<CeilingReport> ceilings,
        List<CeilingReport> ceilingsBefore,
        Inferred inferred,
        List<NextTest> nextTests,
        List<Finding> findings,
        long seed,
        boolean converged) {

    /** The same with further findings in front of its own. */
    public Proof with(List<Finding> further) {
        List<Finding> all = new ArrayList<>(further);
        all.addAll(findings);
        return new Proof(
                build,
                runs,
                pooledFit,
                pooledPrediction,
                pooledWarm,
                pooledWarmNull,
                pooledNull,
                pooledCoverage,
                warmLevel,
                correlationTime,
                discrepancy,
                parameters,
                ceilings,
                ceilingsBefore,
                inferred,
                nextTests,
                all,
                seed,
                converged);
    }

    /** Oil over all runs of a role that carry a single number; no samples where oil was not fitted or not recorded. */
    public Score pooledOil(RunReport.Role role) {
        return Score.pooled(runs.stream()
                .filter(r -> r.role() == role && r.single())
                .flatMap(r -> r.oil().stream())
                .map(RunReport.Oil::score)
                .toList());
    }
}
