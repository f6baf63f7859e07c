package hotday.study.design;

import hotday.study.design.Judge.Demanded;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;

/**
 * Cases on days from 5 degC up to the design day, in steps. A schedule that holds on the design day may give way on a milder one: a fan that
 * comes and goes lets the head pressure climb while it rests.
 */
final class MilderDays {
    /** K, the mildest. */
    static final double MILDEST = 278.15;
    /** K from one day to the next. */
    static final double STEP = 1.0;
    /** K of outside temperature that a fan at full speed has to spare where a schedule must hold: nobody needs the last of it on a day that is not the hottest. */
    private static final double SPARE = 2.0;

    private MilderDays() {}

    /** What must hold. */
    static List<Demanded> of(VehicleSpec spec, Plant plant, List<Case> cases, Hardware hardware) {
        List<DayPart> parts = new ArrayList<>();
        for (Case kase : cases) {
            for (double day = spec.designAmbient() - STEP; counts(kase) && day >= MILDEST; day -= STEP) {
                parts.add(new DayPart(kase, day, 0.0));
            }
        }
        return parts.stream()
                .map(part -> Judge.demanded(spec, plant, hardware, part, SPARE))
                .toList();
    }

    /** What is after key-off is a matter of the after-run. */
    private static boolean counts(Case kase) {
        return !kase.forCold() && !Soak.has(kase);
    }
}
