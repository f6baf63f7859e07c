package hotday.physics.component;

import hotday.core.table.Curve;

/**
 * Alternator by its cold output curve: capacity = I25(rotor speed) (1 - c (T - 25 degC)). The rotor turns {@code ratio} times as fast as the
 * engine. Above the last point of the curve its current holds. Below the first point the machine gives nothing; the current falls to zero
 * over the last {@value #CUT_IN} of that speed, so that it never jumps.
 */
public final class Alternator {
    /** Share of the first speed over which the current appears. */
    private static final double CUT_IN = 0.05;

    private static final double COLD = 298.15; // K

    private final Curve cold; // A against rad/s of the engine
    private final double temperatureCoefficient;
    private final double efficiency;

    /**
     * @param rotorSpeed points, rad/s of the rotor, above 0, rising
     * @param coldCurrent at 25 degC, A, 0 or more, one a point
     * @param temperatureCoefficient share of output lost per kelvin, 0..0.01 1/K
     * @param ratio rotor speed / engine speed, above 0
     * @param efficiency electrical / shaft power, above 0 to 1
     */
    public Alternator(
            double[] rotorSpeed, double[] coldCurrent, double temperatureCoefficient, double ratio, double efficiency) {
        check("temperature coefficient", temperatureCoefficient, "1/K", 0.0, 0.01);
        check("pulley ratio", ratio, "-", Double.MIN_NORMAL, 20.0);
        check("efficiency", efficiency, "-", Double.MIN_NORMAL, 1.0);
        this.temperatureCoefficient = temperatureCoefficient;
        this.efficiency = efficiency;
        this.cold = withCutIn(rotorSpeed, coldCurrent, ratio);
    }

    private static Curve withCutIn(double[] rotorSpeed, double[] current, double ratio) {
        Curve points = Curve.of(rotorSpeed, current);
        check("first rotor speed", points.x(0), "rad/s", Double.MIN_NORMAL, Double.MAX_VALUE);
        int count = points.size();
        double[] x = new double[count + 1];
        double[] y = new double[count + 1];
        x[0] = (1.0 - CUT_IN) * points.x(0) / ratio;
        for (int i = 0; i < count; i++) {
            check("current of point " + (i + 1), points.y(i), "A", 0.0, Double.MAX_VALUE);
            x[i + 1] = points.x(i) / ratio;
            y[i + 1] = points.y(i);
        }
        return Curve.of(x, y);
    }

    private static void check(String what, double value, String unit, double low, double high) {
        if (!(value >= low && value <= high)) {
            String limit = low == Double.MIN_NORMAL ? "above 0" : "from " + low;
            throw new IllegalArgumentException("alternator " + what + " " + value + " " + unit + " must be " + limit
                    + (high == Double.MAX_VALUE ? "" : " to " + high));
        }
    }

    /**
     * Highest current, A, 0 or more.
     *
     * @param engineSpeed rad/s
     * @param temperature of the air it draws, K
     */
    public double capacity(double engineSpeed, double temperature) {
        return cold.value(engineSpeed) * Math.max(0.0, 1.0 - temperatureCoefficient * (temperature - COLD));
    }

    /** Power taken from the belt, W, for a current, A, at the voltage of the bus, V. */
    public double shaftPower(double busVoltage, double current) {
        return busVoltage * current / efficiency;
    }

    /** Torque on the crankshaft, N m; below the speed at which the machine starts to give, as at that speed. */
    public double crankTorque(double busVoltage, double current, double engineSpeed) {
        return shaftPower(busVoltage, current) / Math.max(engineSpeed, cold.x(0));
    }
}
