package hotday.physics.refrigerant;

/**
 * The Helmholtz equation of one refrigerant, mass-based. Fills {@link Point}s; immutable, shared by all threads,
 * allocates nothing. Relations: Span 2000, Multiparameter Equations of State (from memory), as in the papers named in the facts.
 */
final class Helmholtz {
    /** J/(kg K). */
    final double gasConstant;

    private final double reducingTemperature;
    private final double reducingDensity;
    private final Facts.Ideal ideal;
    private final int powers;
    private final int terms;
    private final double[] n;
    private final int[] d;
    private final double[] t;
    private final int[] l;
    private final double[] eta;
    private final double[] epsilon;
    private final double[] beta;
    private final double[] gamma;

    Helmholtz(Facts facts) {
        Facts.Equation e = facts.equation();
        gasConstant = e.gasConstant() / facts.molarMass();
        reducingTemperature = e.reducingTemperature();
        reducingDensity = e.reducingMolarDensity() * facts.molarMass();
        ideal = e.ideal();
        Facts.Powers p = e.powers();
        Facts.Bells b = e.bells();
        powers = p.n().length;
        terms = powers + b.n().length;
        n = joined(p.n(), b.n());
        t = joined(p.t(), b.t());
        d = new int[terms];
        System.arraycopy(p.d(), 0, d, 0, powers);
        System.arraycopy(b.d(), 0, d, powers, terms - powers);
        l = p.l();
        eta = b.eta();
        epsilon = b.epsilon();
        beta = b.beta();
        gamma = b.gamma();
    }

    private static double[] joined(double[] first, double[] second) {
        double[] all = new double[first.length + second.length];
        System.arraycopy(first, 0, all, 0, first.length);
        System.arraycopy(second, 0, all, first.length, second.length);
        return all;
    }

    /** Everything of a point at K and kg/m3 (above 0). */
    void evaluate(double temperature, double density, Point out) {
        double tau = reducingTemperature / temperature;
        double delta = density / reducingDensity;
        double logTau = Math.log(tau);
        double logDelta = Math.log(delta);
        residual(tau, delta, logTau, logDelta, out);
        ideal(tau, logTau, logDelta, out);
        out.temperature = temperature;
        out.density = density;
        out.complete(gasConstant);
    }

    /** Every term is one exponential: n exp(d ln delta + t ln tau - ...). */
    private void residual(double tau, double delta, double logTau, double logDelta, Point out) {
        double r00 = 0.0;
        double r01 = 0.0;
        double r02 = 0.0;
        double r10 = 0.0;
        double r11 = 0.0;
        double r20 = 0.0;
        double delta2 = delta * delta;
        for (int i = 0; i < terms; i++) {
            double exponent = d[i] * logDelta + t[i] * logTau;
            double byDelta = d[i];
            double byTau = t[i];
            double bendDelta = 0.0;
            double bendTau = 0.0;
            if (i >= powers) {
                int k = i - powers;
                double gapDelta = delta - epsilon[k];
                double gapTau = tau - gamma[k];
                exponent -= eta[k] * gapDelta * gapDelta + beta[k] * gapTau * gapTau;
                byDelta -= 2.0 * eta[k] * delta * gapDelta;
                byTau -= 2.0 * beta[k] * tau * gapTau;
                bendDelta = -2.0 * eta[k] * delta * (delta + gapDelta);
                bendTau = -2.0 * beta[k] * tau * (tau + gapTau);
            } else if (l[i] > 0) {
                double power = power(delta, delta2, l[i]);
                exponent -= power;
                byDelta -= l[i] * power;
                bendDelta = -l[i] * l[i] * power;
            }
            double term = n[i] * Math.exp(exponent);
            r00 += term;
            r01 += term * byDelta;
            r02 += term * (byDelta * (byDelta - 1.0) + bendDelta);
            r10 += term * byTau;
            r11 += term * byTau * byDelta;
            r20 += term * (byTau * (byTau - 1.0) + bendTau);
        }
        out.r00 = r00;
        out.r01 = r01;
        out.r02 = r02;
        out.r10 = r10;
        out.r11 = r11;
        out.r20 = r20;
    }

    /** delta^l for l = 1..4. */
    private static double power(double delta, double delta2, int l) {
        return switch (l) {
            case 1 -> delta;
            case 2 -> delta2;
            case 3 -> delta2 * delta;
            default -> delta2 * delta2;
        };
    }

    private void ideal(double tau, double logTau, double logDelta, Point out) {
        double a0 = logDelta + ideal.a1() + ideal.a2() * tau + ideal.logTau() * logTau;
        double a1 = ideal.a2() * tau + ideal.logTau();
        double a2 = -ideal.logTau();
        double[] pn = ideal.n();
        double[] pt = ideal.t();
        for (int i = 0; i < pn.length; i++) {
            double term = pn[i] * Math.exp(pt[i] * logTau);
            a0 += term;
            a1 += pt[i] * term;
            a2 += pt[i] * (pt[i] - 1.0) * term;
        }
        double[] m = ideal.m();
        double[] u = ideal.u();
        for (int i = 0; i < m.length; i++) {
            double x = u[i] * tau;
            double e = Math.exp(-x);
            double rest = 1.0 - e;
            a0 += m[i] * Math.log(rest);
            a1 += m[i] * x * e / rest;
            a2 -= m[i] * x * x * e / (rest * rest);
        }
        out.i00 = a0;
        out.i10 = a1;
        out.i20 = a2;
    }
}
