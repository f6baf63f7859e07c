package hotday.signals.j1939;

import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** The parameters of one group as one sender sends them, each under its number in the sink. */
final class GroupSignals {
    private static final VarHandle LITTLE = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

    private final Spn[] spns;
    private final int[] numbers;

    GroupSignals(Spn[] spns, int source, int destination, SampleSink samples) {
        this.spns = spns;
        this.numbers = new int[spns.length];
        for (int i = 0; i < spns.length; i++) {
            numbers[i] = samples.signal(name(spns[i], source, destination), spns[i].unit());
        }
    }

    /** Whatever must be kept apart: group, sender, and who is addressed. */
    private static String name(Spn spn, int source, int destination) {
        String addressed = J1939Id.isAddressed(spn.pgn()) ? String.format(">%02X", destination) : "";
        return spn.group() + "." + spn.name() + String.format("@%02X", source) + addressed;
    }

    void decode(double time, byte[] data, int from, int length, SampleSink samples) {
        boolean whole = length >= Long.BYTES;
        long head = whole ? (long) LITTLE.get(data, from) : 0;
        for (int i = 0; i < spns.length; i++) {
            Spn spn = spns[i];
            if (!spn.reaches(length)) {
                continue;
            }
            if (spn.isText()) {
                samples.text(time, numbers[i], text(data, from + spn.bit() / 8, from + length));
                continue;
            }
            long raw = whole && spn.isInHead() ? spn.raw(head) : spn.raw(data, from);
            SampleState state = spn.state(raw);
            samples.sample(time, numbers[i], state == SampleState.VALID ? spn.value(raw) : Double.NaN, state);
        }
    }

    /** Characters up to an asterisk; what is no printable character is told as a dot. */
    private static String text(byte[] data, int from, int to) {
        int end = from;
        while (end < to && data[end] != '*') {
            end++;
        }
        return new String(data, from, end - from, StandardCharsets.ISO_8859_1).replaceAll("[^ -~]", ".");
    }
}
