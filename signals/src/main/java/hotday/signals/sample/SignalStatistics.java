package hotday.signals.sample;

import hotday.signals.frame.SampleState;

/** The samples of one signal, summed up; numbers in its unit. */
public final class SignalStatistics {
    private final String name;
    private final String unit;
    private final long[] states = new long[SampleState.values().length];
    private double min = Double.NaN;
    private double max = Double.NaN;
    private double mean = Double.NaN;
    private long texts;
    private String lastText = "";

    SignalStatistics(String name, String unit) {
        this.name = name;
        this.unit = unit;
    }

    void add(double value, SampleState state) {
        long n = ++states[state.ordinal()];
        if (state == SampleState.VALID) {
            min = n == 1 ? value : Math.min(min, value);
            max = n == 1 ? value : Math.max(max, value);
            mean = n == 1 ? value : mean + (value - mean) / n;
        }
    }

    void add(String text) {
        texts++;
        lastText = text;
    }

    public String name() {
        return name;
    }

    public String unit() {
        return unit;
    }

    /** Samples of a state. */
    public long of(SampleState state) {
        return states[state.ordinal()];
    }

    /** All samples, texts too. */
    public long count() {
        long sum = texts;
        for (long state : states) {
            sum += state;
        }
        return sum;
    }

    /** Lowest value; NaN when there is none. */
    public double min() {
        return min;
    }

    /** Highest value; NaN when there is none. */
    public double max() {
        return max;
    }

    /** Mean of the values; NaN when there is none. */
    public double mean() {
        return mean;
    }

    /** Samples that are text. */
    public long texts() {
        return texts;
    }

    /** The last text; empty when there is none. */
    public String lastText() {
        return lastText;
    }
}
