package hotday.study.prove;

import java.util.Arrays;
import org.hipparchus.random.SobolSequenceGenerator;
import org.hipparchus.random.Well19937c;
import org.hipparchus.special.Erf;

/**
 * Standard normal draws that fill their space more evenly than independent ones, so that ends of an interval settle with fewer: Sobol points
 * (Joe and Kuo 2008), all moved by one random step that wraps around (Cranley and Patterson 1976), which keeps every single draw normal.
 */
final class EvenDraws {
    private static final double EDGE = 1e-12;

    private final double[][] draws;

    /**
     * @param count of draws
     * @param size of each
     * @param seed words that the step comes from
     */
    EvenDraws(int count, int size, int... seed) {
        double[] step = new double[size];
        Well19937c random = new Well19937c(seed);
        Arrays.setAll(step, i -> random.nextDouble());
        SobolSequenceGenerator points = new SobolSequenceGenerator(size);
        draws = new double[count][];
        Arrays.setAll(draws, i -> moved(points.nextVector(), step));
    }

    private static double[] moved(double[] point, double[] step) {
        for (int i = 0; i < point.length; i++) {
            point[i] = normal((point[i] + step[i]) % 1.0);
        }
        return point;
    }

    /** Quantile of the standard normal distribution. */
    private static double normal(double share) {
        return Math.sqrt(2.0) * Erf.erfInv(2.0 * Math.max(EDGE, Math.min(1.0 - EDGE, share)) - 1.0);
    }

    /** One of them; not to be changed. */
    double[] at(int i) {
        return draws[i];
    }
}
