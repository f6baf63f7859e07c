package hotday.signals.log;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** What a packed file unpacks to, up to a size: a small file may hold any amount of the same byte. */
final class Unpacked extends FilterInputStream {
    private long left;

    /** @param most bytes handed out */
    Unpacked(InputStream in, long most) {
        super(in);
        this.left = most;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] to, int from, int length) throws IOException {
        int read = super.read(to, from, length);
        left -= Math.max(0, read);
        if (left < 0) {
            throw new TooMuch();
        }
        return read;
    }

    @Override
    public boolean markSupported() {
        return false;
    }

    /** More than can be meant. */
    static final class TooMuch extends IOException {
        private static final long serialVersionUID = 1L;

        TooMuch() {
            super("unpacks to too much");
        }
    }
}
