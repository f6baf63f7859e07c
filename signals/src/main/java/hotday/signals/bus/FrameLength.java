package hotday.signals.bus;

/**
 * Bits of a classic CAN frame from the start of frame to the end of the pause of three bits behind it (ISO 11898-1).
 * Stuff bits are only put into the first part of it, up to and with the checksum: there a bit follows after five equal
 * ones, and then at most after every four.
 */
public final class FrameLength {
    /** Bytes of the longest classic frame. */
    public static final int MOST_BYTES = 8;

    private static final int STUFFED_STANDARD = 34;
    private static final int STUFFED_EXTENDED = 54;
    private static final int NEVER_STUFFED = 13;

    private FrameLength() {}

    /** Without any stuff bit: no frame is shorter. */
    public static int shortest(boolean extended, int bytes) {
        return stuffed(extended, bytes) + NEVER_STUFFED;
    }

    /**
     * With as many stuff bits as any payload can cause. Davis, Burns, Bril and Lukkien 2007, Controller Area Network (CAN)
     * schedulability analysis, Real-Time Systems 35, 239 to 272.
     */
    public static int longest(boolean extended, int bytes) {
        return shortest(extended, bytes) + (stuffed(extended, bytes) - 1) / 4;
    }

    private static int stuffed(boolean extended, int bytes) {
        if (bytes < 0 || bytes > MOST_BYTES) {
            throw new IllegalArgumentException("frame of " + bytes + " bytes, a classic one has 0 to " + MOST_BYTES);
        }
        return (extended ? STUFFED_EXTENDED : STUFFED_STANDARD) + 8 * bytes;
    }
}
