package hotday.signals.parquet;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** The outside route: DuckDB 1.5.6 writes files for our reader, and reads what our writer wrote. */
final class DuckFile {
    private DuckFile() {}

    /** Writes what a query gives. */
    static Path write(Path file, String query, String... more) throws SQLException {
        try (Connection c = DriverManager.getConnection("jdbc:duckdb:");
                Statement s = c.createStatement()) {
            s.execute("COPY (" + query + ") TO '" + file + "' (FORMAT parquet" + String.join("", more) + ")");
        }
        return file;
    }

    /** Rows of a query as text, nulls as null. */
    static List<List<String>> ask(String query) throws SQLException {
        List<List<String>> rows = new ArrayList<>();
        try (Connection c = DriverManager.getConnection("jdbc:duckdb:");
                Statement s = c.createStatement();
                ResultSet r = s.executeQuery(query)) {
            while (r.next()) {
                List<String> row = new ArrayList<>();
                for (int i = 1; i <= r.getMetaData().getColumnCount(); i++) {
                    row.add(r.getString(i));
                }
                rows.add(row);
            }
        }
        return rows;
    }

    /** Every row of a table as a list of cells, the row's number first. */
    static List<List<String>> rows(hotday.signals.log.Table table) {
        List<List<String>> rows = new ArrayList<>();
        table.rows(row -> {
            List<String> cells = new ArrayList<>();
            cells.add(String.valueOf(row.line()));
            for (int i = 0; i < row.count(); i++) {
                cells.add(row.text(i));
            }
            rows.add(cells);
        });
        return rows;
    }
}
