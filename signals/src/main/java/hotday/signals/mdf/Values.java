package hotday.signals.mdf;

import java.io.Closeable;
import java.util.Set;
import java.util.function.Supplier;

/** Values of any length that lie apart from the records that name them. */
abstract class Values implements Closeable {
    private static final int LENGTH_BYTES = 4;
    private static final Set<String> VALUES = Set.of("##SD");

    /**
     * Goes to the value of a record; false when there is none.
     *
     * @param offset where the record says it lies, bytes
     * @param record number of the record in its group, from 0
     */
    abstract boolean go(long offset, long record);

    abstract byte[] bytes();

    /** First byte of the value. */
    abstract int at();

    abstract int length();

    @Override
    public abstract void close();

    /** In blocks of their own. */
    static Values inBlocks(BlockFile file, long link, String from, int buffer, Faults faults) {
        return new InBlocks(new DataStream(file, DataChain.of(file, link, from, VALUES, faults), buffer, faults));
    }

    /**
     * In records of another group of the same data, which are read a second time for them.
     *
     * @param cursor hands out the records of that group
     * @param inOrder whether records do not say where: the first value is that of the first record, and so on
     */
    static Values inRecords(Supplier<RecordCursor> cursor, int group, boolean inOrder) {
        return new InRecords(cursor, group, inOrder);
    }

    private static final class InBlocks extends Values {
        private final DataStream stream;
        private int length;

        InBlocks(DataStream stream) {
            this.stream = stream;
        }

        @Override
        boolean go(long offset, long record) {
            if (offset < 0 || !stream.seek(offset) || !stream.has(LENGTH_BYTES)) {
                return false;
            }
            length = LittleEndian.i32(stream.bytes(), stream.at());
            return length >= 0 && length <= RecordCursor.LONGEST && stream.has(LENGTH_BYTES + length);
        }

        @Override
        byte[] bytes() {
            return stream.bytes();
        }

        @Override
        int at() {
            return stream.at() + LENGTH_BYTES;
        }

        @Override
        int length() {
            return length;
        }

        @Override
        public void close() {
            stream.close();
        }
    }

    private static final class InRecords extends Values {
        /** Going back means reading from the beginning: more often than this there is no order in them. */
        private static final int MOST_RETURNS = 1000;

        private final Supplier<RecordCursor> open;
        private final int group;
        private final boolean inOrder;
        private RecordCursor cursor;
        private long offset = -1;
        private long next;
        private int returns;

        InRecords(Supplier<RecordCursor> open, int group, boolean inOrder) {
            this.open = open;
            this.group = group;
            this.inOrder = inOrder;
            this.cursor = open.get();
        }

        @Override
        boolean go(long named, long record) {
            long to = inOrder ? record : named;
            if (to < offset) {
                if (to < 0 || ++returns > MOST_RETURNS) {
                    return false;
                }
                cursor.close();
                cursor = open.get();
                offset = -1;
                next = 0;
            }
            while (offset < to && cursor.next()) {
                if (cursor.group() == group) {
                    offset = next;
                    next += inOrder ? 1 : LENGTH_BYTES + cursor.length();
                }
            }
            return offset == to;
        }

        @Override
        byte[] bytes() {
            return cursor.bytes();
        }

        @Override
        int at() {
            return cursor.at();
        }

        @Override
        int length() {
            return cursor.length();
        }

        @Override
        public void close() {
            cursor.close();
        }
    }
}
