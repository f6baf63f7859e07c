package hotday.vehicle.cases;

import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Tries of one case on one plant, and what came of each; a new one starts at the rest of one next to it. */
final class Tries {
    private static final Limit[] LIMITS = Limit.values();

    private static final Comparator<Try> BY_AMBIENT = Comparator.comparingDouble(t -> t.ambient);

    final Trial trial;
    private final double allowance;
    private final List<Try> all = new ArrayList<>();

    Tries(VehicleSpec spec, Plant plant, Case kase, double allowance) {
        this.trial = new Trial(spec, plant, kase);
        this.allowance = allowance;
    }

    /** One outside temperature. */
    static final class Try {
        final double ambient;
        private final double[] state = new double[State.COUNT];
        private final double[] rooms = new double[LIMITS.length];
        private final double[] worst = new double[LIMITS.length];
        private final boolean rests;
        private final boolean cutOut;

        private Try(double ambient, Trial trial) {
            this.ambient = ambient;
            this.rests = trial.rest(state);
            this.cutOut = trial.cutOut();
        }

        double room(Limit limit) {
            return rooms[limit.ordinal()];
        }

        double worst(Limit limit) {
            return worst[limit.ordinal()];
        }

        /** Whether coolant or head pressure cut the compressor out: what the cabin then lacks says nothing of cooler days. */
        boolean cutOut() {
            return cutOut;
        }

        /** Least headroom of all judged limits over the steepness that each has per kelvin, so that they compare. */
        double least() {
            return room(tightest()) / tightest().perKelvin();
        }

        /** The limit with that headroom. */
        Limit tightest() {
            Limit tightest = LIMITS[0];
            for (Limit limit : LIMITS) {
                if (room(limit) / limit.perKelvin() < room(tightest) / tightest.perKelvin()) {
                    tightest = limit;
                }
            }
            return tightest;
        }
    }

    /** Tries an outside temperature, K. */
    Try at(double ambient) {
        startNear(ambient);
        trial.at(ambient);
        return took(ambient);
    }

    /** The try that was made there, or one that is made now. */
    Try on(double ambient) {
        return all.stream().filter(t -> t.ambient == ambient).findFirst().orElseGet(() -> at(ambient));
    }

    /**
     * The trial's next search for a rest starts at that of the nearest try on a cooler day, else of the nearest: where there are two rests, a
     * vehicle that warms up comes to the cooler one.
     */
    void startNear(double ambient) {
        all.stream()
                .filter(t -> t.rests)
                .min(Comparator.comparing((Try t) -> t.ambient > ambient)
                        .thenComparingDouble(t -> Math.abs(t.ambient - ambient)))
                .filter(t -> t != last())
                .ifPresent(t -> trial.startFrom(t.state));
    }

    private Try took(double ambient) {
        Try now = new Try(ambient, trial);
        for (Limit limit : LIMITS) {
            now.worst[limit.ordinal()] = trial.worst(limit);
            now.rooms[limit.ordinal()] = room(limit);
        }
        all.add(now);
        return now;
    }

    /** Headroom of a limit in the trial's last try, SI; endless when it is not judged. */
    double room(Limit limit) {
        return trial.judges(limit) ? trial.headroom(limit) - allowance(limit) : Double.POSITIVE_INFINITY;
    }

    /** What the model is known to miss of a limit's quantity. */
    double allowance(Limit limit) {
        return limit == Limit.COOLANT || limit == Limit.BOILING ? allowance : 0.0;
    }

    Try last() {
        return all.get(all.size() - 1);
    }

    /** The hottest of those that hold, on cooler days than another if there is one; null when none does. */
    Try hottestHolding(Try failing) {
        return all.stream()
                .filter(t -> t.least() >= 0.0 && (failing == null || t.ambient < failing.ambient))
                .max(BY_AMBIENT)
                .orElse(null);
    }

    /** The coolest of those that fail; null when none does. */
    Try coolestFailing() {
        return all.stream().filter(t -> t.least() < 0.0).min(BY_AMBIENT).orElse(null);
    }

    /** The one next to an outside temperature, K. */
    Try nearest(double ambient) {
        return Collections.min(all, Comparator.comparingDouble(t -> Math.abs(t.ambient - ambient)));
    }

    /** All so far, coldest first. */
    List<Try> sorted() {
        return all.stream().sorted(BY_AMBIENT).toList();
    }
}
