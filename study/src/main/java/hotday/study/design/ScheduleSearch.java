package hotday.study.design;

import hotday.study.design.Judge.Demanded;
import hotday.study.design.Judge.Verdict;
import hotday.vehicle.spec.FanSchedule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The cheapest schedule that holds. One curve after the other is given every shape from straight to a step, wherever it begins, with the rest as
 * it is; from the most promising, every knob is turned until nothing gets better, and from what is best then all pairs of knobs. Nothing is
 * drawn by lot, and what is judged side by side is chosen before, so the result hangs neither on a seed nor on threads.
 */
final class ScheduleSearch {
    /** Curves as they are given other shapes: which head-pressure curve is best hangs on the coolant curve, and the other way round. */
    private static final List<Stage> STAGES =
            List.of(new Stage(Knobs.HEAD, 2), new Stage(Knobs.COOLANT, 2), new Stage(Knobs.HEAD, 1));
    /** A shape that costs so many times what is there is not gone on from. */
    private static final double WORTH = 1.15;
    /** W for a kelvin by which a shape gives way: it may still be made to hold. */
    private static final double GIVING_WAY = 10.0;

    /** The same in one descent after the other towards what holds: where holding may cost anything at once, the way leads far off. */
    private static final double[] DEARER = {3.0, 10.0};

    private static final int MOST_SWEEPS = 2;
    private static final int[] TURNS = {1, 2, 4};
    private static final int[] PAIR_TURNS = {4, 1};
    /** Judged side by side, at most. */
    private static final int BROOD = 48;
    /** Times that what gives way in a spot check is put among what is always looked at, at one place of the search. */
    private static final int CHECKS = 4;
    /** Schedules that a search looks at, about: for its progress. */
    private static final int USUAL = 3500;

    private Judge judge;
    private final SpotCheck check;
    private final Knobs knobs;
    private final DoubleConsumer progress;
    private final BooleanSupplier cancelled;
    private final Set<FanSchedule> seen = new HashSet<>();
    private int looked;

    /** @param promising of all shapes, so many of the best by two measures are gone on from */
    private record Stage(Knobs.Shapes shapes, int promising) {}

    /** Where a search has come to. */
    record Found(int[] at, FanSchedule schedule, Verdict verdict) {}

    private record Tried(int[] at, Verdict verdict) {
        boolean better(Tried other) {
            return verdict.compareTo(other.verdict) < 0;
        }

        double weighed() {
            return ScheduleSearch.weighed(verdict, GIVING_WAY);
        }
    }

    /** In which steps knobs are turned, and by what measure one setting is better than another. */
    private record Descent(boolean coarse, Comparator<Verdict> order) {
        static final Descent COARSE = new Descent(true, Comparator.naturalOrder());
        static final Descent FINE = new Descent(false, Comparator.naturalOrder());
    }

    private record Candidate(int[] at, FanSchedule schedule) {}

    /**
     * @param judge of what is always looked at
     * @param check what must hold too
     */
    ScheduleSearch(Judge judge, SpotCheck check, Knobs knobs, DoubleConsumer progress, BooleanSupplier cancelled) {
        this.judge = judge;
        this.check = check;
        this.knobs = knobs;
        this.progress = progress;
        this.cancelled = cancelled;
    }

    Found find() {
        Tried now = judged(knobs.usual());
        for (Stage stage : STAGES) {
            now = checked(reshaped(now, stage), check::likely);
        }
        judge = judge.near(knobs.schedule(now.at()));
        return found(checked(inPairs(now), check::failing));
    }

    /** From a setting that is nearly good, without looking far. */
    Found improved(int[] at) {
        return found(checked(mended(judged(at)), check::failing));
    }

    /** What holds, from a setting that does not: what gives way gets dearer, then counts before all cost. */
    private Tried mended(Tried from) {
        Tried now = from;
        for (double dear : DEARER) {
            now = afresh(now, new Descent(false, Comparator.comparingDouble(so -> weighed(so, dear))));
        }
        return afresh(now, Descent.FINE);
    }

    private Tried afresh(Tried from, Descent how) {
        seen.clear(); // by this measure they may be better
        return descended(from, how);
    }

    private Found found(Tried tried) {
        return new Found(tried.at(), knobs.schedule(tried.at()), tried.verdict());
    }

    /** What it looked at in the end. */
    Judge judge() {
        return judge;
    }

    /** All shapes of a curve with the rest as it is; the most promising are turned in coarse steps, the best of them in fine ones till nothing gets better. */
    private Tried reshaped(Tried now, Stage stage) {
        double most = WORTH * now.weighed();
        List<Tried> tried = judged(shaped(now.at(), stage.shapes(), 0), so -> weighed(so, GIVING_WAY) > most).stream()
                .filter(t -> t.weighed() <= most)
                .toList();
        List<Tried> coarse = new ArrayList<>();
        for (Tried each : promising(tried, stage.promising())) {
            coarse.add(descended(each, Descent.COARSE));
        }
        return coarse.stream()
                .min(Comparator.comparing(Tried::verdict))
                .map(best -> descended(best, Descent.FINE))
                .filter(best -> best.better(now))
                .orElse(now);
    }

