package hotday.signals.frame;

/** What a sender says about a value; all but the first carry no number. */
public enum SampleState {
    VALID("valid"),
    /** The sender does not have it. */
    NOT_AVAILABLE("not-available"),
    /** The sender knows that it is wrong. */
    ERROR("error"),
    /** A code with a meaning of its own, no value of the scale. */
    SPECIAL("special"),
    /** A code that no standard gives a meaning. */
    RESERVED("reserved");

    private final String word;

    SampleState(String word) {
        this.word = word;
    }

    /** For people and machines. */
    public String word() {
        return word;
    }
}
