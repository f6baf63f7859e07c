package hotday.signals.expect;

import hotday.signals.dbc.ValueForm;
import hotday.signals.translator.Program.Source;
import java.util.Map;

/**
 * A signal that is looked at.
 *
 * @param name {@code network.message.signal}
 * @param network place in the list of networks
 * @param factor physical value per raw value, as in the description
 * @param low lowest raw value that is a number
 * @param high highest
 * @param words of raw values; a value with a word is no number
 */
public record Watched(
        String name,
        String unit,
        int network,
        int id,
        boolean extended,
        Source source,
        ValueForm form,
        double factor,
        double offset,
        long low,
        long high,
        Map<Long, String> words) {
    public Watched {
        words = Map.copyOf(words);
    }

    /** The value of a raw value in the signal's unit; NaN where it is no number. */
    public double number(long raw) {
        return switch (form) {
            case UNSIGNED, SIGNED ->
                raw < low || raw > high || words.containsKey(raw) ? Double.NaN : raw * factor + offset;
            case SINGLE -> Float.intBitsToFloat((int) raw) * factor + offset;
            case DOUBLE -> Double.longBitsToDouble(raw) * factor + offset;
        };
    }

    /** A raw value for people: its word, or the number with its unit. */
    String text(long raw) {
        String word = words.get(raw);
        double number = number(raw);
        if (word != null) {
            return word;
        }
        return Double.isNaN(number) ? "raw " + raw + ", outside the limits" : text(number);
    }

    String text(double number) {
        double shown = Math.rint(number * 1e6) / 1e6;
        String digits = shown == Math.rint(shown) && Math.abs(shown) < 1e15
                ? String.valueOf((long) shown)
                : String.valueOf(shown);
        return unit.isBlank() ? digits : digits + " " + unit;
    }
}
