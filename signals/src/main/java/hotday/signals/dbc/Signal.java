package hotday.signals.dbc;

import hotday.core.finding.Place;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A number inside a message. Bit b is bit b % 8 of byte b / 8, 0 the least significant.
 *
 * @param start of a little-endian signal its least significant bit, of a big-endian one its most significant
 * @param bits length; 1 to 64 in a signal that can be used
 * @param bigEndian most significant byte first
 * @param factor physical value per raw value
 * @param offset physical value of raw 0
 * @param min lowest physical value as the file says it; both 0 often means that nobody knew
 * @param max highest physical value
 * @param unit free text
 * @param receivers names of nodes
 * @param words words of raw values
 * @param comment empty when there is none
 * @param attributes those given to this signal itself
 * @param place where it is described
 */
public record Signal(
        String name,
        int start,
        int bits,
        boolean bigEndian,
        ValueForm form,
        double factor,
        double offset,
        double min,
        double max,
        String unit,
        List<String> receivers,
        Multiplexing multiplexing,
        Map<Long, String> words,
        String comment,
        Map<String, String> attributes,
        Place place) {
    /** Longest signal. */
    public static final int MOST_BITS = 64;

    /** Whether its bits can be a number of its form. */
    boolean fits() {
        return switch (form) {
            case UNSIGNED, SIGNED -> bits >= 1 && bits <= MOST_BITS;
            case SINGLE -> bits == Float.SIZE;
            case DOUBLE -> bits == Double.SIZE;
        };
    }

    /** Whether a decoder takes this signal from frames. */
    public boolean usable() {
        return fits() && multiplexing.clear();
    }

    /** Number of its least significant bit counted from the most significant bit of byte 0; big-endian only. */
    long lastOfSawtooth() {
        return 8L * (start / 8) + 7 - start % 8 + bits - 1;
    }

    /** The first byte it touches. */
    int firstByte() {
        return start / 8;
    }

    /** The last byte it touches. */
    int lastByte() {
        return (int) ((bigEndian ? lastOfSawtooth() : (long) start + bits - 1) / 8);
    }

    /** The word of a raw value. */
    public Optional<String> word(long raw) {
        return Optional.ofNullable(words.get(raw));
    }
}
