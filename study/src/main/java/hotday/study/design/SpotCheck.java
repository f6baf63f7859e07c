package hotday.study.design;

import hotday.study.design.Judge.Demanded;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.spec.FanSchedule;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What must hold too, but is too much to be looked at with every schedule of a search: milder days, vehicles that this one may turn out to be. It is
 * looked at now and then, and what gives way is then looked at always. Any number of threads.
 */
record SpotCheck(List<Demanded> all) {
    /** Put among what is always looked at, at once. */
    private static final int MOST_ADDED = 4;

    SpotCheck {
        all = List.copyOf(all);
    }

    private record Failing(Demanded demanded, double violation) {}

    /** What gives way, the worst first. */
    List<Demanded> failing(FanSchedule schedule) {
        return failing(schedule, all);
    }

    /** What gives way with other sensors and drives, in the order they were given in. */
    List<Demanded> failing(FanSchedule schedule, Hardware hardware) {
        return IntStream.range(0, all.size())
                .parallel()
                .mapToObj(all::get)
                .filter(d -> violation(schedule, d.with(hardware)) > 0.0)
                .toList();
    }

    /** What gives way, the worst first, of steady cases that do not come to a balance or whose balance gives way: quick, and finds most. */
    List<Demanded> suspected(FanSchedule schedule) {
        Schedule whole = Schedule.of(schedule);
        return failing(schedule, all.stream().filter(d -> suspected(whole, d)).toList());
    }

    /** The same, and of all cases that move. */
    List<Demanded> likely(FanSchedule schedule) {
        Schedule whole = Schedule.of(schedule);
        return failing(
                schedule,
                all.stream()
                        .filter(d -> !d.part().kase().steady() || suspected(whole, d))
                        .toList());
    }

    private static boolean suspected(Schedule schedule, Demanded d) {
        return d.part().kase().steady()
                && d.stand()
                        .calm(schedule)
                        .map(calm -> d.kept().violation(calm.headroom()) > 0.0)
                        .orElse(true);
    }

    private static List<Demanded> failing(FanSchedule schedule, List<Demanded> where) {
        return SideBySide.map(where, d -> new Failing(d, violation(schedule, d))).stream()
                .filter(f -> f.violation() > 0.0)
                .sorted(Comparator.comparing(Failing::violation).reversed())
                .map(Failing::demanded)
                .toList();
    }

    private static double violation(FanSchedule schedule, Demanded demanded) {
        return demanded.kept().violation(demanded.stand().passage(schedule).headroom());
    }

    /** The first few. */
    static List<Demanded> few(List<Demanded> failing) {
        return failing.subList(0, Math.min(MOST_ADDED, failing.size()));
    }
}
