package hotday.signals.gateway;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.finding.Severity;
import hotday.core.unit.Nearest;
import hotday.signals.bus.FrameLength;
import hotday.signals.bus.Schedule;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One network by itself: who sends what how often, and whether there is time for it. */
final class BusCheck {
    /** Where an engine's network begins to look full, and where any does; common practice, no source. */
    static final double LOAD_TO_LOOK_AT = 0.5;

    static final double LOAD_TOO_HIGH = 0.7;
    private static final int NAMED = 5;

    private final Bus bus;
    private final Findings out;

    private BusCheck(Bus bus, Findings out) {
        this.bus = bus;
        this.out = out;
    }

    static void check(Bus bus, Findings out) {
        BusCheck check = new BusCheck(bus, out);
        check.description();
        check.names();
        check.periods();
        bus.messages().forEach(check::message);
        check.identifiers();
        check.load();
    }

    /** What is wrong with the DBC file itself. */
    private void description() {
        bus.dbc().findings().stream()
                .filter(f -> f.severity() == Severity.FAULT)
                .forEach(out::add);
    }

    private void names() {
        List<String> known = bus.dbc().messages().stream().map(m -> m.name()).toList();
        bus.plan().messages().forEach((name, plan) -> {
            if (!known.contains(name)) {
                out.fault("message-missing", plan.place(), missing(name, known));
            } else if (bus.plan().silent().contains(name)) {
                out.fault("message-missing", plan.place(), "'" + name + "' is sent and stands in 'not_on_bus', too");
            }
        });
        for (String name : bus.plan().silent()) {
            if (!known.contains(name)) {
                out.fault("message-missing", bus.place(), "'not_on_bus': " + missing(name, known));
            }
        }
        List<String> nodes = bus.dbc().nodes();
        if (!nodes.isEmpty() && !nodes.contains(bus.plan().gateway())) {
            out.warning(
                    "node-unknown",
                    bus.place(),
                    "'" + bus.plan().gateway() + "', the gateway, is no node of "
                            + bus.dbc().name() + "; those are " + String.join(", ", nodes));
        }
    }

    private String missing(String name, List<String> known) {
        return "network '" + bus.name() + "' has no message '" + name + "'"
                + Nearest.to(name, known)
                        .map(n -> " (did you mean '" + n + "'?)")
                        .orElse("");
    }

    /** Messages without period: the load would be anybody's guess. */
    private void periods() {
        List<String> without = bus.messages().stream()
                .filter(m -> m.every().isEmpty())
                .map(m -> m.message().name())
                .toList();
        if (!without.isEmpty()) {
            String names = String.join(", ", without.subList(0, Math.min(NAMED, without.size())));
            String more = without.size() > NAMED ? " and " + (without.size() - NAMED) + " more" : "";
            out.fault(
                    "period-missing",
                    bus.place(),
                    "how often is not said of " + names + more + "; type 'every' under 'messages', or list them in"
                            + " 'not_on_bus'; load, response times or time-outs leave them out");
        }
        long silent = bus.messages().stream()
                .filter(m -> m.timed()
                        && bus.plan().jitter().isEmpty()
                        && m.plan().flatMap(p -> boxed(p)).isEmpty())
                .count();
        if (silent > 0) {
            out.note(
                    "jitter-not-said",
                    bus.place(),
                    "no jitter is said of " + silent + " messages of '" + bus.name() + "'; counted as none");
        }
    }

    private static Optional<Long> boxed(MessagePlan plan) {
        return plan.jitter().isPresent() ? Optional.of(plan.jitter().getAsLong()) : Optional.empty();
    }

    private void message(OnBus m) {
        String name = m.message().name();
        if (!m.classic()) {
            out.fault(
                    "frame-too-long",
                    m.place(),
                    "'" + name + "' has " + m.message().length() + " bytes, a classic frame has up to "
                            + FrameLength.MOST_BYTES + "; it is left out");
            return;
        }
        if (m.senders().size() > 1) {
            out.fault(
                    "two-senders",
                    m.place(),
                    "'" + name + "' is sent by " + String.join(" and ", m.senders())
                            + "; one identifier has one sender, else frames destroy each other");
        }
        replaced(m);
        if (bus.counted(m)) {
            timing(m, name);
        }
    }

