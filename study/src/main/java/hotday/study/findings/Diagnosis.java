package hotday.study.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;

/**
 * Lays a run's features beside those of drawn cars. Every feature counts in units of its spread over sound cars, far ones ever less; sound cars are one
 * Gaussian cloud, cars with a fault another, moved by the mean effect of the fault and widened by how it differs from car to car. Ranked by the odds against
 * nothing being wrong. Method and limits: docs/physics/findings.md.
 */
final class Diagnosis {
    /** Of all cars, so many are taken to be sound before a run; the rest is shared evenly. */
    private static final double SOUND = 0.7;
    /** Tails of the clouds: of Student's distribution with so many degrees of freedom. */
    private static final double FREEDOM = 8.0;
    /** Spreads up to here count in full, beyond by their logarithm. */
    private static final double FAR = 4.0;
    /** An effect is known to this share of itself only. */
    private static final double EFFECT_DOUBT = 0.25;
    /** A feature must be there in this share of the drawn cars. */
    private static final double OFTEN = 0.8;

    private static final double[] SHRINKAGE = {0.05, 0.1, 0.2, 0.3, 0.5, 0.7};

    private final List<Integer> kept = new ArrayList<>();
    private final double[] centre;
    private final double[] spread;
    private final double[] mean;
    private final double[][] cloud;
    private final double[] measured;
    private final CholeskyDecomposition sound;
    private final Map<FaultKind, double[]> effects = new EnumMap<>(FaultKind.class);
    private final Map<FaultKind, Double> distance = new EnumMap<>(FaultKind.class);
    private double nearest;
    private final List<Verdict> verdicts = new ArrayList<>();

    /**
     * One fault against nothing being wrong.
     *
     * @param logOdds natural logarithm
     * @param share of all that could explain the run, 0..1
     */
    record Verdict(FaultKind kind, double logOdds, double share) {}

    Diagnosis(List<Feature> features, double[] run, double[][] soundCars, Map<FaultKind, double[][]> faultyCars) {
        for (int f = 0; f < features.size(); f++) {
            if (!Double.isNaN(run[f]) && share(soundCars, f) >= OFTEN) {
                kept.add(f);
            }
        }
        int p = kept.size();
        centre = new double[p];
        spread = new double[p];
        for (int i = 0; i < p; i++) {
            int f = kept.get(i);
            double floor = features.get(f).floor();
            centre[i] = moments(soundCars, f)[0];
            spread[i] = Math.hypot(moments(soundCars, f)[1], floor);
        }
        double[][] z = new double[soundCars.length][];
        for (int n = 0; n < z.length; n++) {
            z[n] = scaled(soundCars[n]);
        }
        mean = mean(z, p);
        double[] ownFloor = new double[p];
        for (int i = 0; i < p; i++) {
            double floor = features.get(kept.get(i)).floor() / spread[i];
            ownFloor[i] = floor * floor;
        }
        cloud = shrunk(z, mean, ownFloor);
        sound = cholesky(cloud);
        measured = scaled(run);
        judge(z, faultyCars, p);
    }

    private static double share(double[][] cars, int f) {
        int n = 0;
        for (double[] car : cars) {
            n += Double.isNaN(car[f]) ? 0 : 1;
        }
        return (double) n / cars.length;
    }

    private static double[] moments(double[][] cars, int f) {
        double sum = 0.0;
        double squares = 0.0;
        int n = 0;
        for (double[] car : cars) {
            if (!Double.isNaN(car[f])) {
                sum += car[f];
                n++;
            }
        }
        double m = sum / n;
        for (double[] car : cars) {
            squares += Double.isNaN(car[f]) ? 0.0 : (car[f] - m) * (car[f] - m);
        }
        return new double[] {m, Math.sqrt(squares / Math.max(1, n - 1))};
    }

    /** In spreads from the mean of the sound cars; what is missing counts as the mean. */
    private double[] scaled(double[] row) {
        double[] out = new double[kept.size()];
        for (int i = 0; i < out.length; i++) {
            double v = (row[kept.get(i)] - centre[i]) / spread[i];
            out[i] = Double.isNaN(v) ? 0.0 : far(v);
        }
        return out;
    }

    private static double far(double v) {
        double size = Math.abs(v);
        return size <= FAR ? v : Math.signum(v) * (FAR + FAR * Math.log1p((size - FAR) / FAR));
    }

    private static double[] mean(double[][] z, int p) {
        double[] m = new double[p];
        for (double[] row : z) {
            for (int i = 0; i < p; i++) {
                m[i] += row[i] / z.length;
            }
        }
        return m;
    }

    /** Covariance drawn towards its diagonal as far as makes each left-out car most likely, plus floors. */
    private static double[][] shrunk(double[][] z, double[] mean, double[] floor) {
        double[][] best = null;
        double most = Double.NEGATIVE_INFINITY;
        double[][] first = half(z, 0);
        double[][] second = half(z, 1);
        for (double share : SHRINKAGE) {
            double likelihood = likelihood(first, second, floor, share) + likelihood(second, first, floor, share);
            if (likelihood > most) {
                most = likelihood;
                best = covariance(z, mean, floor, share);
            }
        }
        return best;
    }

    private static double[][] half(double[][] z, int which) {
        double[][] out = new double[(z.length + 1 - which) / 2][];
        for (int i = 0; i < out.length; i++) {
            out[i] = z[2 * i + which];
        }
        return out;
    }

