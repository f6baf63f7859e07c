package hotday.signals.dbc;

/** Raw values of a multiplexor, both ends included. */
public record ValueRange(long low, long high) {
    boolean contains(long raw) {
        return raw >= low && raw <= high;
    }
}
