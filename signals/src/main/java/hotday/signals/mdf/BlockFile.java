package hotday.signals.mdf;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.io.Closeable;
import java.io.FileInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** A file of blocks. Every link is checked against the file's end before it is followed. For one thread. */
final class BlockFile implements Closeable {
    /** Bytes before the links: name, four of no use, length, count of links. */
    static final int HEADER = 24;
    /** No block that is read whole needs more: the longest lists and texts. */
    private static final long LARGEST = 16L << 20;

    private final Path path;
    private final FileChannel channel;
    private final long size;
    private boolean openEnd;
    /** Bytes that are held in memory beyond the ordinary buffers. */
    private long held;

    private BlockFile(Path path, FileChannel channel, long size) {
        this.path = path;
        this.channel = channel;
        this.size = size;
    }

    static BlockFile open(Path path) {
        try {
            FileChannel channel = channel(path);
            return new BlockFile(path, channel, channel.size());
        } catch (IOException e) {
            throw unreadable(path, e);
        }
    }

    /** Of a stream, which can only read; closing one closes the other. */
    @SuppressWarnings("resource")
    private static FileChannel channel(Path path) throws IOException {
        return new FileInputStream(path.toFile()).getChannel();
    }

    private static InputException unreadable(Path path, IOException e) {
        return InputException.at(Place.of(path.toString()), "not-readable", "cannot be read (" + e.getMessage() + ")");
    }

    Path path() {
        return path;
    }

    /** Asks for memory of any size; false when all that is held would be more than a quarter of what there is. */
    boolean hold(long bytes) {
        boolean fits = held + bytes <= Runtime.getRuntime().maxMemory() / 4;
        held += fits ? bytes : 0;
        return fits;
    }

    /** Gives back what {@link #hold} granted. */
    void release(long bytes) {
        held -= bytes;
    }

    /** The last block of data may not say how long it is: it runs to the end of the file. */
    void takeOpenEnd() {
        openEnd = true;
    }

    /** Bytes. */
    long size() {
        return size;
    }

    /**
     * Reads bytes of the file.
     *
     * @return how many: fewer only at the file's end
     */
    int read(long position, byte[] to, int from, int length) {
        ByteBuffer into = ByteBuffer.wrap(to, from, length);
        try {
            while (into.hasRemaining() && channel.read(into, position + into.position() - from) >= 0) {}
            return into.position() - from;
        } catch (IOException e) {
            throw unreadable(path, e);
        }
    }

    /**
     * The head of a block.
     *
     * @param length as it says itself, bytes; the file may end before
     */
    record Head(String id, long position, long length, long links) {
        long dataAt() {
            return position + HEADER + Long.BYTES * links;
        }

        long dataLength() {
            return length - HEADER - Long.BYTES * links;
        }

        /** For people. */
        String shown() {
            return "block " + id + " at byte " + position;
        }
    }

    /**
     * Looks where a link leads.
     *
     * @param from what the link belongs to, for people
     */
    Head head(long position, String from) {
        if (position < 64 || position > size - HEADER) {
            throw new BrokenBlock(
                    "link-broken",
                    position,
                    from + " leads to this byte, and the file has blocks from byte 64 to its end at byte " + size);
        }
        byte[] bytes = new byte[HEADER];
        read(position, bytes, 0, HEADER);
        ByteBuffer b = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        if (bytes[0] != '#' || bytes[1] != '#') {
            throw new BrokenBlock("link-broken", position, from + " leads here, where no block begins");
        }
        Head head = new Head(
                new String(bytes, 0, 4, StandardCharsets.ISO_8859_1).replaceAll("[^#A-Za-z0-9]", "?"),
                position,
                b.getLong(8),
                b.getLong(16));
        if (openEnd && head.id().equals("##DT") && head.links() == 0 && head.length() <= HEADER && isLast(position)) {
            return new Head(head.id(), position, size - position, 0);
        }
        if (head.links() < 0
                || head.links() > size / Long.BYTES
                || head.length() < HEADER + Long.BYTES * head.links()) {
            throw new BrokenBlock(
                    "block-broken",
                    position,
                    "block " + head.id() + " says it has " + head.length() + " bytes and " + head.links()
                            + " links, which cannot be");
        }
        return head;
    }

    /** Whether no other block begins right behind a block without data. */
    private boolean isLast(long position) {
        byte[] next = new byte[4];
        return read(position + HEADER, next, 0, next.length) < next.length
                || next[0] != '#'
                || next[1] != '#'
                || !Character.isUpperCase(next[2])
                || !Character.isUpperCase(next[3]);
    }

    /** A block read whole; refuses one of another name. */
    Block block(long position, String from, String... ids) {
        Head head = head(position, from);
        if (!List.of(ids).contains(head.id())) {
            throw new BrokenBlock(
                    "link-broken",
                    position,
                    from + " leads to a block " + head.id() + ", " + String.join(" or ", ids) + " is needed");
        }
        return whole(head);
    }

    Block whole(Head head) {
        if (head.length() > LARGEST || head.length() > size - head.position()) {
            throw new BrokenBlock(
                    "block-broken",
                    head.position(),
                    "block " + head.id() + " says it has " + head.length() + " bytes, "
                            + Math.min(LARGEST, size - head.position()) + " can be");
        }
        byte[] bytes = new byte[(int) head.length()];
        read(head.position(), bytes, 0, bytes.length);
        ByteBuffer all = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        long[] links = new long[(int) head.links()];
        for (int i = 0; i < links.length; i++) {
            links[i] = all.getLong(HEADER + Long.BYTES * i);
        }
        byte[] data = Arrays.copyOfRange(bytes, HEADER + Long.BYTES * links.length, bytes.length);
        return new Block(
                head.id(), head.position(), links, ByteBuffer.wrap(data).order(ByteOrder.LITTLE_ENDIAN));
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
