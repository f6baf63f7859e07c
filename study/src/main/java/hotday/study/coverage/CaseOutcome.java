package hotday.study.coverage;

import hotday.vehicle.cases.AmbientCeiling;

/**
 * One ceiling of one virtual car: what was said and what is true, K.
 *
 * @param kase id of the case
 * @param truth what the car really stands
 * @param low, high 90 % interval after the mild day
 * @param lowBefore, highBefore the same from the sheet alone
 */
public record CaseOutcome(String kase, double truth, double low, double high, double lowBefore, double highBefore) {
    /** Whether the interval holds the truth; an end at the end of the searched range is open. */
    public boolean inside() {
        boolean above = truth >= low || low <= AmbientCeiling.LOWEST;
        return above && (truth <= high || high >= AmbientCeiling.HIGHEST);
    }

    /** K */
    public double width() {
        return high - low;
    }

    /** K */
    public double widthBefore() {
        return highBefore - lowBefore;
    }
}
