package hotday.signals.framelog;

/**
 * Bits that a classic data frame takes on the wires, with the three of the gap behind it. Source: Davis, Burns, Bril,
 * Lukkien, "Controller Area Network (CAN) schedulability analysis: refuted, revisited and revised", Real-Time Systems 35
 * (2007) 239-272; the equation from memory: 34 of the 47 bits around the payload are open to stuffing with an identifier of
 * 11 bits, 54 of 67 with one of 29.
 */
public final class FrameBits {
    private static final int STANDARD = 47;
    private static final int EXTENDED = 67;
    /** Bits around the payload that are never stuffed. */
    private static final int UNSTUFFED = 13;

    private FrameBits() {}

    /** Without stuffing: the fewest. */
    public static int plain(boolean extended, int bytes) {
        return (extended ? EXTENDED : STANDARD) + 8 * bytes;
    }

    /** With a stuffed bit behind every fourth: the most. */
    public static int worst(boolean extended, int bytes) {
        int plain = plain(extended, bytes);
        return plain + (plain - UNSTUFFED - 1) / 4;
    }
}
