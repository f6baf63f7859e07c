package hotday.study.events;

import java.util.ArrayList;
import java.util.List;

/**
 * Heater taps seen in a warm-up at standstill: coolant rises all at once at less than half the pace, or at more than twice,
 * while the engine idles as before. Anything less clear is left out.
 */
final class Heater {
    private static final double COLDEST = 303.15; // K
    private static final double WARMEST = 345.15; // K, below any thermostat
    private static final int WINDOW = 60; // s
    private static final int GAP = 5; // s
    private static final double LEAST_SLOPE = 0.06; // K/s
    private static final double LESS = 0.45;
    private static final double SAME_HEAT = 0.1;
    private static final double CONFIDENCE = 0.3;

    private final Seconds run;
    private final Idle idle;

    private Heater(Seconds run) {
        this.run = run;
        this.idle = new Idle(run);
    }

    static List<Event> of(Seconds run) {
        return new Heater(run).find();
    }

    private List<Event> find() {
        List<Event> events = new ArrayList<>();
        if (!Seconds.recorded(run.speed) || !Seconds.recorded(run.engineSpeed)) {
            return events;
        }
        int i = WINDOW;
        while (i + GAP + WINDOW <= run.size()) {
            double bend = bend(i);
            if (bend == 0.0) {
                i++;
                continue;
            }
            int at = clearest(i, Math.signum(bend));
            events.add(event(at, bend > 0.0 ? Kind.HEATER_ON : Kind.HEATER_OFF));
            i = at + GAP + WINDOW;
        }
        return events;
    }

    private Event event(int at, Kind kind) {
        String words =
                "warm-up at idle " + (kind == Kind.HEATER_ON ? "slows" : "quickens") + " at once, engine as before";
        return new Event(run.run, run.time(at), kind, run.coolant[at], "K", CONFIDENCE, words);
    }

    private int clearest(int from, double sign) {
        int best = from;
        for (int i = from; i < from + WINDOW; i++) {
            best = sign * bend(i) > sign * bend(best) ? i : best;
        }
        return best;
    }

    /** Loss of slope here, K/s; 0 where it is not clear. */
    private double bend(int at) {
        int from = at - WINDOW;
        int behind = at + GAP + WINDOW;
        if (behind > run.size() || !steady(from, behind)) {
            return 0.0;
        }
        double before = Slope.of(run, from, at);
        double after = Slope.of(run, at + GAP, behind);
        boolean clear =
                Math.max(before, after) >= LEAST_SLOPE && Math.min(before, after) <= LESS * Math.max(before, after);
        return clear ? before - after : 0.0;
    }

    private boolean steady(int from, int behind) {
        for (int i = from; i < behind; i++) {
            if (!idle.at(i) || !(run.coolant[i] >= COLDEST && run.coolant[i] <= WARMEST)) {
                return false;
            }
        }
        double before = Slope.heat(run, from, from + WINDOW);
        double after = Slope.heat(run, behind - WINDOW, behind);
        return Math.abs(after - before) <= SAME_HEAT * before;
    }
}
