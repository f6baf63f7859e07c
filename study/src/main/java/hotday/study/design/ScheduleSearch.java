package hotday.study.design;

import hotday.study.design.Judge.Verdict;
import hotday.vehicle.spec.FanSchedule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;

/**
 * The cheapest schedule that holds. Some families of settings, strewn over the whole range, evolve by themselves (evolution strategy with the best
 * kept, Beyer and Schwefel 2002), then together; from each of the best every knob is turned until nothing gets better, and from what is best
 * then all pairs of knobs. What is judged side by side is chosen before, so the result does not hang on threads.
 */
final class ScheduleSearch {
    private static final int FAMILIES = 2;
    /** Judged side by side. */
    private static final int BROOD = 48;
    /** Broods that a family begins with. */
    private static final int STREWN = 3;
    /** Settings that a family keeps. */
    private static final int KEPT = 12;

    private static final int GENERATIONS_APART = 5;
    private static final int GENERATIONS_TOGETHER = 5;
    /** Of the best that the families end with: from so many knobs are turned till nothing gets better. */
    private static final int DESCENTS = 4;

    private static final int MOST_SWEEPS = 2;
    /** Shares of a knob's range by which settings are changed, one of them at random. */
    private static final double[] FAR = {0.03, 0.1, 0.3};

    private static final int[] TURNS = {1, 2, 4};
    private static final int[] PAIR_TURNS = {4, 1};
    /** What a search judges side by side, about how often: for its progress. */
    private static final int USUAL = FAMILIES * (STREWN + GENERATIONS_APART) + GENERATIONS_TOGETHER + 20;

    /** Where judging is broken off as long as nothing better is known. */
    private static final Verdict HOPELESS = new Verdict(5.0, Double.MAX_VALUE);

    private Judge judge;
    private final Knobs knobs;
    private final Random random;
    private final DoubleConsumer progress;
    private final BooleanSupplier cancelled;
    private final Set<FanSchedule> seen = new HashSet<>();
    private int broods;

    /** Where a search has come to. */
    record Found(int[] at, FanSchedule schedule, Verdict verdict) {}

    private record Tried(int[] at, Verdict verdict) {
        boolean better(Tried other) {
            return verdict.compareTo(other.verdict) < 0;
        }
    }

    private record Candidate(int[] at, FanSchedule schedule) {}

    ScheduleSearch(Judge judge, Knobs knobs, long seed, DoubleConsumer progress, BooleanSupplier cancelled) {
        this.judge = judge;
        this.knobs = knobs;
        this.random = new Random(seed);
        this.progress = progress;
        this.cancelled = cancelled;
    }

    Found find() {
        List<Tried> best = new ArrayList<>();
        for (int family = 0; family < FAMILIES; family++) {
            List<Tried> kept = List.of();
            for (int i = 0; i < STREWN; i++) {
                kept = kept(
                        kept,
                        IntStream.range(0, BROOD).mapToObj(k -> anywhere()).toList());
            }
            best.addAll(evolved(kept, GENERATIONS_APART));
        }
        best.sort(Comparator.comparing(Tried::verdict));
        best = evolved(best.subList(0, KEPT), GENERATIONS_TOGETHER);
        judge = judge.near(knobs.schedule(best.get(0).at()));
        Tried found = best.get(0);
        for (Tried each : best.subList(0, DESCENTS)) {
            Tried end = descended(descended(each, true), false);
            found = end.better(found) ? end : found;
        }
        return found(inPairs(found));
    }

    private Found found(Tried tried) {
        return new Found(tried.at(), knobs.schedule(tried.at()), tried.verdict());
    }

    /** From a setting that is nearly good, without looking far. */
    Found improved(int[] at) {
        return found(descended(new Tried(at, judge.verdict(knobs.schedule(at))), false));
    }

    private List<Tried> evolved(List<Tried> from, int generations) {
        List<Tried> kept = from;
        for (int i = 0; i < generations; i++) {
            List<Tried> parents = kept;
            kept = kept(
                    kept,
                    IntStream.range(0, BROOD).mapToObj(k -> child(parents)).toList());
        }
        return kept;
    }

