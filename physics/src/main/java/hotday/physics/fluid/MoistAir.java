package hotday.physics.fluid;

/**
 * Air and water vapour as ideal gases, per kg of dry air where not said otherwise. Relations of the ASHRAE Handbook -
 * Fundamentals, chapter Psychrometrics (2009 and later, from memory); saturation pressure by Hyland and Wexler 1983, over
 * ice up to the triple point and over water above it, -100..200 degC. Against real-gas moist air (ASHRAE RP-1485), 0..50
 * degC and 70..101 kPa, humidity ratio is up to 0.62 % low, enthalpy 1.6 kJ/kg, density within 0.06 %, dew point 0.02 K,
 * wet bulb 0.03 K. The vapour pressure must stay below the total pressure.
 */
public final class MoistAir {
    /** Specific heat of water vapour, J/(kg K). */
    public static final double VAPOUR_HEAT = 1860.0;
    /** Specific heat of liquid water, J/(kg K). */
    public static final double WATER_HEAT = 4186.0;

    private static final double GAS_CONSTANT = 287.042; // J/(kg K), as in the Handbook
    private static final double MASS_RATIO = 0.621945; // molar mass of water over that of dry air
    private static final double ZERO = 273.15;
    private static final double TRIPLE_POINT = 273.16;
    private static final double COLDEST = 173.15;
    private static final double HOTTEST = 473.15;
    private static final double AIR_HEAT = 1006.0; // J/(kg K)
    private static final double EVAPORATION = 2.501e6; // J/kg at 0 degC
    private static final double TEMPERATURE_STEP = 1e-9; // K
    private static final int STEPS = 100;

    private static final double[] ICE = {
        -5.6745359e3, 6.3925247, -9.677843e-3, 6.2215701e-7, 2.0747825e-9, -9.484024e-13, 4.1635019
    };
    private static final double[] WATER = {
        -5.8002206e3, 1.3914993, -4.8640239e-2, 4.1764768e-5, -1.4452093e-8, 0.0, 6.5459673
    };

    private MoistAir() {}

    /** Saturation pressure of water, Pa, at K: over ice up to the triple point. */
    public static double saturationPressure(double temperature) {
        double[] c = temperature <= TRIPLE_POINT ? ICE : WATER;
        double t = temperature;
        double powers = c[1] + t * (c[2] + t * (c[3] + t * (c[4] + t * c[5])));
        return Math.exp(c[0] / t + powers + c[6] * Math.log(t));
    }

    /** d ln(saturation pressure) / dT, 1/K. */
    private static double saturationSlope(double temperature) {
        double[] c = temperature <= TRIPLE_POINT ? ICE : WATER;
        double t = temperature;
        double powers = c[2] + t * (2 * c[3] + t * (3 * c[4] + t * 4 * c[5]));
        return -c[0] / (t * t) + powers + c[6] / t;
    }

    /**
     * Humidity ratio, kg of water per kg of dry air.
     *
     * @param relativeHumidity 0..1, vapour pressure over saturation pressure
     * @param pressure of air and vapour together, Pa
     */
    public static double humidityRatio(double temperature, double relativeHumidity, double pressure) {
        return ratio(relativeHumidity * saturationPressure(temperature), pressure);
    }

    /** Humidity ratio, kg of water per kg of dry air, at a vapour pressure below the total pressure, both Pa. */
    public static double ratio(double vapourPressure, double pressure) {
        return MASS_RATIO * vapourPressure / (pressure - vapourPressure);
    }

    /** Change of {@link #ratio} with the vapour pressure, 1/Pa. */
    public static double ratioSlope(double vapourPressure, double pressure) {
        double air = pressure - vapourPressure;
        return MASS_RATIO * pressure / (air * air);
    }

    /** Partial pressure of the vapour, Pa. */
    public static double vapourPressure(double humidityRatio, double pressure) {
        return pressure * humidityRatio / (MASS_RATIO + humidityRatio);
    }

    /** Relative humidity, 0..1; above 1 the air holds fog. */
    public static double relativeHumidity(double temperature, double humidityRatio, double pressure) {
        return vapourPressure(humidityRatio, pressure) / saturationPressure(temperature);
    }

