package hotday.study.decode;

import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import hotday.signals.log.Row;
import java.util.ArrayList;
import java.util.List;

/** A row with a value of every signal: those that are there are samples, words are texts. */
final class WideRow implements TableSource.RowSamples {
    private final List<Signal> signals;
    private final int[] numbers;
    private SampleSink sink;
    private long count;

    /** @param unit empty where there is none */
    record Signal(String name, String unit) {}

    /** @param signals by column; null for one that is no signal */
    WideRow(List<Signal> signals) {
        this.signals = new ArrayList<>(signals);
        this.numbers = new int[signals.size()];
    }

    @Override
    public void to(SampleSink to) {
        sink = to;
        for (int i = 0; i < numbers.length; i++) {
            Signal signal = signals.get(i);
            numbers[i] = signal == null ? -1 : to.signal(signal.name(), signal.unit());
        }
    }

    @Override
    public boolean row(Row row, double time) {
        for (int i = 0; i < numbers.length; i++) {
            if (signals.get(i) != null) {
                cell(row, i, time);
            }
        }
        return true;
    }

    private void cell(Row row, int cell, double time) {
        double value = row.number(cell);
        if (!Double.isNaN(value)) {
            sink.sample(time, numbers[cell], value, SampleState.VALID);
            count++;
        } else if (!row.blank(cell)) {
            sink.text(time, numbers[cell], row.text(cell));
            count++;
        }
    }

    @Override
    public long count() {
        return count;
    }
}