    /** The best of those that are there and of new ones. */
    private List<Tried> kept(List<Tried> before, List<int[]> more) {
        Verdict bar = before.size() < KEPT ? HOPELESS : before.get(KEPT - 1).verdict();
        List<Tried> all = new ArrayList<>(before);
        all.addAll(judged(more, bar));
        all.sort(Comparator.comparing(Tried::verdict));
        return List.copyOf(all.subList(0, Math.min(KEPT, all.size())));
    }

    private int[] child(List<Tried> parents) {
        int[] child = parents.get(random.nextInt(parents.size())).at().clone();
        int[] other = parents.get(random.nextInt(parents.size())).at();
        if (random.nextBoolean()) {
            for (int k = 0; k < Knobs.COUNT; k++) {
                child[k] = random.nextBoolean() ? other[k] : child[k];
            }
        }
        return around(child);
    }

    private Tried descended(Tried from, boolean coarse) {
        Tried now = from;
        Tried before;
        do {
            before = now;
            for (int k = 0; k < Knobs.COUNT; k++) {
                now = coarse && !knobs.first(k) ? now : turned(now, coarse, k);
            }
            for (int[] pair : Knobs.PAIRS) {
                now = turned(now, coarse, pair);
            }
        } while (now != before);
        return now;
    }

    /** The best with some knobs turned by a few steps, all by as many. */
    private Tried turned(Tried now, boolean coarse, int... which) {
        List<int[]> all = new ArrayList<>();
        for (int by : TURNS) {
            for (int sign = -1; sign <= 1; sign += 2) {
                int[] moved = now.at().clone();
                for (int k : which) {
                    moved[k] = knobs.bounded(k, moved[k] + sign * by * (coarse ? knobs.coarse(k) : 1));
                }
                all.add(moved);
            }
        }
        return best(judged(all, now.verdict()), now);
    }

    /** All pairs of knobs turned all four ways, until none is better. */
    private Tried inPairs(Tried from) {
        Tried now = from;
        for (int i = 0; i < MOST_SWEEPS; i++) {
            Tried better = sweep(now);
            if (better == now) {
                break;
            }
            now = descended(better, false);
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
            now = best(judged(all.subList(i, Math.min(all.size(), i + BROOD)), now.verdict()), now);
        }
        return now;
    }

    private int[] anywhere() {
        return IntStream.range(0, Knobs.COUNT)
                .map(k -> knobs.first(k) ? coarse(k, random.nextInt(knobs.settings(k))) : knobs.usual(k))
                .toArray();
    }

    private int coarse(int knob, int setting) {
        int step = knobs.coarse(knob);
        return knobs.bounded(knob, (int) Math.round((double) setting / step) * step);
    }

    /** One knob in any case and a third of the others turned somewhat, in coarse steps. */
    private int[] around(int[] at) {
        double far = FAR[random.nextInt(FAR.length)];
        int[] moved = at.clone();
        int sure = random.nextInt(Knobs.COUNT);
        for (int k = 0; k < Knobs.COUNT; k++) {
            double by = random.nextGaussian() * far * knobs.settings(k);
            if ((k == sure || random.nextInt(3) == 0) && knobs.first(k)) {
                moved[k] = coarse(k, at[k] + (int) (by + Math.signum(by) * knobs.coarse(k)));
            }
        }
        return moved;
    }

    private static Tried best(List<Tried> tried, Tried now) {
        Tried best = now;
        for (Tried t : tried) {
            best = t.better(best) ? t : best;
        }
        return best;
    }

    /** Those that were not judged before. */
    private List<Tried> judged(List<int[]> settings, Verdict bar) {
        broods += settings.size() < BROOD ? 0 : 1;
        progress.accept(Math.min(1.0, broods / (double) USUAL));
        if (cancelled.getAsBoolean()) {
            throw new CancellationException();
        }
        List<Candidate> fresh = settings.stream()
                .map(at -> new Candidate(at, knobs.schedule(at)))
                .filter(c -> seen.add(c.schedule()))
                .toList();
        return fresh.stream()
                .parallel()
                .map(c -> new Tried(c.at(), judge.verdict(c.schedule(), bar)))
                .toList();
    }
}
