package hotday.signals.dbc;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/**
 * Where a signal lies, ready to be taken: from the first eight bytes of the payload, which are loaded once a frame, or
 * byte for byte where it reaches further.
 */
final class BitField {
    /** Never there. */
    static final BitField NOWHERE = new BitField(Integer.MAX_VALUE, 0, Long.SIZE, false, ValueForm.UNSIGNED, 0, 0);

    private static final VarHandle LONG = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
    private static final int FAR = -1;

    /** The last byte touched. */
    private final int lastByte;
    /** Left shift of the first eight bytes that puts the highest bit of the signal on top; FAR beyond them. */
    private final int up;
    /** Right shift that brings the lowest bit down to bit 0. */
    private final int down;

    private final boolean bigEndian;
    private final boolean signed;
    private final ValueForm form;
    private final boolean wide;
    private final int firstByte;
    /** Bits of the last (big-endian) or first byte that are below the signal. */
    private final int below;

    private BitField(int lastByte, int up, int down, boolean bigEndian, ValueForm form, int firstByte, int below) {
        this.lastByte = lastByte;
        this.up = up;
        this.down = down;
        this.bigEndian = bigEndian;
        this.form = form;
        this.signed = form == ValueForm.SIGNED;
        this.wide = form == ValueForm.UNSIGNED && down == 0;
        this.firstByte = firstByte;
        this.below = below;
    }

    static BitField of(Signal s) {
        int down = Long.SIZE - s.bits();
        return s.bigEndian() ? bigEndian(s, down) : littleEndian(s, down);
    }

    private static BitField littleEndian(Signal s, int down) {
        int up = s.lastByte() < Long.BYTES ? down - s.start() : FAR;
        return new BitField(s.lastByte(), up, down, false, s.form(), s.firstByte(), s.start() % 8);
    }

    private static BitField bigEndian(Signal s, int down) {
        long last = s.lastOfSawtooth();
        int up = s.lastByte() < Long.BYTES ? (int) (last - s.bits() + 1) : FAR;
        return new BitField(s.lastByte(), up, down, true, s.form(), s.firstByte(), 7 - (int) (last % 8));
    }

    /** The first eight bytes, the first in the lowest place; bytes beyond the payload count as zero. */
    static long head(byte[] data, int from, int length) {
        if (length >= Long.BYTES) {
            return (long) LONG.get(data, from);
        }
        long head = 0;
        for (int i = length - 1; i >= 0; i--) {
            head = head << 8 | data[from + i] & 0xFF;
        }
        return head;
    }

    boolean reaches(int length) {
        return lastByte < length;
    }

    /** @param head {@link #head} of the same payload, which reaches as far as the signal */
    long raw(long head, byte[] data, int from) {
        if (up == FAR) {
            return far(data, from);
        }
        long top = (bigEndian ? Long.reverseBytes(head) : head) << up;
        return signed ? top >> down : top >>> down;
    }

    /** The number before scaling. */
    double value(long head, byte[] data, int from) {
        long raw = raw(head, data, from);
        return switch (form) {
            case SIGNED -> raw;
            case UNSIGNED -> wide && raw < 0 ? unsigned(raw) : raw;
            case SINGLE -> Float.intBitsToFloat((int) raw);
            case DOUBLE -> Double.longBitsToDouble(raw);
        };
    }

    /** The nearest double, as everywhere: the lowest bit is kept as a sticky one before halving. */
    private static double unsigned(long raw) {
        return 2.0 * (double) (raw >>> 1 | raw & 1);
    }

    /** Nine bytes at most; the highest of a signal that does not begin with a byte shifts its surplus out. */
    private long far(byte[] data, int from) {
        long low = 0;
        int step = bigEndian ? -1 : 1;
        int bytes = lastByte - firstByte + 1;
        int at = from + (bigEndian ? lastByte : firstByte);
        for (int k = 0; k < bytes; k++) {
            long b = data[at + k * step] & 0xFFL;
            int shift = 8 * k - below;
            low |= shift < 0 ? b >>> -shift : shift < Long.SIZE ? b << shift : 0;
        }
        return signed ? low << down >> down : low << down >>> down;
    }
}
