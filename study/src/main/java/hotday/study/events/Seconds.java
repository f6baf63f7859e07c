package hotday.study.events;

import java.util.Arrays;

/** A run on a grid of whole seconds: means of what came in, held over short gaps, NaN over longer ones. */
final class Seconds {
    /** A reading is believed for so long, s: coolant and idle do not change unseen in less. */
    private static final int HELD = 15;
    /** Below this the engine does not run by itself, rad/s (200 rpm). */
    private static final double ENGINE_STANDS = 21.0;
    /** Readings of a supply below this are none, V. */
    private static final double NO_SUPPLY = 6.0;
    /** Longest run looked at, s: a month. */
    private static final double LONGEST = 2.7e6;

    final String run;
    final double start;
    final double resolution;
    final double[] coolant;
    final double[] engineSpeed;
    final double[] speed;
    final double[] load;
    final double[] manifold;
    final double[] voltage;

    Seconds(Trace trace) {
        double[] time = trace.time();
        int n = time.length == 0 ? 0 : (int) Math.floor(Math.min(LONGEST, time[time.length - 1] - time[0])) + 1;
        run = trace.run();
        start = time.length == 0 ? 0.0 : time[0];
        resolution = trace.coolantResolution();
        coolant = held(time, trace.coolant(), n);
        engineSpeed = held(time, trace.engineSpeed(), n);
        speed = held(time, trace.speed(), n);
        load = held(time, trace.load(), n);
        manifold = held(time, trace.manifold(), n);
        voltage = held(
                time,
                Arrays.stream(trace.voltage())
                        .map(v -> v < NO_SUPPLY ? Double.NaN : v)
                        .toArray(),
                n);
    }

    private double[] held(double[] time, double[] values, int n) {
        double[] sum = new double[n];
        int[] count = new int[n];
        for (int k = 0; k < time.length; k++) {
            int at = (int) Math.floor(time[k] - start);
            if (!Double.isNaN(values[k]) && at < n) {
                sum[at] += values[k];
                count[at]++;
            }
        }
        double[] out = new double[n];
        int last = -HELD - 1;
        for (int i = 0; i < n; i++) {
            last = count[i] > 0 ? i : last;
            out[i] = last >= 0 && i - last <= HELD ? sum[last] / count[last] : Double.NaN;
        }
        return out;
    }

    int size() {
        return coolant.length;
    }

    /** s on the recording's base. */
    double time(int second) {
        return start + second;
    }

    /** True when the engine turns; also when nobody recorded whether it does. */
    boolean runs(int second) {
        return !(engineSpeed[second] < ENGINE_STANDS);
    }

    static boolean recorded(double[] channel) {
        return Arrays.stream(channel).anyMatch(v -> !Double.isNaN(v));
    }
}
