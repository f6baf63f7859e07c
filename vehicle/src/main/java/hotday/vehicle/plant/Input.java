package hotday.vehicle.plant;

/** What the world, the driver and the controller do to the plant during one step. */
public enum Input implements Slot {
    /** Vehicle speed over ground. */
    SPEED("m/s"),
    /** Crankshaft speed; zero when the engine stands. */
    ENGINE_SPEED("rad/s"),
    /** Fuel flow times lower heating value; with {@link Plant#rates} below zero: worked out from the crank power. */
    FUEL_POWER("W"),
    /** Air drawn by the engine; zero or less: worked out from fuel, speed and displacement. */
    AIR_FLOW("kg/s"),
    /** Outside air. */
    AMBIENT("K"),
    /** Outside air, absolute. */
    PRESSURE("Pa"),
    /** Fan speed asked for, 0..1. */
    FAN_DEMAND("1"),
    /** Share of the air of road and openings that something holds back in front: a flap, a screen, a test bed's blower; 0 usual. */
    FRONT_HELD("1"),
    /** Heater setting, 0 shut to 1 full heat and blower. */
    HEATER("1"),
    /** Compressor engaged, 0..1. */
    COMPRESSOR("1"),
    /** Heat the condenser gives to the air in front of the radiator; recorded runs only. */
    CONDENSER_HEAT("W"),
    /** Heat a gearbox cooler gives to the air in front of the radiator; recorded runs only. */
    GEARBOX_HEAT("W"),
    /** Heat a gearbox cooler gives to the coolant of the radiator's outlet; recorded runs only. */
    GEARBOX_TANK_HEAT("W"),
    /** What the driveline takes from the crank, accessories not counted. */
    CRANK_POWER("W"),
    /** Heat of the torque converter. */
    CONVERTER_HEAT("W"),
    /** Power through the gears. */
    GEAR_POWER("W"),
    /** Gearbox input, with its pump. */
    GEARBOX_SPEED("rad/s"),
    /** Sun on the glass. */
    SUN("W/m2"),
    /** Humidity ratio outside. */
    HUMIDITY("kg/kg"),
    /** Cabin blower, 0 off to 1 full. */
    BLOWER("1"),
    /** Cabin air taken again, 0 outside air to 1. */
    CABIN_AIR_AGAIN("1"),
    /** 1: a fixed compressor's clutch cycling on the freeze limit is taken as its mean (steady states); 0: not. */
    CYCLING_AVERAGED("1"),
    /** 1: the fan follows the demand of the schedule without hysteresis (steady states); 0: {@link #FAN_DEMAND}. */
    FAN_BY_SCHEDULE("1");

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
