package hotday.physics.refrigerant;

/**
 * One point of the equation of state in temperature and density, with the derivatives the solvers need. Mutable, of one
 * thread. Also inside the two-phase region (metastable), where pressure need not rise with density.
 */
final class Point {
    /** K. */
    double temperature;
    /** kg/m3. */
    double density;
    /** Pa. */
    double pressure;
    /** J/kg. */
    double enthalpy;
    /** J/(kg K). */
    double entropy;
    /** J/kg. */
    double gibbs;
    /** dp/drho at constant T, Pa m3/kg. */
    double pressureByDensity;
    /** dp/dT at constant density, Pa/K. */
    double pressureByTemperature;
    /** Specific heat at constant volume, J/(kg K). */
    double cv;

    // reduced Helmholtz energy, residual r and ideal i: tau^a delta^b times the derivative, named by a and b
    double r00;
    double r01;
    double r02;
    double r10;
    double r11;
    double r20;
    double i00;
    double i10;
    double i20;

    /** From the reduced energies, temperature and density, everything else. */
    void complete(double gasConstant) {
        double rt = gasConstant * temperature;
        double z = 1.0 + r01;
        pressure = density * rt * z;
        enthalpy = rt * (i10 + r10 + z);
        entropy = gasConstant * (i10 + r10 - i00 - r00);
        gibbs = rt * (i00 + r00 + z);
        pressureByDensity = rt * (1.0 + 2.0 * r01 + r02);
        pressureByTemperature = density * gasConstant * (1.0 + r01 - r11);
        cv = -gasConstant * (i20 + r20);
    }

    /** dh/dT at constant density, J/(kg K). */
    double enthalpyByTemperature() {
        return cv + pressureByTemperature / density;
    }

    /** dh/drho at constant T, J m3/kg2. */
    double enthalpyByDensity() {
        return (pressureByDensity - temperature / density * pressureByTemperature) / density;
    }

    /** ds/dT at constant density, J/(kg K2). */
    double entropyByTemperature() {
        return cv / temperature;
    }

    /** ds/drho at constant T, J m3/(kg2 K). */
    double entropyByDensity() {
        return -pressureByTemperature / (density * density);
    }

    /** Specific heat at constant pressure, J/(kg K). */
    double cp() {
        double slope = pressureByTemperature / density;
        return cv + temperature * slope * slope / pressureByDensity;
    }

    /** m/s. */
    double speedOfSound() {
        double slope = pressureByTemperature / density;
        return Math.sqrt(pressureByDensity + temperature * slope * slope / cv);
    }

    /** Moves along the tangent: pressure, enthalpy and entropy to first order, temperature and density exactly. */
    void shift(double temperatureStep, double densityStep) {
        pressure += pressureByTemperature * temperatureStep + pressureByDensity * densityStep;
        enthalpy += enthalpyByTemperature() * temperatureStep + enthalpyByDensity() * densityStep;
        entropy += entropyByTemperature() * temperatureStep + entropyByDensity() * densityStep;
        temperature += temperatureStep;
        density += densityStep;
    }
}
