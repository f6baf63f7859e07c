package hotday.signals.mdf;

import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import java.util.ArrayList;
import java.util.List;

/** The channels of a group that are measured values, and where they go. */
final class SampleGroup {
    /**
     * A channel that is read.
     *
     * @param name that no other channel of the file has
     */
    record Signal(String name, Channel channel, ChannelReader reader) {}

    private final List<Signal> signals;
    private final int[] numbers;
    private final Physical value = new Physical();

    SampleGroup(List<Signal> signals) {
        this.signals = List.copyOf(signals);
        this.numbers = new int[signals.size()];
    }

    List<Signal> signals() {
        return signals;
    }

    /** Names its signals to whoever takes them, in the order of the file. */
    void name(SampleSink sink) {
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] =
                    sink.signal(signals.get(i).name(), signals.get(i).channel().unit());
        }
    }

    /** Hands out the values of a record; returns how many. */
    int put(RecordCursor record, double time, SampleSink sink) {
        for (int i = 0; i < numbers.length; i++) {
            SampleState state = signals.get(i).reader().read(record, value);
            if (state == SampleState.VALID && value.text().isPresent()) {
                sink.text(time, numbers[i], value.text().get());
            } else {
                sink.sample(time, numbers[i], state == SampleState.VALID ? value.number() : Double.NaN, state);
            }
        }
        return numbers.length;
    }

    /** Values that lie apart from the records, to be closed. */
    List<Values> apart() {
        List<Values> all = new ArrayList<>();
        signals.forEach(s -> s.reader().apart().ifPresent(all::add));
        return all;
    }
}
