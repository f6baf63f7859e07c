package hotday.physics.cycle;

/**
 * Efficiency of a compressor: eta = base - perRatio PR - clearance (PR^(1/exponent) - 1) - perSpeed omega, never below {@link
 * #LEAST}. PR is discharge over suction pressure (1 or more), omega the speed of the compressor.
 *
 * <p>Volumetric efficiency of piston machines falls from 0.90 to 0.55 by 0.04 to 0.05 per unit of pressure ratio; isentropic (shaft) efficiency
 * is 0.5 to 0.7 (from memory).
 *
 * @param base at pressure ratio 0 (without clearance) and speed 0, above 0 and up to 1.5
 * @param perRatio fall per unit of pressure ratio, 0 or more
 * @param clearance volume left at the dead centre over the swept volume, 0 to 0.3; piston machines 0.03 to 0.08
 * @param exponent of the re-expansion of that volume, 1 to 2; about 1.1 to 1.15
 * @param perSpeed fall per rad/s, s/rad, 0 or more
 */
public record EfficiencyLaw(double base, double perRatio, double clearance, double exponent, double perSpeed) {
    /** The floor. */
    public static final double LEAST = 0.05;

    public EfficiencyLaw {
        require("base", base, base > 0 && base <= 1.5, "above 0 and up to 1.5");
        require("fall per unit of pressure ratio", perRatio, perRatio >= 0 && perRatio <= 1, "0 to 1");
        require("clearance", clearance, clearance >= 0 && clearance <= 0.3, "0 to 0.3");
        require("exponent", exponent, exponent >= 1 && exponent <= 2, "1 to 2");
        require("fall per rad/s", perSpeed, perSpeed >= 0 && perSpeed <= 0.01, "0 to 0.01 s/rad");
    }

    private static void require(String name, double value, boolean good, String limit) {
        if (!good) {
            throw new IllegalArgumentException("compressor efficiency: " + name + " " + value + ", must be " + limit);
        }
    }

    /** eta = base - perRatio PR. */
    public static EfficiencyLaw falling(double base, double perRatio) {
        return new EfficiencyLaw(base, perRatio, 0.0, 1.0, 0.0);
    }

    /** Of a piston machine by its clearance: eta = 1 - clearance (PR^(1/exponent) - 1). */
    public static EfficiencyLaw clearance(double clearance, double exponent) {
        return new EfficiencyLaw(1.0, 0.0, clearance, exponent, 0.0);
    }

    public EfficiencyLaw withSpeed(double fallPerSpeed) {
        return new EfficiencyLaw(base, perRatio, clearance, exponent, fallPerSpeed);
    }

    /**
     * The efficiency.
     *
     * @param ratio discharge over suction pressure; 1 below 1
     * @param speed rad/s
     */
    public double at(double ratio, double speed) {
        double pr = Math.max(1.0, ratio);
        double lost = clearance > 0.0 ? clearance * (Math.pow(pr, 1.0 / exponent) - 1.0) : 0.0;
        return Math.max(LEAST, base - perRatio * pr - lost - perSpeed * speed);
    }
}
