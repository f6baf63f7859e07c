package hotday.signals.dbc;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.finding.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Findings of one file; of the same kind no more are kept than a person reads, the rest is counted. */
final class FindingList {
    private static final int MOST_OF_A_KIND = 20;

    private final String file;
    private final List<Finding> findings = new ArrayList<>();
    private final Map<String, Integer> counts = new LinkedHashMap<>();

    FindingList(String file) {
        this.file = file;
    }

    Place place(int line, int column) {
        return new Place(file, line, column);
    }

    void add(Severity severity, String key, Place place, String message) {
        if (counts.merge(key, 1, Integer::sum) <= MOST_OF_A_KIND) {
            findings.add(new Finding(key, severity, Optional.of(place), message, Map.of()));
        }
    }

    void fault(String key, Place place, String message) {
        add(Severity.FAULT, key, place, message);
    }

    void warning(String key, Place place, String message) {
        add(Severity.WARNING, key, place, message);
    }

    void note(String key, Place place, String message) {
        add(Severity.NOTE, key, place, message);
    }

    /** All of them; what was only counted stands at the end with the severity of its kind. */
    List<Finding> all() {
        List<Finding> all = new ArrayList<>(findings);
        counts.forEach((key, count) -> {
            if (count > MOST_OF_A_KIND) {
                all.add(more(key, count - MOST_OF_A_KIND));
            }
        });
        return List.copyOf(all);
    }

    private Finding more(String key, int count) {
        Severity severity = findings.stream()
                .filter(f -> f.key().equals(key))
                .findFirst()
                .orElseThrow()
                .severity();
        return new Finding(
                key,
                severity,
                Optional.of(Place.of(file)),
                "and " + count + " more of '" + key + "'",
                Map.of("count", count));
    }
}
