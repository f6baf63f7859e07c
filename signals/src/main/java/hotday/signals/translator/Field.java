package hotday.signals.translator;

import hotday.signals.dbc.Signal;
import hotday.signals.dbc.ValueForm;

/**
 * Where a whole number of up to 64 bits lies in the payload of a classic frame. The payload is a word of eight bytes, the
 * first byte in its lowest place, bytes beyond the payload zero; a big-endian field is taken from that word with its bytes
 * in reverse.
 *
 * @param shift bits below the field in its word
 * @param bits 1 to 64
 * @param signed whether the highest bit is a sign
 * @param firstByte of the payload that it touches
 * @param lastByte of the payload that it touches, up to 7
 */
public record Field(boolean bigEndian, int shift, int bits, boolean signed, int firstByte, int lastByte) {
    /** Bytes of a classic frame. */
    public static final int MOST_BYTES = 8;

    /** Whether a signal lies inside a classic frame, so that there is a field of it. */
    public static boolean fits(Signal s) {
        if (s.start() < 0 || s.bits() < 1 || s.bits() > Long.SIZE || s.start() >= Long.SIZE) {
            return false;
        }
        return s.bigEndian() ? lastOfBigEndian(s) < Long.SIZE : s.start() + s.bits() <= Long.SIZE;
    }

    private static int lastOfBigEndian(Signal s) {
        return 8 * (s.start() / 8) + 7 - s.start() % 8 + s.bits() - 1;
    }

    /** The bits of a signal; those of a floating-point number as a whole number without sign. */
    public static Field of(Signal s) {
        boolean signed = s.form() == ValueForm.SIGNED;
        if (!s.bigEndian()) {
            return new Field(false, s.start(), s.bits(), signed, s.start() / 8, (s.start() + s.bits() - 1) / 8);
        }
        int last = lastOfBigEndian(s);
        return new Field(true, Long.SIZE - 1 - last, s.bits(), signed, s.start() / 8, last / 8);
    }

    public Field {
        if (bits < 1 || shift < 0 || shift + bits > Long.SIZE) {
            throw new IllegalArgumentException(
                    "a field of " + bits + " bits above " + shift + " others does not fit a frame of eight bytes");
        }
    }

    /** The word of a payload. */
    public static long word(byte[] data, int from, int length) {
        long word = 0;
        for (int i = length - 1; i >= 0; i--) {
            word = word << 8 | data[from + i] & 0xFF;
        }
        return word;
    }

    /** The payload of a word. */
    public static void bytes(long word, byte[] out, int length) {
        for (int i = 0; i < length; i++) {
            out[i] = (byte) (word >>> 8 * i);
        }
    }

    private long mask() {
        return -1L >>> Long.SIZE - bits;
    }

    /** Whether it lies inside a payload of so many bytes. */
    public boolean reaches(int length) {
        return lastByte < length;
    }

    /** The number in a word; of 64 bits without sign those above 2^63 - 1 are negative. */
    public long raw(long word) {
        long top = (bigEndian ? Long.reverseBytes(word) : word) << Long.SIZE - shift - bits;
        return signed ? top >> Long.SIZE - bits : top >>> Long.SIZE - bits;
    }

    /** The word with a number put in; higher bits of the number are left out. */
    public long put(long word, long raw) {
        long value = (raw & mask()) << shift;
        long hole = mask() << shift;
        return bigEndian ? word & ~Long.reverseBytes(hole) | Long.reverseBytes(value) : word & ~hole | value;
    }
}
