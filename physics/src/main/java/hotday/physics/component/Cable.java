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
    private static final double COPPER = 1.7241e-8; // Ohm m, international annealed copper standard at 20 degC

    public Cable {
        if (!(resistancePerMetre >= 0.0 && resistancePerMetre < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("cable resistance " + resistancePerMetre + " Ohm/m must be 0 or more");
        }
        if (!(length >= 0.0 && length < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("cable loop length " + length + " m must be 0 or more");
        }
    }

    /** Solid copper of a cross-section, m2. A stranded cable of the same name has up to a tenth more resistance. */
    public static Cable ofCopper(double area, double length) {
        if (!(area > 0.0)) {
            throw new IllegalArgumentException("cable cross-section " + area + " m2 must be above 0");
        }
        return new Cable(COPPER / area, length);
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
