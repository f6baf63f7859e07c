package hotday.physics.refrigerant;

/** Viscosity and thermal conductivity of a point; sources stand with the coefficients of each refrigerant. */
final class Transport {
    private final Facts facts;
    private final Helmholtz equation;

    Transport(Facts facts, Helmholtz equation) {
        this.facts = facts;
        this.equation = equation;
    }

    /** Pa s. */
    double viscosity(Point point) {
        double residualEntropy = point.density * equation.gasConstant * (point.r00 - point.r10);
        return facts.viscosity().at(point.temperature, point.density / facts.molarMass(), residualEntropy);
    }

    /** W/(m K). */
    double conductivity(Point point, double viscosity) {
        Facts.Conductivity c = facts.conductivity();
        double sum = c.dilute().at(point.temperature / c.dilute().temperature());
        for (int i = 0; i < c.b().length; i++) {
            sum += c.b()[i]
                    * Math.pow(c.temperature() / point.temperature, c.t()[i])
                    * Math.pow(point.density / c.density(), c.d()[i]);
        }
        return sum + enhancement(point, viscosity);
    }

    private double enhancement(Point point, double viscosity) {
        Facts.Enhancement e = facts.conductivity().enhancement();
        Point reference = new Point();
        equation.evaluate(e.referenceTemperature(), point.density, reference);
        double excess =
                susceptibility(point) - susceptibility(reference) * e.referenceTemperature() / point.temperature;
        if (!(excess > 0.0)) {
            return 0.0;
        }
        double length = e.length() * Math.pow(excess / e.amplitude(), e.nu() / e.gamma());
        double y = e.cutOff() * length;
        double ratio = point.cv / point.cp();
        double delta = point.density / (facts.molarMass() * facts.equation().reducingMolarDensity());
        double full = (1.0 - ratio) * Math.atan(y) + ratio * y;
        double background = -Math.expm1(-1.0 / (1.0 / y + y * y / (3.0 * delta * delta)));
        double crossover = 2.0 / Math.PI * (full - background);
        return point.density
                * point.cp()
                * e.r0()
                * e.boltzmann()
                * point.temperature
                * crossover
                / (6.0 * Math.PI * viscosity * length);
    }

    /** Reduced: pc rho / (rhoc^2 dp/drho), molar. */
    private double susceptibility(Point point) {
        Facts.Enhancement e = facts.conductivity().enhancement();
        double m = facts.molarMass();
        double density = point.density / m;
        return e.criticalPressure()
                * density
                / (e.criticalMolarDensity() * e.criticalMolarDensity() * point.pressureByDensity * m);
    }
}
