package hotday.signals.expect;

import hotday.core.finding.Place;
import java.util.Optional;

/** What must hold while frames pass. Times in ns. */
public sealed interface Expected {
    /** What it is called. */
    String name();

    /** Where it was typed. */
    Place place();

    /**
     * Whenever {@code when} becomes true, {@code then} is true at once or becomes so in time. A demand whose time is not
     * over when the frames end is not judged.
     */
    record Response(String name, Place place, Condition when, Condition then, long within) implements Expected {}

    /**
     * At no time {@code never} is true; with {@code during}, only while that is true and has been for {@code after}.
     *
     * @param always whether it is the other way round: {@code never} must be true all the time
     */
    record Bound(String name, Place place, Condition never, boolean always, Optional<Condition> during, long after)
            implements Expected {}

    /**
     * Frames of a message come no further apart than {@code every}, first and last frame against beginning and end
     * included, and no closer than {@code notCloser} (0 for as close as they like).
     *
     * @param message {@code network.message}
     */
    record Rate(
            String name, Place place, String message, int network, int id, boolean extended, long every, long notCloser)
            implements Expected {}

    /**
     * Each number of {@code signal} is one that {@code source} had at most {@code notOlder} ago, to within a tolerance.
     * Nothing is judged before the first number of the source, and where {@code during} is not true.
     *
     * @param factor from the source's unit to the signal's: value * factor + offset
     * @param tolerance in the signal's unit
     */
    record Equality(
            String name,
            Place place,
            Watched signal,
            Watched source,
            double factor,
            double offset,
            double tolerance,
            long notOlder,
            Optional<Condition> during)
            implements Expected {}
}
