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

    /** Efficiency of the whole surface with a share of it on fins. */
    public static double surface(double finShare, double finEfficiency) {
        return 1.0 - finShare * (1.0 - finEfficiency);
    }
}
