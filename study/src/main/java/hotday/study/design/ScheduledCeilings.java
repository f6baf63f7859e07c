package hotday.study.design;

import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How hot a day may be with a schedule, controller and sensors as they are: the mildest day on which the case gives way, looked for in steps and
 * then by halving, each try a whole run of the case. A schedule may give way on a mild day and hold on a hotter one; that day counts.
 */
final class ScheduledCeilings {
    private static final double LOWEST = 263.15; // K
    private static final double HIGHEST = 343.15; // K
    /** K, what halving leaves. */
    static final double CLOSE = 0.05;

    private ScheduledCeilings() {}

    /** K, case by case; the ends of the range where nothing gives way or nothing holds. */
    static double[] of(VehicleSpec spec, Plant plant, List<Case> cases, Hardware hardware) {
        return IntStream.range(0, cases.size())
                .parallel()
                .mapToDouble(i -> ceiling(spec, plant.with(spec.schedule()), cases.get(i), hardware))
                .toArray();
    }

    private static double ceiling(VehicleSpec spec, Plant plant, Case kase, Hardware hardware) {
        double low = LOWEST;
        double high = MilderDays.MILDEST;
        while (high < HIGHEST && holds(spec, plant, kase, high, hardware)) {
            low = high;
            high = Math.min(HIGHEST, high + MilderDays.STEP);
        }
        while (high - low > CLOSE) {
            double middle = (low + high) / 2;
            if (holds(spec, plant, kase, middle, hardware)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static boolean holds(VehicleSpec spec, Plant plant, Case kase, double ambient, Hardware hardware) {
        return new Rehearsal(spec, plant, kase, ambient, hardware).passage().holds();
    }
}
