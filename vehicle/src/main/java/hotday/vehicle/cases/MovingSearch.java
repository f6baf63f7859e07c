package hotday.vehicle.cases;

import hotday.vehicle.cases.Tries.Try;
import java.util.ArrayList;
import java.util.List;

/**
 * Fan by its schedule; the first limit closed, the others read off the same tries. A try in time is thousands of steps, a rest of
 * the phase that the case is most like some dozen evaluations: headrooms at rest, moved onto the tries so far, tell where to try next.
 */
final class MovingSearch {
    private static final double CLOSE = 0.3; // K, a last move; what is left is a tenth of it
    private static final double STRAIGHT =
            1.0; // K, a last move over which headrooms run as they did between the last two tries
    private static final double LEFT = 0.05; // K of it that may come of their not being parallel to those at rest
    private static final double CLOSE_AT_REST = 0.01; // K
    private static final double LONGEST_STEP = 30.0; // K
    private static final double FLATTEST = 0.8; // kelvin of room lost per kelvin, on the way up
    private static final double STEEPEST = 1.2; // and won on the way down
    private static final int MOST_TRIES = 14;
    private static final Limit[] LIMITS = Limit.values();

    private final Tries tries;
    private final List<Anchor> anchors = new ArrayList<>();
    private boolean likely = true;

    MovingSearch(Tries tries) {
        this.tries = tries;
    }

    /** A try, and how far its headrooms are from those at rest, over the steepness of each. */
    private record Anchor(Try made, double[] shift) {}

    List<Ceiling.Crossing> crossings(double start) {
        double first = close(start, 2);
        boolean inside = first > AmbientCeiling.LOWEST && first < AmbientCeiling.HIGHEST;
        Limit binding = inside && likely ? tightest(first) : null;
        List<Ceiling.Crossing> all = new ArrayList<>();
        for (Limit limit : LIMITS) {
            if (limit == binding) {
                all.add(new Ceiling.Crossing(limit, first, Ceiling.Reach.FOUND, false));
            } else if (tries.trial.judges(limit)) {
                all.add(read(limit, tries.sorted()).notBelow(binding == null ? AmbientCeiling.LOWEST : first));
            }
        }
        return all;
    }

    /** Where the first limit gives way, K: ends where the next try would move less than the courses of fan and clutch scatter. */
    double close(double guess, int fewest) {
        double now = Crossover.clamp(guess);
        for (int i = 1; i <= MOST_TRIES; i++) {
            make(now);
            double next = next(now);
            if (next == now || (i >= (likely ? fewest : 2) && near(next, now))) {
                return next;
            }
            now = next;
        }
        return now;
    }

    private boolean near(double next, double now) {
        double move = Math.abs(next - now);
        if (move < CLOSE) {
            return true;
        }
        double turn = 0.0;
        for (Limit limit : LIMITS) {
            turn = Math.max(turn, Math.abs(turn(limit)));
        }
        return anchors.size() > 1 && likely && move < STRAIGHT && move * turn < LEFT;
    }

    private void make(double ambient) {
        Try made = tries.at(ambient);
        double[] shift = new double[LIMITS.length];
        likely &= tries.trial.settleLike(ambient);
        for (Limit limit : LIMITS) {
            double room = tries.room(limit);
            shift[limit.ordinal()] = Double.isInfinite(room) ? 0.0 : (made.room(limit) - room) / limit.perKelvin();
        }
        if (cutOut(made)) {
            shift[Limit.CABIN_COOLING.ordinal()] = 0.0;
        }
        anchors.add(new Anchor(made, shift));
    }

    /** The compressor may have been cut out by coolant or head pressure: what the cabin then lacks says nothing of cooler days. */
    private static boolean cutOut(Try made) {
        return made.room(Limit.COOLANT) < 0.0 || made.room(Limit.HEAD_PRESSURE) < 0.0;
    }

    private double next(double now) {
        if (likely) {
            double next = Crossover.find(this::least, now, CLOSE_AT_REST);
            if (likely) {
                return paced(next);
            }
        }
        return secant();
    }

    /** A rest's headroom may stay for long, cabin cooling above all, and may then fall off. */
    private double paced(double next) {
        Try last = anchors.get(anchors.size() - 1).made();
        double room = cutOut(last)
                ? Math.min(last.room(Limit.COOLANT), last.room(Limit.HEAD_PRESSURE) / Limit.HEAD_PRESSURE.perKelvin())
                : last.least();
        return Crossover.clamp(Math.min(next, last.ambient + room / (room > 0.0 ? FLATTEST : STEEPEST)));
    }

    /** Least headroom as it may be in time, from the rest there. */
    private double least(double ambient) {
        return likely(tightest(ambient), ambient);
    }

    /** The limit with that headroom. */
    private Limit tightest(double ambient) {
        likely &= tries.trial.settleLike(ambient);
        Limit tightest = LIMITS[0];
        for (Limit limit : LIMITS) {
            if (likely(limit, ambient) < likely(tightest, ambient)) {
                tightest = limit;
            }
        }
        return tightest;
    }

    /** Headroom by the last rest there, over the steepness of the limit. */
    private double likely(Limit limit, double ambient) {
        return tries.room(limit) / limit.perKelvin() + shift(limit, ambient);
    }

    /** On the line through the last two tries. */
    private double shift(Limit limit, double ambient) {
        Anchor last = anchors.get(anchors.size() - 1);
        return last.shift()[limit.ordinal()] + turn(limit) * (ambient - last.made().ambient);
    }

    /** How the shift changes with the outside temperature, over the last two tries. */
    private double turn(Limit limit) {
        if (anchors.size() == 1) {
            return 0.0;
        }
        Anchor last = anchors.get(anchors.size() - 1);
        Anchor before = anchors.get(anchors.size() - 2);
        int i = limit.ordinal();
        return (last.shift()[i] - before.shift()[i]) / (last.made().ambient - before.made().ambient);
    }

    /** Without a rest to go by. */
    private double secant() {
        Try last = anchors.get(anchors.size() - 1).made();
        double slope = -1.0;
        if (anchors.size() > 1) {
            Try before = anchors.get(anchors.size() - 2).made();
            slope = (last.least() - before.least()) / (last.ambient - before.ambient);
            slope = Math.max(-2.0, Math.min(-0.4, slope));
        }
        double step = Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, -last.least() / slope));
        return Crossover.clamp(last.ambient + step);
    }

    /** A limit's crossing on the line through the two tries next to it. */
    private static Ceiling.Crossing read(Limit limit, List<Try> tried) {
        if (tried.size() == 1) {
            return tried.get(0).room(limit) >= 0.0 ? Ceiling.Crossing.above(limit) : Ceiling.Crossing.below(limit);
        }
        int above = 1;
        while (above < tried.size() - 1 && tried.get(above).room(limit) >= 0.0) {
            above++;
        }
        Try low = tried.get(above - 1);
        Try high = tried.get(above);
        double slope = (low.room(limit) - high.room(limit)) / (high.ambient - low.ambient);
        double at = slope > 1e-9
                ? high.ambient + high.room(limit) / slope
                : high.room(limit) >= 0.0 ? AmbientCeiling.HIGHEST : AmbientCeiling.LOWEST;
        if (at >= AmbientCeiling.HIGHEST) {
            return Ceiling.Crossing.above(limit);
        }
        return at <= AmbientCeiling.LOWEST
                ? Ceiling.Crossing.below(limit)
                : new Ceiling.Crossing(limit, at, Ceiling.Reach.FOUND, false);
    }
}
