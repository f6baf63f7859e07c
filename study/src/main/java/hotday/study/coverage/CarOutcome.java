package hotday.study.coverage;

import java.util.List;

/**
 * One virtual car.
 *
 * @param build name of the sheet it was drawn from
 * @param seed of everything random about it
 * @param fitRmse coolant of its mild day, K
 * @param cases one entry a case
 */
public record CarOutcome(String build, long seed, double fitRmse, List<CaseOutcome> cases) {
    public CarOutcome {
        cases = List.copyOf(cases);
    }

    public long inside() {
        return cases.stream().filter(CaseOutcome::inside).count();
    }
}
