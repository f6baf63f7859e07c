package hotday.signals.obd;

import java.util.List;

/** What was last asked under one identifier, and whether anybody ever answered. */
final class Request {
    final int id;
    final boolean extended;
    int service;
    double time;
    List<Integer> identifiers = List.of();
    /** Whether an answer was ever wanted. */
    boolean wanted;
    /** Whether one ever came. */
    boolean answered;

    Request(int id, boolean extended) {
        this.id = id;
        this.extended = extended;
    }

    boolean is(int id, boolean extended) {
        return this.id == id && this.extended == extended;
    }
}
