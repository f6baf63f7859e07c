package hotday.vehicle.cases;

import hotday.core.unit.Quantity;

/** What must hold for a case to hold. */
public enum Limit {
    /** Engine-out coolant below the sheet's limit. */
    COOLANT("coolant", "coolant temperature", Quantity.TEMPERATURE, 1.0, 1.0),
    /** Coolant below boiling at the cap and altitude, by the sheet's margin. */
    BOILING("boiling", "boiling at the cap", Quantity.TEMPERATURE, 1.0, 1.0),
    /** Gearbox fluid in the sump. */
    GEARBOX("gearbox", "gearbox fluid temperature", Quantity.TEMPERATURE, 1.0, 1.0),
    /** High side of the refrigerant circuit, absolute. */
    HEAD_PRESSURE("head-pressure", "A/C high side", Quantity.PRESSURE_ABSOLUTE, 1.0, 45e3),
    /** Evaporating temperature low enough to cool the cabin. */
    CABIN_COOLING("cabin-cooling", "cabin cooling", Quantity.TEMPERATURE, 1.0, 1.0),
    /** Supply voltage; the only one that must not be passed downwards. */
    SUPPLY("supply", "supply voltage", Quantity.VOLTAGE, -1.0, 0.02),
    /** Charge air behind its cooler, where the sheet states a limit. */
    CHARGE_AIR("charge-air", "charge-air temperature", Quantity.TEMPERATURE, 1.0, 1.0);

    private final String id;
    private final String title;
    private final Quantity quantity;
    private final double direction;
    private final double perKelvin;

    Limit(String id, String title, Quantity quantity, double direction, double perKelvin) {
        this.id = id;
        this.title = title;
        this.quantity = quantity;
        this.direction = direction;
        this.perKelvin = perKelvin;
    }

    public String id() {
        return id;
    }

    public String title() {
        return title;
    }

    /** What its value is. */
    public Quantity quantity() {
        return quantity;
    }

    /** About how much it moves for a kelvin outside: only to compare limits while searching. */
    public double perKelvin() {
        return perKelvin;
    }

    /** The value to start a search for the worst from. */
    double leastBad() {
        return -direction * Double.MAX_VALUE;
    }

    /** How far a value is from a limit, positive while it holds, in the quantity's SI unit. */
    public double headroom(double value, double limit) {
        return direction * (limit - value);
    }
}
