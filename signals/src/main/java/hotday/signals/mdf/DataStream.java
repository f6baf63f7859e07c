package hotday.signals.mdf;

import java.io.Closeable;
import java.util.Arrays;

/**
 * The bytes of a chain of blocks in one row, as if it were a single block. A block that breaks off ends the row: what stands
 * behind a gap cannot be told apart.
 */
final class DataStream implements Closeable {
    /** Bytes unpacked again because somebody went back, beyond which it is no recording in order. */
    private static final long MOST_AGAIN = 4L << 30;

    private final BlockFile file;
    private final DataChain chain;
    private final Faults faults;
    private final int size;
    private byte[] buffer = {};
    /** Of the first byte of the buffer among all. */
    private long start;

    private int at;
    private int end;
    private int block = -1;
    private BlockBytes source;
    private boolean over;
    private long again;

    /** @param size of the buffer at first, bytes */
    DataStream(BlockFile file, DataChain chain, int size, Faults faults) {
        this.file = file;
        this.chain = chain;
        this.faults = faults;
        this.size = size;
    }

    byte[] bytes() {
        return buffer;
    }

    /** Where in {@link #bytes} the next byte stands; changes with every {@link #has}. */
    int at() {
        return at;
    }

    /** How many bytes were passed. */
    long position() {
        return start + at;
    }

    /** Bytes at hand. */
    int ready() {
        return end - at;
    }

    /** Makes bytes stand together in {@link #bytes}; false when there are fewer. */
    boolean has(int count) {
        while (end - at < count) {
            if (over) {
                return false;
            }
            fill(count);
        }
        return true;
    }

    /** Passes bytes that {@link #has} found. */
    void pass(int count) {
        at += count;
    }

    /** Passes any number of bytes; false when there are fewer. */
    boolean skip(long count) {
        if (count <= end - at) {
            at += (int) count;
            return true;
        }
        return seek(position() + count);
    }

    private void fill(int count) {
        if (at > 0) {
            System.arraycopy(buffer, at, buffer, 0, end - at);
            start += at;
            end -= at;
            at = 0;
        }
        try {
            widen(count);
            int n = source == null ? 0 : source.read(buffer, end, buffer.length - end);
            end += n;
            if (n == 0) {
                open(block + 1);
            }
        } catch (BrokenBlock broken) {
            faults.add(broken, "; what is whole before it is read");
            over = true;
        }
    }

    private void widen(int count) {
        if (count <= buffer.length && buffer.length > 0) {
            return;
        }
        int wider = Math.max(size, count);
        if (wider > size && !file.hold(wider)) {
            throw new BrokenBlock(
                    "record-too-large",
                    chain.position(Math.max(0, Math.min(block, chain.count() - 1))),
                    "a record or value of " + count + " bytes is more than the memory holds beside the others");
        }
        file.release(buffer.length > size ? buffer.length : 0);
        buffer = Arrays.copyOf(buffer, wider);
    }

    private void open(int next) {
        if (source != null) {
            source.close();
            source = null;
        }
        block = next;
        if (next >= chain.count()) {
            over = true;
            return;
        }
        BlockFile.Head head = chain.head(next);
        if (head.length() > file.size() - head.position()) {
            faults.add(new BrokenBlock(
                    "file-cut",
                    file.size(),
                    "the file ends inside block " + head.id() + " that begins at byte " + head.position()
                            + " and says it has " + head.length() + " bytes"));
        }
        source = BlockBytes.of(file, head);
    }

    /** Goes to a byte; false when it lies behind the end, or cannot be reached. */
    boolean seek(long to) {
        if (to >= start && to <= start + end) {
            at = (int) (to - start);
            return true;
        }
        try {
            return go(to);
        } catch (BrokenBlock broken) {
            faults.add(broken, "; what is whole before it is read");
            over = true;
            at = end;
            return false;
        }
    }

    private boolean go(long to) {
        int holding = chain.holding(to);
        long now = start + end;
        if (holding != block || to < now || source == null) {
            boolean back = to < now;
            open(holding);
            now = holding < chain.count() ? chain.start(holding) : to;
            over = source == null;
            if (back && source != null && !source.isPlain()) {
                again += chain.start(holding + 1) - now;
                requireOrder();
            }
        }
        if (source != null) {
            source.skip(to - now);
        }
        start = to;
        at = 0;
        end = 0;
        return source != null;
    }

    private void requireOrder() {
        again += 1 << 12;
        if (again > MOST_AGAIN) {
            throw new BrokenBlock(
                    "values-out-of-order",
                    chain.position(block),
                    "values stand in no order in packed data: " + (MOST_AGAIN >> 30)
                            + " GB were unpacked more than once");
        }
    }

    /** Where the next byte stands, for people. */
    String where() {
        String byteOf = "byte " + position() + " of the data";
        return block >= 0 && block < chain.count()
                ? byteOf + " (about block at byte " + chain.position(block) + ")"
                : byteOf;
    }

    @Override
    public void close() {
        if (source != null) {
            source.close();
            source = null;
        }
        file.release(buffer.length > size ? buffer.length : 0);
        buffer = new byte[0];
        over = true;
    }
}
