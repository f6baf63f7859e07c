package hotday.physics.component;

import hotday.physics.fluid.MoistAir;

/**
 * Cabin air as one mixed node (temperature and humidity), everything in it as one mass behind it; pure, no state.
 *
 * <pre>
 *   ambient -- infiltration --> AIR &lt;-- vents (evaporator, heater)      sun -- share --> MASS
 *   ambient -- shell ---------> AIR &lt;-- interior -- MASS                  \-- rest ---> AIR
 *                    people --> AIR -- as much as comes in, at cabin state --> out
 * </pre>
 *
 * Every heat flow is positive into the cabin. Water does not settle on the walls: humidity may pass saturation for a while. Source and
 * limits: docs/physics/cabin.md.
 *
 * @param volume of air, m3, above 0
 * @param massCapacity of trim, seats and dash that follow within an hour, J/K, above 0
 * @param interiorConductance between mass and air, W/K, 0 or more
 * @param shell body and windows in still air, W/K, 0 or more
 * @param shellPerSpeed W/K per m/s, 0 or more
 * @param glazing area times transmittance to sun, m2, 0 or more
 * @param sunOnMass share of the sun that heats the mass first, 0..1
 * @param leak dry air through gaps at rest, kg/s, 0 or more
 * @param leakPerSpeed kg/s per m/s, 0 or more
 * @param blower what it moves and draws, step by step
 */
