package hotday.study.design;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.study.design.ScheduleReport.KeyOff;
import hotday.study.design.ScheduleReport.Reason;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.FanSchedule.AfterRun;
import hotday.vehicle.spec.VehicleSpec;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The fan after key-off: the least that holds in every case with the engine off what the strongest after-run holds, within what the battery
 * may give. None where none is needed. Also says what a given one does.
 */
final class AfterRunDesign {
    private static final double CELSIUS = 273.15;
    private static final double HOUR = 3600.0;
    private static final double[] DEMANDS = {0.3, 0.5, 0.7, 1.0};
    private static final double[] TIMES = {30.0, 60.0, 120.0, 180.0, 300.0, 600.0};
    /** K: a step of the sensor. */
    private static final double STEP = 1.0;
    /** K that coolant must fall below where it began. */
    private static final double FALL = 3.0;

    private final VehicleSpec spec;
    private final Plant plant;
    private final List<Case> soaks;
    private final Display display;

    AfterRunDesign(VehicleSpec spec, Plant plant, List<Case> cases, Display display) {
        this.spec = spec;
        this.plant = plant;
        this.soaks = cases.stream().filter(Soak::has).toList();
        this.display = display;
    }

    /** A rule, what it does, and why it is that one. */
    record Designed(FanSchedule schedule, List<Reason> reasons) {}

    /** All the fan has for ten minutes after any drive, as long as the battery is no flatter than a start needs. */
    static AfterRun strongest() {
        return new AfterRun(List.of(CELSIUS + 60), List.of(1.0), CELSIUS + 60, CELSIUS + 50, 600.0, 11.5);
    }

    /** The same schedule with the after-run it needs. */
    Designed designed(FanSchedule schedule) {
        AfterRun none = none();
        List<Soak> without = soaks(schedule, none);
        List<Soak> most = soaks(schedule, strongest());
        if (holds(without, most)) {
            return new Designed(with(schedule, none), soaks.isEmpty() ? List.of() : List.of(unneeded(without)));
        }
        double from = from(without);
        List<Tried> tried = Stream.iterate(0, i -> i < DEMANDS.length * TIMES.length, i -> i + 1)
                .parallel()
                .map(i -> tried(schedule, rule(from, DEMANDS[i / TIMES.length], TIMES[i % TIMES.length])))
                .filter(t -> t.charge() <= allowed() && t.voltage() >= t.rule().battery())
                .toList();
        Tried best = tried.stream()
                .filter(t -> holds(t.soaks(), most))
                .min(Comparator.comparingDouble(Tried::charge))
                .or(() -> tried.stream().max(Comparator.comparingDouble(Tried::room)))
                .orElse(new Tried(none, without));
        return new Designed(with(schedule, best.rule()), List.of(needed(best, without, holds(best.soaks(), most))));
    }

    private record Tried(AfterRun rule, List<Soak> soaks) {
        double charge() {
            return soaks.stream().mapToDouble(Soak::charge).max().orElse(0.0);
        }

        double voltage() {
            return soaks.stream().mapToDouble(Soak::voltage).min().orElse(Double.POSITIVE_INFINITY);
        }

        double room() {
            return worst(soaks).room();
        }
    }

    private Tried tried(FanSchedule schedule, AfterRun rule) {
        return new Tried(rule, soaks(schedule, rule));
    }

    private List<Soak> soaks(FanSchedule schedule, AfterRun rule) {
        FanSchedule other = with(schedule, rule);
        return soaks.stream()
                .map(kase -> Soak.of(spec, plant, other, kase, Hardware.USUAL))
                .toList();
    }

    private static boolean holds(List<Soak> these, List<Soak> those) {
        return IntStream.range(0, these.size()).allMatch(i -> these.get(i).holdsWhat(those.get(i)));
    }

    private AfterRun none() {
        return rule(lowest(), 0.0, 0.0);
    }

    /** What begins cooler stays below every limit without a fan: it rises by as much as it did here. Whole degrees. */
    private double from(List<Soak> without) {
        double hottest = without.stream()
                .mapToDouble(s -> s.highest() - s.rise() - STEP)
                .min()
                .orElseThrow();
        return Math.max(lowest(), Math.floor(hottest - CELSIUS) + CELSIUS);
    }

    /** Whole degrees. */
    private double lowest() {
        return Math.ceil(spec.thermostat().opens() - CELSIUS) + CELSIUS + 2 * STEP;
    }

    /** Ends before the thermostat shuts, else it runs its whole time after every drive. */
    private AfterRun rule(double from, double demand, double longest) {
        double until = Math.max(lowest() - STEP, from - FALL);
        return new AfterRun(
                List.of(from),
                List.of(demand),
                from,
                until,
                longest,
                spec.schedule().details().afterRun().battery());
    }

    static FanSchedule with(FanSchedule s, AfterRun rule) {
        return s.with(s.details().with(rule));
    }

    /** What the battery may give, A s. */
    double allowed() {
        return spec.limits().afterRunShare() * spec.electrical().batteryCapacity();
    }

    private static Soak worst(List<Soak> soaks) {
        return soaks.stream().min(Comparator.comparingDouble(Soak::room)).orElseThrow();
    }

    private Reason unneeded(List<Soak> without) {
        Soak worst = worst(without);
        Limit limit = worst.tightest();
        double room = worst.rooms().getOrDefault(limit, 0.0);
        return new Reason(
                "after-run",
                room >= 0.0
                        ? "none needed: " + worst.kase().title() + " leaves "
                                + ScheduleFindings.value(limit, room, display) + " to " + limit.title()
                        : "none: not even the whole fan for ten minutes keeps " + limit.title() + " in "
                                + worst.kase().title());
    }

    private Reason needed(Tried best, List<Soak> without, boolean holds) {
        Soak bare = worst(without);
        String why = "without it " + bare.tightest().title() + " gives way by "
                + ScheduleFindings.value(bare.tightest(), -bare.rooms().get(bare.tightest()), display) + " in "
                + bare.kase().title();
        String how = String.format(
                Locale.ROOT,
                "; %.2f Ah of the %.1f Ah that the battery may give, ",
                best.charge() / HOUR,
                allowed() / HOUR);
        String end = holds
                ? "the least of those that hold"
                : "the most that may be drawn; what holds takes more (limits.after_run_charge)";
        String begin = "; what is shut off below "
                + display.format(Quantity.TEMPERATURE, best.rule().from()) + " needs none";
        return new Reason("after-run", why + how + end + begin);
    }

    /** What a schedule does after key-off, in the case with the least room; nothing where the engine is never switched off. */
    Optional<KeyOff> keyOff(FanSchedule schedule) {
        if (soaks.isEmpty()) {
            return Optional.empty();
        }
        AfterRun rule = schedule.details().afterRun();
        List<List<Soak>> both = (rule.longest() > 0.0 ? Stream.of(rule, none()) : Stream.of(rule))
                .parallel()
                .map(each -> soaks(schedule, each))
                .toList();
        List<Soak> now = both.get(0);
        Soak worst = worst(now);
        Soak without = both.get(both.size() - 1).get(now.indexOf(worst));
        Limit limit = worst.tightest();
        return Optional.of(new KeyOff(
                worst.kase(),
                limit,
                worst.rooms().getOrDefault(limit, 0.0),
                without.rooms().getOrDefault(limit, 0.0),
                now.stream().mapToDouble(Soak::charge).max().orElse(0.0),
                allowed(),
                now.stream().mapToDouble(Soak::seconds).max().orElse(0.0),
                now.stream().mapToDouble(Soak::voltage).min().orElse(0.0)));
    }
}
