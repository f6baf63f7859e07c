package hotday.vehicle.plant;

/** What the plant remembers from one step to the next. */
public enum State implements Slot {
    /** Block, heads and what warms with them. */
    METAL("K"),
    /** Coolant leaving the engine; what the gauge shows. */
    JACKET("K"),
    /** Engine oil in the sump. */
    OIL("K"),
    /** Radiator, first third along the coolant. */
    RADIATOR_INLET("K"),
    /** Radiator, middle third. */
    RADIATOR_MIDDLE("K"),
    /** Radiator, last third: what goes back to the engine. */
    RADIATOR_OUTLET("K"),
    /** Heater core. */
    HEATER("K"),
    /** Wax of the thermostat, which lags the coolant. */
    WAX("K"),
    /** Wax temperature after the play of the valve: follows the wax downwards at once and upwards late. */
    WAX_PLAY("K"),
    /** Fan speed over full speed. */
    FAN("1"),
    /** Air in the engine bay and what warms at once with it. */
    BAY("K"),
    /** Gearbox fluid in the sump. */
    SUMP("K"),
    /** Saturation temperature of the high side: condenser and what hangs on it. */
    CONDENSING("K"),
    /** Saturation temperature of the low side: evaporator. */
    EVAPORATING("K"),
    /** Cabin air. */
    CABIN("K"),
    /** Seats, trim and glass of the cabin. */
    INTERIOR("K"),
    /** Humidity ratio of the cabin air. */
    CABIN_HUMIDITY("kg/kg"),
    /** Charge taken from the battery since the start. */
    CHARGE_DRAWN("A s");

    /** Number of states. */
    public static final int COUNT = values().length;

    private final String unit;

    State(String unit) {
        this.unit = unit;
    }

    /** True for what a vehicle without air conditioning does not have. */
    boolean ofConditioning() {
        return this == CONDENSING || this == EVAPORATING || this == CABIN || this == INTERIOR || this == CABIN_HUMIDITY;
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
