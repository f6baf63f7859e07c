package hotday.study.findings;

import hotday.core.finding.Finding;
import java.util.List;

/**
 * What a commissioning run says about the car.
 *
 * @param run name
 * @param suspects all faults that were looked for, most likely first
 * @param untold faults that this run could not show
 * @param unlike whether neither a sound car nor one with a single fault looks like this run
 * @param findings for the technician, in order of weight
 */
public record Examination(
        String run, List<Suspect> suspects, List<FaultKind> untold, boolean unlike, List<Finding> findings) {
    public Examination {
        suspects = List.copyOf(suspects);
        untold = List.copyOf(untold);
        findings = List.copyOf(findings);
    }
}
