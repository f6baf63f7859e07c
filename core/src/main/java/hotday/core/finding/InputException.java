package hotday.core.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The input cannot be used. Carries every fault found, not the first only. The program ends with status 2 and has
 * written nothing. This is the one exception type for wrong input; anything else that escapes is our own fault (status
 * 3).
 */
public final class InputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Finding> findings;

    public InputException(List<Finding> findings) {
        super(findings.stream().map(Finding::toString).collect(Collectors.joining(System.lineSeparator())));
        this.findings = List.copyOf(findings);
    }

    public InputException(Finding finding) {
        this(List.of(finding));
    }

    public static InputException at(Place place, String key, String message) {
        return new InputException(Finding.fault(key, place, message));
    }

    public static InputException at(Place place, String key, Sentence message) {
        return new InputException(Finding.fault(key, place, message));
    }

    /** What is made of each of several inputs; throws every fault of all of them when one cannot be used. */
    public static <T, R> List<R> each(List<T> inputs, Function<T, R> made) {
        List<R> all = new ArrayList<>();
        List<Finding> faults = new ArrayList<>();
        for (T input : inputs) {
            try {
                all.add(made.apply(input));
            } catch (InputException wrong) {
                faults.addAll(wrong.findings());
            }
        }
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
        return all;
    }

    /** Every fault found, in the order of the file. */
    public List<Finding> findings() {
        return findings;
    }
}
