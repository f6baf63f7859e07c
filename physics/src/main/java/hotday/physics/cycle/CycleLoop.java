package hotday.physics.cycle;

import hotday.physics.refrigerant.PropertyTable;
import hotday.physics.refrigerant.Refrigerant;
import hotday.physics.refrigerant.SaturationTable;

/**
 * Compressor and condenser of one refrigerant between two pressures, for time loops and Newton steps: {@link #compress}, then {@link
 * #condense} on the same array. No pressure loss in pipes and coils. Results are continuous functions of the arguments, finite for
 * every finite argument, and do not depend on what the array held before (Newton steps of fixed number from closed-form guesses).
 *
 * <p>The properties are taken at pressures between {@link #LOWEST_PRESSURE} and {@link #highestPressure}. Beyond, saturation temperatures go
 * on along their slope, so that a pressure always has something that pushes it back; suction flow goes to 0 with the low
 * pressure. Immutable, shared by all threads; allocates nothing. Page: docs/physics/refrigerant-loop.md.
 */
public final class CycleLoop {
    /** Properties at lower pressures are those at this one, Pa. */
    public static final double LOWEST_PRESSURE = 42e3;

    // Places in the array; those below belong to the tables.

    /** Through the compressor, kg/s, 0 or more. */
    public static final int MASS_FLOW = SaturationTable.COLUMNS;

    /** J/kg. */
    public static final int SUCTION_ENTHALPY = MASS_FLOW + 1;

    /** J/kg: all shaft work ends in the gas. */
    public static final int DISCHARGE_ENTHALPY = MASS_FLOW + 2;

    /** W at the shaft of the compressor, 0 or more. */
    public static final int SHAFT_POWER = MASS_FLOW + 3;

    /** N m at the shaft of the compressor; also at speed 0. */
    public static final int SHAFT_TORQUE = MASS_FLOW + 4;

    /** K. */
    public static final int SUCTION_TEMPERATURE = MASS_FLOW + 5;

    /** K. */
    public static final int DISCHARGE_TEMPERATURE = MASS_FLOW + 6;

    /** kg/m3. */
    public static final int SUCTION_DENSITY = MASS_FLOW + 7;

    /** As handed in, Pa. */
    public static final int LOW_PRESSURE = MASS_FLOW + 8;

    /** As handed in, Pa. */
    public static final int HIGH_PRESSURE = MASS_FLOW + 9;

    /** Saturation temperatures, K. */
    public static final int LOW_SATURATION = MASS_FLOW + 10;

    public static final int HIGH_SATURATION = MASS_FLOW + 11;

    /** Slopes of the saturation temperatures, K/Pa. */
    public static final int LOW_SLOPE = MASS_FLOW + 12;

    public static final int HIGH_SLOPE = MASS_FLOW + 13;

    /** Saturated, J/kg. */
    public static final int LOW_VAPOUR_ENTHALPY = MASS_FLOW + 14;

    public static final int HIGH_VAPOUR_ENTHALPY = MASS_FLOW + 15;

    public static final int HIGH_LIQUID_ENTHALPY = MASS_FLOW + 16;

    /** Of the liquid, J/(kg K), mean along the saturation line down to 0.8 times the pressure (some 9 K). */
    public static final int HIGH_LIQUID_HEAT = MASS_FLOW + 17;

    /** Saturated, J/(kg K). */
    public static final int HIGH_VAPOUR_HEAT = MASS_FLOW + 18;

    /** Saturated, kg/m3. */
    public static final int HIGH_LIQUID_DENSITY = MASS_FLOW + 19;

    /** From the refrigerant to the air in all three zones, W; below 0 when the air is the hotter one. */
    public static final int CONDENSER_HEAT = MASS_FLOW + 20;

    /** Where vapour condenses, W. */
    public static final int TWO_PHASE_HEAT = MASS_FLOW + 21;

