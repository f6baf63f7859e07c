package hotday.study.findings;

import java.util.List;
import java.util.stream.Stream;

/**
 * What a study came to.
 *
 * @param cars faulty ones by kind, then sound ones
 */
public record FaultReport(List<FaultOutcome> cars) {
    /** As {@link FaultOutcome#fault} of a sound car. */
    public static final String SOUND = FaultKind.NONE.key();

    public FaultReport {
        cars = List.copyOf(cars);
    }

    /** Kinds that were tried, in order. */
    public List<String> kinds() {
        return faulty().map(FaultOutcome::fault).distinct().toList();
    }

    private Stream<FaultOutcome> faulty() {
        return cars.stream().filter(c -> !c.fault().equals(SOUND));
    }

    /** Cars with a fault. */
    public int faults() {
        return (int) faulty().count();
    }

    /** Share of faulty cars whose fault was named among the first so many, 0..1. */
    public double named(int among) {
        return share(faulty().toList(), among);
    }

    /** The same of one kind. */
    public double named(String kind, int among) {
        return share(faulty().filter(c -> c.fault().equals(kind)).toList(), among);
    }

    private static double share(List<FaultOutcome> cars, int among) {
        return cars.stream()
                .mapToDouble(c -> c.hit(among) ? 1.0 : 0.0)
                .average()
                .orElse(Double.NaN);
    }

    /** Sound cars that were tried. */
    public List<FaultOutcome> sound() {
        return cars.stream().filter(c -> c.fault().equals(SOUND)).toList();
    }

    /** Share of sound cars of which anything was named, 0..1. */
    public double falseAlarms() {
        return sound().stream()
                .mapToDouble(c -> c.named().isEmpty() ? 0.0 : 1.0)
                .average()
                .orElse(Double.NaN);
    }
}
