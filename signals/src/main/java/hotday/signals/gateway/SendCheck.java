package hotday.signals.gateway;

import hotday.core.finding.Place;
import hotday.core.unit.Nearest;
import hotday.signals.dbc.Signal;
import hotday.signals.dbc.ValueForm;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Messages that the gateway sends or listens to: whose they are, what fills them, what guards them. */
final class SendCheck {
    /** Words that names of such signals hold; common practice, no source. */
    private static final Set<String> CHECKSUM_WORDS = Set.of("crc", "checksum", "chksum", "cks", "chk");

    private static final Set<String> COUNTER_WORDS = Set.of("counter", "cnt", "alive", "rolling", "sequence");
    private static final int LONGEST_COUNTER = 16;

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
                    guards(bus, m, sent);
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

    private void guards(Bus bus, OnBus m, boolean sent) {
        guard(bus, m, sent, "counter", COUNTER_WORDS, m.plan().flatMap(MessagePlan::counter));
        guard(bus, m, sent, "checksum", CHECKSUM_WORDS, m.plan().flatMap(MessagePlan::checksum));
    }

    private void guard(Bus bus, OnBus m, boolean sent, String kind, Set<String> words, Optional<String> typed) {
        String name = m.message().name();
        if (typed.isPresent()) {
            if (!typed.get().equals(MessagePlan.NONE)) {
                typedGuard(m, kind, typed.get());
            }
            return;
        }
        Optional<Signal> there = m.message().signals().stream()
                .filter(s -> looksLike(s, words, kind))
                .findFirst();
        there.ifPresent(s -> out.fault(
                kind + "-missing",
                m.place(),
                "'" + name + "' of '" + bus.name() + "' has a " + kind + " by the name of its signal '" + s.name()
                        + "', and nothing says that the gateway "
                        + (sent ? "fills it" : "looks at it") + "; type '" + kind + ": " + s.name() + "', or '" + kind
                        + ": none' if it is something else"));
    }

    private void typedGuard(OnBus m, String kind, String signal) {
        Place place = m.place();
        Optional<Signal> found = m.message().signal(signal);
        if (found.isEmpty()) {
            List<String> known =
                    m.message().signals().stream().map(Signal::name).toList();
            out.fault(
                    kind + "-wrong",
                    place,
                    "'" + m.message().name() + "' has no signal '" + signal + "'"
                            + Nearest.to(signal, known)
                                    .map(n -> " (did you mean '" + n + "'?)")
                                    .orElse(""));
            return;
        }
        Signal s = found.get();
        if (filled.contains(s)) {
            out.fault(
                    kind + "-wrong",
                    place,
                    "'" + signal + "' is the " + kind + " and the target of a translation, too");
        }
        double highest = Scale.highest(s);
        int last = m.plan().map(MessagePlan::counterLast).orElse(0);
        if (kind.equals("counter")
                && (s.form() != ValueForm.UNSIGNED || last > highest || s.bits() > LONGEST_COUNTER)) {
            out.fault(
                    kind + "-wrong",
                    place,
                    "'" + signal + "' has " + s.bits() + " bits (" + s.form().word() + "); it cannot count to "
                            + (last > 0 ? String.valueOf(last) : "its highest value") + " as a counter of up to "
                            + LONGEST_COUNTER + " bits does");
        }
        if (kind.equals("checksum") && (s.form() != ValueForm.UNSIGNED || s.bits() % Byte.SIZE != 0)) {
            out.fault(
                    kind + "-wrong",
                    place,
                    "'" + signal + "' has " + s.bits() + " bits (" + s.form().word()
                            + "); a checksum has 8, 16 or 32 without sign");
        }
    }

    /** A name such as EngineCRC, Alive_Counter or MsgChksum8; what has a unit counts something else. */
    private static boolean looksLike(Signal s, Set<String> words, String kind) {
        String spaced = s.name().replaceAll("([a-z0-9])([A-Z])", "$1 $2").replaceAll("[_0-9]+", " ");
        boolean named =
                Arrays.stream(spaced.toLowerCase(Locale.ROOT).split(" ")).anyMatch(words::contains);
        boolean sized = kind.equals("checksum") ? s.bits() >= 4 : s.bits() >= 2 && s.bits() <= LONGEST_COUNTER;
        return named && sized && s.unit().isBlank() && s.form() == ValueForm.UNSIGNED;
    }
}
