package hotday.physics.component;

/**
 * Fuel power against brake power: (brake + friction + pumping) / e, with friction as a mean effective pressure that grows
 * with speed (Guzzella and Onder, Introduction to Modeling and Control of Internal Combustion Engine Systems; friction
 * polynomial: Heywood 1988 eq. 13.6). The pumping loss of a closed throttle fades as the engine is loaded.
 *
 * @param displacement m3
 * @param frictionConstant, frictionLinear, frictionSquare mean effective pressure f0 + f1 n + f2 n^2, Pa with n in 1000 rpm
 * @param pumping mean effective pressure of a closed throttle, Pa
 * @param efficiency slope of the line, above 0 to 1
 */
public record WillansLine(
        double displacement,
        double frictionConstant,
        double frictionLinear,
        double frictionSquare,
        double pumping,
        double efficiency) {
    private static final double PUMPING_GONE = 9.0e5; // Pa of brake mean effective pressure
    private static final double THOUSAND_RPM = 30.0 / Math.PI / 1000.0; // per rad/s

    public WillansLine {
        if (!(efficiency > 0.0 && efficiency <= 1.0)) {
            throw new IllegalArgumentException("indicated efficiency " + efficiency + " must lie above 0 and up to 1");
        }
        if (!(displacement > 0.0)) {
            throw new IllegalArgumentException("displacement " + displacement + " m3 must be above 0");
        }
    }

    /**
     * Fuel power, W; zero when the vehicle drives the engine hard enough for the fuel to be cut.
     *
     * @param brake W at the crank, accessories included
     * @param engineSpeed rad/s
     */
    public double fuelPower(double brake, double engineSpeed) {
        double swept = displacement * engineSpeed / (4.0 * Math.PI);
        if (!(swept > 0.0)) {
            return 0.0;
        }
        double friction = friction(engineSpeed);
        double throttled = Math.min(1.0, Math.max(0.0, 1.0 - brake / swept / PUMPING_GONE));
        return Math.max(0.0, (brake + (friction + pumping * throttled) * swept) / efficiency);
    }

    private double friction(double engineSpeed) {
        double n = engineSpeed * THOUSAND_RPM;
        return frictionConstant + frictionLinear * n + frictionSquare * n * n;
    }

    /**
     * Brake power that a fuel power stands for, W: the line read the other way. Without fuel the engine drags with friction and full
     * pumping, however hard it is pushed.
     *
     * @param fuelPower W, 0 or more
     * @param engineSpeed rad/s
     */
    public double brakePower(double fuelPower, double engineSpeed) {
        double swept = displacement * engineSpeed / (4.0 * Math.PI);
        if (!(swept > 0.0)) {
            return 0.0;
        }
        double free = efficiency * fuelPower - friction(engineSpeed) * swept;
        double closed = free - pumping * swept;
        if (closed <= 0.0) {
            return closed;
        }
        double open = PUMPING_GONE * swept;
        return free >= open ? free : closed / (1.0 - pumping / PUMPING_GONE);
    }
}
