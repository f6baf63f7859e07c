package hotday.physics.fluid;

/**
 * Life of gearbox fluid against its temperature: 100 000 miles at 175 degF, half as much for every 20 degF more. The rule is repeated
 * alike on many trade pages, its origin is undocumented, and synthetic fluids last longer: a relative index to compare
 * two builds, not a forecast. Usable from 175 to 315 degF (353 to 430 K); goes on with the same law outside.
 */
public final class FluidLife {
    private static final double MILES = 100_000.0;
    private static final double BASE = 175.0; // degF
    private static final double HALVING = 20.0; // degF

    private FluidLife() {}

    /** Miles a fluid held at a temperature lasts; temperature in K. */
    public static double miles(double temperature) {
        double fahrenheit = 1.8 * temperature - 459.67;
        return MILES * Math.pow(2.0, (BASE - fahrenheit) / HALVING);
    }
}
