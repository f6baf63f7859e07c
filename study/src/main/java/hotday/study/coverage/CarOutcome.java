package hotday.study.coverage;

import java.util.List;
import java.util.Optional;

/**
 * One virtual car.
 *
 * @param build name of the sheet it was drawn from
 * @param seed of everything random about it
 * @param fitRmse coolant of its mild day, K
 * @param cases one entry a case
 * @param nextTest what a further test did, for the cars that drove one
 */
public record CarOutcome(
        String build, long seed, double fitRmse, List<CaseOutcome> cases, Optional<NextTestOutcome> nextTest) {
    public CarOutcome {
        cases = List.copyOf(cases);
    }

    public long inside() {
        return cases.stream().filter(CaseOutcome::inside).count();
    }
}
