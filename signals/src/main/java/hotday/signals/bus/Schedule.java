package hotday.signals.bus;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Load and worst-case response times of all frames on one CAN bus, for nodes that offer their most urgent frame first and
 * without disturbed frames. Response time: from the planned moment to the end of the frame, so that it includes the
 * jitter. Davis, Burns, Bril and Lukkien 2007, Controller Area Network (CAN) schedulability analysis: Refuted, revisited
 * and revised, Real-Time Systems 35, 239 to 272, with all instances of the busy period. Whole ns throughout.
 */
public final class Schedule {
    /** No bound: the bus has no time left for this frame, or only after longer than {@link #HORIZON}. */
    public static final long UNBOUNDED = Long.MAX_VALUE;

    /** Busy periods are followed so far, ns. */
    static final long HORIZON = 60_000_000_000L;

    private final Traffic[] byPriority;
    private final int[] place;
    private final long bitTime;

    private Schedule(Traffic[] byPriority, int[] place, long bitTime) {
        this.byPriority = byPriority;
        this.place = place;
        this.bitTime = bitTime;
    }

    /**
     * @param bitTime ns
     * @throws IllegalArgumentException when two have one priority
     */
    public static Schedule of(List<Traffic> traffic, long bitTime) {
        Integer[] order = new Integer[traffic.size()];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingLong(i -> traffic.get(i).priority()));
        Traffic[] sorted = Arrays.stream(order).map(traffic::get).toArray(Traffic[]::new);
        int[] place = new int[order.length];
        for (int k = 0; k < order.length; k++) {
            place[order[k]] = k;
            if (k > 0 && sorted[k].priority() == sorted[k - 1].priority()) {
                throw new IllegalArgumentException("two of priority " + sorted[k].priority() + " on one bus");
            }
        }
        return new Schedule(sorted, place, bitTime);
    }

    /** Share of the bus that is taken, 0 and more. */
    public double load() {
        return load(byPriority.length);
    }

    private double load(int first) {
        double sum = 0;
        for (int k = 0; k < first; k++) {
            sum += byPriority[k].load();
        }
        return sum;
    }

    /** Longest frame of lower priority that may just have begun, ns. */
    public long blocking(int index) {
        return blockingOf(place[index]);
    }

    private long blockingOf(int m) {
        long longest = 0;
        for (int k = m + 1; k < byPriority.length; k++) {
            longest = Math.max(longest, byPriority[k].transmission());
        }
        return longest;
    }

    /**
     * Worst-case response time, ns, or {@link #UNBOUNDED}.
     *
     * @param index in the list that the schedule was made of
     */
    public long response(int index) {
        int m = place[index];
        Traffic own = byPriority[m];
        long busy = busyPeriod(m);
        if (busy == UNBOUNDED) {
            return UNBOUNDED;
        }
        long instances = ceil(busy + own.jitter(), own.period());
        long worst = 0;
        long wait = blockingOf(m);
        for (long q = 0; q < instances; q++) {
            wait = queueing(m, q, wait);
            if (wait == UNBOUNDED) {
                return UNBOUNDED;
            }
            worst = Math.max(worst, own.jitter() + wait - q * own.period() + own.transmission());
        }
        return worst;
    }

    /** How long the bus may be taken without a gap by this frame and those before it, the blocking one included. */
    private long busyPeriod(int m) {
        if (load(m + 1) >= 1) {
            return UNBOUNDED;
        }
        long blocking = blockingOf(m);
        long t = byPriority[m].transmission();
        while (t <= HORIZON) {
            long next = blocking + demand(m + 1, t);
            if (next == t) {
                return t;
            }
            t = next;
        }
        return UNBOUNDED;
    }

    /** From the start of the busy period until instance q begins; {@code from} is not above the answer. */
    private long queueing(int m, long q, long from) {
        long own = blockingOf(m) + q * byPriority[m].transmission();
        long w = Math.max(from, own);
        while (w <= HORIZON) {
            long next = own + demand(m, w + bitTime);
            if (next == w) {
                return w;
            }
            w = next;
        }
        return UNBOUNDED;
    }

    /** What those of the first places may ask of the bus in a window. */
    private long demand(int first, long window) {
        long sum = 0;
        for (int k = 0; k < first; k++) {
            Traffic t = byPriority[k];
            sum += ceil(window + t.jitter(), t.period()) * t.transmission();
        }
        return sum;
    }

    private static long ceil(long a, long b) {
        return (a + b - 1) / b;
    }
}
