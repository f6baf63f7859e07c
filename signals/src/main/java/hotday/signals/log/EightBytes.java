package hotday.signals.log;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/**
 * Eight bytes of text looked at in one word, the first in the lowest place. The tricks are those of Warren, "Hacker's Delight" (zero
 * bytes, 6-1), and Lemire, "Quickly parsing eight digits" (2018).
 */
final class EightBytes {
    static final int SIZE = Long.BYTES;

    private static final VarHandle WORD = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
    private static final long ONES = 0x0101010101010101L;
    private static final long HIGHS = 0x8080808080808080L;
    private static final long ZEROS = 0x3030303030303030L;

    private EightBytes() {}

    /** @param at index of the first, with seven behind it */
    static long at(byte[] bytes, int at) {
        return (long) WORD.get(bytes, at);
    }

    /** The same byte eight times. */
    static long of(int b) {
        return ONES * (b & 0xFF);
    }

    /** Not 0 when one of the bytes is 0; then the lowest bit set stands in the first of them. */
    static long zeros(long word) {
        return word - ONES & ~word & HIGHS;
    }

    /** Index of the byte in which the lowest bit stands. */
    static int first(long marks) {
        return Long.numberOfTrailingZeros(marks) >> 3;
    }

    static boolean areDigits(long word) {
        return ((word & 0xF0F0F0F0F0F0F0F0L) ^ ZEROS | (word + 0x0606060606060606L & 0xF0F0F0F0F0F0F0F0L) ^ ZEROS) == 0;
    }

    /** The number that eight digits are. */
    static long number(long word) {
        long pairs = (word - ZEROS) * 10 + (word - ZEROS >>> 8);
        long low = (pairs & 0x000000FF000000FFL) * 0x000F424000000064L;
        long high = (pairs >>> 16 & 0x000000FF000000FFL) * 0x0000271000000001L;
        return low + high >>> 32;
    }
}
