package hotday.signals.obd;

import java.util.List;

/** What was last asked under one identifier, and whether anybody ever answered. */
final class Request {
    final int bus;
    final int id;
    final boolean extended;
    int service;
    double time;
    List<Integer> identifiers = List.of();
    long unanswered;
    boolean answered;

    Request(int bus, int id, boolean extended) {
        this.bus = bus;
        this.id = id;
        this.extended = extended;
    }

    boolean is(int bus, int id, boolean extended) {
        return this.id == id && this.bus == bus && this.extended == extended;
    }
}
