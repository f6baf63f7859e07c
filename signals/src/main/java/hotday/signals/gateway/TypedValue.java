package hotday.signals.gateway;

import hotday.signals.dbc.Signal;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A value of a signal as people type it: a word of it, a raw value, or a number with its unit. */
final class TypedValue {
    private static final Pattern NUMBER =
            Pattern.compile("([+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,3})?)\\s*(.*)");
    private static final Pattern RAW = Pattern.compile("-?[0-9]{1,18}|0[xX][0-9a-fA-F]{1,15}");

    private TypedValue() {}

    /**
     * A raw value, or why there is none.
     *
     * @param key of the finding, empty with a value
     */
    record Answer(OptionalLong raw, String key, String message) {
        private static Answer of(long raw) {
            return new Answer(OptionalLong.of(raw), "", "");
        }

        private static Answer none(String key, String message) {
            return new Answer(OptionalLong.empty(), key, message);
        }
    }

    /** The raw value of a word of a signal, large and small letters alike, or of a raw value. */
    static Answer wordOrRaw(Signal signal, String typed) {
        OptionalLong word = word(signal, typed);
        if (word.isPresent()) {
            return Answer.of(word.getAsLong());
        }
        if (!RAW.matcher(typed.strip()).matches()) {
            return Answer.none(
                    "word-unknown",
                    "'" + typed + "' is neither a raw value nor a word of '" + signal.name() + "'" + words(signal));
        }
        return inBits(signal, Long.decode(typed.strip().replaceFirst("^(-?)0+(?=[0-9])", "$1")), typed);
    }

    private static Answer inBits(Signal signal, long raw, String typed) {
        return Scale.inBits(signal, raw)
                ? Answer.of(raw)
                : Answer.none(
                        "raw-value-impossible",
                        "raw value " + typed + " does not fit '" + signal.name() + "' (" + signal.bits() + " bits, "
                                + Shown.number(Scale.lowest(signal)) + " to " + Shown.number(Scale.highest(signal))
                                + ")");
    }

    static boolean isWord(Signal signal, String typed) {
        return word(signal, typed).isPresent();
    }

    private static OptionalLong word(Signal signal, String typed) {
        for (Map.Entry<Long, String> word : byRaw(signal).entrySet()) {
            if (word.getValue().strip().equalsIgnoreCase(typed.strip())) {
                return OptionalLong.of(word.getKey());
            }
        }
        return OptionalLong.empty();
    }

    /** Always in the same order, lowest raw value first. */
    private static Map<Long, String> byRaw(Signal signal) {
        return new TreeMap<>(signal.words());
    }

    private static String words(Signal signal) {
        return signal.words().isEmpty()
                ? "; it has no words"
                : "; its words: " + String.join(", ", byRaw(signal).values());
    }

    /**
     * The raw value of a word, or of a number in a unit.
     *
     * @param unit of the signal
     * @param measures title of the kind of quantity, where it was said
     */
    static Answer physical(Signal signal, String unit, Optional<String> measures, String typed) {
        OptionalLong word = word(signal, typed);
        if (word.isPresent()) {
            return Answer.of(word.getAsLong());
        }
        Number number = number(signal, unit, measures, typed);
        return number.value().isPresent()
                ? raw(signal, unit, number.value().get(), typed)
                : Answer.none(number.key(), number.message());
    }

    /**
     * A number in the unit of the signal, or why there is none.
     *
     * @param key of the finding, empty with a number
     */
    record Number(Optional<Double> value, String key, String message) {
        private static Number none(String key, String message) {
            return new Number(Optional.empty(), key, message);
        }
    }

    /** {@link #physical} without words, not yet rounded or held against limits. */
    static Number number(Signal signal, String unit, Optional<String> measures, String typed) {
        Matcher m = NUMBER.matcher(typed.strip());
        if (!m.matches()) {
            return Number.none(
                    "value-wrong",
                    "'" + typed + "' is neither a number" + (unit.isBlank() ? "" : " with a unit") + " nor a word of '"
                            + signal.name() + "'" + words(signal));
        }
        String own = m.group(2);
        if (own.isBlank() != unit.isBlank()) {
            return Number.none(
                    own.isBlank() ? "unit-missing" : "unit-mismatch",
                    "'" + typed + "': "
                            + (own.isBlank()
                                    ? "a unit is needed, such as " + unit
                                    : "'" + signal.name() + "' has no unit"));
        }
        UnitLink.Answer link = UnitLink.between(own, unit, measures);
        return link.link().isEmpty()
                ? Number.none(link.key(), "'" + typed + "': " + link.message())
                : new Number(Optional.of(link.link().get().apply(Double.parseDouble(m.group(1)))), "", "");
    }

    private static Answer raw(Signal signal, String unit, double physical, String typed) {
        Scale scale = Scale.of(signal);
        double exact = scale.raw(physical);
        double raw = scale.whole() ? rounded(exact) : exact;
        return scale.within(raw)
                ? Answer.of(bits(signal, raw))
                : Answer.none(
                        "value-out-of-range",
                        "'" + typed + "' lies outside " + Shown.number(scale.low()) + " to "
                                + Shown.number(scale.high(), unit) + " of '" + signal.name() + "'");
    }

    private static long bits(Signal signal, double raw) {
        return switch (signal.form()) {
            case UNSIGNED, SIGNED -> (long) raw;
            case SINGLE -> Integer.toUnsignedLong(Float.floatToRawIntBits((float) raw));
            case DOUBLE -> Double.doubleToRawLongBits(raw);
        };
    }

    /** To the nearest whole number, halves away from zero. */
    static double rounded(double value) {
        double down = Math.floor(Math.abs(value));
        double whole = Math.abs(value) - down >= 0.5 ? down + 1 : down;
        return Math.copySign(whole, value);
    }
}
