package hotday.study.events;

import java.util.List;

/**
 * What was worked out from the runs of one vehicle.
 *
 * @param events run by run in the order given, in time
 */
public record Inferred(List<Event> events, Summary summary) {
    public Inferred {
        events = List.copyOf(events);
    }

    /** Events of a kind, in their order. */
    public List<Event> of(Kind kind) {
        return events.stream().filter(e -> e.kind() == kind).toList();
    }
}
