package hotday.vehicle.cases;

import hotday.vehicle.cases.Tries.Try;
import java.util.ArrayList;
import java.util.List;

/**
 * Fan at full speed; headrooms scanned, so that a first crossing is found even where they are not monotone, then each closed.
 */
final class SteadySearch {
    private static final double SCAN = 10.0; // K
    private static final double TOLERANCE = 1e-3; // K
    private static final int POINTS = (int) Math.round((AmbientCeiling.HIGHEST - AmbientCeiling.LOWEST) / SCAN) + 1;
    private static final int MILD = 4; // point of the scan that is tried first

    private final Tries tries;

    SteadySearch(Tries tries) {
        this.tries = tries;
    }

    /** Where the first limit gives way, K, from a guess. */
    double close(double guess) {
        return Crossover.find(ambient -> tries.at(ambient).least(), guess, TOLERANCE);
    }

    List<Ceiling.Crossing> crossings() {
        for (int i = MILD; i < POINTS; i++) {
            tries.at(AmbientCeiling.LOWEST + i * SCAN);
        }
        for (int i = MILD - 1; i >= 0; i--) {
            tries.at(AmbientCeiling.LOWEST + i * SCAN);
        }
        List<Try> scan = tries.sorted();
        List<Ceiling.Crossing> all = new ArrayList<>();
        for (Limit limit : Limit.values()) {
            if (tries.trial.judges(limit)) {
                all.add(crossing(limit, scan));
            }
        }
        return all;
    }

    private Ceiling.Crossing crossing(Limit limit, List<Try> scan) {
        int first = 0;
        while (first < scan.size() && scan.get(first).room(limit) >= 0.0) {
            first++;
        }
        if (first == 0) {
            return Ceiling.Crossing.below(limit);
        }
        if (first == scan.size()) {
            return Ceiling.Crossing.above(limit);
        }
        boolean again = scan.subList(first, scan.size()).stream().anyMatch(t -> t.room(limit) >= 0.0);
        return new Ceiling.Crossing(
                limit, closed(limit, scan.get(first - 1), scan.get(first)), Ceiling.Reach.FOUND, again);
    }

    private double closed(Limit limit, Try holding, Try failing) {
        return Crossover.between(
                ambient -> tries.at(ambient).room(limit),
                holding.ambient,
                failing.ambient,
                holding.room(limit),
                failing.room(limit),
                TOLERANCE);
    }
}
