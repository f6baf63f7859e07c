package hotday.physics.refrigerant;

/**
 * Residual-entropy scaling after Bell and Laesecke 2016; dilute gas by Chapman and Enskog with the collision integral of
 * Neufeld, Janzen and Aziz 1972, J. Chem. Phys. 57:1100-1102. A predictive model: a few percent.
 */
record EntropyViscosity(
        double sigma,
        double energy,
        double gramsPerMol,
        double scale,
        double[] liquid,
        double[] vapour,
        double criticalEntropy,
        double crossover,
        double steepness)
        implements Viscosity {

    @Override
    public double at(double t, double molarDensity, double residualEntropy) {
        double ts = t / energy;
        double collision = 1.16145 * Math.pow(ts, -0.14874)
                + 0.52487 * Math.exp(-0.77320 * ts)
                + 2.16178 * Math.exp(-2.43787 * ts);
        double gas = 26.692e-9 * Math.sqrt(gramsPerMol * t) / (sigma * sigma * collision);
        double x = residualEntropy / -criticalEntropy;
        double share = 1.0 / (1.0 + Math.exp(-steepness * (x - crossover)));
        double exponent = share * polynomial(liquid, x) + (1.0 - share) * polynomial(vapour, x);
        return gas * (1.0 + scale * Math.expm1(exponent));
    }

    /** c0 + c1 x + c2 x^2 + ... */
    private static double polynomial(double[] c, double x) {
        double sum = 0.0;
        for (int i = c.length - 1; i >= 0; i--) {
            sum = sum * x + c[i];
        }
        return sum;
    }
}
