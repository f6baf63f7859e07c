package hotday.signals.mdf;

import java.io.Closeable;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** The data bytes of one block from the first to the last, unpacked where they are packed. */
abstract class BlockBytes implements Closeable {
    /**
     * A packed block up to this is unpacked whole before its first byte is handed out, so that nothing comes of a damaged one;
     * the standard asks for blocks of at most 4 MB.
     */
    private static final long LARGEST_WHOLE = 32L << 20;

    /**
     * @return how many bytes were put, 0 at the end
     */
    abstract int read(byte[] to, int from, int length);

    /** Passes over bytes; there are as many. */
    abstract void skip(long bytes);

    /** Whether going back costs no unpacking. */
    boolean isPlain() {
        return true;
    }

    @Override
    public void close() {}

    static BlockBytes of(BlockFile file, BlockFile.Head head) {
        if (!head.id().equals("##DZ")) {
            return new Plain(file, head.dataAt(), Math.min(head.dataLength(), file.size() - head.dataAt()));
        }
        PackedBlock packed = PackedBlock.of(file, head);
        if (packed.unpacked() <= LARGEST_WHOLE && file.hold(packed.unpacked())) {
            return whole(file, head, packed);
        }
        if (packed.transposed()) {
            throw new BrokenBlock(
                    "block-too-large",
                    head.position(),
                    "block ##DZ is transposed and has " + packed.unpacked() + " bytes unpacked: at most "
                            + LARGEST_WHOLE + " are read, and less where many groups need memory at once");
        }
        return new Packed(file, head, packed);
    }

    private static BlockBytes whole(BlockFile file, BlockFile.Head head, PackedBlock packed) {
        byte[] bytes = new byte[(int) packed.unpacked()];
        boolean done = false;
        try (Packed source = new Packed(file, head, packed)) {
            int filled = 0;
            for (int n = 1; n > 0; filled += n) {
                n = source.read(bytes, filled, bytes.length - filled);
            }
            done = true;
        } finally {
            file.release(done ? 0 : bytes.length);
        }
        return new Whole(file, packed.transposed() ? rows(bytes, packed.columns()) : bytes);
    }

    /** Bytes behind the last whole row stand as they are. */
    private static byte[] rows(byte[] columns, int width) {
        byte[] rows = new byte[columns.length];
        int height = columns.length / width;
        for (int c = 0; c < width && height > 0; c++) {
            for (int r = 0, from = c * height, to = c; r < height; r++, to += width) {
                rows[to] = columns[from + r];
            }
        }
        int turned = height * width;
        System.arraycopy(columns, turned, rows, turned, columns.length - turned);
        return rows;
    }

    private static final class Plain extends BlockBytes {
        private final BlockFile file;
        private long at;
        private long left;

        Plain(BlockFile file, long at, long length) {
            this.file = file;
            this.at = at;
            this.left = Math.max(0, length);
        }

        @Override
        int read(byte[] to, int from, int length) {
            int n = file.read(at, to, from, (int) Math.min(length, left));
            skip(n);
            return n;
        }

        @Override
        void skip(long bytes) {
            at += bytes;
            left -= bytes;
        }
    }

    private static final class Whole extends BlockBytes {
        private final BlockFile file;
        private final byte[] bytes;
        private int at;

        Whole(BlockFile file, byte[] bytes) {
            this.file = file;
            this.bytes = bytes;
        }

        @Override
        int read(byte[] to, int from, int length) {
            int n = Math.min(length, bytes.length - at);
            System.arraycopy(bytes, at, to, from, n);
            at += n;
            return n;
        }

        @Override
        void skip(long bytesOver) {
            at += (int) bytesOver;
        }

        @Override
        boolean isPlain() {
            return false;
        }

        @Override
        public void close() {
            file.release(bytes.length);
        }
    }

    private static final class Packed extends BlockBytes {
        private static final int CHUNK = 1 << 14;

        private final BlockFile file;
        private final BlockFile.Head head;
        private final Inflater inflater = new Inflater();
        private final byte[] in = new byte[CHUNK];
        private long at;
        private long packedLeft;
        private long left;

        Packed(BlockFile file, BlockFile.Head head, PackedBlock packed) {
            this.file = file;
            this.head = head;
            this.at = packed.packedAt();
            this.packedLeft = packed.packed();
            this.left = packed.unpacked();
        }

        /** What was unpacked before damage is handed out before it is told. */
        @Override
        int read(byte[] to, int from, int length) {
            if (left == 0) {
                requireEnd();
                return 0;
            }
            int most = (int) Math.min(length, left);
            long before = inflater.getBytesWritten();
            String damage = "";
            while (damage.isEmpty() && inflater.getBytesWritten() == before && most > 0) {
                damage = unpack(to, from, most);
            }
            int n = (int) (inflater.getBytesWritten() - before);
            left -= n;
            if (n == 0 && !damage.isEmpty()) {
                throw broken(damage);
            }
            return n;
        }

        /** What is wrong; empty when nothing is. */
        private String unpack(byte[] to, int from, int most) {
            try {
                int n = inflater.inflate(to, from, most);
                boolean stuck = n == 0 && (inflater.finished() || inflater.needsDictionary() || !feed());
                return stuck ? "unpacks to " + left + " bytes less than it says" : "";
            } catch (DataFormatException e) {
                return "is damaged: it does not unpack (" + e.getMessage() + "), " + left + " bytes are missing";
            }
        }

        private void requireEnd() {
            byte[] more = new byte[1];
            long before = inflater.getBytesWritten();
            while (!inflater.finished()
                    && inflater.getBytesWritten() == before
                    && unpack(more, 0, 1).isEmpty()) {}
            if (inflater.getBytesWritten() > before) {
                throw broken("unpacks to more bytes than it says");
            }
        }

        private boolean feed() {
            int n = file.read(at, in, 0, (int) Math.min(CHUNK, packedLeft));
            at += n;
            packedLeft -= n;
            inflater.setInput(in, 0, n);
            return n > 0;
        }

        private BrokenBlock broken(String what) {
            return new BrokenBlock("block-broken", head.position(), "block ##DZ " + what);
        }

        @Override
        void skip(long bytes) {
            byte[] over = new byte[CHUNK];
            int n = 1;
            for (long rest = bytes; rest > 0 && n > 0; rest -= n) {
                n = read(over, 0, (int) Math.min(CHUNK, rest));
            }
        }

        @Override
        boolean isPlain() {
            return false;
        }

        @Override
        public void close() {
            inflater.end();
        }
    }
}
