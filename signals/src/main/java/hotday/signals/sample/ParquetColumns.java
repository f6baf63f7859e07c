package hotday.signals.sample;

import hotday.signals.parquet.ParquetColumn;
import hotday.signals.parquet.ParquetWriter;
import java.io.OutputStream;
import java.util.List;

/** Rows of a Parquet file; a signal that is ever a text has a column of texts. */
final class ParquetColumns implements ColumnRows {
    private final List<ParquetColumn> columns;
    private final ParquetWriter rows;

    /** @param columns time first */
    ParquetColumns(OutputStream out, List<ParquetColumn> columns) {
        this.columns = List.copyOf(columns);
        this.rows = new ParquetWriter(out, columns);
    }

    @Override
    public void row(double time, double[] values, String[] texts) {
        rows.put(0, ParquetSamples.microseconds(time));
        for (int i = 0; i < values.length; i++) {
            if (texts[i] != null) {
                rows.put(i + 1, texts[i]);
            } else if (!columns.get(i + 1).text()) {
                rows.put(i + 1, values[i]);
            } else if (!Double.isNaN(values[i])) {
                rows.put(i + 1, Double.toString(values[i]));
            }
        }
        rows.endRow();
    }

    @Override
    public void finish() {
        rows.finish();
    }
}
