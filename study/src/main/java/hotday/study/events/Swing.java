package hotday.study.events;

import java.util.ArrayList;
import java.util.List;

/**
 * Coolant up to a peak and down again by {@link #LEAST} or more.
 *
 * @param low lowest second before the peak, back to the last swing
 * @param peak last second at the highest
 * @param trough lowest second after it before coolant comes up again by as much, or the last one
 */
record Swing(int low, int peak, int trough) {
    /** Smallest swing that is one, K: above what a thermostat and a whole-degree gauge do by themselves at standstill. */
    static final double LEAST = 4.0;

    private static final double HAIR = 1e-6; // K, whole degrees are not whole in kelvin

    static List<Swing> of(double[] coolant) {
        List<Swing> swings = new ArrayList<>();
        int from = 0;
        while (from < coolant.length) {
            int to = from;
            while (to < coolant.length && !Double.isNaN(coolant[to])) {
                to++;
            }
            between(coolant, from, to, swings);
            from = to + 1;
        }
        return swings;
    }

    private static void between(double[] t, int from, int to, List<Swing> swings) {
        int begin = from;
        int peak = from;
        int trough = -1; // below zero while on the way up
        for (int i = from; i < to; i++) {
            if (trough < 0) {
                if (t[i] >= t[peak] - HAIR) {
                    peak = i;
                } else if (t[peak] - t[i] >= LEAST - HAIR) {
                    trough = i;
                }
            } else if (t[i] < t[trough] - HAIR) {
                trough = i;
            } else if (t[i] - t[trough] >= LEAST - HAIR) {
                swings.add(new Swing(lowest(t, begin, peak), peak, trough));
                begin = trough;
                peak = i;
                trough = -1;
            }
        }
        if (trough >= 0) {
            swings.add(new Swing(lowest(t, begin, peak), peak, trough));
        }
    }

    private static int lowest(double[] t, int from, int to) {
        int at = from;
        for (int i = from; i <= to; i++) {
            at = t[i] < t[at] ? i : at;
        }
        return at;
    }

    /** First second of the fall at which coolant has lost so much, K; -1 when it never does. */
    int lost(double[] coolant, double kelvin) {
        for (int i = peak; i <= trough; i++) {
            if (coolant[peak] - coolant[i] >= kelvin - HAIR) {
                return i;
            }
        }
        return -1;
    }
}
