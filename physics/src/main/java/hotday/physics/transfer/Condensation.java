package hotday.physics.transfer;

/**
 * Heat transfer of a refrigerant condensing inside plain tubes, from memory of Shah 1979, Int. J. Heat Mass Transfer 22:547-556, and Shah
 * 2009, An improved and extended general correlation for heat transfer during condensation in plain tubes, HVAC&amp;R Research 15(5):889-913.
 * Data of 2009: 22 fluids, diameter 2..49 mm, reduced pressure 0.0008..0.905, 4..820 kg/(m2 s), Re of all flow as liquid 68..85,000, Pr 1..18;
 * mean deviation about 14 %. Channels of multi-port tubes are often below 2 mm: there it is an extrapolation, test points are better.
 */
public final class Condensation {
    private static final double GRAVITY = 9.80665;

    private Condensation() {}

    /**
     * A saturated refrigerant.
     *
     * @param reducedPressure pressure over critical pressure, 0..1
     * @param liquidDensity kg/m3
     * @param vapourDensity kg/m3
     * @param liquidViscosity Pa s
     * @param vapourViscosity Pa s
     * @param liquidConductivity W/(m K)
     * @param liquidHeat J/(kg K)
     */
    public record Saturated(
            double reducedPressure,
            double liquidDensity,
            double vapourDensity,
            double liquidViscosity,
            double vapourViscosity,
            double liquidConductivity,
            double liquidHeat) {
        double prandtl() {
            return liquidViscosity * liquidHeat / liquidConductivity;
        }
    }

    /**
     * If all flowed as liquid: 0.023 (G D/mu)^0.8 Pr^0.4 k/D, W/(m2 K).
     *
     * @param flux G, kg/(s m2)
     * @param diameter D, hydraulic, m
     */
    public static double allLiquid(Saturated s, double flux, double diameter) {
        double re = flux * diameter / s.liquidViscosity();
        return TubeFlow.dittusBoelter(re, s.prandtl(), 0.4) * s.liquidConductivity() / diameter;
    }

    /**
     * Over {@link #allLiquid} by Shah 1979: (1 - x)^0.8 + 3.8 x^0.76 (1 - x)^0.04 / pr^0.38.
     *
     * @param quality x, 0..1
     */
    public static double enhancement(double quality, double reducedPressure) {
        double liquid = 1.0 - quality;
        return Math.pow(liquid, 0.8)
                + 3.8 * Math.pow(quality, 0.76) * Math.pow(liquid, 0.04) / Math.pow(reducedPressure, 0.38);
    }

    /**
     * Shah 2009 in a horizontal tube, W/(m2 K): h1 = h_all-liquid x enhancement x (mu_l / (14 mu_v))^n, n = 0.0058 + 0.557 pr, alone where
     * the vapour is quick (Jg above 0.98 (Z + 0.263)^-0.62), else with {@link #film} added. Z = (1/x - 1)^0.8 pr^0.4, Jg = x G / sqrt(g D rho_v
     * (rho_l - rho_v)). Jumps by the film's share where the regime changes. At quality 0 and 1 the limits of h1 (0 for vapour).
     */
    public static double horizontal(Saturated s, double quality, double flux, double diameter) {
        double turbulent = turbulent(s, quality, flux, diameter);
        return quick(s, quality, flux, diameter) ? turbulent : turbulent + film(s, quality, flux, diameter);
    }

    private static double turbulent(Saturated s, double quality, double flux, double diameter) {
        double n = 0.0058 + 0.557 * s.reducedPressure();
        return allLiquid(s, flux, diameter)
                * enhancement(quality, s.reducedPressure())
                * Math.pow(s.liquidViscosity() / (14.0 * s.vapourViscosity()), n);
    }

    /** Whether the vapour's shear alone rules (regime I of a horizontal tube). */
    static boolean quick(Saturated s, double quality, double flux, double diameter) {
        double z = Math.pow(1.0 / quality - 1.0, 0.8) * Math.pow(s.reducedPressure(), 0.4);
        double weight = GRAVITY * diameter * s.vapourDensity() * (s.liquidDensity() - s.vapourDensity());
        return quality * flux / Math.sqrt(weight) > 0.98 * Math.pow(z + 0.263, -0.62);
    }

    /**
     * The laminar film of the same source, W/(m2 K): 1.32 Re^(-1/3) (rho_l (rho_l - rho_v) g k^3 / mu^2)^(1/3), Re = G (1 - x) D / mu, taken as at
     * 1 where it is less.
     */
    public static double film(Saturated s, double quality, double flux, double diameter) {
        double re = Math.max(1.0, flux * (1.0 - quality) * diameter / s.liquidViscosity());
        double k = s.liquidConductivity();
        double mu = s.liquidViscosity();
        double group = s.liquidDensity() * (s.liquidDensity() - s.vapourDensity()) * GRAVITY * k * k * k / (mu * mu);
        return 1.32 * Math.cbrt(group / re);
    }
}
