package hotday.validation.units;

import hotday.core.unit.Quantity;
import hotday.core.unit.Units;
import hotday.validation.Check;
import hotday.validation.Topic;
import java.util.List;

/** The conversions that decide an answer of this trade; all units are tested in module core. */
public final class UnitChecks implements Topic {
    private static final String NIST = "NIST SP 811 (2008) appendix B.8, from memory";
    /** The source prints seven significant digits. */
    private static final double PRINTED = 5e-7;

    @Override
    public String title() {
        return "Units";
    }

    @Override
    public List<Check> checks() {
        return List.of(
                Check.near("205 degF", Units.parse(Quantity.TEMPERATURE, "205 degF"), 369.261111, 1e-6, "K", NIST),
                row(Quantity.TEMPERATURE_DIFFERENCE, "9 degF", 5, "K"),
                row(Quantity.PRESSURE_GAUGE, "1 psi", 6894.757, "Pa"),
                row(Quantity.PRESSURE_ABSOLUTE, "1 inHg", 3386.389, "Pa"),
                row(Quantity.PRESSURE_DIFFERENCE, "1 inH2O", 249.0889, "Pa"),
                row(Quantity.SPEED, "1 mph", 0.44704, "m/s"),
                row(Quantity.MASS, "1 lb", 0.4535924, "kg"),
                row(Quantity.FORCE, "1 lbf", 4.448222, "N"),
                row(Quantity.VOLUME, "1 gal", 3.785412e-3, "m3"),
                row(Quantity.VOLUME_FLOW, "1 cfm", 4.719474e-4, "m3/s"),
                row(Quantity.POWER, "1 hp", 745.6999, "W"),
                row(Quantity.POWER, "1 BTU/h", 0.2930711, "W"),
                row(Quantity.HEATING_VALUE, "1 BTU/lb", 2326, "J/kg"),
                row(Quantity.TORQUE, "1 lb ft", 1.355818, "N m"),
                row(Quantity.ANGULAR_SPEED, "1 rpm", 0.1047198, "rad/s"));
    }

    private static Check row(Quantity quantity, String typed, double published, String unit) {
        return Check.relative(typed, Units.parse(quantity, typed), published, PRINTED, unit, NIST);
    }
}
