package hotday.vehicle.sheet;

import java.util.List;

/** Pressure drop of a core a v + b v^2 from measured points. */
final class Resistance {
    private Resistance() {}

    /**
     * {a, b} with least relative errors; from a single point a pure square.
     *
     * @param points face speed in m/s, pressure drop in Pa at 1.2 kg/m3
     */
    static double[] through(List<List<Double>> points) {
        double s11 = 0;
        double s12 = 0;
        double s22 = 0;
        double r1 = 0;
        double r2 = 0;
        for (List<Double> point : points) {
            double v = point.get(0);
            double x = v / point.get(1);
            double y = v * x;
            s11 += x * x;
            s12 += x * y;
            s22 += y * y;
            r1 += x;
            r2 += y;
        }
        if (points.size() < 2) {
            return new double[] {0.0, points.isEmpty() ? Double.NaN : r2 / s22};
        }
        double det = s11 * s22 - s12 * s12;
        return new double[] {(r1 * s22 - r2 * s12) / det, (s11 * r2 - s12 * r1) / det};
    }
}