    private static List<Tried> promising(List<Tried> tried, int most) {
        return Stream.of(Comparator.comparing(Tried::verdict), Comparator.comparing(Tried::weighed))
                .flatMap(order -> tried.stream().sorted(order).limit(most))
                .distinct()
                .toList();
    }

    private static double weighed(Verdict verdict, double givingWay) {
        return verdict.cost() + givingWay * verdict.violation();
    }

    private List<int[]> shaped(int[] at, Knobs.Shapes shapes, int from) {
        if (from == shapes.knobs().length) {
            return List.of(at);
        }
        List<int[]> all = new ArrayList<>();
        int knob = shapes.knobs()[from];
        for (double place : shapes.places()[from]) {
            int[] moved = at.clone();
            moved[knob] = knobs.bounded(knob, (int) (place * knobs.settings(knob)));
            all.addAll(shaped(moved, shapes, from + 1));
        }
        return all;
    }

    /** What comes of it with all that it is found to let give way. */
    private Tried checked(Tried found, Function<FanSchedule, List<Demanded>> failing) {
        Tried now = found;
        for (int i = 0; i < CHECKS && harder(failing.apply(knobs.schedule(now.at()))); i++) {
            now = descended(judged(now.at()), Descent.FINE);
        }
        return now;
    }

    private boolean harder(List<Demanded> failing) {
        List<Demanded> fresh =
                failing.stream().filter(d -> !judge.parts().contains(d)).toList();
        if (fresh.isEmpty()) {
            return false;
        }
        judge = judge.with(SpotCheck.few(fresh));
        seen.clear(); // by what counts now they may be better
        return true;
    }

    private Tried descended(Tried from, Descent how) {
        Tried now = from;
        Tried before;
        do {
            before = now;
            for (int k = 0; k < Knobs.COUNT; k++) {
                now = turned(now, how, k);
            }
            for (int[] pair : Knobs.SHIFTS) {
                now = turned(now, how, pair);
            }
            boolean moved = now != before;
            now = moved && harder(check.suspected(knobs.schedule(now.at()))) ? judged(now.at()) : now;
        } while (now != before);
        return now;
    }

    /** The best with some knobs turned by a few steps, all by as many. */
    private Tried turned(Tried now, Descent how, int... which) {
        List<int[]> all = new ArrayList<>();
        for (int by : TURNS) {
            for (int sign = -1; sign <= 1; sign += 2) {
                int[] moved = now.at().clone();
                for (int k : which) {
                    moved[k] = knobs.bounded(k, moved[k] + sign * by * (how.coarse() ? knobs.coarse(k) : 1));
                }
                all.add(moved);
            }
        }
        return best(all, now, how.order());
    }

    /** All pairs of knobs turned all four ways, until none is better. */
    private Tried inPairs(Tried from) {
        Tried now = from;
        for (int i = 0; i < MOST_SWEEPS; i++) {
            Tried better = sweep(now);
            if (better == now) {
                break;
            }
            now = descended(better, Descent.FINE);
        }
        return now;
    }

    private Tried sweep(Tried from) {
        List<int[]> all = new ArrayList<>();
        for (int by : PAIR_TURNS) {
            for (int i = 0; i < Knobs.COUNT; i++) {
                for (int k = 0; k < i; k++) {
                    for (int way = 0; way < 4; way++) {
                        int[] moved = from.at().clone();
                        moved[i] = knobs.bounded(i, moved[i] + (way % 2 == 0 ? by : -by));
                        moved[k] = knobs.bounded(k, moved[k] + (way < 2 ? by : -by));
                        all.add(moved);
                    }
                }
            }
        }
        Tried now = from;
        for (int i = 0; i < all.size() && now == from; i += BROOD) {
            now = best(all.subList(i, Math.min(all.size(), i + BROOD)), now, Comparator.naturalOrder());
        }
        return now;
    }

    private Tried best(List<int[]> settings, Tried now, Comparator<Verdict> order) {
        Tried best = now;
        for (Tried t : judged(settings, so -> order.compare(so, now.verdict()) > 0)) {
            best = order.compare(t.verdict(), best.verdict()) < 0 ? t : best;
        }
        return best;
    }

    /** To its end. */
    private Tried judged(int[] at) {
        return new Tried(at, judge.verdict(knobs.schedule(at)));
    }

    /**
     * Those that were not judged before.
     *
     * @param enough when a schedule need not be looked at any further
     */
    private List<Tried> judged(List<int[]> settings, Predicate<Verdict> enough) {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException();
        }
        List<Candidate> fresh = settings.stream()
                .map(at -> new Candidate(at, knobs.schedule(at)))
                .filter(c -> seen.add(c.schedule()))
                .toList();
        List<Tried> tried = SideBySide.map(fresh, c -> new Tried(c.at(), judge.verdict(c.schedule(), enough)));
        looked += fresh.size();
        progress.accept(Math.min(1.0, looked / (double) USUAL));
        return tried;
    }
}
