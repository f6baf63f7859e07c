package hotday.physics.refrigerant;

import java.util.SplittableRandom;

/**
 * Error of a table against the equation of state, over seeded random states of the working range: 1 to 35 bar, -30 to 150
 * degC, every third state two-phase.
 *
 * @param states how many
 * @param temperature largest difference, K
 * @param density largest relative difference
 * @param enthalpy largest difference of h(p, T) of one phase, J/kg
 * @param entropy largest difference, J/(kg K)
 */
public record TableError(int states, double temperature, double density, double enthalpy, double entropy) {
    private static final double LOW = 1e5;
    private static final double HIGH = 35e5;
    private static final double COLD = 243.15;
    private static final double HOT = 423.15;

    /** Measures. */
    public static TableError of(PropertyTable table, int states, long seed) {
        Refrigerant r = table.refrigerant();
        SplittableRandom random = new SplittableRandom(seed);
        double[] worst = new double[4];
        double[] scratch = new double[6];
        for (int i = 0; i < states; i++) {
            double p = LOW + (HIGH - LOW) * random.nextDouble();
            FluidState s;
            if (i % 3 == 2) {
                s = r.atPressureQuality(Math.min(p, 0.9999 * r.criticalPressure()), random.nextDouble());
            } else {
                s = r.atPressureTemperature(p, COLD + (HOT - COLD) * random.nextDouble());
            }
            compare(table, s, scratch, worst);
        }
        return new TableError(states, worst[0], worst[1], worst[2], worst[3]);
    }

    private static void compare(PropertyTable table, FluidState s, double[] scratch, double[] worst) {
        table.look(s.pressure(), s.enthalpy(), scratch);
        worst[0] = Math.max(worst[0], Math.abs(scratch[PropertyTable.TEMPERATURE] - s.temperature()));
        worst[1] = Math.max(worst[1], Math.abs(scratch[PropertyTable.DENSITY] / s.density() - 1.0));
        worst[3] = Math.max(worst[3], Math.abs(table.entropy(s.pressure(), s.enthalpy()) - s.entropy()));
        if (!s.saturated()) {
            boolean vapour = s.region() == Region.SUPERHEATED || s.region() == Region.SUPERCRITICAL;
            double h = table.enthalpy(s.pressure(), s.temperature(), vapour, scratch);
            worst[2] = Math.max(worst[2], Math.abs(h - s.enthalpy()));
        }
    }
}
