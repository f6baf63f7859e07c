package hotday.signals.j1939;

import hotday.signals.frame.SampleState;
import java.util.Map;

/**
 * One parameter: where it lies in the payload of its group, little-endian, and what its raw value means.
 *
 * @param pgn number of the group
 * @param group short name of the group
 * @param number of the parameter
 * @param name one word
 * @param bit of its least significant bit in the payload, from 0
 * @param bits 1 to 32; 0 for a text that runs to its end or to an asterisk
 * @param numerator and
 * @param denominator units a step are their quotient; two whole numbers, so that 264 steps of 0.05 are 13.2
 * @param offset in {@code unit}
 * @param unit as in the standard; empty for states
 * @param words raw values that are states with a name
 * @param confidence where the row comes from; {@link #FROM_MEMORY} in it means that part was remembered, not read
 */
public record Spn(
        int pgn,
        String group,
        int number,
        String name,
        int bit,
        int bits,
        double numerator,
        double denominator,
        double offset,
        String unit,
        Map<Integer, String> words,
        String confidence) {
    /** Mark of what nobody looked up. */
    public static final String FROM_MEMORY = "from memory";

    public Spn {
        words = Map.copyOf(words);
    }

    /** Whether any part of the row was remembered and not read. */
    public boolean isFromMemory() {
        return confidence.contains(FROM_MEMORY);
    }

    /** Whether the parameter is a text. */
    public boolean isText() {
        return bits == 0;
    }

    /** Whether it lies inside a payload of so many bytes. */
    boolean reaches(int length) {
        return bit + Math.max(bits, 8) <= 8 * length;
    }

    /** The bits as an unsigned number. */
    long raw(byte[] data, int from) {
        int first = from + bit / 8;
        int last = from + (bit + bits - 1) / 8;
        long gathered = 0;
        for (int i = last; i >= first; i--) {
            gathered = gathered << 8 | data[i] & 0xFF;
        }
        return gathered >>> bit % 8 & (1L << bits) - 1;
    }

    /** Whether the bits lie in the first eight bytes. */
    boolean isInHead() {
        return bit + bits <= Long.SIZE;
    }

    /** The bits as an unsigned number, from the first eight bytes, little-endian. */
    long raw(long head) {
        return head >>> bit & (1L << bits) - 1;
    }

    double value(long raw) {
        return raw * numerator / denominator + offset;
    }

    /** What a raw value says. A state with a word is valid, whatever its size makes of such codes elsewhere. */
    SampleState state(long raw) {
        SampleState bySize = state(raw, bits);
        boolean worded = bySize != SampleState.VALID && !words.isEmpty() && words.containsKey((int) raw);
        return worded ? SampleState.VALID : bySize;
    }

    /**
     * What a raw value says by its size alone: from a byte on the first byte decides (FB special, FC and FD kept free,
     * FE wrong, FF not there), below that all ones is not there and one less is wrong; a single bit has no such codes.
     *
     * @param raw the bits as an unsigned number
     */
    public static SampleState state(long raw, int bits) {
        if (bits == 1) {
            return SampleState.VALID;
        }
        if (bits < 8) {
            return below(raw - ((1L << bits) - 1));
        }
        return switch ((int) (raw >>> bits - 8)) {
            case 0xFB -> SampleState.SPECIAL;
            case 0xFC, 0xFD -> SampleState.RESERVED;
            case 0xFE -> SampleState.ERROR;
            case 0xFF -> SampleState.NOT_AVAILABLE;
            default -> SampleState.VALID;
        };
    }

    /** Of less than a byte, by how far it lies from all ones. */
    private static SampleState below(long difference) {
        if (difference == 0) {
            return SampleState.NOT_AVAILABLE;
        }
        return difference == -1 ? SampleState.ERROR : SampleState.VALID;
    }
}
