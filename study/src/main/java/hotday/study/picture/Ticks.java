package hotday.study.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Round numbers along an axis: steps of 1, 2 or 5 times a power of ten (or of time: also 60, 300, 600 s). */
final class Ticks {
    private Ticks() {}

    static double step(double low, double high, int most) {
        double raw = (high - low) / most;
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        for (double factor : new double[] {1, 2, 5, 10}) {
            if (factor * power >= raw * (1 - 1e-9)) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    /** The round number of 2, 5 or 10 times a power of ten that is not below a positive value. */
    static double upTo(double value) {
        double power = Math.pow(10, Math.floor(Math.log10(value)));
        for (double factor : new double[] {2, 5}) {
            if (factor * power >= value) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    static List<Double> between(double low, double high, int most) {
        List<Double> ticks = new ArrayList<>();
        if (!(high > low) || Double.isInfinite(high - low)) {
            return ticks;
        }
        double step = step(low, high, most);
        for (long i = (long) Math.ceil(low / step - 1e-9); i * step <= high + 1e-9 * step; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }

    static String label(double value, double step) {
        int digits = Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
        return String.format(Locale.ROOT, "%." + digits + "f", value + 0.0);
    }
}
