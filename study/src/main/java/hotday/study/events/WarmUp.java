package hotday.study.events;

import java.util.ArrayList;
import java.util.List;

/** What the warm-up of a cold engine tells: where the thermostat opens, and whether it closes again. */
final class WarmUp {
    private static final double COLD_START = 343.15; // K (70 degC)
    private static final double LOWEST_OPENING = 348.15; // K (75 degC), common practice, no source
    private static final double LEAST_RISE = 15.0; // K
    private static final int WINDOW = 60; // s
    private static final int GAP = 5; // s
    private static final double LEAST_SLOPE = 0.02; // K/s
    private static final double KNEE = 0.35;
    private static final double SAME_HEAT = 0.7;
    private static final double DROP = 2.0; // K
    private static final int DROP_WITHIN = 90; // s
    private static final int HOLDS = 240; // s
    private static final double HELD_WITHIN = 3.0; // K
    /** Range and hysteresis of a wax thermostat together. Common practice, no source. */
    private static final double CLOSED_BELOW = 10.0; // K

    private static final int STAYS = 20; // s

    private final Seconds run;
    private final List<Event> events = new ArrayList<>();

    private WarmUp(Seconds run) {
        this.run = run;
    }

    static List<Event> of(Seconds run) {
        WarmUp warmUp = new WarmUp(run);
        warmUp.find();
        return warmUp.events;
    }

    private void find() {
        int opens = opens();
        if (opens >= 0) {
            boolean drops = drops(opens);
            boolean watched = run.size() - opens > HOLDS;
            add(
                    opens,
                    Kind.THERMOSTAT_OPEN,
                    drops ? 0.75 : watched ? 0.4 : 0.3,
                    drops
                            ? "warm-up ends and coolant drops, engine heat as before"
                            : "warm-up slows, engine heat as before");
            closes(opens);
        }
    }

    private boolean drops(int opens) {
        int peak = opens;
        for (int i = opens; i < Math.min(run.size(), opens + GAP + DROP_WITHIN); i++) {
            peak = run.coolant[i] >= run.coolant[peak] ? i : peak;
        }
        return run.coolant[peak] - Middle.least(run.coolant, peak, peak + DROP_WITHIN) >= DROP - 1e-6;
    }

    /** Coolant is held for the next minutes: a warm-up that only paused goes on. */
    private boolean holds(int opens) {
        return Middle.greatest(run.coolant, opens, opens + HOLDS) - run.coolant[opens] <= HELD_WITHIN + 1e-6;
    }

    private void add(int at, Kind kind, double confidence, String evidence) {
        events.add(new Event(run.run, run.time(at), kind, run.coolant[at], "K", confidence, evidence));
    }

    private int opens() {
        int coldest = -1;
        for (int i = 0; i < run.size(); i++) {
            if (coldest < 0 && run.coolant[i] < COLD_START) {
                coldest = i;
            }
            boolean warmedUp = coldest >= 0
                    && run.coolant[i] >= LOWEST_OPENING
                    && run.coolant[i] - run.coolant[coldest] >= LEAST_RISE;
            if (warmedUp && bend(i) > 0.0) {
                int clearest = clearest(i);
                if (holds(clearest)) {
                    return clearest;
                }
            }
        }
        return -1;
    }

    private int clearest(int from) {
        int best = from;
        for (int i = from; i < Math.min(run.size(), from + WINDOW); i++) {
            best = bend(i) > bend(best) ? i : best;
        }
        return best;
    }

    /** Loss of slope here, K/s; 0 where it does not fall to a third with as much heat. */
    private double bend(int at) {
        int behind = at + GAP + WINDOW;
        if (at < WINDOW || behind > run.size() || Slope.gaps(run, at - WINDOW, behind)) {
            return 0.0;
        }
        double before = Slope.of(run, at - WINDOW, at);
        double after = Slope.of(run, at + GAP, behind);
        boolean sameHeat = !(Slope.heat(run, at + GAP, behind) < SAME_HEAT * Slope.heat(run, at - WINDOW, at));
        return before >= LEAST_SLOPE && after <= KNEE * before && sameHeat ? before - after : 0.0;
    }

    private void closes(int opens) {
        double below = run.coolant[opens] - CLOSED_BELOW;
        int since = -1;
        for (int i = opens; i < run.size(); i++) {
            since = run.coolant[i] <= below ? (since < 0 ? i : since) : -1;
            if (since >= 0 && i - since >= STAYS) {
                add(since, Kind.THERMOSTAT_CLOSED, 0.3, "coolant stays 10 K below the opening");
                return;
            }
        }
    }
}
