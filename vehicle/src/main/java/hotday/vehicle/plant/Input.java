package hotday.vehicle.plant;

/** What the world, the driver and the controller do to the plant during one step. */
public enum Input implements Slot {
    /** Vehicle speed over ground. */
    SPEED("m/s"),
    /** Crankshaft speed; zero when the engine stands. */
    ENGINE_SPEED("rad/s"),
    /** Fuel flow times lower heating value. */
    FUEL_POWER("W"),
    /** Air drawn by the engine; zero or less: worked out from fuel, speed and displacement. */
    AIR_FLOW("kg/s"),
    /** Outside air. */
    AMBIENT("K"),
    /** Outside air, absolute. */
    PRESSURE("Pa"),
    /** Fan speed asked for, 0..1. */
    FAN_DEMAND("1"),
    /** Heater setting, 0 shut to 1 full heat and blower. */
    HEATER("1"),
    /** Compressor engaged, 0..1. */
    COMPRESSOR("1"),
    /** Heat a gearbox cooler gives to the air in front of the radiator. */
    GEARBOX_HEAT("W");

    /** Number of inputs. */
    public static final int COUNT = values().length;

    private final String unit;

    Input(String unit) {
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
