package hotday.physics.cycle;

import hotday.core.solve.Bracket;
import hotday.physics.refrigerant.Refrigerant;

/**
 * A system at rest long enough that one pressure stands everywhere. While liquid is left anywhere it has gathered in the coldest part, and the
 * pressure is that of saturation there; else p solves sum V_i rho(p, T_i) = charge. By the equation of state; allocates, not for time
 * loops. A pressure sensor that is 5 psi (34 kPa) off saturation at ambient after 4 h of rest is not plausible (common practice, no
 * source).
 *
 * @param pressure Pa absolute
 * @param vapourOnly mass that vapour alone would fill the volumes with at the saturation pressure of the coldest part, kg
 * @param liquid mass of liquid, kg; 0 when all is vapour
 */
public record StaticPressure(double pressure, double vapourOnly, double liquid) {
    private static final double ON_THE_LINE = 1e-9; // relative: vapour is meant there
    private static final double RELATIVE = 1e-11;
    private static final int EVALUATIONS = 100;

    public boolean liquidLeft() {
        return liquid > 0.0;
    }

    /**
     * Of parts with their own temperatures.
     *
     * @param volumes of the parts, m3, above 0
     * @param temperatures of the parts, K; the coldest below the critical temperature
     * @param charge kg, above 0
     */
    public static StaticPressure of(Refrigerant refrigerant, double[] volumes, double[] temperatures, double charge) {
        int coldest = coldest(volumes, temperatures, charge);
        double cold = temperatures[coldest];
        double saturation = refrigerant.saturationPressure(cold);
        double vapourOnly = mass(refrigerant, saturation, volumes, temperatures);
        if (charge > vapourOnly) {
            double vapour = refrigerant.atTemperatureQuality(cold, 1.0).density();
            double dense = refrigerant.atTemperatureQuality(cold, 0.0).density();
            return new StaticPressure(saturation, vapourOnly, (charge - vapourOnly) / (1.0 - vapour / dense));
        }
        double low = 0.5 * saturation * charge / vapourOnly; // vapour under less pressure is lighter than in proportion
        Bracket.Root root = Bracket.root(
                p -> mass(refrigerant, p, volumes, temperatures) - charge,
                low,
                saturation,
                RELATIVE * saturation,
                EVALUATIONS);
        return new StaticPressure(root.value(), vapourOnly, 0.0);
    }

    private static int coldest(double[] volumes, double[] temperatures, double charge) {
        if (volumes.length == 0 || volumes.length != temperatures.length) {
            throw new IllegalArgumentException(volumes.length + " volumes and " + temperatures.length
                    + " temperatures, must be as many, 1 or more");
        }
        if (!(charge > 0 && charge < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("charge " + charge + " kg, must be above 0");
        }
        int coldest = 0;
        for (int i = 0; i < volumes.length; i++) {
            if (!(volumes[i] > 0 && volumes[i] < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("volume " + volumes[i] + " m3, must be above 0");
            }
            coldest = temperatures[i] < temperatures[coldest] ? i : coldest;
        }
        return coldest;
    }

    private static double mass(Refrigerant refrigerant, double pressure, double[] volumes, double[] temperatures) {
        double sum = 0.0;
        for (int i = 0; i < volumes.length; i++) {
            sum += volumes[i] * density(refrigerant, pressure, temperatures[i]);
        }
        return sum;
    }

    /** Of vapour, kg/m3. */
    private static double density(Refrigerant refrigerant, double pressure, double temperature) {
        boolean saturated = temperature < refrigerant.criticalTemperature()
                && pressure >= refrigerant.saturationPressure(temperature) * (1.0 - ON_THE_LINE);
        return saturated
                ? refrigerant.atTemperatureQuality(temperature, 1.0).density()
                : refrigerant.atPressureTemperature(pressure, temperature).density();
    }
}
