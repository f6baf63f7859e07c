package hotday.vehicle.plant;

/** What the plant works out on the way through a step. Heats are positive in the direction the name says. */
public enum Output implements Slot {
    /** Thermostat opening, 0 shut to 1. */
    OPENING("1"),
    /** Coolant through the radiator. */
    RADIATOR_FLOW("kg/s"),
    /** Mean air speed at the radiator face; positive rearwards. */
    FACE_SPEED("m/s"),
    /** Air through the radiator. */
    AIR_FLOW("kg/s"),
    /** Air reaching the radiator, after recirculation and the cores in front. */
    FACE_TEMPERATURE("K"),
    /** Condenser to the air in front of the radiator. */
    CONDENSER_HEAT("W"),
    /** Charge-air cooler to the air in front of the radiator. */
    CHARGE_HEAT("W"),
    /** Gas to metal. */
    GAS_HEAT("W"),
    /** Friction that ends in metal and oil. */
    FRICTION_HEAT("W"),
    /** Coolant to air in the radiator. */
    RADIATOR_HEAT("W"),
    /** Coolant to cabin air. */
    HEATER_HEAT("W"),
    /** Metal and oil to the air in the bay. */
    SURFACE_HEAT("W"),
    /** Rate at which the engine-side nodes store heat. */
    STORED("W"),
    /** Share of the pump flow that goes through the radiator. */
    RADIATOR_SHARE("1"),
    /** Fuel flow times lower heating value. */
    FUEL_POWER("W"),
    /** Engine brake power, accessories included. */
    BRAKE_POWER("W"),
    /** Air leaving the stack, mean by mass. */
    REAR_TEMPERATURE("K"),
    /** Heat the cores in front of the radiator give to its air, condenser included. */
    UPSTREAM_HEAT("W"),
    /** Heat into the bay air from air behind the stack and hot surfaces. */
    BAY_HEAT("W"),
    /** Heat the bay air loses through panels. */
    BAY_LOSS("W"),
    /** Gearbox losses into its fluid. */
    GEARBOX_LOSS("W"),
    /** Gearbox fluid to the air in the stack. */
    GEARBOX_AIR_HEAT("W"),
    /** Gearbox fluid to the coolant in the radiator tank. */
    GEARBOX_TANK_HEAT("W"),
    /** Gearbox case to the air. */
    GEARBOX_CASE_HEAT("W"),
    /** High side, absolute. */
    HEAD_PRESSURE("Pa"),
    /** Low side, absolute. */
    SUCTION_PRESSURE("Pa"),
    /** Refrigerant. */
    REFRIGERANT_FLOW("kg/s"),
    /** Compressor shaft. */
    COMPRESSOR_POWER("W"),
    /** Compressor displacement in use over its largest. */
    DISPLACEMENT("1"),
    /** Gas leaving the compressor. */
    DISCHARGE_TEMPERATURE("K"),
    /** Liquid below saturation at the condenser's end. */
    SUBCOOLING("K"),
    /** Heat the evaporator takes from the air. */
    EVAPORATOR_HEAT("W"),
    /** Heat that leaks from the high to the low side with the compressor at rest. */
    EQUALISING_HEAT("W"),
    /** Heat the high side stores. */
    HIGH_SIDE_STORED("W"),
    /** Heat the low side stores. */
    LOW_SIDE_STORED("W"),
    /** Air leaving the evaporator. */
    VENT_TEMPERATURE("K"),
    /** Everything that enters the cabin: sun, people, shell, infiltration, less what the air change takes out. */
    CABIN_GAIN("W"),
    /** Heat cabin air and interior store. */
    CABIN_STORED("W"),
    /** Supply voltage. */
    BUS("V"),
    ALTERNATOR_CURRENT("A"),
    ALTERNATOR_POWER("W"),
    /** Out of the battery, positive while it discharges. */
    BATTERY_CURRENT("A"),
    FAN_CURRENT("A"),
    /** Electrical, at the fan. */
    FAN_POWER("W"),
    /** Fan speed it is heading for, after limits of supply and current. */
    FAN_TARGET("1"),
    /** Charge air behind its cooler; outside air where there is none, and with the engine at rest. */
    CHARGE_TEMPERATURE("K");

    /** Number of outputs. */
    public static final int COUNT = values().length;

    private final String unit;

    Output(String unit) {
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
