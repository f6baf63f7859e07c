package hotday.signals.gateway;

import hotday.core.finding.Place;
import hotday.core.unit.Nearest;
import hotday.signals.dbc.Signal;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the signals that a sheet names. */
final class LineFinder {
    private final Map<String, Bus> buses;
    private final Findings out;

    LineFinder(Map<String, Bus> buses, Findings out) {
        this.buses = buses;
        this.out = out;
    }

    Optional<Line> find(Translation t) {
        Optional<Line.End> from = t.from().flatMap(n -> end(n, t.places().at("from"), "source-missing"));
        Optional<Line.End> to = end(t.to(), t.places().at("to"), "target-missing");
        if (to.isEmpty() || t.from().isPresent() && from.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Line(t, from, to.get()));
    }

    /** @param key of what is told when it is not there */
    Optional<Line.End> end(SignalName name, Place place, String key) {
        Bus bus = buses.get(name.network());
        if (bus == null) {
            missing(key, place, "there is no network '" + name.network() + "'", name.network(), buses.keySet());
            return Optional.empty();
        }
        Optional<OnBus> message = bus.message(name.message());
        if (message.isEmpty()) {
            boolean silent = bus.plan().silent().contains(name.message());
            missing(
                    key,
                    place,
                    "network '" + name.network() + "' has no message '" + name.message() + "'"
                            + (silent ? ": it stands in 'not_on_bus'" : ""),
                    name.message(),
                    bus.messages().stream().map(m -> m.message().name()).toList());
            return Optional.empty();
        }
        Optional<Signal> signal = message.get().message().signal(name.signal());
        if (signal.isEmpty()) {
            missing(
                    key,
                    place,
                    "message '" + name.message() + "' of '" + name.network() + "' has no signal '" + name.signal()
                            + "'",
                    name.signal(),
                    message.get().message().signals().stream().map(Signal::name).toList());
            return Optional.empty();
        }
        return usable(signal.get(), place, key)
                ? Optional.of(new Line.End(bus, message.get(), signal.get()))
                : Optional.empty();
    }

    private boolean usable(Signal signal, Place place, String key) {
        if (!signal.usable() || signal.factor() == 0) {
            out.fault(
                    key,
                    place,
                    "'" + signal.name() + "' cannot be used: its DBC file does not say how its bits are a number");
            return false;
        }
        return true;
    }

    private void missing(String key, Place place, String message, String typed, Collection<String> known) {
        out.fault(
                key,
                place,
                message
                        + Nearest.to(typed, List.copyOf(known))
                                .map(n -> " (did you mean '" + n + "'?)")
                                .orElse(""));
    }
}
