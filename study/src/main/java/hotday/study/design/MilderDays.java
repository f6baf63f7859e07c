package hotday.study.design;

import hotday.study.design.Judge.Demanded;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Cases on days from 5 degC up to the design day, in steps. A schedule that holds on the design day may give way on a milder one: a fan that
 * comes and goes lets the head pressure climb while it rests.
 */
final class MilderDays {
    /** K, the mildest. */
    static final double MILDEST = 278.15;
    /** K from one day to the next where cases settle: what gives way does so over two kelvins and more. */
    private static final double STEP = 1.0;
    /** K where they move, which takes longer. */
    private static final double MOVING_STEP = 2.0;
    /** K of outside temperature that a fan at full speed has to spare where a schedule must hold: nobody needs the last of it on a day that is not the hottest. */
    private static final double SPARE = 2.0;

    private MilderDays() {}

    /** K from one day to the next. */
    static double step(Case kase) {
        return kase.steady() ? STEP : MOVING_STEP;
    }

    /** What must hold. */
    static List<Demanded> of(VehicleSpec spec, Plant plant, List<Case> cases, Hardware hardware) {
        List<DayPart> parts = new ArrayList<>();
        for (Case kase : cases) {
            double step = step(kase);
            for (double day = spec.designAmbient() - step; counts(kase) && day >= MILDEST; day -= step) {
                parts.add(new DayPart(kase, day, 0.0));
            }
        }
        return parts.stream()
                .parallel()
                .map(part -> demanded(new Stand(spec, plant, part, hardware), part))
                .toList();
    }

    /** What is after key-off is a matter of the after-run. */
    private static boolean counts(Case kase) {
        return !kase.forCold() && !Soak.has(kase);
    }

    private static Demanded demanded(Stand stand, DayPart part) {
        List<Limit> kept = stand.passage(Schedules.full()).headroom().entrySet().stream()
                .filter(e -> e.getValue() >= SPARE * e.getKey().perKelvin())
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
        return new Demanded(part, stand, kept);
    }
}
