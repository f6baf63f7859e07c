package hotday.signals.sample;

import hotday.signals.frame.SampleState;
import hotday.signals.parquet.ParquetColumn;
import hotday.signals.parquet.ParquetWriter;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;

/** Writes a row of a Parquet file for every sample: {@code time_s}, {@code signal}, {@code value}, {@code unit}, {@code state}, {@code text}. */
public final class ParquetSamples implements SampleWriter {
    private static final int TIME = 0;
    private static final int SIGNAL = 1;
    private static final int VALUE = 2;
    private static final int UNIT = 3;
    private static final int STATE = 4;
    private static final int TEXT = 5;
    private static final List<ParquetColumn> COLUMNS = List.of(
            new ParquetColumn("time_s", false),
            new ParquetColumn("signal", true),
            new ParquetColumn("value", false),
            new ParquetColumn("unit", true),
            new ParquetColumn("state", true),
            new ParquetColumn("text", true));

    private final ParquetWriter rows;
    private final DoubleSupplier zero;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<String> names = new ArrayList<>();
    private final List<String> units = new ArrayList<>();

    /**
     * @param out stays open; {@link #finish} before it is closed
     * @param zero s on the recording's clock from which rows count; NaN when it has none, and times are missing then
     */
    public ParquetSamples(OutputStream out, DoubleSupplier zero) {
        this.rows = new ParquetWriter(out, COLUMNS);
        this.zero = zero;
    }

    @Override
    public int signal(String name, String unit) {
        return numbers.computeIfAbsent(name, n -> {
            names.add(n);
            units.add(unit);
            return names.size() - 1;
        });
    }

    @Override
    public void sample(double time, int signal, double value, SampleState state) {
        if (state == SampleState.VALID) {
            rows.put(VALUE, value);
        }
        end(time, signal, state);
    }

    @Override
    public void text(double time, int signal, String value) {
        rows.put(TEXT, value);
        end(time, signal, SampleState.VALID);
    }

    private void end(double time, int signal, SampleState state) {
        rows.put(TIME, microseconds(time - zero.getAsDouble()));
        rows.put(SIGNAL, names.get(signal));
        rows.put(UNIT, units.get(signal));
        rows.put(STATE, state.word());
        rows.endRow();
    }

    /** The same time as in text. */
    static double microseconds(double seconds) {
        return Math.rint(seconds * 1e6) / 1e6;
    }

    @Override
    public void finish() {
        rows.finish();
    }
}
