package hotday.study.decode;

import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import hotday.signals.log.Row;
import hotday.signals.log.Table;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A row that is one sample: {@code time_s}, {@code signal}, {@code value}, {@code unit}, {@code state} and, where it is no number, {@code text}. */
final class LongRow implements TableSource.RowSamples {
    private static final List<String> NEEDED = List.of("time_s", "signal", "value", "unit", "state");
    private static final Map<String, SampleState> STATES =
            Arrays.stream(SampleState.values()).collect(Collectors.toUnmodifiableMap(SampleState::word, s -> s));

    private final int signal;
    private final int value;
    private final int unit;
    private final int state;
    private final int text;
    private SampleSink sink;
    private long count;

    LongRow(Table table) {
        List<String> header = table.header();
        this.signal = header.indexOf("signal");
        this.value = header.indexOf("value");
        this.unit = header.indexOf("unit");
        this.state = header.indexOf("state");
        this.text = header.indexOf("text");
    }

    static boolean isLong(Table table) {
        return table.header().containsAll(NEEDED);
    }

    @Override
    public void to(SampleSink to) {
        sink = to;
    }

    @Override
    public boolean row(Row row, double time) {
        SampleState said = STATES.get(row.text(state));
        String name = row.text(signal);
        if (said == null || name.isEmpty()) {
            return false;
        }
        int number = sink.signal(name, row.text(unit));
        double sample = row.number(value);
        if (said != SampleState.VALID || !Double.isNaN(sample)) {
            sink.sample(time, number, said == SampleState.VALID ? sample : Double.NaN, said);
        } else {
            sink.text(time, number, text < 0 ? row.text(value) : row.text(text));
        }
        count++;
        return true;
    }

    @Override
    public long count() {
        return count;
    }
}
