package hotday.signals.expect;

/** The last value of a signal. */
final class Seen {
    private final Watched signal;
    private boolean ever;
    private long raw;
    private double number = Double.NaN;

    Seen(Watched signal) {
        this.signal = signal;
    }

    /** @return whether the value was in the payload */
    boolean take(long word, int length) {
        if (!signal.source().isThere(word, length)) {
            return false;
        }
        ever = true;
        raw = signal.source().field().raw(word);
        number = signal.number(raw);
        return true;
    }

    Watched signal() {
        return signal;
    }

    boolean ever() {
        return ever;
    }

    long raw() {
        return raw;
    }

    double number() {
        return number;
    }

    String text() {
        return ever ? signal.text(raw) : "nothing yet";
    }
}
