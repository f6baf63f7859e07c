package hotday.signals.parquet;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.stream.Collectors;

/** One file asked through DuckDB, in memory, with a limit: nothing is fetched, nothing is written to disk. */
final class ParquetQuery implements AutoCloseable {
    /** For pages that are unpacked, MB: some hundred columns at once in row groups of usual size. */
    private static final int MEMORY = 512;

    private final Path path;
    private final Connection connection;
    private final Statement statement;

    ParquetQuery(Path path) {
        this.path = path;
        try {
            connection = DriverManager.getConnection("jdbc:duckdb:", settings());
            statement = connection.createStatement();
        } catch (SQLException | LinkageError e) {
            throw InputException.at(
                    Place.of(path.toString()),
                    "parquet-not-here",
                    "is a Parquet file, and the library that reads them does not start on this machine ("
                            + e.getMessage() + "): save the recording as CSV text");
        }
    }

    private static Properties settings() {
        Properties settings = new Properties();
        Map.of(
                        "jdbc_stream_results", "true",
                        "autoinstall_known_extensions", "false",
                        "autoload_known_extensions", "false",
                        "allow_community_extensions", "false",
                        "memory_limit", MEMORY + "MB",
                        "threads", "1",
                        "temp_directory", "")
                .forEach(settings::put);
        return settings;
    }

    /** The file as a source of rows; the name is taken as it is and not as a pattern of names. */
    private String source() {
        String name = path.toAbsolutePath().toString().replace("'", "''").replaceAll("[\\[*?]", "[$0]");
        return "read_parquet('" + name + "', hive_partitioning=false)";
    }

    /** Types by name, in the order of the file. */
    Map<String, String> columns() {
        Map<String, String> types = new LinkedHashMap<>();
        try (ResultSet all = statement.executeQuery("DESCRIBE SELECT * FROM " + source())) {
            while (all.next()) {
                types.put(all.getString(1), all.getString(2));
            }
        } catch (SQLException e) {
            throw told(e, 0);
        }
        return types;
    }

    /** Words that whoever wrote the file put beside its columns. */
    Map<String, String> words() {
        Map<String, String> words = new HashMap<>();
        String source =
                source().replace("read_parquet", "parquet_kv_metadata").replace(", hive_partitioning=false", "");
        try (ResultSet all = statement.executeQuery("SELECT key, value FROM " + source)) {
            while (all.next()) {
                words.put(text(all.getBytes(1)), text(all.getBytes(2)));
            }
        } catch (SQLException e) {
            throw told(e, 0);
        }
        return words;
    }

    private static String text(byte[] bytes) {
        return bytes == null ? "" : new String(bytes, StandardCharsets.UTF_8);
    }

    /** Rows in the order of the file. */
    ResultSet rows(List<StoredColumn> columns, int most) {
        String asked = columns.stream().map(StoredColumn::sql).collect(Collectors.joining(", "));
        String limit = most == Integer.MAX_VALUE ? "" : " LIMIT " + most;
        try {
            return statement.executeQuery("SELECT " + asked + " FROM " + source() + limit);
        } catch (SQLException e) {
            throw told(e, 0);
        }
    }

    /** @param row that could be read last; 0 when none was asked for */
    InputException told(SQLException e, long row) {
        String said = String.valueOf(e.getMessage())
                .replace(path.toAbsolutePath().toString(), path.getFileName().toString());
        String first = said.lines().findFirst().orElse("").replaceFirst("^([A-Z][A-Za-z/ ]* Error: |Error: )+", "");
        String where = row > 0 ? " behind row " + row : "";
        if (said.contains("Out of Memory")) {
            return InputException.at(
                    Place.of(path.toString()),
                    "parquet-too-large",
                    "needs more than " + MEMORY + " MB to be unpacked" + where
                            + ": write it with smaller row groups or fewer columns");
        }
        return FooterCheck.damaged(path, "is damaged, or of a kind that is not read" + where + ": " + first);
    }

    @Override
    public void close() {
        try {
            connection.close();
        } catch (SQLException e) {
            throw told(e, 0);
        }
    }
}
