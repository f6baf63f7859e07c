package hotday.physics.component;

import hotday.physics.fluid.ViscosityFactor;

/**
 * What an automatic gearbox turns into heat beside its converter: a share of the power through the gears, and the drag of pump, clutches and
 * gears, which is there without load. Drag = {@code spinLoss} (n / {@code spinSpeed})^1.25 (nu / nu at 80 degC)^0.3. The power of the
 * speed lies between a pump at constant pressure (1) and open clutches (2), that of the viscosity is usual for gears in warm oil; both from
 * memory.
 *
 * @param meshLoss share of the power through the gears, 0..0.2
 * @param spinLoss W at {@code spinSpeed} and 80 degC, 0 or more
 * @param spinSpeed of the input shaft, that is of the engine, rad/s, above 0
 * @param viscosity (nu / nu at 80 degC)^0.3
 */
public record GearboxLosses(double meshLoss, double spinLoss, double spinSpeed, ViscosityFactor viscosity) {
    /** K; where the drag is stated. */
    public static final double STATED_AT = 353.15;

    public static final double VISCOSITY_POWER = 0.3;

    public GearboxLosses {
        if (!(meshLoss >= 0.0 && meshLoss <= 0.2)) {
            throw new IllegalArgumentException("gearbox mesh loss " + meshLoss + " must lie within 0..0.2");
        }
        if (!(spinLoss >= 0.0 && spinLoss < Double.POSITIVE_INFINITY && spinSpeed > 0.0)) {
            throw new IllegalArgumentException("gearbox drag " + spinLoss + " W at " + spinSpeed
                    + " rad/s: drag must be 0 or more, speed above 0");
        }
    }

    /** Heat of the gears, W, from the power that goes through them in either direction, W. */
    public double mesh(double power) {
        return meshLoss * Math.abs(power);
    }

    /**
     * Drag, W.
     *
     * @param speed of the input shaft, rad/s; below 0 counts as 0
     * @param sump K
     */
    public double spin(double speed, double sump) {
        return warmSpin(speed) * viscosity.at(sump);
    }

    /** Drag with fluid at 80 degC, W. */
    public double warmSpin(double speed) {
        double x = Math.max(0.0, speed) / spinSpeed;
        return spinLoss * x * Math.sqrt(Math.sqrt(x));
    }
}
