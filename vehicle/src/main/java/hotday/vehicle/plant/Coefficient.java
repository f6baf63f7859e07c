package hotday.vehicle.plant;

/**
 * The numbers a plant is made of. A build sheet fills them; a fit moves them. Each is one physical quantity, so that a
 * fitted value can be read by a person.
 */
public enum Coefficient implements Slot {
    /** Heat capacity of engine metal. */
    METAL_CAPACITY("J/K"),
    /** Heat capacity of the coolant in engine, hoses and bypass. */
    JACKET_CAPACITY("J/K"),
    OIL_CAPACITY("J/K"),
    /** Radiator metal and the coolant in it. */
    RADIATOR_CAPACITY("J/K"),
    HEATER_CAPACITY("J/K"),
    /** Multiplier on the gas-side heat transfer relation. */
    GAS_HEAT_LEVEL("1"),
    /** Further exponent on fuel power over its reference; 0 is the published relation. */
    GAS_HEAT_FUEL_EXPONENT("1"),
    /** Further exponent on engine speed over its reference; 0 is the published relation. */
    GAS_HEAT_SPEED_EXPONENT("1"),
    /** Multiplier on friction heat. */
    FRICTION_LEVEL("1"),
    /** Share of friction heat that ends in the oil, the rest in metal. */
    FRICTION_TO_OIL("1"),
    /** Metal to coolant at reference pump flow. */
    METAL_COOLANT_CONDUCTANCE("W/K"),
    /** Metal to oil at reference engine speed. */
    METAL_OIL_CONDUCTANCE("W/K"),
    /** Coolant the pump moves at reference engine speed, thermostat open. */
    PUMP_FLOW("kg/s"),
    THERMOSTAT_OPENS("K"),
    /** Full opening lies this far above. */
    THERMOSTAT_RANGE("K"),
    /** Width of the loop: closing lies below opening by this. */
    THERMOSTAT_HYSTERESIS("K"),
    WAX_LAG("s"),
    /** Share of the radiator flow that passes a shut thermostat. */
    THERMOSTAT_LEAK("1"),
    /** Part of the wax that feels the mixture going back into the engine, the rest feels engine-out coolant. */
    THERMOSTAT_INLET_SHARE("1"),
    /** Radiator air side at 3 m/s and 1.2 kg/m3. */
    RADIATOR_AIR_CONDUCTANCE("W/K"),
    /** Radiator coolant side at the sheet's reference flow. */
    RADIATOR_COOLANT_CONDUCTANCE("W/K"),
    /** Multiplier on recovered ram pressure. */
    RAM_LEVEL("1"),
    /** Air speed at the face that is there with neither ram nor fan nor draught (blowers, wind). */
    STILL_AIR_SPEED("m/s"),
    /** Multiplier on fan pressure and flow (like a fan running that much faster). */
    FAN_LEVEL("1"),
    /** Heater core to cabin air at full setting. */
    HEATER_CONDUCTANCE("W/K"),
    /** Share of pump flow through the heater core. */
    HEATER_FLOW_SHARE("1"),
    /** Metal to bay air at rest. */
    METAL_LOSS("W/K"),
    /** Further metal loss per road speed. */
    METAL_LOSS_PER_SPEED("W/K/(m/s)"),
    /** Oil to bay air at rest. */
    OIL_LOSS("W/K"),
    /** Further oil loss per road speed. */
    OIL_LOSS_PER_SPEED("W/K/(m/s)"),
    /** Multiplier on the condenser heat that is given for a recorded run. */
    CONDENSER_HEAT("1"),
    /** Share of under-bonnet air that comes back to the face at rest. */
    RECIRCULATION("1"),
    /** Multiplier on the fuel power that follows from road load; recorded fuel is taken as it is. */
    DRIVE_FUEL_LEVEL("1"),
    /** Offset of the coolant sensor: reading minus truth. */
    COOLANT_SENSOR_OFFSET("K"),
    /** Multiplier on both sides of the condenser. */
    CONDENSER_LEVEL("1"),
    /** Multiplier on the heat the gearbox makes, worked out or given. */
    GEARBOX_HEAT_LEVEL("1"),
    /** Air in the bay and what warms at once with it. */
    BAY_CAPACITY("J/K"),
    /** Bay air to outside through panels and gaps, at rest. */
    BAY_LOSS("W/K"),
    /** Further bay loss per road speed. */
    BAY_LOSS_PER_SPEED("W/K/(m/s)");

    /** Number of coefficients. */
    public static final int COUNT = values().length;

    private final String unit;

    Coefficient(String unit) {
        this.unit = unit;
    }

    @Override
    public int index() {
        return ordinal();
    }

    @Override
    public String unit() {
        return unit;
    }
}
