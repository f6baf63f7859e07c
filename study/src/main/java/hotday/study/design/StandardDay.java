package hotday.study.design;

import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;

/**
 * The day that energy, loudness and switching are counted over: mostly mild, with a little of the design day. Which case comes how often is
 * our choice, common practice and no source; docs/schedule.md lists it.
 */
public final class StandardDay {
    private static final double CELSIUS = 273.15;
    private static final double MILD = CELSIUS + 15;
    private static final double WARM = CELSIUS + 25;
    private static final double HOT = CELSIUS + 35;

    private StandardDay() {}

    private record Line(String kase, double mild, double warm, double hot, double design) {}

    /** Percent of the day. */
    private static final List<Line> LINES = List.of(
            new Line("hot-idle", 3, 5, 3, 1),
            new Line("city-crawl", 5, 9, 5, 2),
            new Line("city-trace", 0, 12, 0, 0),
            new Line("motorway", 12, 18, 10, 2),
            new Line("loaded-climb", 0, 5, 3, 1),
            new Line("low-range-crawl", 0, 2, 1, 1));

    /** Its pieces for a vehicle; those at the design ambient come first. */
    public static List<DayPart> of(VehicleSpec spec) {
        List<DayPart> parts = new ArrayList<>();
        LINES.forEach(l -> add(parts, l, spec.designAmbient(), l.design));
        LINES.forEach(l -> add(parts, l, HOT, l.hot));
        LINES.forEach(l -> add(parts, l, WARM, l.warm));
        LINES.forEach(l -> add(parts, l, MILD, l.mild));
        return parts;
    }

    private static void add(List<DayPart> to, Line line, double ambient, double percent) {
        if (percent > 0) {
            to.add(new DayPart(named(line.kase), ambient, percent / 100));
        }
    }

    private static Case named(String id) {
        return StandardCases.all().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
