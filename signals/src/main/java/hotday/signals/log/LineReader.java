package hotday.signals.log;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

/**
 * Lines of a stream as bytes, without copying them into strings. A line ends with LF, CR LF or CR, mixed as they come.
 * Not for use by several threads.
 */
public final class LineReader implements Closeable {
    /** Longest line taken for a row, bytes. */
    static final int LONGEST = 1_000_000;

    private static final int CHUNK = 1 << 18;

    private static final long LINE_FEEDS = EightBytes.of('\n');
    private static final long RETURNS = EightBytes.of('\r');

    private final InputStream in;
    private byte[] buffer = new byte[CHUNK];
    private int filled;
    private int next;
    private int start;
    private int end;
    private int unseen;
    private int line;
    private boolean skipLineFeed;
    private boolean unfinished;
    private boolean exhausted;

    /** @param in closed with it */
    public LineReader(InputStream in) {
        this.in = in;
    }

    /**
     * Goes to the next line.
     *
     * @return false at the end of the stream
     * @throws LineTooLong when a line has more than {@link #LONGEST} bytes
     */
    public boolean next() throws IOException {
        start = next;
        int at = next;
        while (true) {
            if (at == filled) {
                if (!fill()) {
                    return last();
                }
                at = unseen;
            }
            if (skipLineFeed) {
                skipLineFeed = false;
                if (buffer[at] == '\n') {
                    start = ++at;
                    continue;
                }
            }
            at = lineEnd(at);
            if (at < filled) {
                end = at;
                next = at + 1;
                skipLineFeed = buffer[at] == '\r';
                line++;
                return true;
            }
        }
    }

    private int lineEnd(int from) {
        int at = from;
        for (; at + EightBytes.SIZE <= filled; at += EightBytes.SIZE) {
            long word = EightBytes.at(buffer, at);
            long marks = EightBytes.zeros(word ^ LINE_FEEDS) | EightBytes.zeros(word ^ RETURNS);
            if (marks != 0) {
                return at + EightBytes.first(marks);
            }
        }
        while (at < filled && buffer[at] != '\n' && buffer[at] != '\r') {
            at++;
        }
        return at;
    }

    private boolean last() {
        end = filled;
        next = filled;
        unfinished = end > start;
        line += unfinished ? 1 : 0;
        return unfinished;
    }

    /** Makes room behind the line begun and reads on; a file may end in any number of zero bytes. */
    private boolean fill() throws IOException {
        if (exhausted) {
            return false;
        }
        int seen = filled - start;
        if (seen > LONGEST) {
            if (buffer[filled - 1] != 0) {
                throw new LineTooLong(line + 1);
            }
            seen = LONGEST;
        }
        System.arraycopy(buffer, start, buffer, 0, seen);
        if (seen == buffer.length) {
            buffer = Arrays.copyOf(buffer, 2 * buffer.length);
        }
        start = 0;
        filled = seen;
        unseen = seen;
        int read = in.read(buffer, filled, buffer.length - filled);
        exhausted = read < 0;
        filled += Math.max(0, read);
        return read > 0;
    }

    /** Valid until the next line. */
    public byte[] bytes() {
        return buffer;
    }

    /** Where in {@link #bytes} the line begins. */
    public int start() {
        return start;
    }

    /** Behind the last byte of the line, its end mark not counted. */
    public int end() {
        return end;
    }

    /** Number of the line, from 1. */
    public int line() {
        return line;
    }

    /** True for a last line without an end mark. */
    public boolean unfinished() {
        return unfinished;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }

    /** A line that cannot be a row of a recording. */
    static final class LineTooLong extends IOException {
        private static final long serialVersionUID = 1L;

        private final int line;

        LineTooLong(int line) {
            super("line " + line + " has more than " + LONGEST + " bytes");
            this.line = line;
        }

        int line() {
            return line;
        }
    }
}
