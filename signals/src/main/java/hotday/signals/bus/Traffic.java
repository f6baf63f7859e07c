package hotday.signals.bus;

/**
 * Frames of one identifier on a bus. Times in ns.
 *
 * @param priority lower wins the bus: {@link #priority(int, boolean)}; no two on one bus are equal
 * @param transmission of one frame, above 0
 * @param period shortest time from one frame to the next as planned, above 0
 * @param jitter longest delay from the planned moment until the frame waits for the bus, 0 or more
 */
public record Traffic(long priority, long transmission, long period, long jitter) {
    private static final int BASE_BITS = 18;

    /** Longest time that makes sense here, ns. */
    public static final long LONGEST = 3_600_000_000_000L;

    public Traffic {
        check("transmission", transmission, 1);
        check("period", period, 1);
        check("jitter", jitter, 0);
    }

    private static void check(String name, long value, long low) {
        if (value < low || value > LONGEST) {
            throw new IllegalArgumentException(
                    name + " of " + value + " ns must lie between " + low + " and " + LONGEST + " ns");
        }
    }

    /**
     * Order in which identifiers win the bus: bit for bit, and a standard frame before an extended one that begins with
     * the same eleven bits.
     */
    public static long priority(int id, boolean extended) {
        long base = extended ? id >> BASE_BITS : id;
        long rest = extended ? 1L << BASE_BITS | id & (1L << BASE_BITS) - 1 : 0;
        return base << BASE_BITS + 1 | rest;
    }

    /** Share of the bus that it takes at most. */
    public double load() {
        return (double) transmission / period;
    }
}
