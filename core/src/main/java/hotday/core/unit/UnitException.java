package hotday.core.unit;

/** A typed value or unit that cannot be taken; the message tells a person what was typed and what would do. */
public final class UnitException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String key;

    UnitException(String key, String message) {
        super(message);
        this.key = key;
    }

    /** Stable name of the reason: {@code unit-missing}, {@code unit-wrong}, {@code number-wrong}, {@code pressure-ambiguous}. */
    public String key() {
        return key;
    }
}
