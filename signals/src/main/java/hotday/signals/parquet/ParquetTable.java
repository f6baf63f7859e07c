package hotday.signals.parquet;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.signals.log.Table;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A Parquet file as a table. Numbers are numbers; time stamps are seconds since 1970 (UTC) and their unit is s; times of day, dates and truth
 * values are text as in delimited text; bytes are hexadecimal text; missing cells are blank. Columns of lists and structures are
 * left out and told. The unit of a column stands in its name, or in the file's own words under {@code unit.} and the name. Immutable.
 */
public final class ParquetTable implements Table {
    private static final byte[] MARK = "PAR1".getBytes(StandardCharsets.US_ASCII);
    private static final String SECONDS = "s";

    private final Path path;
    private final List<StoredColumn> columns;
    private final Map<String, String> words;
    private final List<String> nested;

    private ParquetTable(Path path, List<StoredColumn> columns, Map<String, String> words, List<String> nested) {
        this.path = path;
        this.columns = List.copyOf(columns);
        this.words = Map.copyOf(words);
        this.nested = List.copyOf(nested);
    }

    /** Whether a file is one, by its first bytes. */
    public static boolean isParquet(Path path) {
        if (!Files.isRegularFile(path)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(path)) {
            return Arrays.equals(in.readNBytes(MARK.length), MARK);
        } catch (IOException e) {
            return false;
        }
    }

    /** Looks at the end of a file, where its columns are described; throws {@link InputException} when it cannot be read. */
    public static ParquetTable open(Path path) {
        FooterCheck.requireWhole(path);
        try (ParquetQuery query = new ParquetQuery(path)) {
            List<StoredColumn> usable = new ArrayList<>();
            List<String> nested = new ArrayList<>();
            query.columns()
                    .forEach((name, type) -> StoredColumn.of(name, type)
                            .ifPresentOrElse(usable::add, () -> nested.add(name + " (" + type + ")")));
            if (usable.isEmpty()) {
                throw InputException.at(
                        Place.of(path.toString()),
                        "no-columns",
                        "has no column of numbers, times or texts: nothing in it is a row");
            }
            return new ParquetTable(path, usable, query.words(), nested);
        }
    }

    @Override
    public Path path() {
        return path;
    }

    @Override
    public List<String> header() {
        return columns.stream().map(StoredColumn::name).toList();
    }

    @Override
    public Optional<String> unit(int column) {
        StoredColumn stored = columns.get(column);
        return stored.kind() == StoredColumn.Kind.STAMP
                ? Optional.of(SECONDS)
                : Optional.ofNullable(words.get("unit." + stored.name())).filter(u -> !u.isBlank());
    }

    /** Whether a column is of bytes, by its type. */
    public boolean holdsBytes(int column) {
        return columns.get(column).kind() == StoredColumn.Kind.BYTES;
    }

    /** Whether a column is of whole numbers, by its type. */
    public boolean holdsWholeNumbers(int column) {
        return columns.get(column).kind() == StoredColumn.Kind.WHOLE;
    }

    /** Always 0: it has no lines. */
    @Override
    public int headerLine() {
        return 0;
    }

    /** Always 0. */
    @Override
    public int unitsLine() {
        return 0;
    }

    @Override
    public List<Finding> findings() {
        if (nested.isEmpty()) {
            return List.of();
        }
        return List.of(Finding.note(
                "columns-left-out",
                Place.of(path.toString()),
                "columns that are no plain numbers, times or texts are left out: " + String.join(", ", nested)));
    }

    @Override
    public void rows(RowReader to, int most) {
        try (ParquetRows rows = rows(most)) {
            while (rows.next()) {
                to.row(rows);
            }
        }
    }

    /** Its rows one by one, at most so many; the caller closes them. */
    ParquetRows rows(int most) {
        return new ParquetRows(new ParquetQuery(path), columns, most);
    }

    /** All of it as text cut by commas, names in the first line; the caller closes it. */
    public InputStream text() {
        return new ParquetText(this);
    }
}
