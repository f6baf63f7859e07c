package hotday.physics.refrigerant;

/**
 * Dilute gas, first density term after Rainwater and Friend, and a residual part in density: the form of Huber, Laesecke
 * and Perkins 2003, Ind. Eng. Chem. Res. 42:3163-3178.
 */
record DensityViscosity(
        double sigma,
        double energy,
        double dilute,
        double gramsPerMol,
        double[] a,
        double avogadro,
        double[] b,
        double[] bt,
        double temperature,
        double molarDensity,
        double[] r,
        int[] rd,
        double[] rt,
        double f,
        double g,
        double[] p,
        double[] q)
        implements Viscosity {
    private static final double NANOMETRE = 1e-9;

    @Override
    public double at(double t, double c, double residualEntropy) {
        double ts = t / energy;
        double log = Math.log(ts);
        double collision = 0.0;
        for (int i = a.length - 1; i >= 0; i--) {
            collision = collision * log + a[i];
        }
        double gas = dilute * Math.sqrt(gramsPerMol * t) / (sigma * sigma * Math.exp(collision));
        double first = 0.0;
        for (int i = 0; i < b.length; i++) {
            first += b[i] * Math.pow(ts, bt[i]);
        }
        double size = sigma * NANOMETRE;
        return gas * (1.0 + avogadro * size * size * size * first * c) + residual(temperature / t, c / molarDensity);
    }

    private double residual(double u, double d) {
        double packing = 0.0;
        for (int i = 0; i < p.length; i++) {
            packing += p[i] * Math.pow(u, q[i]);
        }
        double close = g / packing;
        double sum = f * (1.0 / (close - d) - 1.0 / close);
        for (int i = 0; i < r.length; i++) {
            sum += r[i] * Math.pow(d, rd[i]) * Math.pow(u, rt[i]);
        }
        return sum;
    }
}
