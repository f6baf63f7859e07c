package hotday.core.typed;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.finding.Sentence;
import hotday.core.unit.Quantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Collects every fault of one file, so that a person can mend them in one go, what is worth a look beside them, and what each value measures. */
public final class Faults {
    private final List<Finding> faults = new ArrayList<>();
    private final List<Finding> remarks = new ArrayList<>();
    private final Map<String, Quantity> quantities = new HashMap<>();

    /** @param message pieces of a {@link Sentence} */
    void add(String key, Place place, Object... message) {
        Finding fault = Finding.fault(key, place, Sentence.of(message));
        if (!faults.contains(fault)) { // a block may be asked for twice, its faults are told once
            faults.add(fault);
        }
    }

    /** Takes over the faults of a file that this one names. */
    public void include(InputException other) {
        other.findings().stream().filter(f -> !faults.contains(f)).forEach(faults::add);
    }

    void remark(String key, Place place, String message) {
        Finding remark = Finding.warning(key, place, message);
        if (!remarks.contains(remark)) {
            remarks.add(remark);
        }
    }

    /** What can be used but should be looked at, in the order it was found. */
    public List<Finding> remarks() {
        return List.copyOf(remarks);
    }

    void measured(String key, Quantity quantity) {
        quantities.put(key, quantity);
    }

    /** What single values measure, by full key. */
    public Map<String, Quantity> quantities() {
        return Map.copyOf(quantities);
    }

    public boolean any() {
        return !faults.isEmpty();
    }

    /** Throws all faults in the order of the file, those of files it names among them, if there are any. */
    public void throwIfAny() {
        if (any()) {
            List<Finding> sorted = new ArrayList<>(faults);
            sorted.sort(Comparator.comparing(
                            (Finding f) -> f.place().map(Place::file).orElse(""))
                    .thenComparingInt(f -> f.place().map(Place::line).orElse(0))
                    .thenComparingInt(f -> f.place().map(Place::column).orElse(0)));
            throw new InputException(sorted);
        }
    }
}
