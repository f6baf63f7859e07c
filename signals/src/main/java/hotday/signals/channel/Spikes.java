package hotday.signals.channel;

import java.util.Arrays;

/**
 * Finds samples far from those around them (median filter after Hampel 1974, with a physical distance in place of the
 * spread). Steps stay: most samples around a step lie on its own side. Not judged where fewer than four neighbours lie
 * within ten seconds.
 */
final class Spikes {
    private static final int EACH_SIDE = 3;
    private static final int FEWEST_NEIGHBOURS = 4;
    private static final double NEAR = 10.0; // s

    private final double[] time;
    private final double[] values;
    private final int[] received;
    private final double[] around = new double[2 * EACH_SIDE + 1];

    private Spikes(double[] time, double[] values, int[] received) {
        this.time = time;
        this.values = values;
        this.received = received;
    }

    /**
     * Marks spikes and makes them NaN; a repeat of a spike goes with it.
     *
     * @param distance SI, from the median of the samples around
     */
    static void mark(double[] time, double[] values, byte[] flags, double distance) {
        if (Double.isInfinite(distance)) {
            return;
        }
        Spikes spikes = new Spikes(time, values, received(values, flags));
        boolean[] far = new boolean[values.length];
        for (int k = 0; k < spikes.received.length; k++) {
            far[spikes.received[k]] = spikes.isFar(k, distance);
        }
        boolean spike = false;
        for (int i = 0; i < values.length; i++) {
            spike = (flags[i] & Channel.HELD) != 0 ? spike : far[i];
            if (spike && !Double.isNaN(values[i])) {
                flags[i] |= Channel.SPIKE;
                values[i] = Double.NaN;
            }
        }
    }

    private static int[] received(double[] values, byte[] flags) {
        int[] all = new int[values.length];
        int n = 0;
        for (int i = 0; i < values.length; i++) {
            if (!Double.isNaN(values[i]) && (flags[i] & Channel.HELD) == 0) {
                all[n++] = i;
            }
        }
        return Arrays.copyOf(all, n);
    }

    private boolean isFar(int k, double distance) {
        int n = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double t = time[received[k]];
        for (int j = Math.max(0, k - EACH_SIDE); j <= Math.min(received.length - 1, k + EACH_SIDE); j++) {
            if (Math.abs(time[received[j]] - t) <= NEAR) {
                double value = values[received[j]];
                low = Math.min(low, value);
                high = Math.max(high, value);
                around[n++] = value;
            }
        }
        if (high - low <= distance || n - 1 < FEWEST_NEIGHBOURS) {
            return false;
        }
        Arrays.sort(around, 0, n);
        double median = 0.5 * (around[(n - 1) / 2] + around[n / 2]);
        return Math.abs(values[received[k]] - median) > distance;
    }
}
