package hotday.signals.channel;

import hotday.core.unit.Quantity;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The quantities that the model can take from a recording. Each has the range outside which a sample cannot be right
 * (wide: physics and sensors, not taste) and, for temperatures, the distance from the samples around that no such sensor
 * can cover in seconds. Common practice, no source.
 */
public enum ModelChannel {
    VEHICLE_SPEED(Quantity.SPEED, -5.0, 120.0),
    ENGINE_SPEED(Quantity.ANGULAR_SPEED, -5.0, 1500.0),
    FUEL_FLOW(Quantity.MASS_FLOW, -0.001, 0.2),
    AIR_FLOW(Quantity.MASS_FLOW, -0.01, 2.0),
    MANIFOLD_PRESSURE(Quantity.PRESSURE_ABSOLUTE, 5e3, 6e5),
    ENGINE_LOAD(Quantity.RATIO, 0.0, 2.6),
    THROTTLE(Quantity.RATIO, -0.05, 1.05),
    PEDAL(Quantity.RATIO, -0.05, 1.05),
    AMBIENT_TEMPERATURE(Quantity.TEMPERATURE, 213.15, 343.15, 8.0),
    COOLANT_TEMPERATURE(Quantity.TEMPERATURE, 223.15, 423.15, 25.0),
    OIL_TEMPERATURE(Quantity.TEMPERATURE, 223.15, 473.15, 25.0),
    GEARBOX_TEMPERATURE(Quantity.TEMPERATURE, 223.15, 473.15, 25.0),
    INTAKE_TEMPERATURE(Quantity.TEMPERATURE, 223.15, 363.15, 12.0),
    VENT_TEMPERATURE(Quantity.TEMPERATURE, 223.15, 373.15, 25.0),
    LIQUID_LINE_TEMPERATURE(Quantity.TEMPERATURE, 223.15, 393.15, 25.0),
    RADIATOR_OUTLET_TEMPERATURE(Quantity.TEMPERATURE, 223.15, 423.15, 25.0),
    TRACTIVE_FORCE(Quantity.FORCE, -1e5, 1e5),
    GRADE(Quantity.RATIO, -0.6, 0.6),
    ALTITUDE(Quantity.LENGTH, -430.0, 6000.0),
    BAROMETER(Quantity.PRESSURE_ABSOLUTE, 45e3, 110e3),
    RELATIVE_HUMIDITY(Quantity.RATIO, 0.0, 1.05),
    FAN_DEMAND(Quantity.RATIO, -0.05, 1.05),
    FAN_SPEED(Quantity.RATIO, -0.05, 1.3),
    HEATER(Quantity.RATIO, -0.05, 1.05),
    COMPRESSOR(Quantity.RATIO, -0.05, 1.05),
    HEAD_PRESSURE(Quantity.PRESSURE_ABSOLUTE, 0.0, 5e6),
    SUCTION_PRESSURE(Quantity.PRESSURE_ABSOLUTE, 0.0, 2e6),
    SUPPLY_VOLTAGE(Quantity.VOLTAGE, 0.0, 60.0),
    FAN_CURRENT(Quantity.CURRENT, -20.0, 300.0);

    private final Quantity quantity;
    private final double lowest;
    private final double highest;
    private final double spike;

    ModelChannel(Quantity quantity, double lowest, double highest) {
        this(quantity, lowest, highest, Double.POSITIVE_INFINITY);
    }

    ModelChannel(Quantity quantity, double lowest, double highest, double spike) {
        this.quantity = quantity;
        this.lowest = lowest;
        this.highest = highest;
        this.spike = spike;
    }

    public Quantity quantity() {
        return quantity;
    }

    /** What a step of this quantity is typed as: a temperature by a temperature difference. */
    Quantity step() {
        return quantity == Quantity.TEMPERATURE ? Quantity.TEMPERATURE_DIFFERENCE : quantity;
    }

    /** Lowest sample that can be right, SI. */
    public double lowest() {
        return lowest;
    }

    /** Highest sample that can be right, SI. */
    public double highest() {
        return highest;
    }

    /** Distance from the samples around beyond which a sample is a glitch, SI; infinite where nothing tells. */
    public double spike() {
        return spike;
    }

    /** True for what is on or off or between: words such as "on" are samples too. */
    boolean isSwitch() {
        return this == FAN_DEMAND || this == FAN_SPEED || this == HEATER || this == COMPRESSOR;
    }

    /** As written in a channel map. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<ModelChannel> of(String key) {
        return Arrays.stream(values()).filter(c -> c.key().equals(key)).findFirst();
    }

    public static List<String> keys() {
        return Arrays.stream(values()).map(ModelChannel::key).toList();
    }
}