    /** A sheet that names another sender or another period than the file. */
    private void replaced(OnBus m) {
        m.plan().ifPresent(plan -> {
            plan.from().filter(f -> !f.equals(m.message().sender())).ifPresent(from -> {
                if (bus.dbc().nodes().contains(m.message().sender())) {
                    out.warning(
                            "sender-replaced",
                            plan.place(),
                            "'" + m.message().name() + "' comes from "
                                    + m.message().sender() + " in the DBC file, from " + from + " here: "
                                    + m.message().sender() + " must not be on this bus any more");
                }
            });
            bus.period(m.message()).ifPresent(p -> {
                if (plan.every().isPresent() && plan.every().getAsLong() != p) {
                    out.warning(
                            "period-differs",
                            plan.place(),
                            "'" + m.message().name() + "' is sent every " + Shown.ms(p) + " by the DBC file, every "
                                    + Shown.ms(plan.every().getAsLong()) + " here; the latter is taken");
                }
            });
        });
    }

    private void timing(OnBus m, String name) {
        long shortest = m.shortest().getAsLong();
        if (m.jitter() >= shortest) {
            out.fault(
                    "jitter-too-long",
                    m.place(),
                    "'" + name + "' may be " + Shown.ms(m.jitter()) + " late, as long as its period of "
                            + Shown.ms(shortest) + " or longer");
        }
        long response = bus.response(m);
        long deadline = m.deadline().orElse(shortest);
        if (response == Schedule.UNBOUNDED) {
            out.fault(
                    "response-unbounded",
                    m.place(),
                    "'" + name + "' may wait without end: what is more urgent fills '" + bus.name() + "'");
        } else if (response > deadline) {
            out.add(Finding.fault(
                            "response-too-late",
                            m.place(),
                            "'" + name + "' may take " + Shown.ms(response) + " on '" + bus.name() + "', allowed are "
                                    + Shown.ms(deadline) + (m.deadline().isPresent() ? "" : ", its period"))
                    .with("response_ms", response / 1e6)
                    .with("limit_ms", deadline / 1e6));
        }
    }

    private void identifiers() {
        Map<String, OnBus> first = new HashMap<>();
        List<OnBus> all = new ArrayList<>(bus.messages());
        for (OnBus m : all) {
            String id = id(m);
            OnBus other = first.putIfAbsent(id, m);
            if (other != null) {
                out.fault(
                        "two-senders",
                        m.place(),
                        "'" + m.message().name() + "' and '" + other.message().name() + "' both have the identifier "
                                + id + "; only the first is counted");
            }
        }
    }

    static String id(OnBus m) {
        return String.format(
                m.message().extended() ? "%08X" : "%03X", m.message().id());
    }

    private void load() {
        double load = bus.load();
        Place place = bus.place();
        String text = "'" + bus.name() + "' is loaded to " + Shown.percent(load);
        Optional<Double> limit = bus.plan().loadLimit();
        if (limit.isPresent() && load > limit.get()) {
            out.add(loaded(
                    "load-too-high", Severity.FAULT, place, text + ", allowed are " + Shown.percent(limit.get())));
        } else if (limit.isEmpty() && load > LOAD_TOO_HIGH) {
            out.add(loaded(
                    "load-too-high",
                    Severity.FAULT,
                    place,
                    text + ", above " + Shown.percent(LOAD_TOO_HIGH)
                            + " (common practice; 'load_limit' sets another)"));
        } else if (limit.isEmpty() && load > LOAD_TO_LOOK_AT) {
            out.add(loaded(
                    "load-high",
                    Severity.WARNING,
                    place,
                    text + ", above " + Shown.percent(LOAD_TO_LOOK_AT)
                            + " (common practice for engines; 'load_limit' sets another)"));
        }
    }

    private Finding loaded(String key, Severity severity, Place place, String message) {
        return new Finding(key, severity, Optional.of(place), message, Map.of("load_percent", 100 * bus.load()));
    }
}
