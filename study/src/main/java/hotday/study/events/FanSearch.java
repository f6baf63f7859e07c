package hotday.study.events;

import hotday.study.events.FanCycle.Proof;
import java.util.ArrayList;
import java.util.List;

/**
 * Fan cycles of one run, from coolant that rose, falls by 4 K or more much faster than it could by itself, and from what
 * the road and the engine did meanwhile.
 */
final class FanSearch {
    /** Coolant of a fan start is above this, K (75 degC). Common practice, no source. */
    private static final double HOT = 348.15;

    private static final double LEAST_RISE = 2.0; // K
    /**
     * An idling engine without a fan sheds one or two kW more than it makes into some 40 kJ/K: 0.05 K/s. Three times that is
     * not its own doing. From memory.
     */
    private static final double LEAST_RATE = 0.15; // K/s

    private static final double TIMES_THE_RISE = 2.5;
    private static final double CREEPS = 20.0 / 3.6; // m/s
    private static final double SLOW = 60.0 / 3.6; // m/s
    private static final double FAN_ALONE = 25.0 / 3.6; // m/s, above it ram air takes part
    private static final double SAME_ENGINE_SPEED = 1.3;
    private static final int BEFORE = 30; // s
    private static final int JUST_BEFORE = 5; // s
    /** The gauge answers a start after so long at most, s. */
    private static final int LATE = 25;
    /** A pull-down has ended when nothing lower came for so long, s. */
    private static final int ENDED = 12;

    private static final double DEEP = 8.0; // K
    private static final double BELOW_PEAK = 10.0; // K
    private static final double PAUSED = 2.0; // times as long as the warm-up before
    private static final double COLD_START = 343.15; // K
    private static final double SAME_SPEED = 0.25;
    private static final double SAME_LOAD = 0.7;

    private final Seconds run;
    private final Compressor.Switching compressor;
    private final LoadStep steps;
    private final Idle idle;
    private final List<Swing> swings;

    FanSearch(Seconds run, Compressor.Switching compressor) {
        this.run = run;
        this.compressor = compressor;
        this.steps = new LoadStep(run);
        this.idle = new Idle(run);
        this.swings = Swing.of(run.coolant).stream().filter(this::fast).toList();
    }

    /** Falls that are fast enough, from hot enough, after a rise, not the first opening of the thermostat. */
    List<Swing> fastFalls() {
        return swings;
    }

    private boolean fast(Swing s) {
        double peak = run.coolant[s.peak()];
        return peak >= HOT
                && peak - run.coolant[s.low()] >= LEAST_RISE - 1e-6
                && rate(s, Swing.LEAST) >= LEAST_RATE
                && !opensFirst(s);
    }

    /** A fan that comes on with the compressor tells nothing about its temperatures. */
    private boolean withCompressor(Swing s) {
        return compressor.startsWithin(s.peak() - BEFORE, s.lost(run.coolant, Swing.LEAST));
    }

    private double rate(Swing s, double kelvin) {
        int lost = s.lost(run.coolant, kelvin);
        return lost < 0 ? 0.0 : kelvin / (lost - s.peak());
    }

    /** After a cold start the first peak is the thermostat's unless the warm-up had paused below it. */
    private boolean opensFirst(Swing s) {
        double peak = run.coolant[s.peak()];
        int c = first(peak - 2.0 * BELOW_PEAK, s.peak());
        int b = first(peak - BELOW_PEAK, s.peak());
        boolean cold = c > 0 && coldBefore(c);
        return cold && s.peak() - b < PAUSED * (b - c);
    }

    private boolean coldBefore(int second) {
        for (int i = 0; i < second; i++) {
            if (run.coolant[i] < COLD_START) {
                return true;
            }
        }
        return false;
    }

    private int first(double coolant, int before) {
        for (int i = 0; i < before; i++) {
            if (run.coolant[i] >= coolant) {
                return i;
            }
        }
        return -1;
    }

    /** Cycles that stand by themselves: at standstill, or with nothing on the road that would cool. */
    List<FanCycle> plain() {
        List<FanCycle> found = new ArrayList<>();
        for (Swing s : swings) {
            if (withCompressor(s)) {
                continue;
            }
            if (standstill(s)) {
                found.add(cycle(s, Proof.STILL));
            } else if (sameRoad(s)) {
                found.add(cycle(s, Proof.ROAD));
            }
        }
        return found;
    }

