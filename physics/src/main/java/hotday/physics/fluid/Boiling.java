package hotday.physics.fluid;

/**
 * Boiling of ethylene glycol and water against absolute pressure: ideal mixture, x_w p_w(T) + (1 - x_w) p_g(T) = p. Water
 * by Wagner and Pruss (IAPWS saturation), glycol by an Antoine equation (from memory). Good to about 1 K up to half and half against
 * the published anchors (226 degF open, 265 degF at 15 psi); real coolants vary by 2 K. Stronger mixtures come out high: 138.8 degC
 * at 15 psi for 70 %, where service pages print 276 degF (135.6 degC). Boiling points beyond 300..480 K are cut there.
 */
public final class Boiling {
    private static final double MERCURY = 133.322368421; // Pa in 1 mmHg
    private static final double CRITICAL_TEMPERATURE = 647.096;
    private static final double CRITICAL_PRESSURE = 22.064e6;
    private static final double WATER_MOLAR = 18.015;
    private static final double GLYCOL_MOLAR = 62.068;
    private static final double WATER_DENSITY = 998.2; // kg/m3 at 20 degC
    private static final double GLYCOL_DENSITY = 1113.2;

    private Boiling() {}

    /** Mole fraction of water for a share of glycol by volume before mixing at 20 degC, 0..1. */
    public static double waterMoleFraction(double glycolVolumeShare) {
        double water = (1.0 - glycolVolumeShare) * WATER_DENSITY / WATER_MOLAR;
        double glycol = glycolVolumeShare * GLYCOL_DENSITY / GLYCOL_MOLAR;
        return water / (water + glycol);
    }

    /** Pa over water at K, 273..640. */
    public static double waterPressure(double temperature) {
        double t = 1.0 - temperature / CRITICAL_TEMPERATURE;
        double sum = -7.85951783 * t
                + 1.84408259 * Math.pow(t, 1.5)
                - 11.7866497 * t * t * t
                + 22.6807411 * Math.pow(t, 3.5)
                - 15.9618719 * Math.pow(t, 4)
                + 1.80122502 * Math.pow(t, 7.5);
        return CRITICAL_PRESSURE * Math.exp(CRITICAL_TEMPERATURE / temperature * sum);
    }

    /** Pa over ethylene glycol at K, 323..473. */
    public static double glycolPressure(double temperature) {
        return MERCURY * Math.pow(10.0, 8.0908 - 2088.936 / (203.454 + temperature - 273.15));
    }

    /** Pa over the mixture at K. */
    public static double pressure(double temperature, double waterMoleFraction) {
        return waterMoleFraction * waterPressure(temperature) + (1.0 - waterMoleFraction) * glycolPressure(temperature);
    }

    /**
     * Boiling temperature, K.
     *
     * @param absolutePressure Pa, 2e4..6e5
     * @param glycolVolumeShare 0..0.6
     */
    public static double temperature(double absolutePressure, double glycolVolumeShare) {
        return ofMoleFraction(absolutePressure, waterMoleFraction(glycolVolumeShare));
    }

    /** Boiling temperature, K, for a mole fraction of water. */
    public static double ofMoleFraction(double absolutePressure, double waterMoleFraction) {
        double low = 300.0;
        double high = 480.0;
        double t = 400.0;
        for (int i = 0; i < 60; i++) {
            double gap = Math.log(pressure(t, waterMoleFraction) / absolutePressure);
            if (gap > 0) {
                high = t;
            } else {
                low = t;
            }
            double slope =
                    Math.log(pressure(t + 0.01, waterMoleFraction) / pressure(t - 0.01, waterMoleFraction)) / 0.02;
            double next = t - gap / slope;
            if (Math.abs(next - t) < 1e-11 * t) {
                return next;
            }
            t = next > low && next < high ? next : 0.5 * (low + high);
        }
        return t;
    }
}
