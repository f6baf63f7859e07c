package hotday.signals.gateway;

import hotday.signals.check.Checksum;
import hotday.signals.dbc.Signal;
import hotday.signals.translator.Field;
import hotday.signals.translator.Program.Counter;
import hotday.signals.translator.Program.Guard;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What guards a message: counter and checksum as they run. */
final class Guards {
    private Guards() {}

    static Optional<Signal> signal(OnBus m, Optional<String> typed) {
        return typed.flatMap(name -> m.message().signal(name));
    }

    /** Of a message whose counter has been checked. */
    static Optional<Counter> counter(OnBus m) {
        return signal(m, m.plan().flatMap(MessagePlan::counter)).map(s -> {
            MessagePlan plan = m.plan().orElseThrow();
            return new Counter(s.name(), Field.of(s), plan.counterFirst(), last(plan, s), plan.counterStep());
        });
    }

    /** Its highest value where none is typed. */
    static int last(MessagePlan plan, Signal counter) {
        return plan.counterLast() > 0 ? plan.counterLast() : (int) Scale.highest(counter);
    }

    /** Of a message whose checksum has been checked; empty where nothing says how it is worked out. */
    static Optional<Guard> checksum(OnBus m) {
        Optional<ChecksumPlan> rule = m.plan().flatMap(MessagePlan::checksumRule);
        return signal(m, m.plan().flatMap(MessagePlan::checksum)).flatMap(s -> rule.map(r -> guard(m, s, r)));
    }

    private static Guard guard(OnBus m, Signal s, ChecksumPlan rule) {
        Field field = Field.of(s);
        return new Guard(
                s.name(),
                field,
                checksum(rule, s.bits()),
                rule.idLast() ? List.of() : rule.dataId(),
                covered(m, field, rule),
                rule.idLast() ? rule.dataId() : List.of());
    }

    /** Bytes of the payload that a checksum covers: those typed, else all but its own. */
    static List<Integer> covered(OnBus m, Field field, ChecksumPlan rule) {
        return rule.bytes().isEmpty()
                ? IntStream.range(0, m.message().length())
                        .filter(i -> i < field.firstByte() || i > field.lastByte())
                        .boxed()
                        .toList()
                : rule.bytes();
    }

    private static Checksum checksum(ChecksumPlan rule, int bits) {
        return switch (rule.kind()) {
            case J1850 -> Checksum.crc8J1850();
            case CRC -> Checksum.crc(bits, rule.generator(), rule.init(), rule.inverted(), rule.reflected());
            case XOR -> Checksum.xor(rule.init(), rule.inverted());
            case SUM -> Checksum.sum(bits, rule.init(), rule.inverted());
        };
    }
}
