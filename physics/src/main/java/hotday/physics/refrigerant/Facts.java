package hotday.physics.refrigerant;

/**
 * Published coefficients of one refrigerant. Amounts in mol where a name says so, mass-based otherwise; SI.
 *
 * @param molarMass kg/mol
 */
record Facts(
        String label,
        double molarMass,
        Limits limits,
        Equation equation,
        Starts saturation,
        Series surfaceTension,
        Conductivity conductivity,
        Viscosity viscosity) {

    /**
     * Range of the equation and its critical point, as published (K, Pa, mol/m3), and where dp/drho and d2p/drho2 vanish
     * for this equation (K, mol/m3).
     */
    record Limits(
            double lowestTemperature,
            double highestTemperature,
            double highestPressure,
            double criticalTemperature,
            double criticalPressure,
            double criticalMolarDensity,
            double vanishingTemperature,
            double vanishingMolarDensity) {}

    /** Reduced Helmholtz energy in tau = reducing temperature / T and delta = molar density / reducing density. */
    record Equation(
            double gasConstant,
            double reducingTemperature,
            double reducingMolarDensity,
            Ideal ideal,
            Powers powers,
            Bells bells) {}

    /** ln delta + a1 + a2 tau + logTau ln tau + sum n tau^t + sum m ln(1 - exp(-u tau)). */
    record Ideal(double a1, double a2, double logTau, double[] n, double[] t, double[] m, double[] u) {}

    /** Sum n delta^d tau^t exp(-delta^l), without the exponential where l = 0. */
    record Powers(double[] n, int[] d, double[] t, int[] l) {}

    /** Sum n delta^d tau^t exp(-eta (delta - epsilon)^2 - beta (tau - gamma)^2). */
    record Bells(double[] n, int[] d, double[] t, double[] eta, double[] epsilon, double[] beta, double[] gamma) {}

    /** Start values of saturation: pressure (Pa), liquid and vapour density (mol/m3). */
    record Starts(Start pressure, Start liquid, Start vapour) {}

    /** value (1 + S) or value exp(F S), S = sum n (1 - T/reducing)^t, F = reducing/T or 1. */
    record Start(boolean exponential, boolean tau, double reducing, double value, double[] n, double[] t) {
        double at(double temperature) {
            double theta = Math.max(0.0, 1.0 - temperature / reducing);
            double sum = 0.0;
            for (int i = 0; i < n.length; i++) {
                sum += n[i] * Math.pow(theta, t[i]);
            }
            return exponential ? value * Math.exp(tau ? sum * reducing / temperature : sum) : value * (1.0 + sum);
        }
    }

    /** Factors and exponents of a temperature ratio. */
    record Series(double temperature, double[] a, double[] n) {
        /** Sum a x^n. */
        double at(double x) {
            double sum = 0.0;
            for (int i = 0; i < n.length; i++) {
                sum += a[i] * Math.pow(x, n[i]);
            }
            return sum;
        }
    }

    /** Dilute gas in T/temperature, residual sum b (temperature/T)^t (rho/density)^d, and the critical enhancement; W/(m K). */
    record Conductivity(
            Series dilute,
            double temperature,
            double density,
            double[] b,
            int[] d,
            double[] t,
            Enhancement enhancement) {}

    /** Simplified Olchowy and Sengers: amplitudes, exponents, lengths (m, 1/m), reference and critical point. */
    record Enhancement(
            double r0,
            double amplitude,
            double gamma,
            double nu,
            double length,
            double cutOff,
            double boltzmann,
            double referenceTemperature,
            double criticalTemperature,
            double criticalPressure,
            double criticalMolarDensity) {}
}
