package hotday.core.unit;

import java.util.Locale;
import java.util.regex.Pattern;

/** Shows SI values in the units somebody chose, with the digits that mean something. */
public final class Display {
    /** Temperatures are always shown to a tenth, also those that round to nothing. */
    private static final int TENTHS = -2;

    private static final int FOUR_SIGNIFICANT = -1;

    /** Symbols of inch, pound and Fahrenheit and what is made of them. */
    private static final Pattern US = Pattern.compile(
            "(?<![A-Za-z])(degF|psia?|in([23]|Hg|H2O)?|ft[23]?|mi|mph2?|gal|qt|lbf?|cfm|hp|BTU)(?![A-Za-z])");

    private final UnitSystem system;

    public Display(UnitSystem system) {
        this.system = system;
    }

    public UnitSystem system() {
        return system;
    }

    /** The unit a quantity is shown in. */
    public Unit unitFor(Quantity quantity) {
        return Units.unit(quantity, symbol(quantity));
    }

    private String symbol(Quantity q) {
        boolean us = system == UnitSystem.US;
        boolean gauges = system != UnitSystem.METRIC;
        return switch (q) {
            case TEMPERATURE -> gauges ? "degF" : "degC";
            case TEMPERATURE_DIFFERENCE -> gauges ? "degF" : "K";
            case PRESSURE_GAUGE -> gauges ? "psi" : "bar";
            case PRESSURE_ABSOLUTE -> gauges ? "psia" : "bar abs";
            case SPEED -> us ? "mph" : "km/h";
            case LENGTH -> us ? "in" : "mm";
            case VOLUME -> us ? "qt" : "l";
            case MASS -> us ? "lb" : "kg";
            case MASS_FLOW -> "kg/s";
            case VOLUME_FLOW -> us ? "gal/min" : "l/min";
            case POWER -> us ? "hp" : "kW";
            case ANGULAR_SPEED -> "rpm";
            case RATIO -> "%";
            case SHARE_RATE -> "%/s";
            case DENSITY -> "kg/m3";
            case HEATING_VALUE -> "MJ/kg";
            case SPECIFIC_ENTHALPY -> us ? "BTU/lb" : "kJ/kg";
            case PER_LENGTH -> "/in";
            case ANGLE -> "deg";
            case HEAT_CAPACITY -> "kJ/K";
            case KINEMATIC_VISCOSITY -> "mm2/s";
            case RESISTANCE -> "mohm";
            case CHARGE -> "Ah";
            case MASS_FLOW_PER_SPEED -> "g/s/(m/s)";
            case SHARE_PER_KELVIN -> "%/K";
            case CONVERTER_CAPACITY -> us ? "rpm/sqrt(lb ft)" : "rpm/sqrt(N m)";
            default -> q.units().get(0).symbol();
        };
    }

    /** What was typed, in this system's units: as typed where its unit belongs to them already, or where it is no such value. */
    public String typed(Quantity quantity, String typed) {
        try {
            Amount amount = Units.amount(quantity, typed);
            Unit wanted = unitFor(quantity);
            boolean own = isUs(amount.unit()) == (system == UnitSystem.US) && system != UnitSystem.MIXED;
            return own || isUs(amount.unit()) == isUs(wanted) ? typed : wanted.text(amount.si());
        } catch (UnitException e) {
            return typed;
        }
    }

    private static boolean isUs(Unit unit) {
        return US.matcher(unit.symbol()).find();
    }

    /** Value and unit: "96.1 degC". */
    public String format(Quantity quantity, double si) {
        Unit unit = unitFor(quantity);
        return (number(unit.fromSi(si), digits(quantity, unit)) + " " + unit.symbol()).trim();
    }

    /** The number alone, for table columns whose head carries the unit. */
    public String number(Quantity quantity, double si) {
        Unit unit = unitFor(quantity);
        return number(unit.fromSi(si), digits(quantity, unit));
    }

    private static int digits(Quantity quantity, Unit unit) {
        return switch (quantity) {
            case TEMPERATURE, TEMPERATURE_DIFFERENCE -> TENTHS;
            case POWER -> 1;
            case LENGTH -> unit.symbol().equals("in") ? FOUR_SIGNIFICANT : 0;
            case SPEED, MASS, ANGULAR_SPEED, VOLUME_FLOW -> 0;
            case PRESSURE_GAUGE, PRESSURE_ABSOLUTE -> unit.symbol().startsWith("psi") ? 1 : 2;
            default -> FOUR_SIGNIFICANT;
        };
    }

    private static String number(double value, int digits) {
        if (digits == TENTHS && Double.isFinite(value)) {
            return String.format(Locale.ROOT, "%.1f", value + 0.0);
        }
        boolean vanishes = value != 0.0 && Math.abs(value) < 0.5 * Math.pow(10, -digits);
        if (digits == FOUR_SIGNIFICANT || vanishes || !Double.isFinite(value)) {
            return Unit.plain(value);
        }
        return String.format(Locale.ROOT, "%." + digits + "f", value);
    }
}
