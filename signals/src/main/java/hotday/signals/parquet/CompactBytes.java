package hotday.signals.parquet;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** Structures in Thrift's compact protocol, as the format of Parquet describes its headers with. Fields go in rising order. */
final class CompactBytes {
    private static final int I32 = 5;
    private static final int I64 = 6;
    private static final int BINARY = 8;
    private static final int LIST = 9;
    private static final int STRUCT = 12;
    private static final int SHORT_LIST = 15;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private int last;

    CompactBytes i32(int field, int value) {
        header(field, I32);
        zigzag(value);
        return this;
    }

    CompactBytes i64(int field, long value) {
        header(field, I64);
        zigzag(value);
        return this;
    }

    CompactBytes text(int field, String value) {
        header(field, BINARY);
        bytes(value);
        return this;
    }

    CompactBytes struct(int field, CompactBytes content) {
        header(field, STRUCT);
        content.endInto(out);
        return this;
    }

    CompactBytes structs(int field, Iterable<CompactBytes> contents, int count) {
        list(field, STRUCT, count);
        contents.forEach(c -> c.endInto(out));
        return this;
    }

    CompactBytes numbers(int field, int... values) {
        list(field, I32, values.length);
        for (int value : values) {
            zigzag(value);
        }
        return this;
    }

    CompactBytes texts(int field, String... values) {
        list(field, BINARY, values.length);
        for (String value : values) {
            bytes(value);
        }
        return this;
    }

    /** The whole structure with its end. */
    byte[] end() {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        endInto(all);
        return all.toByteArray();
    }

    private void endInto(ByteArrayOutputStream to) {
        to.writeBytes(out.toByteArray());
        to.write(0);
    }

    private void header(int field, int type) {
        int step = field - last;
        if (step < 1 || step > 15) {
            throw new IllegalArgumentException("field " + field + " after " + last);
        }
        out.write(step << 4 | type);
        last = field;
    }

    private void list(int field, int type, int count) {
        header(field, LIST);
        if (count < SHORT_LIST) {
            out.write(count << 4 | type);
        } else {
            out.write(SHORT_LIST << 4 | type);
            varint(count);
        }
    }

    private void bytes(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        varint(bytes.length);
        out.writeBytes(bytes);
    }

    private void zigzag(long value) {
        varint(value << 1 ^ value >> 63);
    }

    private void varint(long value) {
        long rest = value;
        while ((rest & ~0x7FL) != 0) {
            out.write((int) (rest & 0x7F | 0x80));
            rest >>>= 7;
        }
        out.write((int) rest);
    }
}
