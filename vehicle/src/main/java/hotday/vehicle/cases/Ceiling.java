package hotday.vehicle.cases;

import java.util.List;

/**
 * The ambient ceiling of one case.
 *
 * @param kase the case
 * @param ambient highest outside temperature at which every limit holds, K; the end of the searched range when {@code
 *     reach} is not {@link Reach#FOUND}
 * @param reach whether the answer lies in the searched range
 * @param binding the limit that gives way first
 * @param runnerUp the limit that would give way next; the same when there is no other
 * @param again true when the binding limit holds again above the ceiling, so that the first crossing is reported
 * @param coolant at the ceiling, K; of a moving case its peak on the day looked at
 * @param boiling temperature at cap and altitude, K
 * @param airToBoil boiling temperature at the cap less coolant plus ambient, thermostat blocked open, on the day looked at, K; NaN where that comes to no rest
 * @param crossings where each judged limit gives way, lowest first
 * @param day outside temperature of what follows, K
 * @param headrooms of each judged limit on that day: fan at full speed, or over a moving case
 * @param scheduled the first phase on that day as the fan schedule runs it
 */
public record Ceiling(
        Case kase,
        double ambient,
        Reach reach,
        Limit binding,
        Limit runnerUp,
        boolean again,
        double coolant,
        double boiling,
        double airToBoil,
        List<Crossing> crossings,
        double day,
        List<Headroom> headrooms,
        OperatingPoint scheduled) {
    public Ceiling {
        crossings = List.copyOf(crossings);
        headrooms = List.copyOf(headrooms);
    }

    /** Where the answer lies. */
    public enum Reach {
        FOUND("found"),
        /** Everything still holds at the upper end of the search. */
        ABOVE_RANGE("above"),
        /** Something fails already at the lower end. */
        BELOW_RANGE("below");

        private final String word;

        Reach(String word) {
            this.word = word;
        }

        /** For machines. */
        public String word() {
            return word;
        }
    }

    /**
     * Where one limit gives way.
     *
     * @param ambient K, or an end of the searched range
     * @param again true when it holds again above
     */
    public record Crossing(Limit limit, double ambient, Reach reach, boolean again) {
        Crossing notBelow(double least) {
            return ambient < least ? new Crossing(limit, least, Reach.FOUND, again) : this;
        }

        static Crossing above(Limit limit) {
            return new Crossing(limit, AmbientCeiling.HIGHEST, Reach.ABOVE_RANGE, false);
        }

        static Crossing below(Limit limit) {
            return new Crossing(limit, AmbientCeiling.LOWEST, Reach.BELOW_RANGE, false);
        }
    }

    /**
     * How one limit stands on the day looked at.
     *
     * @param value worst met, SI unit of the limit's quantity
     * @param bound what it must not pass
     * @param room positive while it holds
     */
    public record Headroom(Limit limit, double value, double bound, double room) {}

    /** Coolant limit less coolant plus ambient, K: limiting ambient as field practice has it, at full fan. */
    public double limitingAmbient() {
        return headrooms.stream()
                        .filter(h -> h.limit() == Limit.COOLANT)
                        .mapToDouble(Headroom::room)
                        .findFirst()
                        .orElse(Double.NaN)
                + day;
    }
}