public record Cabin(
        double volume,
        double massCapacity,
        double interiorConductance,
        double shell,
        double shellPerSpeed,
        double glazing,
        double sunOnMass,
        double leak,
        double leakPerSpeed,
        Blower blower) {
    /** Sensible heat of one seated person, W; ASHRAE Handbook - Fundamentals, seated very light work, from memory. */
    public static final double PERSON_SENSIBLE = 70.0;
    /** Latent heat of the same person, W. */
    public static final double PERSON_LATENT = 45.0;

    /** Input: outside air, K. */
    public static final int AMBIENT = 0;
    /** Input: outside air, kg/kg. */
    public static final int AMBIENT_HUMIDITY = 1;
    /** Input: Pa absolute. */
    public static final int PRESSURE = 2;
    /** Input: speed over the road, m/s, either sign. */
    public static final int SPEED = 3;
    /** Input: W/m2, as {@link #glazing} counts it. */
    public static final int SUN = 4;
    /** Input: persons on board. */
    public static final int PEOPLE = 5;
    /** Input: dry air through the vents, kg/s, 0 or more; as much leaves, back to the blower or out. */
    public static final int VENT_FLOW = 6;
    /** Input: air from the vents, K. */
    public static final int VENT_TEMPERATURE = 7;
    /** Input: air from the vents, kg/kg. */
    public static final int VENT_HUMIDITY = 8;
    /** Input: heat of the heater into the air, W, where it is not in the vent temperature already. */
    public static final int HEATER = 9;
    /** Length of the array of inputs. */
    public static final int INPUTS = 10;

    /** Result: rate of the air's temperature, K/s. */
    public static final int AIR_RATE = 0;
    /** Result: rate of the mass's temperature, K/s. */
    public static final int MASS_RATE = 1;
    /** Result: rate of the air's humidity ratio, 1/s. */
    public static final int HUMIDITY_RATE = 2;
    /** Result: enthalpy brought by the vents less that of as much cabin air, W. */
    public static final int VENT_HEAT = 3;
    /** Result: the same of the air through gaps, W. */
    public static final int LEAK_HEAT = 4;
    /** Result: through body and windows, W. */
    public static final int SHELL_HEAT = 5;
    /** Result: sun, on mass and air together, W. */
    public static final int SUN_HEAT = 6;
    /** Result: people, sensible and latent, W. */
    public static final int PEOPLE_HEAT = 7;
    /** Result: enthalpy gained by air and mass, W: the five above and the heater. */
    public static final int STORED = 8;
    /** Result: air held, kg of dry air. */
    public static final int AIR_HELD = 9;
    /** Length of the array of results. */
    public static final int RESULTS = 10;

    public Cabin {
        above("volume", volume, "m3");
        above("mass heat capacity", massCapacity, "J/K");
        notBelow("interior conductance", interiorConductance, "W/K");
        notBelow("shell conductance", shell, "W/K");
        notBelow("shell conductance per speed", shellPerSpeed, "W/K per m/s");
        notBelow("glazing", glazing, "m2");
        notBelow("leak", leak, "kg/s");
        notBelow("leak per speed", leakPerSpeed, "kg/s per m/s");
        if (!(sunOnMass >= 0 && sunOnMass <= 1)) {
            throw new IllegalArgumentException("cabin share of sun on the mass " + sunOnMass + " must be 0 to 1");
        }
    }

    /** Mid-size estate or double-cab pick-up, from memory; mass and glass set by how parked cars heat up. */
    public static Cabin midSize() {
        return new Cabin(3.2, 50e3, 90.0, 50.0, 1.2, 1.4, 0.8, 0.004, 0.0004, Blower.midSize());
    }

    /**
     * Rates of the three states and the heat flows behind them.
     *
     * @param air cabin air, K
     * @param mass interior, K
     * @param humidity of the cabin air, kg/kg
     * @param in {@link #INPUTS} values
     * @param out {@link #RESULTS} values, written
     */
    public void rates(double air, double mass, double humidity, double[] in, double[] out) {
        double vapour = MoistAir.vapourEnthalpy(air);
        double speed = Math.abs(in[SPEED]);
        double held = volume / MoistAir.specificVolume(air, humidity, in[PRESSURE]);
        double leaking = leak + leakPerSpeed * speed;

        double wetting = in[VENT_FLOW] * (in[VENT_HUMIDITY] - humidity);
        double seeping = leaking * (in[AMBIENT_HUMIDITY] - humidity);
        double breathing = in[PEOPLE] * PERSON_LATENT / vapour;
        double venting = in[VENT_FLOW] * MoistAir.specificHeat(in[VENT_HUMIDITY]) * (in[VENT_TEMPERATURE] - air);
        double drafting = leaking * MoistAir.specificHeat(in[AMBIENT_HUMIDITY]) * (in[AMBIENT] - air);

        double through = (shell + shellPerSpeed * speed) * (in[AMBIENT] - air);
        double sun = in[SUN] * glazing;
        double inside = interiorConductance * (mass - air);
        double bodies = in[PEOPLE] * PERSON_SENSIBLE;
        double toAir = venting + drafting + through + (1.0 - sunOnMass) * sun + inside + bodies + in[HEATER];
        double toMass = sunOnMass * sun - inside;

        out[AIR_RATE] = toAir / (held * MoistAir.specificHeat(humidity));
        out[MASS_RATE] = toMass / massCapacity;
        out[HUMIDITY_RATE] = (wetting + seeping + breathing) / held;
        out[VENT_HEAT] = venting + wetting * vapour;
        out[LEAK_HEAT] = drafting + seeping * vapour;
        out[SHELL_HEAT] = through;
        out[SUN_HEAT] = sun;
        out[PEOPLE_HEAT] = bodies + breathing * vapour;
        out[STORED] = toAir + toMass + (wetting + seeping + breathing) * vapour;
        out[AIR_HELD] = held;
    }

    /**
     * Humidity ratio of ambient and cabin air mixed, kg/kg.
     *
     * @param recirculation share of cabin air, 0 outside air to 1
     */
    public static double mixedHumidity(double ambientHumidity, double humidity, double recirculation) {
        return ambientHumidity + recirculation * (humidity - ambientHumidity);
    }

    /** Temperature of ambient and cabin air mixed without loss, K; arguments as in {@link #mixedHumidity}. */
    public static double mixedTemperature(
            double ambient, double ambientHumidity, double air, double humidity, double recirculation) {
        double outside = (1.0 - recirculation) * MoistAir.specificHeat(ambientHumidity);
        double inside = recirculation * MoistAir.specificHeat(humidity);
        return (outside * ambient + inside * air) / (outside + inside);
    }

    private static void above(String what, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("cabin " + what + " " + value + " " + unit + " must be above 0");
        }
    }

    private static void notBelow(String what, double value, String unit) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("cabin " + what + " " + value + " " + unit + " must be 0 or more");
        }
    }
}
