package hotday.vehicle.plant;

import java.util.Arrays;

/** What a living vehicle's states do over two spans of time, one after the other. One a thread; watching allocates nothing. */
final class Watch {
    private static final State[] STATES = State.values();
    private static final int SPANS = 2;
    private static final double LEAST_SWING = 1e-4; // in scales
    private static final double DRIFT = 0.5; // of a swing; what moves on further than that is on its way

    private final int[] slots;
    private final double[] scale;
    private final double[][] low;
    private final double[][] high;

    Watch(int[] slots, double[] scale) {
        this.slots = slots;
        this.scale = scale;
        this.low = new double[SPANS][slots.length];
        this.high = new double[SPANS][slots.length];
    }

    void begin() {
        for (int span = 0; span < SPANS; span++) {
            Arrays.fill(low[span], Double.POSITIVE_INFINITY);
            Arrays.fill(high[span], Double.NEGATIVE_INFINITY);
        }
    }

    void see(Run run, int span) {
        for (int i = 0; i < slots.length; i++) {
            double value = run.get(STATES[slots[i]]);
            low[span][i] = Math.min(low[span][i], value);
            high[span][i] = Math.max(high[span][i], value);
        }
    }

    /** Position of what swings most in its scale without moving on; -1 when nothing does. */
    int swinging() {
        int most = -1;
        double largest = LEAST_SWING;
        for (int i = 0; i < slots.length; i++) {
            double swing = swing(i);
            double drift = 0.5 * Math.abs(low[1][i] + high[1][i] - low[0][i] - high[0][i]);
            if (swing / scale[i] > largest && drift < DRIFT * swing) {
                largest = swing / scale[i];
                most = i;
            }
        }
        return most;
    }

    /** Highest less lowest over the last span, K or share. */
    double swing(int position) {
        return high[1][position] - low[1][position];
    }
}
