package hotday.signals.dbc;

import hotday.signals.frame.Frame;
import hotday.signals.frame.SampleState;
import hotday.signals.j1939.Spn;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A message compiled for reading frames: every signal is one load, two shifts and a scale. Decoding allocates nothing.
 * Immutable; shared by all threads.
 *
 * <p>A value is NaN where the signal is not there: it lies beyond the payload, its multiplexor has another value, or the
 * file does not say clearly how to take it ({@link Signal#usable}). A floating-point signal whose bits are no number is
 * NaN too.
 */
public final class MessageDecoder {
    private final Message message;
    private final BitField[] fields;
    private final double[] factor;
    private final double[] offset;
    /** Signals in an order in which a multiplexor stands before those that depend on it. */
    private final int[] order;
    /** The multiplexor of a signal, or -1. */
    private final int[] parent;

    private final ValueRange[][] when;

    private MessageDecoder(Message message) {
        List<Signal> signals = message.signals();
        this.message = message;
        this.fields = signals.stream()
                .map(s -> s.usable() ? BitField.of(s) : BitField.NOWHERE)
                .toArray(BitField[]::new);
        this.factor = signals.stream().mapToDouble(Signal::factor).toArray();
        this.offset = signals.stream().mapToDouble(Signal::offset).toArray();
        this.when = signals.stream()
                .map(s -> s.multiplexing().values().toArray(ValueRange[]::new))
                .toArray(ValueRange[][]::new);
        this.parent = parents(signals);
        this.order = ordered(parent);
    }

    public static MessageDecoder of(Message message) {
        return new MessageDecoder(message);
    }

    private static int[] parents(List<Signal> signals) {
        Map<String, Integer> multiplexors = new HashMap<>();
        IntStream.range(0, signals.size())
                .filter(i -> signals.get(i).multiplexing().multiplexor())
                .forEach(i -> multiplexors.put(signals.get(i).name(), i));
        return signals.stream()
                .mapToInt(s -> s.multiplexing().by().isEmpty()
                        ? -1
                        : multiplexors.get(s.multiplexing().by()))
                .toArray();
    }

    /** Roots first, then whoever depends on those; no recursion, whatever the depth. */
    private static int[] ordered(int[] parent) {
        int[] child = new int[parent.length];
        int[] sibling = new int[parent.length];
        Arrays.fill(child, -1);
        for (int i = parent.length - 1; i >= 0; i--) {
            if (parent[i] >= 0) {
                sibling[i] = child[parent[i]];
                child[parent[i]] = i;
            }
        }
        int[] order = new int[parent.length];
        int filled = 0;
        for (int i = 0; i < parent.length; i++) {
            if (parent[i] < 0) {
                order[filled++] = i;
            }
        }
        for (int k = 0; k < filled; k++) {
            for (int i = child[order[k]]; i >= 0; i = sibling[i]) {
                order[filled++] = i;
            }
        }
        return order;
    }

    public Message message() {
        return message;
    }

    /** Number of signals, which is the room that {@link #decode} needs. */
    public int size() {
        return fields.length;
    }

    /** Where a signal stands in what {@link #decode} fills: its place in {@link Message#signals}. */
    public OptionalInt index(String signal) {
        return IntStream.range(0, fields.length)
                .filter(i -> message.signals().get(i).name().equals(signal))
                .findFirst();
    }

    /**
     * Physical values of all signals.
     *
     * @param data payload from its first byte on
     * @param length bytes of payload
     * @param out filled in the order of {@link Message#signals}, in the units of the file; NaN where a signal is not there
     */
    public void decode(byte[] data, int length, double[] out) {
        decode(data, 0, length, out);
    }

    /** {@link #decode(byte[], int, double[])} of a frame. The identifier is the caller's business. */
    public void decode(Frame frame, double[] out) {
        decode(frame.data(), frame.offset(), frame.length(), out);
    }

    /**
     * {@link #decode(byte[], int, double[])} of a payload inside an array.
     *
     * @param from where in {@code data} the payload begins
     */
    public void decode(byte[] data, int from, int length, double[] out) {
        Objects.checkFromIndexSize(from, length, data.length);
        Objects.checkFromIndexSize(0, fields.length, out.length);
        long head = BitField.head(data, from, length);
        for (int i : order) {
            out[i] = isThere(i, head, data, from, length, out)
                    ? fields[i].value(head, data, from) * factor[i] + offset[i]
                    : Double.NaN;
        }
    }

    private boolean isThere(int i, long head, byte[] data, int from, int length, double[] known) {
        if (!fields[i].reaches(length)) {
            return false;
        }
        int by = parent[i];
        return by < 0 || !Double.isNaN(known[by]) && within(when[i], fields[by].raw(head, data, from));
    }

    private static boolean within(ValueRange[] ranges, long raw) {
        for (ValueRange range : ranges) {
            if (range.contains(raw)) {
                return true;
            }
        }
        return false;
    }

    /**
     * Whether the bits of an unsigned signal are a value on a network of SAE J1939, or one of its codes. Parameters have up
     * to 32 bits there; of longer fields only all ones is taken for a code.
     */
    SampleState state(int signal, Frame frame) {
        Signal s = message.signals().get(signal);
        if (s.form() != ValueForm.UNSIGNED) {
            return SampleState.VALID;
        }
        long raw = raw(signal, frame.data(), frame.offset(), frame.length());
        if (s.bits() <= Integer.SIZE) {
            return Spn.state(raw, s.bits());
        }
        return raw == -1L >>> Long.SIZE - s.bits() ? SampleState.NOT_AVAILABLE : SampleState.VALID;
    }

    /** Whether a signal lies inside a payload of so many bytes, its multiplexor aside. */
    public boolean reaches(int signal, int length) {
        return fields[signal].reaches(length);
    }

    /**
     * The bits of one signal as a whole number: sign-extended when signed, the bare bits when a floating-point number or
     * unsigned (of 64 bits those above 2^63 - 1 are negative). Does not ask the multiplexor.
     *
     * @param signal where it stands in {@link Message#signals}
     */
    public long raw(int signal, byte[] data, int from, int length) {
        Objects.checkFromIndexSize(from, length, data.length);
        if (!fields[signal].reaches(length)) {
            throw new IllegalArgumentException("signal '"
                    + message.signals().get(signal).name() + "' is not in a payload of " + length + " bytes");
        }
        return fields[signal].raw(BitField.head(data, from, length), data, from);
    }
}
