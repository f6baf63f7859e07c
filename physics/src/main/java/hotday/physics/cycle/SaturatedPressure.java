package hotday.physics.cycle;

import hotday.physics.refrigerant.PropertyTable;
import hotday.physics.refrigerant.Refrigerant;
import hotday.physics.refrigerant.SaturationTable;

/**
 * Saturation pressure against temperature for time loops: cubic pieces of ln p with the table's own slopes, every half
 * kelvin. Beyond the range of {@link CycleLoop} it goes on along the slope, as that does. Immutable.
 */
public final class SaturatedPressure {
    private static final double STEP = 0.5; // K
    private static final double CLOSE = 1e-12;

    private final double lowest;
    private final double[] logarithm;
    private final double[] slope; // of ln p, 1/K

    private SaturatedPressure(double lowest, double[] logarithm, double[] slope) {
        this.lowest = lowest;
        this.logarithm = logarithm;
        this.slope = slope;
    }

    /** Of a refrigerant, over the pressures of the loop. */
    public static SaturatedPressure of(CycleLoop loop) {
        Refrigerant refrigerant = loop.refrigerant();
        SaturationTable table = PropertyTable.of(refrigerant).saturation();
        double first = table.temperature(CycleLoop.LOWEST_PRESSURE);
        double last = table.temperature(loop.highestPressure());
        int n = (int) Math.floor((last - first) / STEP) + 1;
        double[] logarithm = new double[n];
        double[] slope = new double[n];
        double p = CycleLoop.LOWEST_PRESSURE;
        for (int i = 0; i < n; i++) {
            p = closed(table, first + i * STEP, p);
            logarithm[i] = Math.log(p);
            slope[i] = 1.0 / (p * table.temperatureSlope(p));
        }
        return new SaturatedPressure(first, logarithm, slope);
    }

    private static double closed(SaturationTable table, double temperature, double start) {
        double p = start;
        for (int i = 0; i < 50; i++) {
            double step = (temperature - table.temperature(p)) / table.temperatureSlope(p);
            p = Math.max(0.5 * p, p + step);
            if (Math.abs(step) < CLOSE * p) {
                break;
            }
        }
        return p;
    }

    /** Pa at K. */
    public double at(double temperature) {
        double place = (temperature - lowest) / STEP;
        int last = logarithm.length - 1;
        if (place <= 0.0) {
            double p = Math.exp(logarithm[0]);
            return p + p * slope[0] * (temperature - lowest);
        }
        if (place >= last) {
            double p = Math.exp(logarithm[last]);
            return p + p * slope[last] * (temperature - lowest - last * STEP);
        }
        int i = Math.min(last - 1, (int) place);
        double t = place - i;
        double rise = logarithm[i + 1] - logarithm[i];
        double a = STEP * slope[i];
        double b = STEP * slope[i + 1];
        return Math.exp(logarithm[i] + t * (a + t * (3.0 * rise - 2.0 * a - b + t * (a + b - 2.0 * rise))));
    }
}
