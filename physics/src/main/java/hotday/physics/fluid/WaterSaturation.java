package hotday.physics.fluid;

/**
 * Saturation pressure of water for time loops: cubics over 1 K through four values each of
 * {@link MoistAir#saturationPressure}, with a boundary at the triple point, where the curve over ice meets that over water.
 * Continuous, rising, within 2e-7 of its origin from -60 to 100 degC; outside, the origin itself.
 */
public final class WaterSaturation {
    private static final double BOUNDARY = 273.16;
    private static final int BELOW = 60;
    private static final int PIECES = 160;
    private static final double COLDEST = BOUNDARY - BELOW;
    private static final double STEP = 1e-3; // K, for the slope outside the table
    private static final double[] CUBICS = cubics();

    private WaterSaturation() {}

    /** Pa at K. */
    public static double pressure(double temperature) {
        double x = temperature - COLDEST;
        if (!(x >= 0 && x < PIECES)) {
            return MoistAir.saturationPressure(temperature);
        }
        int piece = (int) x;
        double s = x - piece;
        int i = 4 * piece;
        return CUBICS[i] + s * (CUBICS[i + 1] + s * (CUBICS[i + 2] + s * CUBICS[i + 3]));
    }

    /** Slope of {@link #pressure}, Pa/K. */
    public static double slope(double temperature) {
        double x = temperature - COLDEST;
        if (!(x >= 0 && x < PIECES)) {
            double above = MoistAir.saturationPressure(temperature + STEP);
            return (above - MoistAir.saturationPressure(temperature - STEP)) / (2 * STEP);
        }
        int piece = (int) x;
        double s = x - piece;
        int i = 4 * piece;
        return CUBICS[i + 1] + s * (2 * CUBICS[i + 2] + s * 3 * CUBICS[i + 3]);
    }

    private static double[] cubics() {
        double[] all = new double[4 * PIECES];
        double left = MoistAir.saturationPressure(COLDEST);
        for (int piece = 0; piece < PIECES; piece++) {
            double right = MoistAir.saturationPressure(COLDEST + piece + 1);
            double d1 = MoistAir.saturationPressure(COLDEST + piece + 1 / 3.0) - left;
            double d2 = MoistAir.saturationPressure(COLDEST + piece + 2 / 3.0) - left;
            double d3 = right - left;
            all[4 * piece] = left;
            all[4 * piece + 1] = 9 * d1 - 4.5 * d2 + d3;
            all[4 * piece + 2] = -22.5 * d1 + 18 * d2 - 4.5 * d3;
            all[4 * piece + 3] = 13.5 * d1 - 13.5 * d2 + 4.5 * d3;
            left = right;
        }
        return all;
    }
}
