package hotday.physics.component;

/**
 * Copper cable: there and back counted as one length. Resistance grows by 0.393 % of its 20 degC value per kelvin (IEC 60228 for copper at
 * 20 degC; the factor is used from -40 to 150 degC).
 *
 * @param resistancePerMetre at 20 degC, Ohm/m, 0 or more; the standards list the highest one allowed for a cross-section
 * @param length of the loop, m, 0 or more
 */
public record Cable(double resistancePerMetre, double length) {
    private static final double PER_KELVIN = 0.00393;
    private static final double REFERENCE = 293.15; // K

    /** IEC 60228 class 5 and 6, plain copper: cross-section, mm2. */
    private static final double[] AREA = {0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120};
    /** Largest resistance at 20 degC, mOhm/m. */
    private static final double[] LISTED = {
        39.0, 26.0, 19.5, 13.3, 7.98, 4.95, 3.30, 1.91, 1.21, 0.780, 0.554, 0.386, 0.272, 0.206, 0.161
    };

    public Cable {
        if (!(resistancePerMetre >= 0.0 && resistancePerMetre < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("cable resistance " + resistancePerMetre + " Ohm/m must be 0 or more");
        }
        if (!(length >= 0.0 && length < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("cable loop length " + length + " m must be 0 or more");
        }
    }

    /**
     * Flexible copper of a cross-section, m2: the largest resistance IEC 60228 allows (class 5 and 6, plain). Between its sizes straight in
     * the logarithms, beyond them as the size nearest.
     *
     * @param length of the loop, m
     */
    public static Cable ofCopper(double area, double length) {
        if (!(area > 0.0)) {
            throw new IllegalArgumentException("cable cross-section " + area + " m2 must be above 0");
        }
        return new Cable(1e-3 * milliohmPerMetre(1e6 * area), length);
    }

    private static double milliohmPerMetre(double size) {
        int last = AREA.length - 1;
        if (size <= AREA[0] || size >= AREA[last]) {
            int end = size <= AREA[0] ? 0 : last;
            return LISTED[end] * AREA[end] / size;
        }
        int i = 0;
        while (size > AREA[i + 1]) {
            i++;
        }
        double at = Math.log(size / AREA[i]) / Math.log(AREA[i + 1] / AREA[i]);
        return LISTED[i] * Math.pow(LISTED[i + 1] / LISTED[i], at);
    }

    /** Ohm, of the whole loop at a temperature of the copper in K; never below 0. */
    public double resistance(double temperature) {
        return resistancePerMetre * length * Math.max(0.0, 1.0 + PER_KELVIN * (temperature - REFERENCE));
    }

    /** Voltage lost along the loop, V, with the sign of the current, A. */
    public double drop(double current, double temperature) {
        return current * resistance(temperature);
    }
}
