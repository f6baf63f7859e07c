package hotday.core.unit;

/**
 * A value as somebody typed it.
 *
 * @param value in {@code unit}
 * @param unit it was typed in
 */
public record Amount(double value, Unit unit) {
    public double si() {
        return unit.toSi(value);
    }
}