    /** Enthalpy, J per kg of dry air; zero for dry air and liquid water at 0 degC. */
    public static double enthalpy(double temperature, double humidityRatio) {
        double t = temperature - ZERO;
        return AIR_HEAT * t + humidityRatio * (EVAPORATION + VAPOUR_HEAT * t);
    }

    /** Enthalpy of the vapour in the air, J per kg of water; zero for liquid water at 0 degC. */
    public static double vapourEnthalpy(double temperature) {
        return EVAPORATION + VAPOUR_HEAT * (temperature - ZERO);
    }

    /** Enthalpy of liquid water, J/kg; below 0 degC still that of the liquid. */
    public static double waterEnthalpy(double temperature) {
        return WATER_HEAT * (temperature - ZERO);
    }

    /** Specific heat at constant pressure and humidity ratio, J/K per kg of dry air. */
    public static double specificHeat(double humidityRatio) {
        return AIR_HEAT + VAPOUR_HEAT * humidityRatio;
    }

    /** Specific volume, m3 per kg of dry air. */
    public static double specificVolume(double temperature, double humidityRatio, double pressure) {
        return GAS_CONSTANT * temperature * (1.0 + humidityRatio / MASS_RATIO) / pressure;
    }

    /** Density of air and vapour together, kg/m3. */
    public static double density(double temperature, double humidityRatio, double pressure) {
        return (1.0 + humidityRatio) / specificVolume(temperature, humidityRatio, pressure);
    }

    /**
     * Temperature, K, at which cooled air begins to shed water: dew point, below the triple point the frost point. Cut to
     * -100..200 degC; bone-dry air, which has none, gives -100 degC.
     */
    public static double dewPoint(double humidityRatio, double pressure) {
        double target = Math.log(vapourPressure(humidityRatio, pressure));
        double low = COLDEST;
        double high = HOTTEST;
        double t = TRIPLE_POINT;
        for (int i = 0; i < STEPS && high - low > TEMPERATURE_STEP; i++) {
            double gap = Math.log(saturationPressure(t)) - target;
            if (gap > 0) {
                high = t;
            } else {
                low = t;
            }
            double next = t - gap / saturationSlope(t);
            if (Math.abs(next - t) < TEMPERATURE_STEP) {
                return Math.min(HOTTEST, Math.max(COLDEST, next));
            }
            t = next > low && next < high ? next : 0.5 * (low + high);
        }
        return t;
    }

    /**
     * Thermodynamic wet bulb, K, from the energy balance of adiabatic saturation with water, below 0 degC with ice.
     * Where a wet and an icy bulb both have a solution (within about 0.4 K of 0 degC) it is the wet one.
     */
    public static double wetBulb(double temperature, double humidityRatio, double pressure) {
        boolean wet = temperature >= ZERO && overWater(temperature, ZERO, pressure) <= humidityRatio;
        double low = wet ? ZERO : COLDEST;
        double high = wet ? temperature : Math.min(ZERO, temperature);
        while (high - low > TEMPERATURE_STEP) {
            double t = 0.5 * (low + high);
            double held = wet ? overWater(temperature, t, pressure) : overIce(temperature, t, pressure);
            if (held > humidityRatio) {
                high = t;
            } else {
                low = t;
            }
        }
        return 0.5 * (low + high);
    }

    private static double overWater(double temperature, double bulb, double pressure) {
        double t = temperature - ZERO;
        double b = bulb - ZERO;
        double saturated = ratio(saturationPressure(bulb), pressure);
        return ((2501.0 - 2.326 * b) * saturated - 1.006 * (t - b)) / (2501.0 + 1.86 * t - 4.186 * b);
    }

    private static double overIce(double temperature, double bulb, double pressure) {
        double t = temperature - ZERO;
        double b = bulb - ZERO;
        double saturated = ratio(saturationPressure(bulb), pressure);
        return ((2830.0 - 0.24 * b) * saturated - 1.006 * (t - b)) / (2830.0 + 1.86 * t - 2.1 * b);
    }
}
