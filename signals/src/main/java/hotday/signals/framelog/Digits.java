package hotday.signals.framelog;

import java.util.Arrays;

/** Digits in text. */
final class Digits {
    private static final byte[] VALUE = values();

    private Digits() {}

    private static byte[] values() {
        byte[] value = new byte[256];
        Arrays.fill(value, (byte) -1);
        for (int i = 0; i < 10; i++) {
            value['0' + i] = (byte) i;
        }
        for (int i = 0; i < 6; i++) {
            value['A' + i] = (byte) (10 + i);
            value['a' + i] = (byte) (10 + i);
        }
        return value;
    }

    /** 0 to 15, or -1. */
    static int hex(byte b) {
        return VALUE[b & 0xFF];
    }

    /** 0 to 9, or -1. */
    static int decimal(byte b) {
        int digit = b - '0';
        return digit >= 0 && digit <= 9 ? digit : -1;
    }

    /** Value of a digit, or -1 when it is none of the base. */
    static int of(byte b, int radix) {
        int digit = VALUE[b & 0xFF];
        return digit < radix ? digit : -1;
    }

    /**
     * A whole number; a leading 0x is passed over in base 16.
     *
     * @param most largest that is taken
     * @return -1 when it is no number, or larger
     */
    static int number(byte[] b, int from, int to, int radix, int most) {
        int at = radix == 16 && isMarked(b, from, to) ? from + 2 : from;
        if (at == to) {
            return -1;
        }
        long value = 0;
        for (; at < to; at++) {
            int digit = of(b[at], radix);
            value = value * radix + digit;
            if (digit < 0 || value > most) {
                return -1;
            }
        }
        return (int) value;
    }

    /** Whether it begins with 0x and has more. */
    static boolean isMarked(byte[] b, int from, int to) {
        return to - from > 2 && b[from] == '0' && (b[from + 1] == 'x' || b[from + 1] == 'X');
    }

    static boolean isBlank(byte b) {
        return b == ' ' || b == '\t';
    }
}
