package hotday.signals.gateway;

import hotday.core.finding.Place;
import hotday.core.unit.Nearest;
import hotday.signals.dbc.Signal;
import hotday.signals.dbc.ValueForm;
import hotday.signals.translator.Field;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Whether counter and checksum of a message are said, and can be what is said of them. */
final class GuardCheck {
    /** Words that names of such signals hold; common practice, no source. */
    private static final Set<String> CHECKSUM_WORDS = Set.of("crc", "checksum", "chksum", "cks", "chk");

    private static final Set<String> COUNTER_WORDS = Set.of("counter", "cnt", "alive", "rolling", "sequence");
    private static final int LONGEST_COUNTER = 16;
    private static final int LONGEST_CHECKSUM = 32;

    private final Bus bus;
    private final OnBus m;
    private final boolean sent;
    private final Predicate<Signal> filled;
    private final Findings out;

    /**
     * @param sent whether the gateway sends the message; else it listens to it
     * @param filled whether a signal is the target of a translation
     */
    GuardCheck(Bus bus, OnBus m, boolean sent, Predicate<Signal> filled, Findings out) {
        this.bus = bus;
        this.m = m;
        this.sent = sent;
        this.filled = filled;
        this.out = out;
    }

    void check() {
        check("counter", COUNTER_WORDS, m.plan().flatMap(MessagePlan::counter)).ifPresent(this::counter);
        check("checksum", CHECKSUM_WORDS, m.plan().flatMap(MessagePlan::checksum))
                .ifPresent(this::checksum);
        alone();
    }

    /** The signal that is typed and there. */
    private Optional<Signal> check(String kind, Set<String> words, Optional<String> typed) {
        if (typed.isEmpty()) {
            missing(kind, words);
            return Optional.empty();
        }
        if (typed.get().equals(MessagePlan.NONE)) {
            return Optional.empty();
        }
        Optional<Signal> found = m.message().signal(typed.get());
        if (found.isEmpty()) {
            List<String> known =
                    m.message().signals().stream().map(Signal::name).toList();
            wrong(
                    kind,
                    m.place(),
                    "'" + m.message().name() + "' has no signal '" + typed.get() + "'"
                            + Nearest.to(typed.get(), known)
                                    .map(n -> " (did you mean '" + n + "'?)")
                                    .orElse(""));
            return found;
        }
        if (filled.test(found.get())) {
            wrong(kind, m.place(), "'" + typed.get() + "' is the " + kind + " and the target of a translation, too");
        }
        if (!found.get().multiplexing().always()) {
            wrong(kind, m.place(), "'" + typed.get() + "' is in its message only now and then (multiplexed)");
        }
        if (!Field.fits(found.get())) {
            wrong(kind, m.place(), "'" + typed.get() + "' does not lie inside a frame of eight bytes");
            return Optional.empty();
        }
        return found;
    }

    private void missing(String kind, Set<String> words) {
        Optional<Signal> there = m.message().signals().stream()
                .filter(s -> looksLike(s, words, kind))
                .findFirst();
        there.ifPresent(s -> out.fault(
                kind + "-missing",
                m.place(),
                "'" + m.message().name() + "' of '" + bus.name() + "' has a " + kind + " by the name of its signal '"
                        + s.name() + "', and nothing says that the gateway "
                        + (sent ? "fills it" : "looks at it") + "; type '" + kind + ": " + s.name() + "', or '" + kind
                        + ": none' if it is something else"));
    }

    private void wrong(String kind, Place place, String message) {
        out.fault(kind + "-wrong", place, message);
    }

    private void counter(Signal s) {
        MessagePlan plan = m.plan().orElseThrow();
        int typed = plan.counterLast();
        if (s.form() != ValueForm.UNSIGNED || typed > Scale.highest(s) || s.bits() > LONGEST_COUNTER) {
            wrong(
                    "counter",
                    m.place(),
                    "'" + s.name() + "' has " + s.bits() + " bits (" + s.form().word() + "); it cannot count to "
                            + (typed > 0 ? String.valueOf(typed) : "its highest value") + " as a counter of up to "
                            + LONGEST_COUNTER + " bits does");
            return;
        }
        int first = plan.counterFirst();
        int last = Guards.last(plan, s);
        int step = plan.counterStep();
        if (first >= last || (last - first) % step != 0) {
            wrong(
                    "counter",
                    m.place(),
                    "'" + s.name() + "' cannot count from " + first + " to " + last + " in steps of " + step
                            + "; see 'counter_first', 'counter_last' and 'counter_step'");
        }
    }

    private void checksum(Signal s) {
        if (s.form() != ValueForm.UNSIGNED || s.bits() % Byte.SIZE != 0) {
            wrong(
                    "checksum",
                    m.place(),
                    "'" + s.name() + "' has " + s.bits() + " bits (" + s.form().word()
                            + "); a checksum has 8, 16 or 32 without sign");
            return;
        }
        Optional<ChecksumPlan> rule = m.plan().flatMap(MessagePlan::checksumRule);
        if (rule.isEmpty()) {
            out.warning(
                    "checksum-rule-missing",
                    m.place(),
                    "nothing says how '" + s.name() + "' of '" + m.message().name()
                            + "' is worked out; type 'checksum_rule' (replay and export need it)");
            return;
        }
        rule(s, rule.get());
    }

    private void rule(Signal s, ChecksumPlan rule) {
        int bits = s.bits();
        boolean eight = rule.kind() == ChecksumPlan.Kind.J1850 || rule.kind() == ChecksumPlan.Kind.XOR;
        if (eight && bits != Byte.SIZE || bits != 8 && bits != 16 && bits != LONGEST_CHECKSUM) {
            wrong(
                    "checksum",
                    rule.place(),
                    "'" + rule.kind().word() + "' gives " + (eight ? "8" : "8, 16 or 32") + " bits, '" + s.name()
                            + "' has " + bits);
            return;
        }
        long largest = (1L << bits) - 1;
        if (rule.generator() > largest || rule.init() > largest || rule.inverted() > largest) {
            wrong(
                    "checksum",
                    rule.place(),
                    String.format("'poly', 'init' and 'xor' of '%s' go up to 0x%X (%d bits)", s.name(), largest, bits));
        }
        Field field = Field.of(s);
        for (int at : rule.bytes()) {
            if (at >= m.message().length()) {
                wrong(
                        "checksum",
                        rule.place(),
                        "'bytes' names byte " + at + ", '" + m.message().name() + "' has "
                                + m.message().length() + ", from 0 on");
            } else if (at >= field.firstByte() && at <= field.lastByte()) {
                wrong(
                        "checksum",
                        rule.place(),
                        "'bytes' names byte " + at + ", in which '" + s.name() + "' itself lies");
            }
        }
    }

    /** A rule of a checksum that nobody named; where one can be told by its name that is told already. */
    private void alone() {
        Optional<MessagePlan> plan = m.plan();
        boolean none = plan.flatMap(MessagePlan::checksum)
                .map(MessagePlan.NONE::equals)
                .orElseGet(
                        () -> m.message().signals().stream().noneMatch(s -> looksLike(s, CHECKSUM_WORDS, "checksum")));
        plan.flatMap(MessagePlan::checksumRule)
                .filter(rule -> none)
                .ifPresent(rule -> wrong(
                        "checksum",
                        rule.place(),
                        "'checksum_rule' of '" + m.message().name()
                                + "' has no checksum; type which signal it is with 'checksum'"));
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
