package hotday.signals.obd;

import hotday.signals.isotp.IsoTpMessage;
import hotday.signals.uds.Refusals;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Refusals by unit, service and reason, and answers that were promised. Bounded. */
final class Refused {
    private static final int MOST = 1024;

    /** A unit that refused a service for a reason. */
    record Refusal(String unit, int service, int code) implements Comparable<Refusal> {
        @Override
        public int compareTo(Refusal other) {
            int byUnit = unit.compareTo(other.unit);
            int byService = byUnit != 0 ? byUnit : Integer.compare(service, other.service);
            return byService != 0 ? byService : Integer.compare(code, other.code);
        }
    }

    private final Map<Refusal, Long> counts = new TreeMap<>();
    /** Promised and not yet given: unit and service. */
    private final List<Refusal> promised = new ArrayList<>();

    /** A message of at least three bytes that begins with 7F. */
    void take(IsoTpMessage message) {
        Refusal refusal = new Refusal(Addresses.name(message.id()), message.at(1), message.at(2));
        if (refusal.code() != Refusals.PENDING) {
            promised.remove(new Refusal(refusal.unit(), refusal.service(), Refusals.PENDING));
            if (counts.size() < MOST || counts.containsKey(refusal)) {
                counts.merge(refusal, 1L, Long::sum);
            }
        } else if (!promised.contains(refusal) && promised.size() < MOST) {
            promised.add(refusal);
        }
    }

    /** A unit has done a service. */
    void done(IsoTpMessage message, int service) {
        if (!promised.isEmpty()) {
            promised.remove(new Refusal(Addresses.name(message.id()), service, Refusals.PENDING));
        }
    }

    Map<Refusal, Long> counts() {
        return counts;
    }

    List<Refusal> promised() {
        return promised;
    }
}
