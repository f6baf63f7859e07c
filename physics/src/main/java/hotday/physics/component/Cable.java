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

    public Cable {
        if (!(resistancePerMetre >= 0.0 && resistancePerMetre < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("cable resistance " + resistancePerMetre + " Ohm/m must be 0 or more");
        }
        if (!(length >= 0.0 && length < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("cable loop length " + length + " m must be 0 or more");
        }
    }

    /**
     * Flexible copper of a cross-section, m2, by {@link Conductor#iec}.
     *
     * @param length of the loop, m
     */
    public static Cable ofCopper(double area, double length) {
        return new Cable(Conductor.iec(area).resistancePerMetre(), length);
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
