package hotday.physics.component;

/**
 * Starter battery as a constant voltage behind a resistance. Good for the first tenth or two of its charge; the voltage at rest of a lead-acid
 * battery falls by about 10 mV with every hundredth (from memory).
 *
 * @param openCircuit voltage at rest, V, above 0
 * @param resistance Ohm, above 0
 * @param capacity A s, above 0
 */
public record Battery(double openCircuit, double resistance, double capacity) {
    public Battery {
        positive("voltage at rest", openCircuit, "V");
        positive("resistance", resistance, "Ohm");
        positive("capacity", capacity, "A s");
    }

    private static void positive(String what, double value, String unit) {
        if (!(value > 0.0)) {
            throw new IllegalArgumentException("battery " + what + " " + value + " " + unit + " must be above 0");
        }
    }

    /** Change of the charge share, 1/s; below zero for a current, A, that is drawn (above zero). */
    public double chargeRate(double current) {
        return -current / capacity;
    }

    /** Seconds until a share of the capacity is used by a steady current, A; infinite without a drain. */
    public double timeToUse(double share, double current) {
        return current > 0.0 ? share * capacity / current : Double.POSITIVE_INFINITY;
    }
}
