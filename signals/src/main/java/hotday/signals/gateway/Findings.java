package hotday.signals.gateway;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.finding.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What was found so far; told in the order of the sheet. */
final class Findings {
    /** Two translations may meet the same fault of one message: it is told once. */
    private final Set<Finding> all = new LinkedHashSet<>();

    void add(Finding finding) {
        all.add(finding);
    }

    void fault(String key, Place place, String message) {
        add(Finding.fault(key, place, message));
    }

    void warning(String key, Place place, String message) {
        add(Finding.warning(key, place, message));
    }

    void note(String key, Place place, String message) {
        add(Finding.note(key, place, message));
    }

    /** A loss: known to whoever typed so, else a fault. */
    void loss(boolean known, String key, Place place, String message, String mend) {
        add(
                known
                        ? Finding.note(key, place, message)
                        : new Finding(key, Severity.FAULT, Optional.of(place), message + "; " + mend, Map.of()));
    }

    List<Finding> sorted() {
        List<Finding> sorted = new ArrayList<>(all);
        sorted.sort(
                Comparator.comparing((Finding f) -> f.place().map(Place::file).orElse(""))
                        .thenComparingInt(f -> f.place().map(Place::line).orElse(0))
                        .thenComparingInt(f -> f.place().map(Place::column).orElse(0)));
        return List.copyOf(sorted);
    }
}
