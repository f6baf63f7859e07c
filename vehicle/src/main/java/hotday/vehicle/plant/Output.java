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
    /** Rate at which the nodes store heat. */
    STORED("W");

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
