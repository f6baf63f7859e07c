package hotday.vehicle.sheet;

/** Resistance of stranded copper. */
final class CopperCable {
    /** IEC 60228 class 5 and 6, plain copper: cross-section, mm2. */
    private static final double[] AREA = {0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120};
    /** Largest resistance at 20 degC, mohm/m. */
    private static final double[] RESISTANCE = {
        39.0, 26.0, 19.5, 13.3, 7.98, 4.95, 3.30, 1.91, 1.21, 0.780, 0.554, 0.386, 0.272, 0.206, 0.161
    };

    private static final double PER_KELVIN = 0.00393; // IEC 60228
    private static final double ANNEALED = 293.15; // K

    private CopperCable() {}

    /**
     * Between the standard sizes in proportion of the logarithms, beyond them like the last size.
     *
     * @param length both ways, m
     * @param area copper cross-section, m2
     * @param temperature K
     * @return ohm
     */
    static double resistance(double length, double area, double temperature) {
        double size = 1e6 * area;
        int last = AREA.length - 1;
        int i = 0;
        while (i < last - 1 && size > AREA[i + 1]) {
            i++;
        }
        double at = Math.log(size / AREA[i]) / Math.log(AREA[i + 1] / AREA[i]);
        double within = RESISTANCE[i] * Math.pow(RESISTANCE[i + 1] / RESISTANCE[i], at);
        double perMetre = size < AREA[0]
                ? RESISTANCE[0] * AREA[0] / size
                : size > AREA[last] ? RESISTANCE[last] * AREA[last] / size : within;
        return 1e-3 * perMetre * length * (1.0 + PER_KELVIN * (temperature - ANNEALED));
    }
}