    /**
     * Further cycles that start where the plain ones do.
     *
     * @param still peak of cycles at standstill, K; NaN for none
     * @param road peak of cycles on the road, K; NaN for none
     */
    List<FanCycle> alike(double still, double road) {
        List<FanCycle> found = new ArrayList<>();
        double step = Math.max(1.0, run.resolution);
        for (Swing s : swings) {
            double peak = run.coolant[s.peak()];
            if (!withCompressor(s) && (standstill(s) || sameRoad(s))) {
                continue;
            }
            if (Math.abs(peak - still) <= 1.5 * step + 1e-6 && speed(s, Swing.LEAST) <= SLOW) {
                found.add(cycle(s, Proof.LIKE_STILL));
            } else if (Math.abs(peak - road) <= 3.0 * step + 1e-6 && rate(s, DEEP) >= LEAST_RATE) {
                found.add(cycle(s, Proof.LIKE_ROAD));
            }
        }
        return found;
    }

    private boolean standstill(Swing s) {
        boolean creeps = idle.stoodThroughout() || speed(s, Swing.LEAST) <= CREEPS;
        return creeps && fasterThanItRose(s) && (evenEngine(s) || seenStart(s).channels() > 0);
    }

    private boolean fasterThanItRose(Swing s) {
        int up = s.peak();
        while (up > s.low() && run.coolant[s.peak()] - run.coolant[up] < LEAST_RISE - 1e-6) {
            up--;
        }
        double rise = (run.coolant[s.peak()] - run.coolant[up]) / Math.max(1, s.peak() - up);
        return rate(s, Swing.LEAST) >= TIMES_THE_RISE * rise;
    }

    private boolean evenEngine(Swing s) {
        double falling = Middle.mean(run.engineSpeed, s.peak(), s.lost(run.coolant, Swing.LEAST) + 1);
        return !(falling > SAME_ENGINE_SPEED * engineSpeedBefore(s));
    }

    private double engineSpeedBefore(Swing s) {
        return Middle.mean(run.engineSpeed, s.peak() - BEFORE, s.peak() - JUST_BEFORE);
    }

    /** Highest speed from just before the fall until so much is lost; NaN, which is below nothing, when not recorded. */
    private double speed(Swing s, double kelvin) {
        return Middle.greatest(run.speed, s.peak() - JUST_BEFORE, s.lost(run.coolant, kelvin) + 1);
    }

    /** A deep fall with speed and load as in the minute before: neither ram air nor less heat did it. */
    private boolean sameRoad(Swing s) {
        int end = s.lost(run.coolant, DEEP);
        if (end < 0 || rate(s, DEEP) < LEAST_RATE) {
            return false;
        }
        int from = s.peak() - 2 * BEFORE;
        double speedBefore = Middle.mean(run.speed, from, s.peak());
        double speedThen = Middle.mean(run.speed, s.peak(), end + 1);
        double loadBefore = Middle.mean(run.load, from, s.peak());
        double loadThen = Middle.mean(run.load, s.peak(), end + 1);
        return speedThen <= (1.0 + SAME_SPEED) * speedBefore && loadThen >= SAME_LOAD * loadBefore;
    }

    /** True when nothing faster than creeping is known between. */
    boolean standsBetween(int from, int to) {
        return !(Middle.greatest(run.speed, from, to + 1) > FAN_ALONE);
    }

    private LoadStep.Step seenStart(Swing s) {
        return steps.clearest(s.peak() - LATE, s.peak() + 2, 1);
    }

    private FanCycle cycle(Swing s, Proof proof) {
        LoadStep.Step on = proof == Proof.STILL ? seenStart(s) : new LoadStep.Step(-1, 0);
        int start = on.channels() > 0 ? on.second() : s.peak();
        boolean road = proof == Proof.ROAD || proof == Proof.LIKE_ROAD;
        int end = road ? s.trough() : endOfFall(s);
        LoadStep.Step off = on.channels() > 0
                ? steps.clearest(s.peak() + 2, (end < 0 ? s.trough() : end) + 2, -1)
                : new LoadStep.Step(-1, 0);
        int stop = off.channels() > 0 ? off.second() : end;
        return new FanCycle(
                start,
                run.coolant[start],
                s.peak(),
                run.coolant[s.peak()],
                stop,
                stop < 0 ? Double.NaN : run.coolant[stop],
                end < 0 ? Double.NaN : run.coolant[end],
                rate(s, Swing.LEAST),
                on.channels(),
                off.channels(),
                proof);
    }

    /** Second at which the fall ends by itself; -1 when the vehicle drives off or the run ends before. */
    private int endOfFall(Swing s) {
        int lowest = s.peak();
        for (int i = s.peak() + 1; i < run.size(); i++) {
            if (run.speed[i] > FAN_ALONE || Double.isNaN(run.coolant[i])) {
                return -1;
            }
            lowest = run.coolant[i] < run.coolant[lowest] - 1e-6 ? i : lowest;
            if (i - lowest >= ENDED && lowest > s.peak()) {
                return lowest;
            }
        }
        return -1;
    }
}