    /** At the outlet of the condenser, J/kg. */
    public static final int LIQUID_ENTHALPY = MASS_FLOW + 22;

    /** At the outlet of the condenser, K below saturation; negative when hotter air is at the flooded end. */
    public static final int SUBCOOLING = MASS_FLOW + 23;

    /** Share of the face where hot vapour cools, 0..1. */
    public static final int VAPOUR_SHARE = MASS_FLOW + 24;

    /** What the refrigerant brings in and neither takes along nor gives to the air, W: drives the high pressure. */
    public static final int CONDENSING_SURPLUS = MASS_FLOW + 25;

    /** Length of the array. */
    public static final int LENGTH = MASS_FLOW + 26;

    private static final double NEAR_CRITICAL = 0.97; // of the critical pressure
    private static final double LEAST_SUPERHEAT = 0.01; // K, keeps a look off the saturation line
    private static final double MOST_SUPERHEAT = 60.0; // K
    private static final double CHORD = 0.8; // of the pressure, for the mean heat of the liquid
    private static final double LEAST_TWO_PHASE = 0.02; // of the face
    private static final double MOST_LIQUID = 0.9; // of the face
    private static final double STEEPEST_HEAT = 1e-5; // K kg/J
    private static final double ON_THE_DRY_SIDE = 1e-6; // J/kg: entropy of the vapour surface, so that wet and dry meet
    private static final int SATURATION_COLUMNS = SaturationTable.VAPOUR_HEAT + 1;

    private final Compressor compressor;
    private final PropertyTable table;
    private final SaturationTable saturation;
    private final double highestPressure;

    public CycleLoop(Refrigerant refrigerant, Compressor compressor) {
        this.compressor = compressor;
        this.table = PropertyTable.of(refrigerant);
        this.saturation = table.saturation();
        this.highestPressure = NEAR_CRITICAL * refrigerant.criticalPressure();
    }

    public Compressor compressor() {
        return compressor;
    }

    public Refrigerant refrigerant() {
        return table.refrigerant();
    }

    /** Properties at higher pressures are those at this one, Pa: 0.97 of the critical pressure. */
    public double highestPressure() {
        return highestPressure;
    }

    /**
     * From the evaporator's outlet to the compressor's discharge, and saturation on both sides. Where the high pressure is not above
     * the low one the gas is moved without work.
     *
     * @param lowPressure Pa
     * @param highPressure Pa
     * @param speed of the compressor, rad/s; 0 below 0
     * @param share of the stroke, 0 (clutch open) to 1
     * @param superheat at the suction, K; taken within 0.01..60
     * @param out {@link #LENGTH} long
     */
    public void compress(
            double lowPressure, double highPressure, double speed, double share, double superheat, double[] out) {
        double low = within(lowPressure);
        double high = within(highPressure);
        out[LOW_PRESSURE] = lowPressure;
        out[HIGH_PRESSURE] = highPressure;
        suction(low, lowPressure, Math.min(MOST_SUPERHEAT, Math.max(LEAST_SUPERHEAT, superheat)), out);
        double entropy = table.entropy(low, out[SUCTION_ENTHALPY]);
        double isentropic = highSide(high, highPressure, entropy, out) - out[SUCTION_ENTHALPY];
        double ratio = high / low;
        double turning = Math.max(0.0, speed);
        double work = ratio > 1.0 ? isentropic / compressor.isentropic().at(ratio, turning) : 0.0;
        double perRadian = share * compressor.drawn(ratio, turning) * out[SUCTION_DENSITY];
        out[MASS_FLOW] = perRadian * turning;
        out[SHAFT_TORQUE] = perRadian * work;
        out[SHAFT_POWER] = out[SHAFT_TORQUE] * turning;
        discharge(high, highPressure, work, ratio > 1.0, out);
    }

    private double within(double pressure) {
        return Math.min(highestPressure, Math.max(LOWEST_PRESSURE, pressure));
    }

