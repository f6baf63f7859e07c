package hotday.physics.component;

import hotday.physics.fluid.MoistAir;
import hotday.physics.fluid.WaterSaturation;

/**
 * Evaporator coil on the air side, dry or shedding water: one surface temperature between air and refrigerant.
 *
 * <pre>
 *   share past the coil untouched      b = exp(-UA / (m cp))
 *   air out                            T_s + b (T_in - T_s),   w_in - (1 - b) max(0, w_in - w_sat(T_s))
 *   surface                            m (h_in - h_out) - condensate h_water(T_s) = G (T_s - T_evap)
 * </pre>
 *
 * Enthalpy-potential method with bypass factor and apparatus dew point, ASHRAE Handbook - HVAC Systems and Equipment, chapter
 * Air-Cooling and Dehumidifying Coils (from memory); heat and mass pass alike (Lewis number 1). Dry while the surface is
 * above the dew point of the air; both laws meet there. A refrigerant warmer than the air gives heat. Below 0 degC water
 * leaves by the saturation over ice, without the heat of freezing and without blocking the fins. Source and limits:
 * docs/physics/cabin.md.
 *
 * @param airConductance UA between dry air and surface at the reference flow, W/K, above 0
 * @param referenceFlow kg/s of dry air, above 0
 * @param exponent of the flow, 0 to below 1
 * @param refrigerantConductance G between surface and refrigerant, W/K, above 0
 */
public record Evaporator(double airConductance, double referenceFlow, double exponent, double refrigerantConductance) {
    /** Taken from the air and given to the refrigerant, W; without what leaves with the condensate. */
    public static final int HEAT = 0;
    /** Part of {@link #HEAT} that cools the air, W. */
    public static final int SENSIBLE = 1;
    /** The rest: water turned from vapour to liquid at the surface's temperature, W. */
    public static final int LATENT = 2;
    /** Temperature of the air behind, K. */
    public static final int AIR_OUT = 3;
    /** Humidity ratio of the air behind, kg/kg. */
    public static final int HUMIDITY_OUT = 4;
    /** K. */
    public static final int SURFACE = 5;
    /** Water shed, kg/s. */
    public static final int CONDENSATE = 6;
    /** Length of the array for the results. */
    public static final int RESULTS = 7;

    private static final int STEPS = 30;
    private static final double CLOSE = 1e-5; // K, a last step; what is left is of the order of its square
    private static final double SPAN = 0.1; // K, least distance of the approximate dew point
    private static final double MAGNUS_PRESSURE = 611.2; // Pa, of a dew point good to 1 K, for the start only
    private static final double MAGNUS_SLOPE = 17.62;
    private static final double MAGNUS_SHIFT = 243.12;

    public Evaporator {
        positive("air-side conductance", airConductance, "W/K");
        positive("reference flow", referenceFlow, "kg/s");
        positive("refrigerant-side conductance", refrigerantConductance, "W/K");
        if (!(exponent >= 0 && exponent < 1)) {
            throw new IllegalArgumentException("evaporator flow exponent " + exponent + " must be 0 to below 1");
        }
    }

    /** Coil of a mid-size estate or pick-up, from memory: 6.9 kW at 38 degC, 40 % humidity, 0.13 kg/s and 2 degC evaporating. */
    public static Evaporator midSize() {
        return new Evaporator(330.0, 0.13, 0.6, 1300.0);
    }

    /**
     * Heat and water taken from an air flow.
     *
     * @param airFlow kg/s of dry air; 0 or below passes nothing
     * @param airIn K
     * @param humidityIn kg/kg, 0 or more; more than saturated air holds is allowed
     * @param pressure Pa absolute
     * @param evaporating temperature of the refrigerant, K
     * @param out {@link #RESULTS} values, written
     */
    public void exchange(
            double airFlow, double airIn, double humidityIn, double pressure, double evaporating, double[] out) {
        double flow = Math.max(0.0, airFlow);
        double heatCapacity = MoistAir.specificHeat(humidityIn);
        double touched = 1.0 - bypass(flow, heatCapacity);
        double effective = flow * touched;
        double dry = effective * heatCapacity;
        double surface = (dry * airIn + refrigerantConductance * evaporating) / (dry + refrigerantConductance);
        double vapour = MoistAir.vapourPressure(humidityIn, pressure);
        double excess = 0.0;
        if (effective > 0 && WaterSaturation.pressure(surface) < vapour) {
            surface = wetSurface(surface, effective, touched, airIn, humidityIn, pressure);
            double saturated = WaterSaturation.pressure(surface);
            excess = Math.max(0.0, humidityIn - MoistAir.ratio(Math.min(saturated, vapour), pressure));
        }
        double airOut = airIn - touched * (airIn - surface);
        double condensate = effective * excess;
        double sensible = dry * (airIn - surface);
        double latent = condensate * (MoistAir.vapourEnthalpy(airOut) - MoistAir.waterEnthalpy(surface));
        out[HEAT] = sensible + latent;
        out[SENSIBLE] = sensible;
        out[LATENT] = latent;
        out[AIR_OUT] = airOut;
        out[HUMIDITY_OUT] = humidityIn - touched * excess;
        out[SURFACE] = surface;
        out[CONDENSATE] = condensate;
    }

    /** Share of the air that leaves as it came, 0..1; 0 for no flow. */
    private double bypass(double flow, double heatCapacity) {
        double units = airConductance / (heatCapacity * referenceFlow) * Math.pow(flow / referenceFlow, exponent - 1.0);
        return Math.exp(-units);
    }

    /**
     * Where the wet balance closes. Its gap falls with the surface temperature and bends downwards: the chord from the dry answer to the dew
     * point meets zero below the root, Newton's first step from there lands above it, and the others come down on it.
     */
    private double wetSurface(
            double dry, double effective, double touched, double airIn, double humidityIn, double pressure) {
        double sensible = effective * MoistAir.specificHeat(humidityIn) + refrigerantConductance;
        double vapour = MoistAir.vapourPressure(humidityIn, pressure);
        double untouched = (1.0 - touched) * airIn;
        double t = dry;
        double step = 0.0;
        for (int i = 0; i < STEPS; i++) {
            double saturated = WaterSaturation.pressure(t);
            double excess = humidityIn - MoistAir.ratio(saturated, pressure);
            double change = MoistAir.vapourEnthalpy(untouched + touched * t) - MoistAir.waterEnthalpy(t);
            double gap = effective * excess * change - sensible * (t - dry);
            if (i == 0) {
                step = gap / (gap / Math.max(SPAN, dewPoint(vapour) - dry) + sensible);
            } else {
                double slope = MoistAir.ratioSlope(saturated, pressure) * WaterSaturation.slope(t);
                double fading = MoistAir.WATER_HEAT - touched * MoistAir.VAPOUR_HEAT;
                step = gap / (effective * (slope * change + excess * fading) + sensible);
            }
            t += step;
            if (i > 0 && Math.abs(step) < CLOSE) {
                break;
            }
        }
        return t;
    }

    private static double dewPoint(double vapourPressure) {
        double x = Math.log(vapourPressure / MAGNUS_PRESSURE);
        return 273.15 + MAGNUS_SHIFT * x / (MAGNUS_SLOPE - x);
    }

    private static void positive(String what, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("evaporator " + what + " " + value + " " + unit + " must be above 0");
        }
    }
}
