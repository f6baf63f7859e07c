package hotday.signals.parquet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written, read back by DuckDB. */
class ParquetWriterTest {
    private static final List<ParquetColumn> COLUMNS =
            List.of(new ParquetColumn("time_s", false), new ParquetColumn("a, \"b\" [\u00B0C]", true));

    @TempDir
    Path folder;

    /** A row is number and text, either may be null. */
    private Path write(List<Object[]> rows) throws IOException {
        Path file = folder.resolve("own.parquet");
        try (OutputStream out = Files.newOutputStream(file)) {
            ParquetWriter writer = new ParquetWriter(out, COLUMNS);
            for (Object[] row : rows) {
                if (row[0] != null) {
                    writer.put(0, (double) row[0]);
                }
                if (row[1] != null) {
                    writer.put(1, (String) row[1]);
                }
                writer.endRow();
            }
            writer.finish();
        }
        return file;
    }

    @Test
    void numbers_texts_and_missing_cells_come_back() throws IOException, SQLException {
        Path file = write(Arrays.asList(
                new Object[] {0.1, "x"},
                new Object[] {null, "\u00E4\u4E16\uD83D\uDE00"},
                new Object[] {-1e300, null},
                new Object[] {Double.NaN, ""},
                new Object[] {Double.MIN_VALUE, "x"}));

        assertThat(DuckFile.ask("DESCRIBE SELECT * FROM '" + file + "'").stream()
                        .map(r -> r.subList(0, 2)))
                .containsExactly(List.of("time_s", "DOUBLE"), List.of("a, \"b\" [\u00B0C]", "VARCHAR"));
        assertThat(DuckFile.ask("FROM '" + file + "'"))
                .containsExactly(
                        List.of("0.1", "x"),
                        Arrays.asList(null, "\u00E4\u4E16\uD83D\uDE00"),
                        Arrays.asList("-1.0E300", null),
                        Arrays.asList(null, ""),
                        List.of("4.9E-324", "x"));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 7, 8, 9, 300, 700_000})
    void every_length_comes_back_cell_for_cell(int length) throws IOException, SQLException {
        Random random = new Random(length);
        List<Object[]> rows = new java.util.ArrayList<>();
        double sum = 0;
        int numbers = 0;
        int texts = 0;
        for (int i = 0; i < length; i++) {
            Double number = random.nextInt(5) == 0 ? null : (Double) (double) random.nextInt(1000);
            String text = random.nextInt(7) == 0 ? null : "w" + random.nextInt(1 + length / 3);
            rows.add(new Object[] {number, text});
            sum += number == null ? 0 : number * (i + 1);
            numbers += number == null ? 0 : 1;
            texts += text == null ? 0 : 1;
        }
        Path file = write(rows);

        assertThat(DuckFile.ask(
                        "SELECT count(*), count(time_s), count(#2), coalesce(sum(time_s * (file_row_number + 1)), 0)::BIGINT"
                                + " FROM (SELECT time_s, columns('a, .*'), file_row_number FROM read_parquet('" + file
                                + "', file_row_number=true))"))
                .containsExactly(List.of(
                        String.valueOf(length), String.valueOf(numbers), String.valueOf(texts), String.valueOf((long)
                                sum)));
        List<List<String>> back = DuckFile.rows(ParquetTable.open(file));
        for (int i = 0; i < length; i++) {
            Object[] row = rows.get(i);
            assertThat(back.get(i))
                    .containsExactly(
                            String.valueOf(i + 1),
                            row[0] == null ? "" : String.valueOf(((Double) row[0]).intValue()),
                            row[1] == null ? "" : (String) row[1]);
        }
    }

    @Test
    void a_long_recording_is_written_in_groups() throws IOException, SQLException {
        Path file = folder.resolve("long.parquet");
        try (OutputStream out = Files.newOutputStream(file)) {
            ParquetWriter writer = new ParquetWriter(out, COLUMNS);
            for (int i = 0; i < 1_000_000; i++) {
                writer.put(0, i);
                writer.endRow();
            }
            writer.finish();
        }

        assertThat(DuckFile.ask(
                        "SELECT count(DISTINCT row_group_id) > 3, max(row_group_num_rows) < 300000 FROM parquet_metadata('"
                                + file + "')"))
                .containsExactly(List.of("true", "true"));
    }
}
