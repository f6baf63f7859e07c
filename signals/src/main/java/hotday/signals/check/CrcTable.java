package hotday.signals.check;

/** A generator of a cyclic redundancy check, eight bits a step. The register stands at the top of an int, or, reflected, at its bottom. */
final class CrcTable {
    private final int bits;
    private final boolean reflected;
    private final int start;
    private final int inverted;
    private final int[] table;

    /** @param bits of the result, 8, 16 or 32 */
    CrcTable(int bits, int generator, int start, boolean reflected, int inverted) {
        this.bits = bits;
        this.reflected = reflected;
        this.inverted = inverted;
        int top = Integer.SIZE - bits;
        // A reflected register runs the other way round: its start value lies mirrored at the bottom.
        this.start = reflected ? Integer.reverse(start << top) : start << top;
        this.table = reflected ? reflected(Integer.reverse(generator << top)) : straight(generator << top);
    }

    private static int[] straight(int generator) {
        int[] table = new int[256];
        for (int i = 0; i < 256; i++) {
            int register = i << 24;
            for (int bit = 0; bit < 8; bit++) {
                register = register < 0 ? register << 1 ^ generator : register << 1;
            }
            table[i] = register;
        }
        return table;
    }

    private static int[] reflected(int generator) {
        int[] table = new int[256];
        for (int i = 0; i < 256; i++) {
            int register = i;
            for (int bit = 0; bit < 8; bit++) {
                register = (register & 1) == 1 ? register >>> 1 ^ generator : register >>> 1;
            }
            table[i] = register;
        }
        return table;
    }

    int bits() {
        return bits;
    }

    int start() {
        return start;
    }

    int add(int register, int octet) {
        return reflected
                ? table[(register ^ octet) & 0xFF] ^ register >>> 8
                : table[register >>> 24 ^ octet & 0xFF] ^ register << 8;
    }

    /** 0 to 2^bits - 1. */
    long end(int register) {
        int low = reflected ? register : register >>> Integer.SIZE - bits;
        return Integer.toUnsignedLong(low ^ inverted);
    }
}
