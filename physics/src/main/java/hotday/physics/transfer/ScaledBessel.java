package hotday.physics.transfer;

/**
 * Modified Bessel functions of order 0 and 1 for positive arguments, free of their exponential: exp(-x) I(x) and exp(x)
 * K(x). By the trapezoidal rule on their integral forms (Abramowitz and Stegun 9.6.19 and 9.6.24), which converges
 * geometrically; 1e-13 relative for 1e-3 < x < 700, a few microseconds.
 */
final class ScaledBessel {
    private static final int POINTS = 200;
    private static final double STEP = 0.02;

    private ScaledBessel() {}

    /** exp(-x) I of the order 0 or 1: mean over a half turn of exp(x (cos t - 1)) cos(order t). */
    static double i(int order, double x) {
        double sum = 0.5 * (1.0 + Math.exp(-2.0 * x) * (order == 0 ? 1.0 : -1.0));
        for (int k = 1; k < POINTS; k++) {
            double c = Math.cos(Math.PI * k / POINTS);
            sum += Math.exp(x * (c - 1.0)) * (order == 0 ? 1.0 : c);
        }
        return sum / POINTS;
    }

    /** exp(x) K of the order 0 or 1: integral over t from 0 of exp(-x (cosh t - 1)) cosh(order t). */
    static double k(int order, double x) {
        double sum = 0.5;
        double part = 1.0;
        for (int n = 1; part > 1e-18; n++) {
            double c = Math.cosh(STEP * n);
            part = Math.exp(-x * (c - 1.0)) * (order == 0 ? 1.0 : c);
            sum += part;
        }
        return sum * STEP;
    }
}
