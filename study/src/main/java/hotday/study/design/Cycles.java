package hotday.study.design;

import java.util.Arrays;

/**
 * Fan and coolant against time, and the cycles in them: from one upward crossing of the middle between slowest and fastest fan to the next.
 * Made once, filled again and again.
 */
final class Cycles {
    /** A fan that moves less than this share of full speed does not cycle. */
    static final double STILL = 0.02;

    private final double step;
    private final double[] fan;
    private final double[] coolant;
    private final int[] ups;
    private int size;
    private int crossings;

    /**
     * @param step from sample to sample, s
     * @param longest s
     */
    Cycles(double step, double longest) {
        this.step = step;
        int most = (int) Math.ceil(longest / step) + 1;
        fan = new double[most];
        coolant = new double[most];
        ups = new int[most];
    }

    void clear() {
        size = 0;
        crossings = 0;
    }

    void add(double fanSpeed, double coolantTemperature) {
        fan[size] = fanSpeed;
        coolant[size] = coolantTemperature;
        size++;
    }

    /** Looks for cycles in what came after a number of samples; returns their count. */
    int find(int from) {
        double low = least(fan, from, size);
        double high = most(fan, from, size);
        crossings = 0;
        if (high - low < STILL) {
            return 0;
        }
        double down = low + 0.4 * (high - low);
        double up = low + 0.6 * (high - low);
        boolean below = fan[from] < down;
        for (int i = from; i < size; i++) {
            if (below && fan[i] > up) {
                ups[crossings++] = i;
                below = false;
            } else if (fan[i] < down) {
                below = true;
            }
        }
        return Math.max(0, crossings - 1);
    }

    /** First sample of the first whole cycle found, or of all. */
    int first(int from) {
        return crossings > 1 ? ups[0] : from;
    }

    /** Behind the last sample of the last whole cycle found, or of all. */
    int end() {
        return crossings > 1 ? ups[crossings - 1] : size;
    }

    /** s; NaN without whole cycles. */
    double period() {
        return crossings > 1 ? step * (ups[crossings - 1] - ups[0]) / (crossings - 1) : Double.NaN;
    }

    /** K, in whole cycles. */
    double amplitude() {
        return crossings > 1 ? most(coolant, first(0), end()) - least(coolant, first(0), end()) : 0.0;
    }

    double fanSwing(int from) {
        return most(fan, first(from), end()) - least(fan, first(from), end());
    }

    /** Change of the mean fan speed and of the coolant between the two halves of the samples from {@code from} on. */
    double drift(int from) {
        int middle = (from + size) / 2;
        double ofFan = mean(fan, middle, size) - mean(fan, from, middle);
        double ofCoolant = mean(coolant, middle, size) - mean(coolant, from, middle);
        return Math.max(Math.abs(ofFan), 0.1 * Math.abs(ofCoolant));
    }

    int size() {
        return size;
    }

    private static double mean(double[] all, int from, int to) {
        return Arrays.stream(all, from, to).average().orElse(0.0);
    }

    private static double least(double[] all, int from, int to) {
        return Arrays.stream(all, from, to).min().orElse(0.0);
    }

    private static double most(double[] all, int from, int to) {
        return Arrays.stream(all, from, to).max().orElse(0.0);
    }
}
