package hotday.vehicle.cases;

import hotday.vehicle.cases.Tries.Try;
import java.util.ArrayList;
import java.util.List;

/** Fan by its schedule; the first limit closed, the others read off the same tries, each of them thousands of steps. */
final class MovingSearch {
    private static final double CLOSE = 0.3; // K, a last move; what is left is a tenth of it
    private static final double CLOSED = 0.1; // K, where a headroom jumps
    private static final double CLOSE_WHERE_STRAIGHT = 1.0; // K
    private static final double AT_CLOSE = 1.0; // K of room that a try so near may have, and per K
    private static final double STEEPEST_AT_CLOSE = 4.0;
    private static final double CLOSE_AT_REST = 0.01; // K
    private static final double FLATTEST = 0.4; // kelvin of room lost per kelvin, on the way up
    private static final double STEEPEST = 2.0; // and won on the way down
    private static final int MOST_TRIES = 14;

    private final Tries tries;
    private final Forecast forecast;
    private Try holding; // the hottest that holds, below what fails
    private Try failing; // the coolest that fails
    private boolean held; // the next try is not where the forecast has it, but a safe step towards that

    MovingSearch(Tries tries) {
        this.tries = tries;
        this.forecast = new Forecast(tries);
    }

    List<Ceiling.Crossing> crossings(double start) {
        double first = close(start, 2);
        boolean inside = first > AmbientCeiling.LOWEST && first < AmbientCeiling.HIGHEST;
        Limit binding = inside ? forecast.tightest(first) : null;
        List<Ceiling.Crossing> all = new ArrayList<>();
        for (Limit limit : Limit.values()) {
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
            double next = next();
            if (next == now || (i >= (forecast.rests() ? fewest : 2) && near(next))) {
                return next;
            }
            now = tellsMore(next);
        }
        return now;
    }

    private void make(double ambient) {
        forecast.learn(tries.at(ambient));
        failing = tries.coolestFailing();
        holding = tries.hottestHolding(failing);
    }

    private boolean enclosed() {
        return holding != null && failing != null;
    }

    private double next() {
        held = false;
        return enclosed()
                ? Crossover.between(
                        forecast::least,
                        holding.ambient,
                        failing.ambient,
                        holding.least(),
                        failing.least(),
                        CLOSE_AT_REST)
                : beyond(holding == null ? failing : holding);
    }

    private boolean near(double next) {
        if (enclosed() && failing.ambient - holding.ambient < CLOSED) {
            return true;
        }
        Try nearest = tries.nearest(next);
        double move = Math.abs(nearest.ambient - next);
        boolean close = move < CLOSE || (move < CLOSE_WHERE_STRAIGHT && forecast.straight(next, move));
        return !held && close && Math.abs(nearest.least()) < AT_CLOSE + STEEPEST_AT_CLOSE * move;
    }

    /** Where a forecast that jumps leads next to an old try, the middle. */
    private double tellsMore(double next) {
        boolean old = Math.abs(tries.nearest(next).ambient - next) < CLOSE;
        return old && enclosed() ? 0.5 * (holding.ambient + failing.ambient) : next;
    }

    /** All tries hold, or all fail: as far on as the forecast has it, but not further than headrooms may run. */
    private double beyond(Try outermost) {
        double next = Crossover.find(forecast::least, outermost.ambient, CLOSE_AT_REST);
        double room = room(outermost);
        double safe = Crossover.clamp(outermost.ambient + room / (room > 0.0 ? FLATTEST : STEEPEST));
        held = next > safe;
        return Math.min(next, safe);
    }

    /** What a step may go by, K. */
    private static double room(Try made) {
        return made.cutOut()
                ? Math.min(made.room(Limit.COOLANT), made.room(Limit.HEAD_PRESSURE) / Limit.HEAD_PRESSURE.perKelvin())
                : made.least();
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
