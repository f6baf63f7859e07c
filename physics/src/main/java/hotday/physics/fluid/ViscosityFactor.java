package hotday.physics.fluid;

/**
 * Kinematic viscosity of an oil over its value at a reference temperature, to a power, quick enough for a time loop: cubic (Hermite)
 * between exact values every 5 K from -50 to 200 degC, within 5e-5 for the power 0.3; beyond the ends the end values
 * hold. Drag of gears and clutches in warm oil goes with about the power 0.3.
 */
public final class ViscosityFactor {
    private static final double COLDEST = 223.15; // K, where Oil holds its value as well
    private static final double SPACING = 5.0; // K
    private static final int POINTS = 51;
    private static final double NUDGE = 0.05; // K

    private final double[] value = new double[POINTS];
    /** Slope times spacing. */
    private final double[] rise = new double[POINTS];

    /**
     * @param reference K
     * @param power of the viscosity ratio, 0..2
     */
    public ViscosityFactor(Oil oil, double reference, double power) {
        if (!(power >= 0.0 && power <= 2.0 && reference > COLDEST)) {
            throw new IllegalArgumentException("viscosity factor: power " + power + " must lie within 0..2, reference "
                    + reference + " K above " + COLDEST + " K");
        }
        double unit = oil.kinematicViscosity(reference);
        for (int i = 0; i < POINTS; i++) {
            double t = COLDEST + SPACING * i;
            value[i] = Math.pow(oil.kinematicViscosity(t) / unit, power);
            double low = Math.max(COLDEST, t - NUDGE);
            double below = Math.pow(oil.kinematicViscosity(low) / unit, power);
            double above = Math.pow(oil.kinematicViscosity(t + NUDGE) / unit, power);
            rise[i] = SPACING * (above - below) / (t + NUDGE - low);
        }
    }

    /** Factor at a temperature, K; 1 at the reference, falling. */
    public double at(double temperature) {
        double place = (temperature - COLDEST) / SPACING;
        if (!(place > 0.0)) {
            return value[0];
        }
        if (place >= POINTS - 1) {
            return value[POINTS - 1];
        }
        int i = (int) place;
        double z = place - i;
        double difference = value[i + 1] - value[i];
        double square = 3.0 * difference - 2.0 * rise[i] - rise[i + 1];
        double cube = rise[i] + rise[i + 1] - 2.0 * difference;
        return value[i] + z * (rise[i] + z * (square + z * cube));
    }
}
