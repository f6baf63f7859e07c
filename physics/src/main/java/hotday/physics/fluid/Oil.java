package hotday.physics.fluid;

/**
 * Engine oil and gearbox fluid. Density and specific heat linear in temperature, conductivity constant; viscosity by ASTM
 * D341 through two points, log10 log10(nu + 0.7) = A - B log10 T. All thermal values are from memory of data sheets: density and
 * conductivity within 3 %, specific heat within 8 % of any common mineral or synthetic oil; kinematic viscosity is that of the two points given,
 * good to a few percent between and 20 K outside them.
 *
 * @param densityAt15 kg/m3 at 15 degC (the data-sheet temperature), 700..1000
 * @param specificHeatAt40 J/(kg K) at 40 degC, 1500..2500
 * @param specificHeatSlope J/(kg K2), 0..6
 * @param conductivity W/(m K), 0.10..0.16
 * @param viscosityAt40 kinematic, m2/s at 40 degC, above {@code viscosityAt100}
 * @param viscosityAt100 kinematic, m2/s at 100 degC, above 2e-6
 */
public record Oil(
        double densityAt15,
        double specificHeatAt40,
        double specificHeatSlope,
        double conductivity,
        double viscosityAt40,
        double viscosityAt100) {
    private static final double EXPANSION = 0.65; // kg/m3 per K
    private static final double DATA_SHEET = 288.15; // K
    private static final double FORTY = 313.15;
    private static final double HUNDRED = 373.15;
    /** Below it the two-point line means nothing; temperatures are cut here. */
    private static final double COLDEST = 223.15;

    private static final double SHIFT = 0.7; // mm2/s
    private static final double SQUARE_MILLIMETRES = 1e6;

    /** Low-viscosity gearbox fluid: 30 mm2/s at 40 degC, 6.0 at 100. */
    public static final Oil GEARBOX = new Oil(850.0, 1950.0, 3.5, 0.135, 30.0e-6, 6.0e-6);
    /** Older gearbox fluid: 35 mm2/s at 40 degC, 7.4 at 100 (conventional grade, SAE 2007-01-3974). */
    public static final Oil GEARBOX_CONVENTIONAL = new Oil(865.0, 1950.0, 3.5, 0.135, 35.0e-6, 7.4e-6);
    /** Multigrade engine oil 5W-30: about 61 mm2/s at 40 degC, 10.6 at 100. */
    public static final Oil ENGINE = new Oil(855.0, 1950.0, 3.5, 0.138, 61.0e-6, 10.6e-6);

    public Oil {
        positive("density", densityAt15);
        positive("specific heat", specificHeatAt40);
        positive("conductivity", conductivity);
        if (!(viscosityAt40 > viscosityAt100 && viscosityAt100 > 2e-6)) {
            throw new IllegalArgumentException("oil viscosity " + viscosityAt40 + " m2/s at 40 degC and "
                    + viscosityAt100 + " m2/s at 100 degC: the first must be the larger, the second above 2e-6");
        }
    }

    private static void positive(String name, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("oil " + name + " " + value + " must be above 0");
        }
    }

    /** kg/m3 at K. */
    public double density(double temperature) {
        return densityAt15 - EXPANSION * (temperature - DATA_SHEET);
    }

    /** J/(kg K) at K. */
    public double specificHeat(double temperature) {
        return specificHeatAt40 + specificHeatSlope * (temperature - FORTY);
    }

    /** Kinematic viscosity, m2/s, at K. */
    public double kinematicViscosity(double temperature) {
        double cold = doubleLog(viscosityAt40);
        double warm = doubleLog(viscosityAt100);
        double share = Math.log(Math.max(COLDEST, temperature) / FORTY) / Math.log(HUNDRED / FORTY);
        double line = cold + share * (warm - cold);
        return (Math.pow(10.0, Math.pow(10.0, line)) - SHIFT) / SQUARE_MILLIMETRES;
    }

    /** Dynamic viscosity, Pa s, at K. */
    public double viscosity(double temperature) {
        return kinematicViscosity(temperature) * density(temperature);
    }

    private static double doubleLog(double kinematic) {
        return Math.log10(Math.log10(kinematic * SQUARE_MILLIMETRES + SHIFT));
    }
}
