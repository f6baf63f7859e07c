package hotday.physics.transfer;

/** Fins of constant thickness with an adiabatic tip (Incropera, Fundamentals of Heat and Mass Transfer, ch. 3). */
public final class Fin {
    private Fin() {}

    /**
     * Efficiency of a straight fin, 0..1.
     *
     * @param h W/(m2 K) on both faces
     * @param conductivity W/(m K)
     * @param thickness m
     * @param length root to tip, m
     */
    public static double straight(double h, double conductivity, double thickness, double length) {
        double ml = Math.sqrt(2.0 * h / (conductivity * thickness)) * length;
        return ml < 1e-6 ? 1.0 : Math.tanh(ml) / ml;
    }

    /**
     * Efficiency of an annular fin of constant thickness, 0..1: 2 r1 / (m (r2^2 - r1^2)) x [K1(m r1) I1(m r2) - I1(m r1) K1(m
     * r2)] / [I0(m r1) K1(m r2) + K0(m r1) I1(m r2)], m = sqrt(2 h / (k t)) (Incropera, ch. 3; Harper and Brown 1922). Take the outer radius half
     * a thickness longer for a tip that also gives heat. Written with exponentially scaled functions, so long fins do not
     * overflow.
     *
     * @param h W/(m2 K) on both faces
     * @param conductivity W/(m K)
     * @param thickness m
     * @param inner radius of the root, m, above 0
     * @param outer radius of the tip, m, above {@code inner}
     */
    public static double annular(double h, double conductivity, double thickness, double inner, double outer) {
        double m = Math.sqrt(2.0 * h / (conductivity * thickness));
        double a = m * inner;
        double b = m * outer;
        if (b - a < 1e-4) {
            return 1.0;
        }
        double fade = Math.exp(-2.0 * (b - a));
        double k0 = ScaledBessel.k(0, a);
        double k1 = ScaledBessel.k(1, a);
        double outerK1 = ScaledBessel.k(1, b) * fade;
        double i0 = ScaledBessel.i(0, a);
        double i1 = ScaledBessel.i(1, a);
        double outerI1 = ScaledBessel.i(1, b);
        double gain = (k1 * outerI1 - i1 * outerK1) / (i0 * outerK1 + k0 * outerI1);
        return 2.0 * a / (b * b - a * a) * gain;
    }

    /** Efficiency of the whole surface with a share of it on fins. */
    public static double surface(double finShare, double finEfficiency) {
        return 1.0 - finShare * (1.0 - finEfficiency);
    }
}