    private void suction(double low, double given, double superheat, double[] out) {
        saturation.look(low, SATURATION_COLUMNS, out);
        double slope = saturation.temperatureSlope(low);
        double temperature = out[SaturationTable.TEMPERATURE] + superheat;
        double h = out[SaturationTable.VAPOUR_ENTHALPY];
        out[LOW_VAPOUR_ENTHALPY] = h;
        out[LOW_SLOPE] = slope;
        out[LOW_SATURATION] = out[SaturationTable.TEMPERATURE] + slope * (given - low);
        out[SUCTION_TEMPERATURE] = out[LOW_SATURATION] + superheat;
        h += out[SaturationTable.VAPOUR_HEAT] * superheat;
        double density = 0.0;
        for (int i = 0; i < 2; i++) { // the guess is within 2 K, the second step below 1e-7 K
            table.lookWithSlopes(low, h, out);
            double step = (temperature - out[PropertyTable.TEMPERATURE])
                    / Math.max(STEEPEST_HEAT, out[PropertyTable.TEMPERATURE_BY_ENTHALPY]);
            h += step;
            density = out[PropertyTable.DENSITY] + step * out[PropertyTable.DENSITY_BY_ENTHALPY];
        }
        out[SUCTION_ENTHALPY] = h;
        out[SUCTION_DENSITY] = density * Math.min(1.0, Math.max(0.0, given / low));
    }

    /** Saturation at the high pressure; gives back the enthalpy there at the entropy of the suction, J/kg. */
    private double highSide(double high, double given, double entropy, double[] out) {
        saturation.look(high, SATURATION_COLUMNS, out);
        double slope = saturation.temperatureSlope(high);
        double temperature = out[SaturationTable.TEMPERATURE];
        double liquid = out[SaturationTable.LIQUID_ENTHALPY];
        double chord = CHORD * high;
        out[HIGH_SLOPE] = slope;
        out[HIGH_SATURATION] = temperature + slope * (given - high);
        out[HIGH_LIQUID_ENTHALPY] = liquid;
        out[HIGH_VAPOUR_ENTHALPY] = out[SaturationTable.VAPOUR_ENTHALPY];
        out[HIGH_VAPOUR_HEAT] = out[SaturationTable.VAPOUR_HEAT];
        out[HIGH_LIQUID_DENSITY] = 1.0 / out[SaturationTable.LIQUID_VOLUME];
        out[HIGH_LIQUID_HEAT] =
                (liquid - saturation.liquidEnthalpy(chord)) / (temperature - saturation.temperature(chord));
        return isentropic(high, temperature, entropy, out);
    }

    private double isentropic(double high, double temperature, double entropy, double[] out) {
        double line = out[HIGH_VAPOUR_ENTHALPY];
        double above = entropy - table.entropy(high, line + ON_THE_DRY_SIDE);
        double h = line + temperature * above;
        if (above <= 0.0) {
            return h; // wet: T ds = dh along the isobar
        }
        double perHeat = 0.5 / out[HIGH_VAPOUR_HEAT];
        h += temperature * above * above * perHeat;
        for (int i = 0; i < 2; i++) {
            table.look(high, h, out);
            double rest = entropy - table.entropy(high, h);
            h += out[PropertyTable.TEMPERATURE] * rest * (1.0 + rest * perHeat);
        }
        return h;
    }

    private void discharge(double high, double given, double work, boolean compressed, double[] out) {
        double h = out[SUCTION_ENTHALPY] + work;
        out[DISCHARGE_ENTHALPY] = h;
        if (compressed) {
            table.look(high, h, out);
            out[DISCHARGE_TEMPERATURE] = out[PropertyTable.TEMPERATURE] + out[HIGH_SLOPE] * (given - high);
        } else {
            out[DISCHARGE_TEMPERATURE] = out[SUCTION_TEMPERATURE];
        }
    }

