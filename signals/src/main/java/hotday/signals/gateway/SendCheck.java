package hotday.signals.gateway;

import hotday.core.finding.Place;
import hotday.signals.dbc.Signal;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** Messages that the gateway sends or listens to: whose they are, what fills them, what guards them. */
final class SendCheck {
    private final List<Bus> buses;
    private final TranslationSheet.Gateway gateway;
    private final Findings out;
    // By identity: two networks may be described by one file, and their signals are equal then.
    private final Set<Signal> filled = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<OnBus> targets = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<OnBus> sources = Collections.newSetFromMap(new IdentityHashMap<>());

    SendCheck(List<Bus> buses, TranslationSheet.Gateway gateway, Findings out) {
        this.buses = buses;
        this.gateway = gateway;
        this.out = out;
    }

    void check(List<Line> lines) {
        lines.forEach(this::line);
        for (Bus bus : buses) {
            for (OnBus m : bus.messages()) {
                boolean sent = m.ours() || targets.contains(m);
                if (sent) {
                    whole(m);
                    ticks(m);
                }
                if (sent || sources.contains(m)) {
                    new GuardCheck(bus, m, sent, filled::contains, out).check();
                }
            }
        }
    }

    private void line(Line line) {
        OnBus to = line.to().message();
        Place place = line.typed().places().at("to");
        if (targets.add(to) && !to.ours()) {
            sender(line.to(), place);
        }
        if (!filled.add(line.to().signal())) {
            out.fault(
                    "target-twice",
                    place,
                    line.to().name() + " of '" + to.message().name() + "' is filled twice");
        }
        if (!line.to().signal().multiplexing().always()) {
            out.fault(
                    "target-multiplexed",
                    place,
                    line.to().name()
                            + " is in its message only now and then (multiplexed); that cannot be translated to");
        }
        line.from().ifPresent(from -> {
            sources.add(from.message());
            if (from.message().ours()) {
                out.fault(
                        "source-is-own",
                        line.typed().places().at("from"),
                        "'" + from.message().message().name() + "' is sent by the gateway itself");
            }
            if (from.bus() == line.to().bus()) {
                out.warning(
                        "same-network",
                        place,
                        "source and target are both on '" + from.bus().name()
                                + "'; whoever listens there hears the source");
            }
        });
    }

    private void sender(Line.End to, Place place) {
        String name = to.message().message().name();
        String gate = to.bus().plan().gateway();
        if (to.message().senders().isEmpty()) {
            out.fault(
                    "sender-missing",
                    place,
                    "nothing says who sends '" + name + "'; if it is the gateway, type 'from: " + gate
                            + "' at this message");
        } else {
            out.fault(
                    "two-senders",
                    place,
                    "'" + name + "' is sent by " + to.message().sender()
                            + " already, and the gateway would send it, too;" + " if that node is gone, type 'from: "
                            + gate + "' at this message");
        }
    }

    /** Every signal of a message that the gateway sends is filled by something. */
    private void whole(OnBus m) {
        List<String> empty = m.message().signals().stream()
                .filter(s -> !filled.contains(s) && !guards(m, s))
                .map(Signal::name)
                .toList();
        if (!empty.isEmpty()) {
            out.warning(
                    "signal-not-filled",
                    m.place(),
                    "'" + m.message().name() + "' is sent by the gateway, and nothing fills " + String.join(", ", empty)
                            + ": raw 0 is sent there; use 'fixed' for what should be else");
        }
    }

    private static boolean guards(OnBus m, Signal s) {
        return m.plan().flatMap(MessagePlan::counter).filter(s.name()::equals).isPresent()
                || m.plan()
                        .flatMap(MessagePlan::checksum)
                        .filter(s.name()::equals)
                        .isPresent();
    }

    /** Frames leave when the gateway looks: other periods are rounded up. */
    private void ticks(OnBus m) {
        m.shortest().ifPresent(every -> {
            long poll = gateway.poll();
            if (poll > 0 && every % poll != 0) {
                out.warning(
                        "period-rounded",
                        m.place(),
                        "'" + m.message().name() + "' is to be sent every " + Shown.ms(every)
                                + "; the gateway looks every " + Shown.ms(poll) + ", so it becomes "
                                + Shown.ms((every / poll + 1) * poll));
            }
        });
    }
}
