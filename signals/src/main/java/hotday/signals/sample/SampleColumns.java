package hotday.signals.sample;

import hotday.signals.frame.SampleState;
import hotday.signals.parquet.ParquetColumn;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;

/**
 * Writes a column for every signal: {@code time_s} and the values, empty where none came. Without a raster there is a row for
 * every time at which a sample came, and another where a signal came twice at that time. With one, a row at k times the
 * raster holds the last values that came after the row before and until then; a row without any is left out.
 */
public final class SampleColumns implements SampleWriter {
    private final ColumnRows rows;
    private final DoubleSupplier zero;
    private final double raster;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final double[] values;
    private final String[] texts;
    private double now = Double.NaN;
    private boolean any;

    /**
     * As text.
     *
     * @param out stays open; {@link #finish} before it is closed
     * @param zero s on the recording's clock from which rows count
     * @param raster s; 0 for a row at every time
     * @param signals the columns: all that will come
     */
    public SampleColumns(OutputStream out, DoubleSupplier zero, double raster, List<SignalStatistics> signals) {
        this(
                new TextColumns(
                        out, header(signals).stream().map(ParquetColumn::name).toList()),
                zero,
                raster,
                signals);
    }

    private SampleColumns(ColumnRows rows, DoubleSupplier zero, double raster, List<SignalStatistics> signals) {
        this.rows = rows;
        this.zero = zero;
        this.raster = raster;
        this.values = new double[signals.size()];
        this.texts = new String[signals.size()];
        Arrays.fill(values, Double.NaN);
        signals.forEach(signal -> numbers.put(signal.name(), numbers.size()));
    }

    /** The same as a Parquet file. */
    public static SampleColumns parquet(
            OutputStream out, DoubleSupplier zero, double raster, List<SignalStatistics> signals) {
        return new SampleColumns(new ParquetColumns(out, header(signals)), zero, raster, signals);
    }

    private static List<ParquetColumn> header(List<SignalStatistics> signals) {
        List<ParquetColumn> header = new ArrayList<>(List.of(new ParquetColumn("time_s", false)));
        for (SignalStatistics signal : signals) {
            String unit = signal.unit().isEmpty() ? "" : " [" + signal.unit() + "]";
            header.add(new ParquetColumn(signal.name() + unit, signal.texts() > 0));
        }
        return header;
    }

    /** -1 for a signal without a column. */
    @Override
    public int signal(String name, String unit) {
        return numbers.getOrDefault(name, -1);
    }

    @Override
    public void sample(double time, int signal, double value, SampleState state) {
        if (signal >= 0 && state == SampleState.VALID) {
            go(time, signal);
            values[signal] = value;
        }
    }

    @Override
    public void text(double time, int signal, String value) {
        if (signal >= 0) {
            go(time, signal);
            texts[signal] = value;
        }
    }

    /** Ends the row begun where the sample belongs to another. */
    private void go(double time, int signal) {
        double row = time - zero.getAsDouble();
        boolean twice = false;
        if (raster > 0) {
            row = Math.ceil(row / raster - 1e-9) * raster;
        } else {
            twice = !Double.isNaN(values[signal]) || texts[signal] != null;
        }
        if (any && (row != now || twice)) {
            row();
        }
        now = row;
        any = true;
    }

    private void row() {
        rows.row(now, values, texts);
        Arrays.fill(values, Double.NaN);
        Arrays.fill(texts, null);
        any = false;
    }

    @Override
    public void finish() {
        if (any) {
            row();
        }
        rows.finish();
    }
}
