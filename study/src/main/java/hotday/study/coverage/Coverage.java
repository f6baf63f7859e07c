package hotday.study.coverage;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** What a study came to. */
public record Coverage(List<CarOutcome> cars) {
    public Coverage {
        cars = List.copyOf(cars);
    }

    /** Ceilings asked for. */
    public int asked() {
        return cars.stream().mapToInt(c -> c.cases().size()).sum();
    }

    /** Share of the true ceilings that lie in their 90 % interval, 0..1. */
    public double share() {
        return (double) cars.stream().mapToLong(CarOutcome::inside).sum() / asked();
    }

    /** The same over the ceilings of one case. */
    public double share(String kase) {
        return cars.stream()
                .flatMap(c -> c.cases().stream())
                .filter(c -> c.kase().equals(kase))
                .mapToDouble(c -> c.inside() ? 1.0 : 0.0)
                .average()
                .orElse(Double.NaN);
    }

    /** Cars of which every true ceiling lies in its interval, 0..1. */
    public double wholeCars() {
        return cars.stream()
                .mapToDouble(c -> c.inside() == c.cases().size() ? 1.0 : 0.0)
                .average()
                .orElse(Double.NaN);
    }

    /** Summed widths of all intervals over the summed widths from the sheets alone. */
    public double widthRatio() {
        double after = 0.0;
        double before = 0.0;
        for (CarOutcome car : cars) {
            for (CaseOutcome c : car.cases()) {
                after += c.width();
                before += c.widthBefore();
            }
        }
        return after / before;
    }

    /** What the further tests did. */
    public List<NextTestOutcome> nextTests() {
        return cars.stream().flatMap(c -> c.nextTest().stream()).toList();
    }

    /** Mean of something over the further tests. */
    public double mean(ToDoubleFunction<NextTestOutcome> of) {
        return nextTests().stream().mapToDouble(of).average().orElse(Double.NaN);
    }

    /** Ids of the cases, in their order. */
    public List<String> cases() {
        return cars.stream()
                .flatMap(c -> c.cases().stream())
                .map(CaseOutcome::kase)
                .distinct()
                .toList();
    }
}
