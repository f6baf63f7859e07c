package hotday.physics.component;

/**
 * Wax thermostat: opening against wax temperature, first-order lag of the wax, play of the valve.
 *
 * <pre>
 *  opening 1 |          ____            warming: opening starts at {@code opens}
 *            |   &lt;-/   / -&gt;             cooling: the same line, lower by the hysteresis
 *          0 |____/___/______ K
 * </pre>
 *
 * Service data: full-open 11 to 15 K above the start, loop 3 to 6 K (several manufacturers' manuals). Linear in between:
 * common practice, no source.
 *
 * @param opens temperature where a warming valve starts, K
 * @param full temperature where a warming valve is fully open, K, above {@code opens}
 * @param hysteresis how much lower it shuts, K, 0 or more
 * @param lag of the wax behind the coolant, s, 0 or more
 */
public record WaxThermostat(double opens, double full, double hysteresis, double lag) {
    public WaxThermostat {
        if (!(full > opens && opens > 0 && full < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "thermostat opens at " + opens + " K and is full at " + full + " K: full must be the higher");
        }
        if (!(hysteresis >= 0 && lag >= 0)) {
            throw new IllegalArgumentException(
                    "thermostat hysteresis " + hysteresis + " K and lag " + lag + " s must be 0 or more");
        }
    }

    /** Opening 0..1 of a warming valve, straight lines. */
    public double opening(double wax) {
        return Math.min(1.0, Math.max(0.0, (wax - opens) / (full - opens)));
    }

    /**
     * Opening with both corners replaced by parabolas that meet the straight lines with equal slope: once differentiable, never
     * falling, within rounding / 4 of the straight lines. For fits, where a corner hides the slope.
     *
     * @param rounding half the width of a corner as a share of the range, 0..0.5; 0 for straight lines
     */
    public double opening(double wax, double rounding) {
        double z = (wax - opens) / (full - opens);
        return knee(z, rounding) - knee(z - 1.0, rounding);
    }

    /** 0 below, z above, a parabola within r of zero. */
    private static double knee(double z, double r) {
        if (z <= -r) {
            return 0.0;
        }
        return z >= r ? z : (z + r) * (z + r) / (4.0 * r);
    }

    /**
     * Wax temperature after a time in coolant of one temperature, K; exact for any step.
     *
     * @param wax at the start, K
     * @param coolant K
     * @param duration s, 0 or more
     */
    public double lagged(double wax, double coolant, double duration) {
        return lag == 0.0 ? coolant : coolant + (wax - coolant) * Math.exp(-duration / lag);
    }

    /**
     * The temperature the valve acts on, K (play operator): warming, the wax itself; cooling, late by the hysteresis, that is the wax temperature
     * plus the hysteresis; in between it rests. Depends only on the past extremes of the wax, not on the speed of change.
     *
     * @param before value before, K; the wax temperature at the beginning
     * @param wax K
     */
    public double played(double before, double wax) {
        return Math.min(wax + hysteresis, Math.max(wax, before));
    }
}
