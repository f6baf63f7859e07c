package hotday.signals.gateway;

import hotday.signals.dbc.Signal;
import java.util.Optional;

/** A translation laid beside the descriptions: its two ends found. */
record Line(Translation typed, Optional<End> from, End to) {
    /** A signal of a message that is sent on a bus. */
    record End(Bus bus, OnBus message, Signal signal) {
        String name() {
            return "'" + signal.name() + "'";
        }
    }

    String fromUnit() {
        return typed.fromUnit().orElseGet(() -> from.map(e -> e.signal().unit()).orElse(""));
    }

    String toUnit() {
        return typed.toUnit().orElse(to.signal().unit());
    }
}
