package hotday.core.unit;

/**
 * A unit of one kind of quantity: SI = value * factor + offset.
 *
 * @param symbol as shown
 * @param quantity what it measures
 * @param factor SI units in one of this unit
 * @param offset SI value at the zero of this unit; not zero for temperatures only
 */
public record Unit(String symbol, Quantity quantity, double factor, double offset) {
    public double toSi(double value) {
        return value * factor + offset;
    }

    public double fromSi(double si) {
        return (si - offset) / factor;
    }
}
