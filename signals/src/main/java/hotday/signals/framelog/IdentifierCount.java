package hotday.signals.framelog;

import hotday.signals.frame.Frame;

/**
 * What passed of one identifier on one bus. Times in s; NaN where there were no stamps or too few frames. Steps back of the
 * clock count for nothing.
 */
public final class IdentifierCount {
    private final int bus;
    private final int id;
    private final boolean extended;
    private final String name;
    private boolean known;
    private long count;
    private int shortest = Integer.MAX_VALUE;
    private int longest;
    private double last = Double.NaN;
    private long steps;
    private double meanStep;
    private double squares;
    private double longestStep;

    IdentifierCount(Frame frame, String name) {
        this.bus = frame.bus();
        this.id = frame.id();
        this.extended = frame.extended();
        this.name = name;
    }

    void add(Frame frame, boolean isKnown) {
        count++;
        known |= isKnown;
        shortest = Math.min(shortest, frame.length());
        longest = Math.max(longest, frame.length());
        if (frame.time() >= last) {
            step(frame.time() - last);
        }
        last = frame.time();
    }

    /** Mean and spread as they come (Welford, Technometrics 4 (1962) 419). */
    private void step(double step) {
        steps++;
        double off = step - meanStep;
        meanStep += off / steps;
        squares += off * (step - meanStep);
        longestStep = Math.max(longestStep, step);
    }

    /** Number of the bus. */
    public int bus() {
        return bus;
    }

    public int id() {
        return id;
    }

    public boolean extended() {
        return extended;
    }

    /** Of the message; empty when nobody named it. */
    public String name() {
        return name;
    }

    /** Whether a decoder knew any of its frames. */
    public boolean known() {
        return known;
    }

    /** Frames. */
    public long count() {
        return count;
    }

    /** Fewest bytes of payload. */
    public int shortest() {
        return shortest;
    }

    /** Most bytes of payload. */
    public int longest() {
        return longest;
    }

    /** One over the mean step, Hz. */
    public double rate() {
        return meanStep > 0 ? 1 / meanStep : Double.NaN;
    }

    /** Mean step. */
    public double period() {
        return steps == 0 ? Double.NaN : meanStep;
    }

    /** Standard deviation of the steps. */
    public double jitter() {
        return steps < 2 ? Double.NaN : Math.sqrt(squares / (steps - 1));
    }

    /** Longest step: how long nothing came. */
    public double longestStep() {
        return steps == 0 ? Double.NaN : longestStep;
    }
}
