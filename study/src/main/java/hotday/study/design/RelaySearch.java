package hotday.study.design;

import hotday.study.design.Judge.Demanded;
import hotday.study.design.Judge.Verdict;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;

/**
 * The thresholds of relays under the output of a schedule that cost least and hold, on milder days too; in steps of five percent, knob by knob
 * until none gets better. A relay comes in with a jump, cools quickly and goes out, and the head pressure climbs while the fan rests and comes
 * up again; where that does not hold, the head-pressure curve is held on to for longer and the fan let rest for less.
 */
final class RelaySearch {
    private static final double STEP = 0.05;
    private static final double LOWEST = 0.20;
    private static final int ROUNDS = 4;
    /** Least times resting that are tried where that of the schedule does not hold, s. */
    private static final double[] RESTS = {Double.POSITIVE_INFINITY, 20.0, 10.0, 5.0};
    /** Hysteresis of the head-pressure curve with them, where that of the schedule is less, Pa. */
    private static final double HELD_ON = 400e3;

    private final VehicleSpec spec;
    private final SpotCheck milder;
    private final List<Double> speeds;
    private final DoubleConsumer progress;
    private Judge judge;
    private FanSchedule schedule;
    /** Of the whole search; how often thresholds are looked for is not known before, so each time takes half of what is left. */
    private double done;

    /**
     * @param schedule with the least time resting and the hysteresis that relays need
     * @param holds whether all holds that a fan at full speed holds
     */
    record Found(Relays relays, FanSchedule schedule, boolean holds) {}

    RelaySearch(
            VehicleSpec spec, Plant plant, List<Case> cases, Aim aim, List<Double> speeds, DoubleConsumer progress) {
        this.spec = spec;
        this.progress = progress;
        this.speeds = speeds;
        this.schedule = spec.schedule();
        this.milder = new SpotCheck(MilderDays.of(spec, plant.with(schedule), cases, Hardware.USUAL));
        this.judge = Judge.of(
                spec,
                plant.with(schedule),
                Hardware.USUAL,
                aim,
                Judge.withHolding(StandardDay.of(spec), cases, spec.designAmbient()));
    }

    Found best() {
        Relays best = from(start());
        boolean holds = holds(best);
        for (double rest : RESTS) {
            FanSchedule calmer = calmer(schedule, rest);
            if (!holds && !calmer.equals(schedule)) {
                schedule = calmer;
                best = from(best);
                holds = holds(best);
            }
        }
        return new Found(best, schedule, holds);
    }

    private static FanSchedule calmer(FanSchedule s, double rest) {
        FanSchedule.Details d = s.details();
        return s.with(d.withHeadHysteresis(Math.max(d.headHysteresis(), HELD_ON))
                .with(d.switching().resting(Math.min(rest, d.switching().leastOff()))));
    }

    /** Whether milder days hold as well as the day; those that do not are put among what relays must hold. */
    private boolean holds(Relays relays) {
        List<Demanded> failing = milder.failing(schedule, Hardware.USUAL.with(relays::drive));
        boolean day = with(relays).verdict(schedule).violation() == 0.0;
        judge = judge.with(SpotCheck.few(failing));
        return day && failing.isEmpty();
    }

    private Relays from(Relays start) {
        Relays now = start;
        Verdict verdict = with(now).verdict(schedule);
        int knobs = 2 * speeds.size();
        double half = (1.0 - done) / 2;
        for (int round = 0; round < ROUNDS; round++) {
            boolean better = false;
            for (int knob = 0; knob < knobs; knob++) {
                progress.accept(done + half * (round * knobs + knob) / (ROUNDS * knobs));
                List<Relays> others = others(now, knob);
                Verdict best = verdict;
                Verdict[] verdicts = others.stream()
                        .parallel()
                        .map(r -> with(r).verdict(schedule, best))
                        .toArray(Verdict[]::new);
                for (int i = 0; i < verdicts.length; i++) {
                    if (verdicts[i].compareTo(verdict) < 0) {
                        verdict = verdicts[i];
                        now = others.get(i);
                        better = true;
                    }
                }
            }
            if (!better) {
                break;
            }
        }
        done += half;
        return now;
    }

    /** Each stage comes in a little above the speed of the one before. */
    private Relays start() {
        List<Double> up = new ArrayList<>();
        List<Double> down = new ArrayList<>();
        for (int i = 0; i < speeds.size(); i++) {
            double before = i == 0 ? 0.2 : speeds.get(i - 1) + STEP;
            up.add(Math.min(0.95, before));
            down.add(Math.max(STEP, before - 0.25));
        }
        return new Relays(speeds, up, down);
    }

    private List<Relays> others(Relays now, int knob) {
        int stage = knob / 2;
        boolean up = knob % 2 == 0;
        return IntStream.rangeClosed(1, 19)
                .mapToObj(i -> {
                    List<Double> ups = new ArrayList<>(now.up());
                    List<Double> downs = new ArrayList<>(now.down());
                    (up ? ups : downs).set(stage, Math.round(100 * STEP * i) / 100.0);
                    return possible(ups, downs) ? new Relays(speeds, ups, downs) : null;
                })
                .filter(r -> r != null && !r.equals(now))
                .toList();
    }

    private static boolean possible(List<Double> up, List<Double> down) {
        for (int i = 0; i < up.size(); i++) {
            boolean rises = i == 0 ? up.get(i) >= LOWEST : up.get(i) > up.get(i - 1);
            if (!rises || down.get(i) > up.get(i) - STEP + 1e-9) {
                return false;
            }
        }
        return true;
    }

    private Judge with(Relays relays) {
        return judge.with(Hardware.USUAL.with(relays::drive));
    }
}
