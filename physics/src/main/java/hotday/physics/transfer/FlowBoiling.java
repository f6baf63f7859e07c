package hotday.physics.transfer;

/**
 * Heat transfer of a refrigerant boiling in small channels, from memory of Bertsch, Groll and Garimella 2009, A composite heat transfer correlation
 * for saturated flow boiling in small channels, Int. J. Heat Mass Transfer 52:2110-2118: h = (1 - x) h_nb + F h_conv. Data: 12 fluids, hydraulic
 * diameter 0.16..2.92 mm, 20..3000 kg/(m2 s), 4..1150 kW/m2, quality 0..1; mean deviation about 30 %. Beyond quality 0.8 the wall may dry
 * out, which is not in it.
 */
public final class FlowBoiling {
    private static final double GRAVITY = 9.80665;

    private FlowBoiling() {}

    /**
     * Pool boiling by Cooper 1984 (from memory), W/(m2 K): 55 pr^(0.12 - 0.2 log10 Rp) (-log10 pr)^-0.55 M^-0.5 q^0.67.
     *
     * @param reducedPressure pr, above 0, below 1
     * @param roughness Rp, micrometres, usually 1
     * @param molarMass M, g/mol
     * @param heatFlux q, W/m2
     */
    public static double pool(double reducedPressure, double roughness, double molarMass, double heatFlux) {
        return 55.0
                * Math.pow(reducedPressure, 0.12 - 0.2 * Math.log10(roughness))
                * Math.pow(-Math.log10(reducedPressure), -0.55)
                * Math.pow(molarMass, -0.5)
                * Math.pow(heatFlux, 0.67);
    }

    /**
     * Laminar flow of one phase that develops in a tube (Hausen 1943), Nusselt number: 3.66 + 0.0668 g / (1 + 0.04 g^(2/3)), g = D/L Re Pr.
     *
     * @param diameter hydraulic, m
     * @param length heated, m
     */
    public static double developing(double diameter, double length, double re, double pr) {
        double graetz = diameter / length * re * pr;
        return 3.66 + 0.0668 * graetz / (1.0 + 0.04 * Math.cbrt(graetz * graetz));
    }

    /** Confinement number, sqrt(sigma / (g (rho_l - rho_v) D^2)); N/m, kg/m3, m. */
    public static double confinement(
            double surfaceTension, double liquidDensity, double vapourDensity, double diameter) {
        return Math.sqrt(surfaceTension / (GRAVITY * (liquidDensity - vapourDensity))) / diameter;
    }

    /** F, what convection gains: 1 + 80 (x^2 - x^6) exp(-0.6 Co). */
    public static double gain(double quality, double confinement) {
        double square = quality * quality;
        return 1.0 + 80.0 * (square - square * square * square) * Math.exp(-0.6 * confinement);
    }

    /**
     * The whole, W/(m2 K): (1 - x) pool + F ((1 - x) liquid + x vapour).
     *
     * @param quality x, 0..1
     * @param pool coefficient of {@link #pool}
     * @param liquid coefficient if all flowed as liquid, by {@link #developing}
     * @param vapour coefficient if all flowed as vapour, by {@link #developing}
     * @param confinement of {@link #confinement}
     */
    public static double coefficient(double quality, double pool, double liquid, double vapour, double confinement) {
        double convection = (1.0 - quality) * liquid + quality * vapour;
        return (1.0 - quality) * pool + gain(quality, confinement) * convection;
    }
}
