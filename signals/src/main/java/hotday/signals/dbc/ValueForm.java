package hotday.signals.dbc;

/** How the bits of a signal are a number. */
public enum ValueForm {
    UNSIGNED("unsigned"),
    /** Two's complement. */
    SIGNED("signed"),
    /** IEEE 754, 32 bits. */
    SINGLE("single"),
    /** IEEE 754, 64 bits. */
    DOUBLE("double");

    private final String word;

    ValueForm(String word) {
        this.word = word;
    }

    /** For people and machines. */
    public String word() {
        return word;
    }

    /** Whether the bits are a floating-point number. */
    public boolean isFloat() {
        return this == SINGLE || this == DOUBLE;
    }
}
