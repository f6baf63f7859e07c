package hotday.vehicle.cases;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A situation that the vehicle must stand: a road and a day, mostly but for its temperature, which is what is asked. One phase without
 * an end is a steady case; anything else moves and is run through in time, the fan by its schedule.
 *
 * @param id for programs: lower case, hyphens
 * @param title for people
 * @param start how a moving case begins
 * @param day sun, humidity and altitude
 * @param phases one after the other, at least one
 * @param limits which limits are judged; all that a vehicle has when empty
 */
public record Case(String id, String title, Start start, Day day, List<Phase> phases, List<Limit> limits) {
    public Case {
        phases = List.copyOf(phases);
        limits = List.copyOf(limits);
        if (phases.isEmpty()) {
            throw new IllegalArgumentException("case " + id + " has no phase");
        }
    }

    /** How a moving case begins. */
    public enum Start {
        /** Settled on the first phase. */
        SETTLED,
        /** Everything at the outside temperature. */
        SOAKED
    }

    /** How the cabin is treated. */
    public enum Conditioning {
        OFF,
        /** Compressor on, outside air. */
        OUTSIDE_AIR,
        /** Compressor on, cabin air again. */
        CABIN_AIR
    }

    /** What the engine does. */
    public enum Engine {
        DRIVE,
        /** Running, nothing engaged; at rest only. */
        PARK,
        OFF
    }

    /**
     * The day, mostly but for its temperature.
     *
     * @param sun W/m2
     * @param humidity relative, 0..1
     * @param altitude m; empty: the sheet's
     * @param ambient K, where the case belongs to one outside temperature and no ceiling is asked
     */
    public record Day(double sun, double humidity, OptionalDouble altitude, OptionalDouble ambient) {
        public Day(double sun, double humidity, OptionalDouble altitude) {
            this(sun, humidity, altitude, OptionalDouble.empty());
        }
    }

    /**
     * @param duration s; infinite for a steady case and for the settled start of a moving one
     * @param speed m/s, held
     * @param grade rise over run, held
     * @param lowRange transfer box engaged
     * @param blower 0..1
     * @param heater 0..1
     * @param trace speed and grade against time instead of the two held ones
     */
    public record Phase(
            double duration,
            double speed,
            double grade,
            Engine engine,
            boolean lowRange,
            Conditioning conditioning,
            double blower,
            double heater,
            Optional<Trace> trace) {
        /** Whether it has no end. */
        public boolean endless() {
            return Double.isInfinite(duration);
        }
    }

    /** The same day and treatment of the cabin, steady, at another speed, m/s, and grade. */
    public Case at(double speed, double grade) {
        Phase p = first();
        return new Case(
                id,
                title,
                Start.SETTLED,
                day,
                List.of(new Phase(
                        Double.POSITIVE_INFINITY,
                        speed,
                        grade,
                        Engine.DRIVE,
                        p.lowRange(),
                        p.conditioning(),
                        p.blower(),
                        p.heater(),
                        Optional.empty())),
                limits);
    }

    /** True when it has no course in time. */
    public boolean steady() {
        return phases.size() == 1 && first().endless() && start == Start.SETTLED;
    }

    /** Asks on one cold day whether a vehicle gets and stays warm; a ceiling of it says nothing. */
    public boolean forCold() {
        return day.ambient().isPresent();
    }

    /** What comes first. */
    public Phase first() {
        return phases.get(0);
    }

    /** m/s of the first phase. */
    public double speed() {
        return first().speed();
    }

    /** Rise over run of the first phase. */
    public double grade() {
        return first().grade();
    }

    /** Whether the compressor is asked for in the first phase. */
    public boolean airConditioning() {
        return first().conditioning() != Conditioning.OFF;
    }

    /** Whether a limit is judged. */
    public boolean judges(Limit limit) {
        return limits.isEmpty() || limits.contains(limit);
    }
}
