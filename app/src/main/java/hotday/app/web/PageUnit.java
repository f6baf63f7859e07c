package hotday.app.web;

import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.core.unit.Units;

/**
 * Unit in which a quantity goes to the page, which turns it into what people want to read. Pressures are absolute.
 *
 * @param symbol as the page calls it
 */
record PageUnit(String symbol, Unit unit) {
    static PageUnit of(Quantity quantity) {
        return switch (quantity) {
            case TEMPERATURE -> named(quantity, "degC");
            case SPEED -> named(quantity, "km/h");
            case ANGULAR_SPEED -> named(quantity, "rpm");
            case MASS_FLOW -> named(quantity, "g/s");
            case RATIO -> named(quantity, "%");
            case PRESSURE_ABSOLUTE -> new PageUnit("bar", Units.unit(quantity, "bar abs"));
            default ->
                new PageUnit(quantity.units().get(0).symbol(), quantity.units().get(0));
        };
    }

    private static PageUnit named(Quantity quantity, String symbol) {
        return new PageUnit(symbol, Units.unit(quantity, symbol));
    }

    double of(double si) {
        return unit.fromSi(si);
    }
}
