package hotday.physics.exchanger;

/**
 * What a refrigerant brings into a core, filled by the caller before each march and not checked (time loop). Saturation values belong to
 * the one pressure of the core; the vapour line must lie above the liquid line. Heat transfer of the refrigerant's side is per face area of the
 * core: coefficient x inner surface / face area.
 */
public final class RefrigerantStream {
    /** kg/s, 0 or more. */
    public double massFlow;
    /** Specific enthalpy at the inlet, J/kg, of whichever phase. */
    public double enthalpy;
    /** K. */
    public double saturationTemperature;
    /** Of saturated liquid, J/kg. */
    public double liquidEnthalpy;
    /** Of saturated vapour, J/kg. */
    public double vapourEnthalpy;
    /** Specific heat of subcooled liquid, J/(kg K), above 0. */
    public double liquidHeat;
    /** Specific heat of superheated vapour, J/(kg K), above 0. */
    public double vapourHeat;
    /** Conductance per face area where there is liquid alone, W/(m2 K). */
    public double liquidConductance;
    /** Conductance per face area where there is vapour alone, W/(m2 K). */
    public double vapourConductance;
    /** Conductance per face area at evenly spaced qualities, first 0 (liquid), last 1 (vapour), W/(m2 K). */
    public final double[] twoPhaseConductance;

    /** @param qualities number of points of the two-phase table, at least 2 */
    public RefrigerantStream(int qualities) {
        if (qualities < 2) {
            throw new IllegalArgumentException("table of " + qualities + " qualities, at least 2 are needed");
        }
        twoPhaseConductance = new double[qualities];
    }

    /** Quality that belongs to a point of the two-phase table, 0..1. */
    public double quality(int point) {
        return (double) point / (twoPhaseConductance.length - 1);
    }

    double twoPhaseConductance(double quality) {
        double place = quality * (twoPhaseConductance.length - 1);
        int below = Math.min((int) place, twoPhaseConductance.length - 2);
        double low = twoPhaseConductance[below];
        return low + (place - below) * (twoPhaseConductance[below + 1] - low);
    }

    /** Temperature at an enthalpy, K. */
    double temperature(double h) {
        if (h > vapourEnthalpy) {
            return saturationTemperature + (h - vapourEnthalpy) / vapourHeat;
        }
        return h < liquidEnthalpy ? saturationTemperature - (liquidEnthalpy - h) / liquidHeat : saturationTemperature;
    }
}
