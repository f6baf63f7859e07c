package hotday.signals.mdf;

import java.util.Optional;

/** What a conversion made of a raw value: a number, a text, or neither. Filled anew for every value; for one thread. */
final class Physical {
    private double number;
    private Optional<String> text = Optional.empty();
    private boolean nothing;

    void number(double value) {
        number = value;
        text = Optional.empty();
        nothing = false;
    }

    /** @param value kept by whoever hands it in, so that a value allocates nothing */
    void text(Optional<String> value) {
        text = value;
        nothing = value.isEmpty();
    }

    /** The raw value has no meaning. */
    void nothing() {
        text = Optional.empty();
        nothing = true;
    }

    boolean isNothing() {
        return nothing;
    }

    /** Meaningless where there is a {@link #text}. */
    double number() {
        return number;
    }

    Optional<String> text() {
        return text;
    }
}
