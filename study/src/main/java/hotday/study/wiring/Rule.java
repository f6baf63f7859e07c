package hotday.study.wiring;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.finding.Sentence;
import hotday.core.finding.Severity;
import hotday.core.unit.Quantity;
import java.util.Map;
import java.util.Optional;

/**
 * One rule and what the build makes of it.
 *
 * @param key of its finding
 * @param what is compared
 * @param value, limit SI; the limit is the least value where {@code least}, else the most
 * @param source of the limit
 * @param finding where there is something to say and no other rule has said it
 */
public record Rule(
        String key,
        String what,
        Quantity quantity,
        double value,
        double limit,
        boolean least,
        String source,
        Optional<Finding> finding) {

    /** Whether the limit is kept; a warning may stand before it. */
    public boolean holds() {
        return !broken();
    }

    static Rule most(String key, String what, Quantity quantity, double value, double limit, String source) {
        return new Rule(key, what, quantity, value, limit, false, source, Optional.empty());
    }

    static Rule least(String key, String what, Quantity quantity, double value, double limit, String source) {
        return new Rule(key, what, quantity, value, limit, true, source, Optional.empty());
    }

    boolean broken() {
        return least ? value < limit : value > limit;
    }

    /** With a finding at a place of the sheet. */
    Rule said(Severity severity, Optional<Place> place, String message) {
        Finding f = new Finding(
                key,
                severity,
                place,
                Sentence.of(message + " (" + source + ")"),
                Map.of("value_" + unit(), value, "limit_" + unit(), limit));
        return new Rule(key, what, quantity, value, limit, least, source, Optional.of(f));
    }

    private String unit() {
        String symbol = quantity.units().get(0).symbol().replace(' ', '_');
        return symbol.isEmpty() ? "share" : symbol;
    }
}
