package hotday.signals.parquet;

import java.util.Optional;
import java.util.Set;

/**
 * A column of a file as it is taken.
 *
 * @param name in the file
 * @param kind what its cells become
 */
record StoredColumn(String name, Kind kind) {
    private static final Set<String> WHOLE = Set.of(
            "TINYINT",
            "SMALLINT",
            "INTEGER",
            "BIGINT",
            "UTINYINT",
            "USMALLINT",
            "UINTEGER",
            "UBIGINT",
            "HUGEINT",
            "UHUGEINT");

    /** What the cells of a column become. */
    enum Kind {
        /** Whole numbers. */
        WHOLE("CAST(%s AS DOUBLE)"),
        /** Floating-point numbers of 32 bits: shown with as many digits as they hold. */
        SINGLE("CAST(%s AS DOUBLE)"),
        DOUBLE("CAST(%s AS DOUBLE)"),
        /** Microseconds since 1970, which a double holds exactly. */
        STAMP("CAST(epoch_us(%s) AS DOUBLE)"),
        TEXT("CAST(%s AS VARCHAR)"),
        /** Bytes as hexadecimal digits. */
        BYTES("hex(%s)");

        private final String sql;

        Kind(String sql) {
            this.sql = sql;
        }
    }

    /** Empty for lists, structures and whatever else is no plain value. */
    static Optional<StoredColumn> of(String name, String type) {
        return kind(type).map(k -> new StoredColumn(name, k));
    }

    private static Optional<Kind> kind(String type) {
        if (WHOLE.contains(type)) {
            return Optional.of(Kind.WHOLE);
        }
        if (type.matches("DECIMAL\\(\\d+,\\d+\\)")) {
            return Optional.of(Kind.DOUBLE);
        }
        if (type.startsWith("ENUM(") && !type.endsWith("]")) {
            return Optional.of(Kind.TEXT);
        }
        return switch (type) {
            case "FLOAT" -> Optional.of(Kind.SINGLE);
            case "DOUBLE" -> Optional.of(Kind.DOUBLE);
            case "TIMESTAMP", "TIMESTAMP_S", "TIMESTAMP_MS", "TIMESTAMP_NS", "TIMESTAMP WITH TIME ZONE" ->
                Optional.of(Kind.STAMP);
            case "VARCHAR", "BOOLEAN", "TIME", "TIME_NS", "TIME WITH TIME ZONE", "DATE", "UUID" ->
                Optional.of(Kind.TEXT);
            case "BLOB" -> Optional.of(Kind.BYTES);
            default -> Optional.empty();
        };
    }

    boolean isText() {
        return kind == Kind.TEXT || kind == Kind.BYTES;
    }

    /** What is asked for. */
    String sql() {
        return String.format(kind.sql, '"' + name.replace("\"", "\"\"") + '"');
    }
}
