package hotday.physics.cycle;

/**
 * A displacement compressor, fixed or variable, on the crank or on its own motor.
 *
 * @param displacement swept per turn at full stroke, m3; vehicles 5e-6 to 220e-6
 * @param pulleyRatio turns of the compressor per turn of the crank; 1 for an electric one, whose own speed counts
 * @param volumetric efficiency: suction volume drawn over volume swept
 * @param isentropic efficiency up to the shaft: isentropic work over shaft work
 * @param leastShare smallest share of the stroke while engaged, 0 to 1; 1 for fixed displacement
 */
public record Compressor(
        double displacement,
        double pulleyRatio,
        EfficiencyLaw volumetric,
        EfficiencyLaw isentropic,
        double leastShare) {
    /** 0.93 - 0.045 PR: an assumption inside the usual range (from memory), no published table. */
    public static final EfficiencyLaw USUAL_VOLUMETRIC = EfficiencyLaw.falling(0.93, 0.045);

    /** 0.68 - 0.01 PR: likewise. */
    public static final EfficiencyLaw USUAL_ISENTROPIC = EfficiencyLaw.falling(0.68, 0.01);

    private static final double VARIABLE_LEAST = 0.05; // from memory

    public Compressor {
        if (!(displacement > 0 && displacement <= 2e-3)) {
            throw new IllegalArgumentException(
                    "compressor displacement " + displacement + " m3 per turn, must be above 0 and up to 0.002 m3");
        }
        if (!(pulleyRatio > 0 && pulleyRatio <= 10)) {
            throw new IllegalArgumentException(
                    "compressor pulley ratio " + pulleyRatio + ", must be above 0 and up to 10");
        }
        if (!(leastShare >= 0 && leastShare <= 1)) {
            throw new IllegalArgumentException(
                    "compressor least displacement share " + leastShare + ", must be 0 to 1");
        }
    }

    public static Compressor fixed(double displacement, double pulleyRatio) {
        return new Compressor(displacement, pulleyRatio, USUAL_VOLUMETRIC, USUAL_ISENTROPIC, 1.0);
    }

    public static Compressor variable(double displacement, double pulleyRatio) {
        return new Compressor(displacement, pulleyRatio, USUAL_VOLUMETRIC, USUAL_ISENTROPIC, VARIABLE_LEAST);
    }

    /** On its own motor; fixed displacement. */
    public static Compressor electric(double displacement) {
        return fixed(displacement, 1.0);
    }

    /** Speed of the compressor, rad/s, from that of the crank or its own motor, rad/s. */
    public double speed(double drive) {
        return pulleyRatio * drive;
    }

    /** The share of the stroke that can be had: as wanted, but within leastShare..1. */
    public double share(double wanted) {
        return Math.min(1.0, Math.max(leastShare, wanted));
    }

    /** Volume drawn from the suction side per radian at full stroke, m3/rad. */
    double drawn(double ratio, double speed) {
        return displacement / (2.0 * Math.PI) * volumetric.at(ratio, speed);
    }
}
