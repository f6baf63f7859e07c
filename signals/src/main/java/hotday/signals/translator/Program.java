package hotday.signals.translator;

import hotday.signals.check.Checksum;
import hotday.signals.dbc.Message;
import hotday.signals.dbc.Signal;
import hotday.signals.dbc.ValueForm;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a gateway does, ready to be done: messages it listens to, messages it sends, and the lines that lead from one to
 * the other. Times are counted in looks (a look is one round of the gateway). docs/network.md defines every step.
 *
 * @param networks names; a network is called by its place in this list
 * @param poll from one look to the next, ns
 * @param processing from a look until its frames wait for their bus, ns
 * @param lines in the order of the sheet
 */
public record Program(
        String title,
        List<String> networks,
        long poll,
        long processing,
        List<Incoming> incoming,
        List<Outgoing> outgoing,
        List<Line> lines) {
    public Program {
        networks = List.copyOf(networks);
        incoming = List.copyOf(incoming);
        outgoing = List.copyOf(outgoing);
        lines = List.copyOf(lines);
    }

    /** A message listened to. */
    public record Incoming(
            int network, String name, int id, boolean extended, Optional<Counter> counter, Optional<Guard> checksum) {}

    /**
     * A message sent.
     *
     * @param length bytes
     * @param every looks from one frame to the next at most
     * @param onChange looks between two frames at least where it is sent on change, too; 0 where it is not
     * @param fixed its word before anything is put in: values that never change
     */
    public record Outgoing(
            int network,
            String name,
            int id,
            boolean extended,
            int length,
            int every,
            int onChange,
            long fixed,
            Optional<Counter> counter,
            Optional<Guard> checksum) {}

    /** Counts first, first + step ... last, and begins again. */
    public record Counter(String signal, Field field, int first, int last, int step) {
        /** Values that it takes. */
        int values() {
            return (last - first) / step + 1;
        }

        /** Which of them a value is, from 0; -1 for one that it never takes. */
        int index(long value) {
            boolean taken = value >= first && value <= last && (value - first) % step == 0;
            return taken ? (int) ((value - first) / step) : -1;
        }
    }

    /**
     * A checksum over bytes of the frame.
     *
     * @param before octets that enter first, without being in the frame
     * @param bytes of the payload, by number, in the order in which they enter
     * @param after octets that enter last
     */
    public record Guard(
            String signal, Field field, Checksum rule, List<Integer> before, List<Integer> bytes, List<Integer> after) {
        public Guard {
            before = List.copyOf(before);
            bytes = List.copyOf(bytes);
            after = List.copyOf(after);
        }

        /** The last byte that a frame must have. */
        public int lastByte() {
            return bytes.stream().mapToInt(Integer::intValue).reduce(field.lastByte(), Math::max);
        }

        /** What the checksum of a payload should be; its own bits do not matter unless the rule covers them. */
        public long value(byte[] data, int from) {
            int register = added(rule.start(), before);
            for (int i = 0; i < bytes.size(); i++) {
                register = rule.add(register, data[from + bytes.get(i)]);
            }
            return rule.end(added(register, after));
        }

        private int added(int register, List<Integer> octets) {
            int now = register;
            for (int i = 0; i < octets.size(); i++) {
                now = rule.add(now, octets.get(i));
            }
            return now;
        }
    }

    /**
     * What a signal becomes.
     *
     * @param from {@code network.message.signal}
     * @param incoming place in {@link Program#incoming}
     * @param to {@code network.message.signal}
     * @param outgoing place in {@link Program#outgoing}
     * @param timeOut looks after which a value counts as missing
     * @param hold frames that still carry it then
     * @param safe raw value that is sent otherwise
     */
    public record Line(
            String from,
            int incoming,
            Source source,
            Values values,
            String to,
            int outgoing,
            Field target,
            int timeOut,
            int hold,
            long safe) {}

    /**
     * Where a value comes from.
     *
     * @param when multiplexors, the outermost first: all of them must have one of their values
     * @param exponent mask of the exponent of a floating-point number, 0 for whole numbers; a value whose exponent is all
     *     ones is no number
     */
    public record Source(Field field, List<Condition> when, long exponent) {
        private static final long SINGLE_EXPONENT = 0x7F80_0000L;
        private static final long DOUBLE_EXPONENT = 0x7FF0_0000_0000_0000L;

        public Source {
            when = List.copyOf(when);
        }

        /** Whether a signal and all its multiplexors can be used and lie inside a classic frame. */
        public static boolean exists(Message message, Signal signal) {
            Signal at = signal;
            while (at.usable() && Field.fits(at) && !at.multiplexing().always()) {
                at = multiplexor(message, at.multiplexing().by());
            }
            return at.usable() && Field.fits(at);
        }

        /** A signal of a message; it {@link #exists}. */
        public static Source of(Message message, Signal signal) {
            List<Condition> when = new ArrayList<>();
            Signal at = signal;
            while (!at.multiplexing().always()) {
                Signal by = multiplexor(message, at.multiplexing().by());
                List<Range> ranges = at.multiplexing().values().stream()
                        .map(r -> new Range(r.low(), r.high()))
                        .toList();
                when.add(0, new Condition(Field.of(by), ranges));
                at = by;
            }
            return new Source(Field.of(signal), when, exponent(signal.form()));
        }

        private static Signal multiplexor(Message message, String name) {
            return message.signals().stream()
                    .filter(s -> s.name().equals(name) && s.multiplexing().multiplexor())
                    .findFirst()
                    .orElseThrow();
        }

        private static long exponent(ValueForm form) {
            return switch (form) {
                case UNSIGNED, SIGNED -> 0;
                case SINGLE -> SINGLE_EXPONENT;
                case DOUBLE -> DOUBLE_EXPONENT;
            };
        }

        /** Whether the value is in a payload of so many bytes, and a number. */
        public boolean isThere(long word, int length) {
            for (int i = 0; i < when.size(); i++) {
                if (!when.get(i).holds(word, length)) {
                    return false;
                }
            }
            return field.reaches(length) && (exponent == 0 || (field.raw(word) & exponent) != exponent);
        }
    }

    /** A multiplexor that has one of some values. */
    public record Condition(Field field, List<Range> ranges) {
        public Condition {
            ranges = List.copyOf(ranges);
        }

        boolean holds(long word, int length) {
            if (!field.reaches(length)) {
                return false;
            }
            long raw = field.raw(word);
            for (int i = 0; i < ranges.size(); i++) {
                if (raw >= ranges.get(i).low() && raw <= ranges.get(i).high()) {
                    return true;
                }
            }
            return false;
        }
    }

    /** Both ends included. */
    public record Range(long low, long high) {}

    /**
     * What raw values become.
     *
     * @param rows by raw value of the source, rising; they hold before anything else
     * @param rest what becomes of values that stand in no row
     * @param otherwise raw value of the target for {@link Rest#VALUE}
     * @param low lowest raw value of the source for {@link Rest#SCALED}; what lies outside counts as not come
     * @param high highest
     * @param scaling for {@link Rest#SCALED}
     */
    public record Values(List<Row> rows, Rest rest, long otherwise, long low, long high, Scaling scaling) {
        public Values {
            rows = List.copyOf(rows);
        }
    }

    /** @param safe whether the safe value is sent in place of {@code to} */
    public record Row(long from, boolean safe, long to) {}

    /** What becomes of a value that stands in no row. */
    public enum Rest {
        /** Goes through the scaling. */
        SCALED,
        /** One value for all. */
        VALUE,
        /** The safe value. */
        SAFE,
        /** Counts as not come. */
        NOTHING
    }
}
