package hotday.signals.check;

/**
 * Follows the rolling counter of one message of one sender. Allocates nothing; for one thread at a time.
 *
 * <p>An impossible value is not followed: the next one is compared with the last possible one, so that a frame damaged
 * on its way counts as lost. How many frames were lost is known only up to whole turns of the counter.
 */
public final class RollingCounter {
    /** Highest value of a counter of four bits that leaves 15 out ("not available"). */
    public static final int TO_14 = 14;
    /** Highest value of a counter of four bits. */
    public static final int TO_15 = 15;

    private final int highest;
    private final int stuckAfter;
    private int last = -1;
    private int repeats;
    private long lost;

    /**
     * @param highest the counter runs from 0 to this and on at 0; 1 to 65535
     * @param stuckAfter repetitions in a row from which on the counter is stuck, at least 1
     */
    public RollingCounter(int highest, int stuckAfter) {
        if (highest < 1 || highest > 0xFFFF) {
            throw new IllegalArgumentException("highest value " + highest + " of a counter must be 1 to 65535");
        }
        if (stuckAfter < 1) {
            throw new IllegalArgumentException("stuck after " + stuckAfter + " repetitions, must be at least 1");
        }
        this.highest = highest;
        this.stuckAfter = stuckAfter;
    }

    /** Follows the counter to its next value. */
    public CounterStep take(int value) {
        if (value < 0 || value > highest) {
            return CounterStep.IMPOSSIBLE;
        }
        if (value == last) {
            repeats++;
            return repeats >= stuckAfter ? CounterStep.STUCK : CounterStep.REPEATED;
        }
        repeats = 0;
        int before = last;
        last = value;
        return before < 0 ? CounterStep.FIRST : moved(before, value);
    }

    private CounterStep moved(int before, int value) {
        int missing = Math.floorMod(value - before, highest + 1) - 1;
        lost += missing;
        return missing == 0 ? CounterStep.NEXT : CounterStep.SKIPPED;
    }

    /** Frames lost so far, at least. */
    public long lost() {
        return lost;
    }

    /** Forgets what was seen; the next value is the first one again. */
    public void restart() {
        last = -1;
        repeats = 0;
        lost = 0;
    }
}