    private static double likelihood(double[][] known, double[][] left, double[] floor, double share) {
        double[] mean = mean(known, floor.length);
        CholeskyDecomposition c = cholesky(covariance(known, mean, floor, share));
        double sum = 0.0;
        for (double[] row : left) {
            sum += logDensity(c, minus(row, mean));
        }
        return sum;
    }

    private static double[][] covariance(double[][] z, double[] mean, double[] floor, double share) {
        int p = mean.length;
        double[][] c = new double[p][p];
        for (double[] row : z) {
            for (int i = 0; i < p; i++) {
                for (int j = 0; j < p; j++) {
                    c[i][j] += (row[i] - mean[i]) * (row[j] - mean[j]) / (z.length - 1);
                }
            }
        }
        for (int i = 0; i < p; i++) {
            for (int j = 0; j < p; j++) {
                c[i][j] *= i == j ? 1.0 : 1.0 - share;
            }
            c[i][i] += floor[i];
        }
        return c;
    }

    private static CholeskyDecomposition cholesky(double[][] c) {
        return new CholeskyDecomposition(new Array2DRowRealMatrix(c), 1e-9, 0.0);
    }

    private static double[] minus(double[] a, double[] b) {
        double[] out = a.clone();
        for (int i = 0; i < out.length; i++) {
            out[i] -= b[i];
        }
        return out;
    }

    /** Of Student's distribution, without what is the same for all clouds. */
    private static double logDensity(CholeskyDecomposition c, double[] from) {
        double square = squared(c, from);
        return -0.5 * (FREEDOM + from.length) * Math.log1p(square / FREEDOM) - 0.5 * logDeterminant(c);
    }

    private static double squared(CholeskyDecomposition c, double[] from) {
        ArrayRealVector v = new ArrayRealVector(from, false);
        return v.dotProduct(c.getSolver().solve(v));
    }

    private static double logDeterminant(CholeskyDecomposition c) {
        double sum = 0.0;
        for (int i = 0; i < c.getL().getRowDimension(); i++) {
            sum += 2.0 * Math.log(c.getL().getEntry(i, i));
        }
        return sum;
    }

    private void judge(double[][] z, Map<FaultKind, double[][]> faultyCars, int p) {
        double nothing = logDensity(sound, minus(measured, mean)) + Math.log(SOUND);
        nearest = squared(sound, minus(measured, mean)) / p;
        double each = Math.log((1.0 - SOUND) / faultyCars.size());
        List<Double> logs = new ArrayList<>();
        List<FaultKind> kinds = new ArrayList<>();
        faultyCars.forEach((kind, cars) -> {
            double[][] d = new double[cars.length][];
            for (int i = 0; i < d.length; i++) {
                d[i] = minus(scaled(cars[i]), z[Ensemble.sibling(i)]);
            }
            double[] effect = mean(d, p);
            effects.put(kind, effect);
            distance.put(kind, Math.sqrt(squared(sound, effect)));
            CholeskyDecomposition own = cholesky(widened(d, effect));
            nearest = Math.min(nearest, squared(own, minus(minus(measured, mean), effect)) / p);
            kinds.add(kind);
            logs.add(each + logDensity(own, minus(minus(measured, mean), effect)));
        });
        double top = Math.max(nothing, logs.stream().mapToDouble(l -> l).max().orElse(nothing));
        double sum = Math.exp(nothing - top)
                + logs.stream().mapToDouble(l -> Math.exp(l - top)).sum();
        for (int i = 0; i < kinds.size(); i++) {
            verdicts.add(new Verdict(kinds.get(i), logs.get(i) - nothing, Math.exp(logs.get(i) - top) / sum));
        }
        verdicts.sort(Comparator.comparingDouble(Verdict::logOdds).reversed());
    }

    private double[][] widened(double[][] d, double[] effect) {
        int p = effect.length;
        double[][] c = new double[p][];
        for (int i = 0; i < p; i++) {
            c[i] = cloud[i].clone();
        }
        for (double[] row : d) {
            for (int i = 0; i < p; i++) {
                for (int j = 0; j < p; j++) {
                    c[i][j] += (row[i] - effect[i]) * (row[j] - effect[j]) / (d.length - 1);
                }
            }
        }
        for (int i = 0; i < p; i++) {
            c[i][i] += EFFECT_DOUBT * EFFECT_DOUBT * effect[i] * effect[i];
        }
        return c;
    }

    /** Most likely first. */
    List<Verdict> verdicts() {
        return verdicts;
    }

    /** How far the fault moves a car through the cloud of sound ones, in its standard deviations; 0 when it was not looked for. */
    double distance(FaultKind kind) {
        return distance.getOrDefault(kind, 0.0);
    }

    /** Squared distance from the nearest cloud, per feature; about 1 for a car like the drawn ones. */
    double nearest() {
        return nearest;
    }

    /** Features that were used. */
    int size() {
        return kept.size();
    }

    /** Where a feature stands in the list it came from. */
    int feature(int i) {
        return kept.get(i);
    }

    double expected(int i) {
        return centre[i];
    }

    double spread(int i) {
        return spread[i];
    }

    /** Feature that speaks most for a fault: the part of the measured deviation along its effect, by feature. */
    List<Integer> evidence(FaultKind kind, int most) {
        double[] effect = effects.get(kind);
        double[] from = minus(measured, mean);
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < effect.length; i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> -Math.min(from[i] * Math.signum(effect[i]), Math.abs(effect[i]))));
        return order.subList(0, Math.min(most, order.size()));
    }
}
