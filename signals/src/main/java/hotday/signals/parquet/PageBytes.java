package hotday.signals.parquet;

import java.util.Arrays;

/** Bytes of a page on their way: little-endian, growing. */
final class PageBytes {
    private byte[] bytes = new byte[256];
    private int size;

    void put(int b) {
        room(1);
        bytes[size++] = (byte) b;
    }

    void put(byte[] more) {
        room(more.length);
        System.arraycopy(more, 0, bytes, size, more.length);
        size += more.length;
    }

    void putInt(int value) {
        room(Integer.BYTES);
        for (int i = 0; i < Integer.BYTES; i++) {
            bytes[size++] = (byte) (value >>> 8 * i);
        }
    }

    void putDouble(double value) {
        room(Double.BYTES);
        long bits = Double.doubleToRawLongBits(value);
        for (int i = 0; i < Double.BYTES; i++) {
            bytes[size++] = (byte) (bits >>> 8 * i);
        }
    }

    /**
     * Numbers in the hybrid of runs and packed bits: a single run where they are all the same, else packed.
     *
     * @param width bits of each
     */
    void putPacked(int[] values, int count, int width) {
        boolean same = true;
        for (int i = 1; i < count && same; i++) {
            same = values[i] == values[0];
        }
        if (same) {
            varint((long) count << 1);
            for (int i = 0; i < (width + 7) / 8; i++) {
                put(values[0] >>> 8 * i);
            }
            return;
        }
        int groups = (count + 7) / 8;
        varint((long) groups << 1 | 1);
        long held = 0;
        int bits = 0;
        for (int i = 0; i < 8 * groups; i++) {
            held |= (long) (i < count ? values[i] : 0) << bits;
            for (bits += width; bits >= 8; bits -= 8) {
                put((int) held);
                held >>>= 8;
            }
        }
    }

    private void varint(long value) {
        long rest = value;
        while ((rest & ~0x7FL) != 0) {
            put((int) (rest & 0x7F | 0x80));
            rest >>>= 7;
        }
        put((int) rest);
    }

    private void room(int more) {
        if (bytes.length - size < more) {
            bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, size + more));
        }
    }

    byte[] array() {
        return bytes;
    }

    int size() {
        return size;
    }

    void clear() {
        size = 0;
    }
}
