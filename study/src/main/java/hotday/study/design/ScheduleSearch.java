package hotday.study.design;

import hotday.study.design.Judge.Verdict;
import hotday.vehicle.spec.FanSchedule;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;

/**
 * The cheapest schedule that holds: differential evolution (Storn and Price 1997, best/1/bin), then a pattern search from its best. A
 * generation is made before any of it is judged and every candidate is judged by itself, and the search always begins the same way, so the result
 * hangs on nothing but the vehicle.
 */
final class ScheduleSearch {
    private static final int POPULATION = 20;
    private static final int GENERATIONS = 24;
    private static final long BEGIN = 1;
    private static final double WEIGHT = 0.6;
    private static final double CROSSOVER = 0.8;
    private static final double FIRST_STEP = 0.08;
    private static final double LAST_STEP = 0.01;

    private final Judge judge;
    private final Knobs knobs;
    private final Random random;
    private final DoubleConsumer progress;
    private final BooleanSupplier cancelled;
    private int judged;

    /** Where a search has come to. */
    record Found(double[] at, FanSchedule schedule, Verdict verdict, int judged) {}

    ScheduleSearch(Judge judge, Knobs knobs, DoubleConsumer progress, BooleanSupplier cancelled) {
        this.judge = judge;
        this.knobs = knobs;
        this.random = new Random(BEGIN);
        this.progress = progress;
        this.cancelled = cancelled;
    }

    Found find(List<double[]> starts) {
        double[][] at = new double[POPULATION][];
        for (int i = 0; i < POPULATION; i++) {
            at[i] = i < starts.size()
                    ? starts.get(i).clone()
                    : random.doubles(Knobs.COUNT).toArray();
        }
        Verdict worst = new Verdict(Double.MAX_VALUE, Double.MAX_VALUE);
        Verdict[] verdicts = judged(at, i -> worst);
        for (int g = 0; g < GENERATIONS; g++) {
            progress.accept(0.7 * (g + 1) / GENERATIONS);
            double[][] trials = trials(at, best(verdicts));
            Verdict[] before = verdicts;
            Verdict[] after = judged(trials, i -> before[i]);
            for (int i = 0; i < POPULATION; i++) {
                if (after[i].compareTo(verdicts[i]) <= 0) {
                    verdicts[i] = after[i];
                    at[i] = trials[i];
                }
            }
        }
        int best = best(verdicts);
        return polished(at[best], verdicts[best]);
    }

    /** From a setting that is nearly good, without looking far. */
    Found improved(double[] at) {
        return polished(at, judge.verdict(knobs.schedule(at)));
    }

    private double[][] trials(double[][] at, int best) {
        double[][] trials = new double[POPULATION][];
        for (int i = 0; i < POPULATION; i++) {
            double[] a = at[random.nextInt(POPULATION)];
            double[] b = at[random.nextInt(POPULATION)];
            double[] from = random.nextInt(3) == 0 ? at[i] : at[best];
            int sure = random.nextInt(Knobs.COUNT);
            double[] trial = at[i].clone();
            for (int k = 0; k < Knobs.COUNT; k++) {
                if (k == sure || random.nextDouble() < CROSSOVER) {
                    trial[k] = Math.min(1.0, Math.max(0.0, from[k] + WEIGHT * (a[k] - b[k])));
                }
            }
            trials[i] = trial;
        }
        return trials;
    }

    /** Each knob a step up and down, all judged, the best taken; the step halves where none is better. */
    private Found polished(double[] from, Verdict verdict) {
        double[] at = from;
        Verdict best = verdict;
        double step = FIRST_STEP;
        while (step >= LAST_STEP) {
            double[][] around = around(at, step);
            Verdict bar = best;
            Verdict[] verdicts = judged(around, i -> bar);
            int i = best(verdicts);
            if (verdicts[i].compareTo(best) < 0) {
                double[] before = at;
                best = verdicts[i];
                at = around[i];
                double[] further = further(before, at);
                Verdict bar2 = best;
                Verdict beyond = judged(new double[][] {further}, k -> bar2)[0];
                if (beyond.compareTo(best) < 0) {
                    best = beyond;
                    at = further;
                }
            } else {
                step /= 2;
            }
            progress.accept(1.0 - 0.3 * Math.log(step / LAST_STEP * 2) / Math.log(FIRST_STEP / LAST_STEP * 2));
        }
        return new Found(at, knobs.schedule(at), best, judged);
    }

    private static double[][] around(double[] at, double step) {
        double[][] all = new double[2 * Knobs.COUNT][];
        for (int k = 0; k < Knobs.COUNT; k++) {
            all[2 * k] = moved(at, k, step);
            all[2 * k + 1] = moved(at, k, -step);
        }
        return all;
    }

    private static double[] moved(double[] at, int knob, double by) {
        double[] out = at.clone();
        out[knob] = Math.min(1.0, Math.max(0.0, out[knob] + by));
        return out;
    }

    private static double[] further(double[] before, double[] at) {
        double[] out = at.clone();
        for (int k = 0; k < out.length; k++) {
            out[k] = Math.min(1.0, Math.max(0.0, at[k] + (at[k] - before[k])));
        }
        return out;
    }

    private interface Bar {
        Verdict of(int candidate);
    }

    private Verdict[] judged(double[][] at, Bar bar) {
        if (cancelled.getAsBoolean()) {
            throw new java.util.concurrent.CancellationException();
        }
        judged += at.length;
        return IntStream.range(0, at.length)
                .parallel()
                .mapToObj(i -> judge.verdict(knobs.schedule(at[i]), bar.of(i)))
                .toArray(Verdict[]::new);
    }

    private static int best(Verdict[] verdicts) {
        return IntStream.range(0, verdicts.length)
                .boxed()
                .min((a, b) -> verdicts[a].compareTo(verdicts[b]))
                .orElseThrow();
    }

    /** Where searches start: in the middle, mild, and late. */
    static List<double[]> starts() {
        double[] middle = new double[Knobs.COUNT];
        Arrays.fill(middle, 0.5);
        double[] late = {0.8, 0.5, 0.3, 0.6, 0.7, 0.6, 0.0, 0.3, 0.3};
        double[] early = {0.3, 0.9, 0.3, 0.6, 0.3, 0.8, 0.0, 0.3, 0.3};
        return List.of(middle, late, early);
    }
}
