package hotday.physics.fluid;

/**
 * Ethylene glycol and water by volume share of glycol before mixing at 20 degC, 0..0.6. Polynomials in temperature for water
 * (fitted to IAPWS-95 values, 0..120 degC: density within 0.02 %, specific heat 0.11 %, conductivity 0.12 %, viscosity 0.08
 * %) and for half and half (fitted to values of Melinder 2010, Properties of Secondary Working Fluids, -30..100 degC: within
 * 0.02 %); in between and up to 0.6 linear in the share, viscosity in its logarithm. Against Melinder's mixtures of 28 to 57 %, 0..100
 * degC, that is within 0.2 % for density, 1.4 % for specific heat, 3.0 % for conductivity, 4.5 % for viscosity; inhibited
 * coolant (ASHRAE 2001) differs by up to 1.0, 2.1, 4.3 and 14 %.
 *
 * <p>Positive and smooth from -40 to 130 degC; extrapolated below -30 and above 100 degC with glycol, and for water below 0,
 * where it would freeze, and above 120 degC. Viscosity is weakest there: above 100 degC it goes on falling ever faster as
 * Melinder's polynomial does (28 % glycol: 12.5 % below that at 120, 15 % at 125 degC; half and half: 2 and 3 %), which is
 * low for a liquid by perhaps a fifth at 130 degC (from memory of tables).
 */
public final class Coolant {
    private static final double[] WATER_DENSITY = {983.4457, -30.98021, -11.67751, 2.571844};
    private static final double[] HALF_DENSITY = {1043.414, -41.2331, -4.757196, 1.616002};
    private static final double[] WATER_HEAT = {4181.812, 30.21445, 45.29521, -16.8354};
    private static final double[] HALF_HEAT = {3456.203, 265.9461, -59.99198, -9.362814};
    private static final double[] WATER_CONDUCTIVITY = {0.6515445, 0.0567441, -0.03188723, 0.006373377};
    private static final double[] HALF_CONDUCTIVITY = {0.4030641, 0.03411778, -0.001501049, -0.0009377622};
    private static final double[] WATER_VISCOSITY = {
        -7.670683, -0.9075073, 0.2674916, -0.08620821, 0.05625214, -0.02803064
    };
    private static final double[] HALF_VISCOSITY = {
        -6.520768, -1.140188, 0.3199035, -0.3098251, -5.772307e-05, -1.342583e-05
    };

    private Coolant() {}

    /** kg/m3. */
    public static double density(double temperature, double glycolShare) {
        return mixed(WATER_DENSITY, HALF_DENSITY, temperature, glycolShare);
    }

    /** J/(kg K). */
    public static double specificHeat(double temperature, double glycolShare) {
        return mixed(WATER_HEAT, HALF_HEAT, temperature, glycolShare);
    }

    /** W/(m K). */
    public static double conductivity(double temperature, double glycolShare) {
        return mixed(WATER_CONDUCTIVITY, HALF_CONDUCTIVITY, temperature, glycolShare);
    }

    /** Pa s. */
    public static double viscosity(double temperature, double glycolShare) {
        return Math.exp(mixed(WATER_VISCOSITY, HALF_VISCOSITY, temperature, glycolShare));
    }

    private static double mixed(double[] water, double[] half, double temperature, double share) {
        double x = (temperature - 273.15 - 60.0) / 60.0;
        double w = 2.0 * share;
        return (1.0 - w) * polynomial(water, x) + w * polynomial(half, x);
    }

    private static double polynomial(double[] c, double x) {
        double sum = 0.0;
        for (int i = c.length - 1; i >= 0; i--) {
            sum = sum * x + c[i];
        }
        return sum;
    }
}
