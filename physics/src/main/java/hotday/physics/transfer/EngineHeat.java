package hotday.physics.transfer;

/**
 * Heat and friction of a four-stroke piston engine.
 *
 * <p>Gas side: Nu = 10.4 Re^0.75 on the flow of air and fuel per piston area (Taylor and Toong 1957, as in Taylor, The
 * Internal-Combustion Engine in Theory and Practice, vol. 1, ch. 8). Friction: a polynomial of speed (Heywood 1988, eq.
 * 13.6, from memory). Fuel: a Willans line (Guzzella and Onder, from memory). Shares of coolant heat in the fuel that come
 * out are held against Heywood's energy balance in the validation table.
 */
public final class EngineHeat {
    /** Friction polynomial of four-cylinder spark-ignition engines of 845 to 2000 cm3, Pa, n in 1000 rpm; as are the next two. */
    public static final double FRICTION_CONSTANT = 97_000.0;

    public static final double FRICTION_LINEAR = 15_000.0;
    public static final double FRICTION_SQUARE = 5_000.0;

    /** Mean effective gas temperature of a stoichiometric petrol engine without burnt gas, K; see {@link #gasTemperature}. */
    public static final double PETROL_GAS_TEMPERATURE = 668.0;

    /**
     * Burnt gas a petrol engine keeps from cycle to cycle, kg for each m3 swept at 1 bar of exhaust pressure: clearance volume at a
     * compression ratio of 10 and 1200 K, twice over for what flows back while the valves overlap. Gives 27 % in a throttled idle and 6 % at
     * full load; published curves (Heywood 1988, fig. 6.19) run from about 25 % to 7 %, from memory.
     */
    private static final double KEPT_BURNT_GAS = 0.065;

    /** The same of a diesel, carried on to the stoichiometric mixture it never burns, K. */
    public static final double DIESEL_GAS_TEMPERATURE = 780.0;

    /** Without fuel the gas is about as warm as the walls, K. */
    private static final double MOTORED_GAS_TEMPERATURE = 370.0;

    private EngineHeat() {}

    /** Total piston area, m2. */
    public static double pistonArea(double bore, int cylinders) {
        return cylinders * Math.PI / 4.0 * bore * bore;
    }

    /**
     * Reynolds number of the gas, flow per piston area x bore / viscosity.
     *
     * @param massFlow air and fuel, kg/s
     * @param bore m
     * @param viscosity of the mean cycle gas, Pa s (4.3e-5 usual)
     */
    public static double reynolds(double massFlow, double bore, int cylinders, double viscosity) {
        return massFlow / pistonArea(bore, cylinders) * bore / viscosity;
    }

    /** Nusselt number on bore, 10.4 Re^0.75; no heat at or below zero flow. Taylor's data: Re about 1e3..1e5, from memory. */
    public static double nusselt(double reynolds) {
        return 10.4 * Math.pow(Math.max(0.0, reynolds), 0.75);
    }

    /**
     * Conductance gas to wall, W/K: Nu k / bore x piston area. Heat = conductance x (gas temperature - coolant
     * temperature).
     *
     * @param massFlow air and fuel, kg/s
     * @param conductivity of the mean cycle gas, W/(m K) (0.06 usual)
     */
    public static double conductance(
            double massFlow, double bore, int cylinders, double conductivity, double viscosity) {
        double re = reynolds(massFlow, bore, cylinders, viscosity);
        return nusselt(re) * conductivity / bore * pistonArea(bore, cylinders);
    }

    /**
     * Mean effective gas temperature, K: from 370 K without fuel in proportion to the mixture, constant above the
     * stoichiometric one. The end values are chosen so that coolant heat at full load falls inside Heywood's energy balance
     * and near what is quoted for a hot idle (docs/physics/engine-heat.md); some 50 K of doubt. It decides the share of
     * coolant heat in the fuel, so a fit should move it.
     *
     * @param equivalenceRatio fuel/air over stoichiometric fuel/air, 0..1.3, times the share of the charge that is fresh
     * @param stoichiometric {@link #PETROL_GAS_TEMPERATURE} or {@link #DIESEL_GAS_TEMPERATURE}
     */
    public static double gasTemperature(double equivalenceRatio, double stoichiometric) {
        double phi = Math.min(Math.max(0.0, equivalenceRatio), 1.0);
        return MOTORED_GAS_TEMPERATURE + (stoichiometric - MOTORED_GAS_TEMPERATURE) * phi;
    }

    /**
     * Share of burnt gas in the charge of a petrol engine, 0..1. It dilutes the mixture as excess air would: a throttled engine's gas is
     * cooler.
     *
     * @param air drawn for each volume swept, kg/m3 (0.15 idle, 1.0 full load)
     * @param exhaustPressure Pa
     */
    public static double burntGas(double air, double exhaustPressure) {
        double kept = KEPT_BURNT_GAS * Math.max(0.0, exhaustPressure) / 1e5;
        return kept <= 0.0 ? 0.0 : kept / (kept + Math.max(0.0, air));
    }

    /**
     * Friction mean effective pressure, Pa: f0 + f1 n + f2 n^2.
     *
     * @param f0 Pa
     * @param f1 Pa per 1000 rpm
     * @param f2 Pa per (1000 rpm)^2
     * @param speed rad/s
     */
    public static double frictionMeanPressure(double f0, double f1, double f2, double speed) {
        double n = speed * 60.0 / (2.0 * Math.PI) / 1000.0;
        return f0 + f1 * n + f2 * n * n;
    }

    /**
     * Power of a mean effective pressure in a four-stroke engine, W: pressure x displacement x speed / (4 pi).
     *
     * @param meanPressure Pa
     * @param displacement m3
     * @param speed rad/s
     */
    public static double power(double meanPressure, double displacement, double speed) {
        return meanPressure * displacement * speed / (4.0 * Math.PI);
    }

    /**
     * Fuel power on a Willans line, W: (brake + loss mean effective pressure) / inner efficiency, never below zero. Outside
     * the ordinary ranges the line is still drawn.
     *
     * @param brakeMeanPressure Pa
     * @param lossMeanPressure friction and pumping, Pa (1.5e5..2.5e5 petrol, 1.3e5..2.0e5 diesel)
     * @param innerEfficiency 0.36..0.42 petrol, 0.40..0.46 diesel
     */
    public static double fuelPower(
            double brakeMeanPressure,
            double lossMeanPressure,
            double innerEfficiency,
            double displacement,
            double speed) {
        double meanPressure = Math.max(0.0, brakeMeanPressure + lossMeanPressure) / innerEfficiency;
        return power(meanPressure, displacement, speed);
    }
}
