package hotday.study.events;

import java.util.Arrays;

/**
 * Two levels between which a channel goes: the cut with the least spread on both sides (Otsu 1979), then the medians of
 * the sides.
 *
 * @param low, high medians, in the channel's unit
 * @param noise robust standard deviation about its own level, at least the half of a step of the channel
 * @param lesser share of the samples on the side with fewer
 */
record TwoLevels(double low, double high, double noise, double lesser) {

    /** NaN throughout when there are fewer than two different values. */
    static TwoLevels of(double[] values) {
        double[] v = Middle.present(values);
        int cut = cut(v);
        if (cut == 0) {
            return new TwoLevels(Double.NaN, Double.NaN, Double.NaN, 0.0);
        }
        double low = Middle.median(Arrays.copyOfRange(v, 0, cut));
        double high = Middle.median(Arrays.copyOfRange(v, cut, v.length));
        double[] off = v.clone();
        for (int i = 0; i < off.length; i++) {
            off[i] -= i < cut ? low : high;
        }
        double noise = Math.max(Middle.sigma(off, 0.0), 0.5 * Middle.step(v));
        return new TwoLevels(low, high, noise, (double) Math.min(cut, v.length - cut) / v.length);
    }

    private static int cut(double[] sorted) {
        double total = Arrays.stream(sorted).sum();
        double below = 0.0;
        double best = 0.0;
        int cut = 0;
        for (int k = 1; k < sorted.length; k++) {
            below += sorted[k - 1];
            double apart = (total - below) / (sorted.length - k) - below / k;
            double between = (double) k * (sorted.length - k) * apart * apart;
            if (sorted[k] > sorted[k - 1] && between > best) {
                best = between;
                cut = k;
            }
        }
        return cut;
    }

    /** Distance of the levels in units of noise. */
    double separation() {
        return (high - low) / noise;
    }

    /** 0 on the low level, 1 on the high one. */
    double share(double value) {
        return (value - low) / (high - low);
    }
}
