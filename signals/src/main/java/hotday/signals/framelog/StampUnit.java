package hotday.signals.framelog;

import java.util.Locale;
import java.util.Optional;

/** Unit of the time stamps of a recording. */
public enum StampUnit {
    SECONDS("s", 0),
    MILLISECONDS("ms", 3),
    MICROSECONDS("us", 6),
    NANOSECONDS("ns", 9);

    private final String symbol;
    private final int decimals;

    StampUnit(String symbol, int decimals) {
        this.symbol = symbol;
        this.decimals = decimals;
    }

    public String symbol() {
        return symbol;
    }

    /** How many decimal places of a second it is. */
    int decimals() {
        return decimals;
    }

    /** s. */
    public double seconds() {
        return 1 / Stamp.TEN_TO[decimals];
    }

    /** A unit by its symbol or its name, as people write it in headers. */
    public static Optional<StampUnit> of(String word) {
        return switch (word.strip().toLowerCase(Locale.ROOT)) {
            case "s", "sec", "secs", "second", "seconds" -> Optional.of(SECONDS);
            case "ms", "msec", "millis", "millisecond", "milliseconds" -> Optional.of(MILLISECONDS);
            case "us", "\u00B5s", "\u03BCs", "usec", "micros", "microsecond", "microseconds" ->
                Optional.of(MICROSECONDS);
            case "ns", "nsec", "nanos", "nanosecond", "nanoseconds" -> Optional.of(NANOSECONDS);
            default -> Optional.empty();
        };
    }
}
