package hotday.validation;

import java.util.List;

/** A subject of the validation table. */
public interface Topic {
    String title();

    /** Computes the rows; a topic that needs the data folder aborts through {@link SharedData} when it is absent. */
    List<Check> checks();

    /** True when the rows take longer than a few seconds: computed in the slow pass only. */
    default boolean slow() {
        return false;
    }
}
