package hotday.physics.component;

/**
 * Starter battery as a voltage behind a resistance; the voltage at rest is a straight line over the charge.
 *
 * @param emptyVoltage at rest without charge, V, above 0
 * @param fullVoltage at rest, full, V, {@code emptyVoltage} or more
 * @param resistance Ohm, above 0
 * @param capacity A s, above 0
 */
public record Battery(double emptyVoltage, double fullVoltage, double resistance, double capacity) {
    public Battery {
        if (!(emptyVoltage > 0.0 && fullVoltage >= emptyVoltage)) {
            throw new IllegalArgumentException("battery at rest from " + emptyVoltage + " V (empty) to " + fullVoltage
                    + " V (full) must be above 0 and not fall");
        }
        if (!(resistance > 0.0)) {
            throw new IllegalArgumentException("battery resistance " + resistance + " Ohm must be above 0");
        }
        if (!(capacity > 0.0)) {
            throw new IllegalArgumentException("battery capacity " + capacity + " A s must be above 0");
        }
    }

    /** Lead-acid of a charge in A s: 11.8 V empty, 12.7 V full, 0.64 Ohm Ah of resistance (from memory). */
    public static Battery leadAcid(double capacity) {
        return new Battery(11.8, 12.7, 0.64 * 3600.0 / capacity, capacity);
    }

    /** V at rest. Charge as a share 0..1, held outside. */
    public double openCircuit(double charge) {
        return emptyVoltage + (fullVoltage - emptyVoltage) * Math.min(1.0, Math.max(0.0, charge));
    }

    /** Change of the charge share per second while a current, A, is drawn; below zero for a current above zero. */
    public double chargeRate(double current) {
        return -current / capacity;
    }

    /** Seconds until a share of the capacity is used by a steady current, A; infinite without a drain. */
    public double timeToUse(double share, double current) {
        return current > 0.0 ? share * capacity / current : Double.POSITIVE_INFINITY;
    }
}