    /**
     * Condenser marched in closed form: hot vapour, two phases and liquid pass one share of the face after the other, all against air of one
     * inlet temperature. What is called heat here is exactly what the air gets. Takes the array {@link #compress} has filled.
     *
     * <p>With C = m c of a zone, k its conductance and x its share: vapour x1 = C1/k1 ln((T2 - Ta)/(Tc - Ta)); liquid Tc - T3 = (Tc - Ta)
     * (1 - exp(-x3 k3/C3)); two phases k2 (1 - x1 - x3)(Tc - Ta). Where air is not at least 1 K colder than saturation, the
     * difference inside the logarithm goes smoothly to 0.5 K; x1 leaves 2 % of the face to the two phases.
     *
     * @param kVapour conductance of the whole face between refrigerant of one temperature and air at its inlet temperature, W/K, above 0:
     *     sum over lanes of C_air (1 - exp(-UA/C_air))
     * @param kTwoPhase likewise
     * @param kLiquid likewise
     * @param airTemperature at the inlet, K
     * @param liquidShare of the face that is flooded, taken within 0..0.9
     */
    public void condense(
            double[] out, double kVapour, double kTwoPhase, double kLiquid, double airTemperature, double liquidShare) {
        double flow = out[MASS_FLOW];
        double flooded = Math.min(MOST_LIQUID, Math.max(0.0, liquidShare));
        double difference = out[HIGH_SATURATION] - airTemperature;
        double vapourHeat = cool(out, kVapour, difference, 1.0 - LEAST_TWO_PHASE - flooded);
        double twoPhaseHeat = (1.0 - out[VAPOUR_SHARE] - flooded) * kTwoPhase * difference;
        double rate = flow * out[HIGH_LIQUID_HEAT];
        double subcooling = difference * (flooded > 0.0 ? 1.0 - Math.exp(-flooded * kLiquid / rate) : 0.0);
        out[SUBCOOLING] = subcooling;
        out[LIQUID_ENTHALPY] = out[HIGH_LIQUID_ENTHALPY] - out[HIGH_LIQUID_HEAT] * subcooling;
        out[TWO_PHASE_HEAT] = twoPhaseHeat;
        out[CONDENSER_HEAT] = vapourHeat + twoPhaseHeat + rate * subcooling;
        out[CONDENSING_SURPLUS] = flow * (out[DISCHARGE_ENTHALPY] - out[LIQUID_ENTHALPY]) - out[CONDENSER_HEAT];
    }

    /** Heat of the hot vapour, W; fills its share. */
    private static double cool(double[] out, double k, double difference, double room) {
        double hotter = out[DISCHARGE_TEMPERATURE] - out[HIGH_SATURATION];
        double carried = out[MASS_FLOW] * (out[DISCHARGE_ENTHALPY] - out[HIGH_VAPOUR_ENTHALPY]);
        if (!(hotter > 0.0 && carried > 0.0)) {
            out[VAPOUR_SHARE] = 0.0;
            return 0.0;
        }
        double guarded = 0.5 + knee(difference - 0.5);
        double units = logarithm(hotter / guarded); // x k / C
        double share = carried * units / (k * hotter);
        double done = hotter / (hotter + guarded); // 1 - exp(-units)
        if (share > room) {
            done = 1.0 - Math.exp(-units * room / share);
            share = room;
        }
        out[VAPOUR_SHARE] = share;
        return carried / hotter * (hotter + difference) * done;
    }

    /** ln(1 + z), z above 0, to rounding for all practical ends. */
    private static double logarithm(double z) {
        return z < 1e-4 ? z * (1.0 - z * (0.5 - z / 3.0)) : Math.log(1.0 + z);
    }

    /** 0 below -0.5, z above 0.5, a parabola between. */
    private static double knee(double z) {
        double rise = Math.min(1.0, Math.max(0.0, z + 0.5));
        return Math.max(0.5 * rise * rise, z);
    }
}
