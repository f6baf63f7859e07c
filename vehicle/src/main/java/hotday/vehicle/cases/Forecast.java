package hotday.vehicle.cases;

import hotday.vehicle.cases.Tries.Try;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Headrooms of a case in time as they may be on a day that was not tried: those of a rest, moved onto the tries, straight between two
 * of them. Without a rest to go by they fall by the steepness of each limit. All in K, over that steepness.
 */
final class Forecast {
    private static final double STRAIGHT = 0.05; // K, what a move may miss of it
    private static final double STEEPEST = 1.0; // K per K, beyond the tries
    private static final Limit[] LIMITS = Limit.values();

    private final Tries tries;
    private final List<Known> known = new ArrayList<>();
    private boolean rests = true;

    private record Known(Try made, double[] rest) {
        double ambient() {
            return made.ambient;
        }

        /** What the cabin lacks while something else has cut the compressor out says nothing of cooler days. */
        boolean tells(Limit limit) {
            return !(limit == Limit.CABIN_COOLING && made.cutOut());
        }
    }

    Forecast(Tries tries) {
        this.tries = tries;
    }

    /** Whether it goes by rests. */
    boolean rests() {
        return rests;
    }

    void learn(Try made) {
        settle(made.ambient);
        double[] rest = new double[LIMITS.length];
        for (Limit limit : LIMITS) {
            rest[limit.ordinal()] = tries.room(limit) / limit.perKelvin();
        }
        known.add(new Known(made, rest));
        known.sort(Comparator.comparingDouble(Known::ambient));
    }

    private void settle(double ambient) {
        rests = rests && tries.trial.settleLike(ambient);
    }

    /** Least headroom. */
    double least(double ambient) {
        Limit tightest = tightest(ambient);
        return room(tightest, ambient);
    }

    /** The limit with that headroom. */
    Limit tightest(double ambient) {
        settle(ambient);
        Limit tightest = LIMITS[0];
        for (Limit limit : LIMITS) {
            if (room(limit, ambient) < room(tightest, ambient)) {
                tightest = limit;
            }
        }
        return tightest;
    }

    /** At the temperature settled last. */
    private double room(Limit limit, double ambient) {
        boolean untold = !rests && next(limit, ambient, null) == null;
        if (untold || !tries.trial.judges(limit)) {
            return Double.POSITIVE_INFINITY;
        }
        double base = rests ? tries.room(limit) / limit.perKelvin() : -ambient;
        return base + shift(limit, ambient);
    }

    /** Two tries tell how the tightest headroom runs there, nearly as is assumed without them: a move so long needs no further try. */
    boolean straight(double there, double move) {
        Limit tightest = tightest(there);
        Known one = next(tightest, there, null);
        return one != null && next(tightest, there, one) != null && move * Math.abs(turn(tightest, there)) < STRAIGHT;
    }

    private double shift(Limit limit, double ambient) {
        Known close = next(limit, ambient, null);
        return close == null ? 0.0 : shift(close, limit) + turn(limit, ambient) * (ambient - close.ambient());
    }

    private double shift(Known at, Limit limit) {
        double base = rests ? at.rest[limit.ordinal()] : -at.ambient();
        return Double.isInfinite(base) ? 0.0 : at.made.room(limit) / limit.perKelvin() - base;
    }

    /** How the shift changes, K per K. */
    private double turn(Limit limit, double ambient) {
        Known close = next(limit, ambient, null);
        Known other = close == null ? null : next(limit, ambient, close);
        if (other == null) {
            return 0.0;
        }
        double turn = (shift(close, limit) - shift(other, limit)) / (close.ambient() - other.ambient());
        boolean between = (close.ambient() > ambient) != (other.ambient() > ambient);
        return between ? turn : Math.max(-STEEPEST, Math.min(STEEPEST, turn));
    }

    /** Of those that tell, the one next to an outside temperature. */
    private Known next(Limit limit, double ambient, Known but) {
        Known best = null;
        for (Known at : known) {
            if (at != but
                    && at.tells(limit)
                    && (best == null || Math.abs(at.ambient() - ambient) < Math.abs(best.ambient() - ambient))) {
                best = at;
            }
        }
        return best;
    }
}
