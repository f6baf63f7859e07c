package hotday.signals.expect;

/**
 * Something that is true of the last value of a signal, or not. Of a signal that has not come yet nothing is true.
 *
 * @param raw compared by {@link Relation#IS} and {@link Relation#IS_NOT}
 * @param number in the signal's unit, compared by the others; a value that is no number is neither above nor below
 * @param text as it was typed
 */
public record Condition(Watched signal, Relation relation, long raw, double number, String text) {
    /** How a value is compared. */
    public enum Relation {
        IS_NOT("is not"),
        IS("is"),
        ABOVE("above"),
        BELOW("below"),
        AT_LEAST("at least"),
        AT_MOST("at most");

        private final String words;

        Relation(String words) {
            this.words = words;
        }

        /** As it is typed. */
        public String words() {
            return words;
        }

        /** Whether words and raw values can be compared so. */
        public boolean exact() {
            return this == IS || this == IS_NOT;
        }
    }

    /** Share of a value by which doubles may be off. */
    private static final double ROUNDING = 1e-9;

    boolean holds(Seen seen) {
        if (!seen.ever()) {
            return false;
        }
        double value = seen.number();
        double room = ROUNDING * Math.max(1, Math.abs(number));
        return switch (relation) {
            case IS -> seen.raw() == raw;
            case IS_NOT -> seen.raw() != raw;
            case ABOVE -> value > number + room;
            case BELOW -> value < number - room;
            case AT_LEAST -> value >= number - room;
            case AT_MOST -> value <= number + room;
        };
    }
}
