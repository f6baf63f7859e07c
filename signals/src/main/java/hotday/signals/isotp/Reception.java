package hotday.signals.isotp;

import java.util.Arrays;

/** One message on its way. Objects are used again and again. */
final class Reception {
    private static final int FIRST_ROOM = 64;
    /** A buffer up to this size stays with the object for the next message. */
    private static final int KEPT_ROOM = 4096;

    private static final int UNLIMITED = -1;

    int bus;
    int id;
    boolean extended;
    int address;
    double start;
    /** s, of the last frame that moved it on. */
    double last;
    /** Whether the receiver must let it go on. */
    boolean waiting;

    byte[] data = new byte[FIRST_ROOM];
    long total;
    long received;
    /** Whether the bytes are kept; else they are only counted. */
    boolean kept;

    private int sequence;
    private int blockLeft;

    /** What it means that nothing came. */
    IsoTpEvent silence() {
        return waiting ? IsoTpEvent.UNANSWERED : IsoTpEvent.SILENT;
    }

    void begin(double time, long total) {
        this.start = time;
        this.last = time;
        this.total = total;
        this.received = 0;
        this.kept = true;
        this.sequence = 1;
        this.waiting = true;
        this.blockLeft = UNLIMITED;
    }

    boolean isOf(int bus, int id, boolean extended, int address) {
        return this.id == id && this.bus == bus && this.extended == extended && this.address == address;
    }

    boolean isDue(int sequence) {
        return this.sequence == sequence;
    }

    boolean isWhole() {
        return received == total;
    }

    /** Bytes by which the buffer must grow for the next piece; doubling, and never beyond the message. */
    int growth(int piece) {
        if (!kept || received + piece <= data.length) {
            return 0;
        }
        return (int) Math.max(received + piece, Math.min(2L * data.length, total)) - data.length;
    }

    void grow(int by) {
        data = Arrays.copyOf(data, data.length + by);
    }

    /** Bytes given back. */
    int shrink() {
        int size = data.length;
        if (size <= KEPT_ROOM) {
            return 0;
        }
        data = new byte[FIRST_ROOM];
        return size - FIRST_ROOM;
    }

    void append(byte[] from, int offset, int piece) {
        if (kept) {
            System.arraycopy(from, offset, data, (int) received, piece);
        }
        received += piece;
    }

    void step(double time) {
        last = time;
        sequence = sequence + 1 & 0xF;
        waiting = false;
        if (blockLeft > 0) {
            blockLeft--;
            waiting = blockLeft == 0;
        }
    }

    /** The receiver lets it go on, for so many frames (0: to the end). */
    void goOn(double time, int block) {
        last = time;
        waiting = false;
        blockLeft = block == 0 ? UNLIMITED : block;
    }
}
