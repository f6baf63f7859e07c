package hotday.study.prove;

import hotday.vehicle.cases.Ceiling;

/**
 * Ambient ceiling of one case with its doubt.
 *
 * @param best of the best values
 * @param low, high 90 % interval, K
 * @param holds chance that the case holds at the design ambient, 0..1
 * @param designAmbient K
 */
public record CeilingReport(Ceiling best, double low, double high, double holds, double designAmbient) {

    /** Whether the case holds at the design ambient with the whole interval. */
    public boolean holdsSurely() {
        return low >= designAmbient;
    }
}
