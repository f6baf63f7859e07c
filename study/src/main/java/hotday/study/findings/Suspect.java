package hotday.study.findings;

import java.util.List;

/**
 * One fault that could explain a run.
 *
 * @param logOdds natural logarithm of its odds against nothing being wrong
 * @param share of everything that could explain the run, 0..1
 * @param evidence what speaks for it, most telling first
 */
public record Suspect(FaultKind kind, double logOdds, double share, List<Evidence> evidence) {
    public Suspect {
        evidence = List.copyOf(evidence);
    }
}
