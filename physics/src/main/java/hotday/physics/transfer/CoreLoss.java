package hotday.physics.transfer;

/** Pressure loss through a compact core with the air warming on the way (Kays and London, Compact Heat Exchangers, ch. 2). */
public final class CoreLoss {
    private CoreLoss() {}

    /**
     * Inlet to outlet, Pa: G^2 / (2 rho1) x [(1 - sigma^2 + Kc) + 2 (rho1/rho2 - 1) + f A/Ac rho1/rhom - (1 - sigma^2 - Ke)
     * rho1/rho2], 1/rhom the mean of 1/rho1 and 1/rho2.
     *
     * @param massFlux G in the free flow area, kg/(m2 s), 0 or more
     * @param inletDensity rho1, kg/m3
     * @param outletDensity rho2, kg/m3
     * @param sigma free flow area over face area, 0..1
     * @param contraction Kc
     * @param expansion Ke
     * @param friction Fanning factor f
     * @param areaRatio A/Ac, all surface over free flow area
     */
    public static double pressureDrop(
            double massFlux,
            double inletDensity,
            double outletDensity,
            double sigma,
            double contraction,
            double expansion,
            double friction,
            double areaRatio) {
        double expanding = inletDensity / outletDensity;
        double mean = 0.5 * (1.0 + expanding);
        double closed = 1.0 - sigma * sigma;
        return massFlux
                * massFlux
                / (2.0 * inletDensity)
                * (closed
                        + contraction
                        + 2.0 * (expanding - 1.0)
                        + friction * areaRatio * mean
                        - (closed - expansion) * expanding);
    }
}
