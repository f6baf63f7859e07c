package hotday.study.events;

import java.util.Arrays;

/** A step of electrical load at standstill, as engine load, manifold pressure and supply voltage show it. */
final class LoadStep {
    /** Windows before and behind a step, s; between them the dip of the start is left out. */
    private static final int BEFORE_FAR = 10;

    private static final int BEFORE_NEAR = 2;
    private static final int AFTER_NEAR = 2;
    private static final int AFTER_FAR = 8;

    private static final double LEAST = 3.0; // in noise
    private static final double MOST = 8.0; // more does not say more
    private static final int APART = 3; // s, for the noise
    private static final double STANDS = 1.5; // m/s

    /**
     * @param second where
     * @param channels that show it
     */
    record Step(int second, int channels) {}

    private final Seconds run;
    private final double[][] channels;
    private final double[] noise;

    LoadStep(Seconds run) {
        this.run = run;
        channels = new double[][] {run.load, run.manifold, negative(run.voltage)};
        noise = new double[] {noise(run.load), noise(run.manifold), noise(run.voltage)};
    }

    private static double[] negative(double[] channel) {
        return Arrays.stream(channel).map(v -> -v).toArray();
    }

    /** From distances of neighbours while standing; at least the half of a step of the channel. */
    private double noise(double[] channel) {
        double[] apart = new double[channel.length];
        for (int i = 0; i < apart.length; i++) {
            boolean used = i >= APART && stands(i) && stands(i - APART);
            apart[i] = used ? channel[i] - channel[i - APART] : Double.NaN;
        }
        double sigma = Middle.sigma(Middle.present(apart), 0.0) / Math.sqrt(2.0);
        return Math.max(Double.isNaN(sigma) ? 0.0 : sigma, 0.5 * Middle.step(channel));
    }

    private boolean stands(int second) {
        return !(run.speed[second] > STANDS) && run.runs(second);
    }

    /**
     * The clearest step in a stretch.
     *
     * @param sign 1 for load coming on, -1 for going off
     * @return no channels when none shows a step
     */
    Step clearest(int from, int to, int sign) {
        Step best = new Step(-1, 0);
        double most = 0.0;
        int first = -1; // of those that show it equally well
        for (int i = Math.max(BEFORE_FAR, from); i <= Math.min(run.size() - AFTER_FAR - 1, to); i++) {
            double sum = 0.0;
            int shown = 0;
            for (int c = 0; c < channels.length; c++) {
                double z = sign * step(channels[c], i) / noise[c];
                boolean clear = z >= LEAST;
                shown += clear ? 1 : 0;
                sum += clear ? Math.min(MOST, z) : 0.0;
            }
            if (sum >= most && sum > 0.0 && standsAround(i)) {
                first = sum > most ? i : first;
                most = sum;
                best = new Step((first + i) / 2, shown);
            }
        }
        return best;
    }

    private boolean standsAround(int second) {
        for (int i = second - BEFORE_FAR; i <= second + AFTER_NEAR; i++) {
            if (!stands(i)) {
                return false;
            }
        }
        return true;
    }

    private static double step(double[] channel, int at) {
        return Middle.median(channel, at + AFTER_NEAR, at + AFTER_FAR)
                - Middle.median(channel, at - BEFORE_FAR, at - BEFORE_NEAR);
    }
}
