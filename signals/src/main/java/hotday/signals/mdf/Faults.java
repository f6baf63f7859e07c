package hotday.signals.mdf;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.finding.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is to be told about a file. Of a kind the first are told and all are counted. */
final class Faults {
    private static final int TOLD = 20;

    private final String file;
    private final List<Finding> told = new ArrayList<>();
    private final Map<String, Integer> counts = new LinkedHashMap<>();
    private final Map<String, Severity> severities = new LinkedHashMap<>();

    Faults(String file) {
        this.file = file;
    }

    void add(BrokenBlock broken) {
        add(broken, "");
    }

    /** @param then what follows from it */
    void add(BrokenBlock broken, String then) {
        add(
                Severity.FAULT,
                broken.key(),
                broken.position(),
                "at byte " + broken.position() + ": " + broken.getMessage() + then);
    }

    void note(String key, String message) {
        add(Severity.NOTE, key, -1, message);
    }

    void warning(String key, String message) {
        add(Severity.WARNING, key, -1, message);
    }

    void fault(String key, String message) {
        add(Severity.FAULT, key, -1, message);
    }

    private void add(Severity severity, String key, long position, String message) {
        severities.put(key, severity);
        if (counts.merge(key, 1, Integer::sum) <= TOLD) {
            Finding one = new Finding(key, severity, Optional.of(Place.of(file)), message, Map.of());
            told.add(position < 0 ? one : one.with("byte", position));
        }
    }

    List<Finding> findings() {
        List<Finding> all = new ArrayList<>(told);
        counts.forEach((key, count) -> {
            if (count > TOLD) {
                all.add(new Finding(
                                key,
                                severities.get(key),
                                Optional.of(Place.of(file)),
                                "and " + (count - TOLD) + " more of this kind",
                                Map.of())
                        .with("count", count - TOLD));
            }
        });
        return all;
    }
}
