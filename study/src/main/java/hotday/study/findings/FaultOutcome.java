package hotday.study.findings;

import java.util.List;

/**
 * One virtual car of a study.
 *
 * @param build sheet it was drawn from
 * @param fault key of what was put in; {@code none}
 * @param size of the fault, 0..1
 * @param ambient K
 * @param seed of everything random about it
 * @param seconds the run lasted
 * @param rank of the fault among all that were looked for, from 1; 0 for a sound car
 * @param named keys of findings of severity warning or fault, in their order
 */
public record FaultOutcome(
        String build,
        String fault,
        double size,
        double ambient,
        long seed,
        double seconds,
        int rank,
        List<String> named) {
    public FaultOutcome {
        named = List.copyOf(named);
    }

    /** Whether the fault was named first, or first or second. */
    public boolean hit(int among) {
        int at = named.indexOf(fault);
        return at >= 0 && at < among;
    }
}
