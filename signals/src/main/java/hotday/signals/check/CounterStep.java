package hotday.signals.check;

/** What the next value of a rolling counter says. */
public enum CounterStep {
    /** The first one seen: nothing to compare with. */
    FIRST,
    /** One further than before: nothing lost. */
    NEXT,
    /** The same as before: an old frame once more. */
    REPEATED,
    /** The same as before so often in a row that the sender, or whoever passes it on, has stopped working. */
    STUCK,
    /** Further than by one: frames were lost, see {@link RollingCounter#lost}. */
    SKIPPED,
    /** A value that the counter never takes, such as 15 of one that runs to 14. */
    IMPOSSIBLE
}
