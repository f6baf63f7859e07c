package hotday.signals.expect;

import hotday.core.finding.Place;
import java.util.List;

/**
 * Whether an expectation held.
 *
 * @param judged how often it was looked at: changes, values or frames
 * @param failed how often it did not hold
 * @param first the first failures
 */
public record Verdict(String name, Place place, long judged, long failed, List<Failure> first) {
    public Verdict {
        first = List.copyOf(first);
    }

    public boolean holds() {
        return failed == 0;
    }

    /**
     * One failure.
     *
     * @param time ns from the beginning
     * @param what happened, with the value
     * @param limit what was allowed
     */
    public record Failure(long time, String what, String limit) {}
}
