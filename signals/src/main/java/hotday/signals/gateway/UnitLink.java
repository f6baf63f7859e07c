package hotday.signals.gateway;

import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.core.unit.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * From values of one unit to values of another: other = value * factor + offset. Never guessed: where the two units
 * leave more than one conversion open (a temperature or a difference of temperatures), somebody must say which.
 */
record UnitLink(double factor, double offset) {
    static final UnitLink SAME = new UnitLink(1, 0);

    /** Two conversions are one within the rounding of a double. */
    private static final double ROUNDING = 1e-12;

    /**
     * A link, or why there is none.
     *
     * @param key of the finding, empty with a link
     */
    record Answer(Optional<UnitLink> link, String key, String message) {
        private static Answer of(UnitLink link) {
            return new Answer(Optional.of(link), "", "");
        }

        private static Answer none(String key, String message) {
            return new Answer(Optional.empty(), key, message);
        }
    }

    private record Candidate(Quantity quantity, UnitLink link) {}

    /**
     * @param from unit as text; blank where there is none
     * @param measures title of the kind of quantity, where it was said
     */
    static Answer between(String from, String to, Optional<String> measures) {
        if (from.isBlank() != to.isBlank()) {
            return Answer.none(
                    "unit-missing",
                    from.isBlank()
                            ? "the source has no unit, the target '" + to + "'; say it with 'from_unit'"
                            : "the source has the unit '" + from + "', the target none; say it with 'to_unit'");
        }
        if (from.strip().equals(to.strip())) {
            return Answer.of(SAME);
        }
        List<Candidate> found = candidates(from, to, measures);
        if (found.isEmpty()) {
            return nothingInCommon(from, to);
        }
        if (measures.isEmpty() && maybeGauge(from, to)) {
            return Answer.none(
                    "unit-ambiguous",
                    "of '" + from + "' and '" + to
                            + "' one counts from vacuum, the other may count from the air outside;"
                            + " say with 'from_unit' or 'to_unit' that it is absolute ('kPa abs')");
        }
        UnitLink first = found.get(0).link();
        boolean one = found.stream().allMatch(c -> first.equalsNearly(c.link()));
        return one
                ? Answer.of(first)
                : Answer.none(
                        "unit-ambiguous",
                        "from '" + from + "' to '" + to + "' is not the same for every quantity; say which with"
                                + " 'measures': "
                                + found.stream().map(c -> c.quantity().title()).collect(Collectors.joining(", ")));
    }

    /** Plain kPa is taken for absolute where people type it; what a network means by it nobody said. */
    private static boolean maybeGauge(String from, String to) {
        return is(Quantity.PRESSURE_ABSOLUTE, from)
                && is(Quantity.PRESSURE_ABSOLUTE, to)
                && is(Quantity.PRESSURE_GAUGE, from) != is(Quantity.PRESSURE_GAUGE, to);
    }

    private static boolean is(Quantity quantity, String unit) {
        return Units.find(quantity, unit).isPresent();
    }

    private static List<Candidate> candidates(String from, String to, Optional<String> measures) {
        List<Candidate> found = new ArrayList<>();
        for (Quantity quantity : Quantity.values()) {
            if (measures.isEmpty() || measures.get().equals(quantity.title())) {
                Optional<Unit> a = Units.find(quantity, from);
                Optional<Unit> b = Units.find(quantity, to);
                if (a.isPresent() && b.isPresent()) {
                    found.add(new Candidate(quantity, of(a.get(), b.get())));
                }
            }
        }
        return found;
    }

    private static UnitLink of(Unit a, Unit b) {
        return a.equals(b) ? SAME : new UnitLink(a.factor() / b.factor(), (a.offset() - b.offset()) / b.factor());
    }

    private boolean equalsNearly(UnitLink other) {
        return Math.abs(factor - other.factor) <= ROUNDING * Math.abs(factor)
                && Math.abs(offset - other.offset) <= ROUNDING * Math.max(1, Math.abs(offset));
    }

    private static Answer nothingInCommon(String from, String to) {
        for (String unit : List.of(from, to)) {
            if (Arrays.stream(Quantity.values())
                    .noneMatch(q -> Units.find(q, unit).isPresent())) {
                return Answer.none(
                        "unit-unknown",
                        "'" + unit + "' is not a known unit; say it with '" + (unit.equals(from) ? "from" : "to")
                                + "_unit'");
            }
        }
        return Answer.none("unit-mismatch", "'" + from + "' and '" + to + "' measure no quantity in common");
    }

    double apply(double value) {
        return value * factor + offset;
    }
}
