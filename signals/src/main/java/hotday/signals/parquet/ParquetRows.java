package hotday.signals.parquet;

import hotday.signals.log.CellNumber;
import hotday.signals.log.Row;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;

/** Rows of a file one after the other; shows the one it stands at. */
final class ParquetRows implements Row, AutoCloseable {
    /** In a second. */
    private static final double MICROSECONDS = 1e6;

    private final ParquetQuery query;
    private final List<StoredColumn> columns;
    private final ResultSet result;
    private int row;

    /** @param query closed with it */
    ParquetRows(ParquetQuery query, List<StoredColumn> columns, int most) {
        this.query = query;
        this.columns = columns;
        try {
            this.result = query.rows(columns, most);
        } catch (RuntimeException e) {
            query.close();
            throw e;
        }
    }

    boolean next() {
        try {
            boolean there = result.next();
            row += there && row < Integer.MAX_VALUE ? 1 : 0;
            return there;
        } catch (SQLException e) {
            throw query.told(e, row);
        }
    }

    @Override
    public int count() {
        return columns.size();
    }

    @Override
    public int line() {
        return row;
    }

    @Override
    public boolean unfinished() {
        return false;
    }

    @Override
    public Damage damage() {
        return Damage.NONE;
    }

    @Override
    public boolean blank(int cell) {
        return text(cell).isEmpty();
    }

    @Override
    public double number(int cell) {
        if (cell >= columns.size()) {
            return Double.NaN;
        }
        return columns.get(cell).isText() ? inText(cell) : stored(cell);
    }

    private double inText(int cell) {
        byte[] bytes = text(cell).getBytes(StandardCharsets.UTF_8);
        return CellNumber.parse(bytes, 0, bytes.length, '.');
    }

    private double stored(int cell) {
        try {
            double value = result.getDouble(cell + 1);
            if (result.wasNull() || Double.isInfinite(value)) {
                return Double.NaN;
            }
            return columns.get(cell).kind() == StoredColumn.Kind.STAMP ? value / MICROSECONDS : value;
        } catch (SQLException e) {
            throw query.told(e, row);
        }
    }

    @Override
    public String text(int cell) {
        if (cell >= columns.size()) {
            return "";
        }
        StoredColumn column = columns.get(cell);
        if (column.isText()) {
            try {
                String text = result.getString(cell + 1);
                return text == null ? "" : text.strip();
            } catch (SQLException e) {
                throw query.told(e, row);
            }
        }
        double value = stored(cell);
        return Double.isNaN(value) ? "" : shown(column.kind(), value);
    }

    private static String shown(StoredColumn.Kind kind, double value) {
        BigDecimal digits = new BigDecimal(
                kind == StoredColumn.Kind.SINGLE ? Float.toString((float) value) : Double.toString(value));
        String plain = digits.toPlainString();
        return plain.endsWith(".0") ? plain.substring(0, plain.length() - 2) : plain;
    }

    @Override
    public void close() {
        query.close();
    }
}
