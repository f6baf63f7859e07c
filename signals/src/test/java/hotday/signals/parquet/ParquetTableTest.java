package hotday.signals.parquet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files written by DuckDB's own statements. */
class ParquetTableTest {
    @TempDir
    Path folder;

    private ParquetTable table(String query, String... more) throws SQLException {
        return ParquetTable.open(DuckFile.write(folder.resolve("duck.parquet"), query, more));
    }

    private static Finding fault(Path file) {
        return catchThrowableOfType(InputException.class, () -> DuckFile.rows(ParquetTable.open(file)))
                .findings()
                .get(0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "-7::TINYINT | -7 | -7",
                "200::UTINYINT | 200 | 200",
                "-300::SMALLINT | -300 | -300",
                "70000::INTEGER | 70000 | 70000",
                "9007199254740992::BIGINT | 9007199254740992 | 9007199254740992",
                "4294967295::UINTEGER | 4294967295 | 4294967295",
                "0.1::FLOAT | 0.10000000149011612 | 0.1",
                "0.1::DOUBLE | 0.1 | 0.1",
                "1e20::DOUBLE | 1e20 | 100000000000000000000",
                "12.50::DECIMAL(9,2) | 12.5 | 12.5",
                "-123456789012.345::DECIMAL(18,3) | -123456789012.345 | -123456789012.345",
                "0.125::DECIMAL(30,5) | 0.125 | 0.125",
                "TIMESTAMP '2024-01-01 00:00:00.25' | 1704067200.25 | 1704067200.25",
                "TIMESTAMP_MS '2024-01-01 00:00:00.25' | 1704067200.25 | 1704067200.25",
                "TIMESTAMP_NS '2024-01-01 00:00:00.25' | 1704067200.25 | 1704067200.25",
                "TIMESTAMPTZ '2024-01-01 01:00:00.25+01' | 1704067200.25 | 1704067200.25",
                "' 12.5 ' | 12.5 | 12.5",
                "'Leerlauf \u00E4' | NaN | Leerlauf \u00E4",
                "true | NaN | true",
                "TIME '10:20:30.5' | NaN | 10:20:30.5",
                "DATE '2024-02-29' | NaN | 2024-02-29",
                "'\\x0A\\xFF'::BLOB | NaN | 0AFF",
                "NULL::DOUBLE | NaN | ``",
                "NULL::VARCHAR | NaN | ``",
                "'nan'::DOUBLE | NaN | ``",
                "'inf'::DOUBLE | NaN | ``",
            })
    void each_type_is_taken(String value, double number, String text) throws SQLException {
        List<Double> numbers = new ArrayList<>();
        ParquetTable table = table("SELECT " + value + " AS x");
        table.rows(row -> {
            numbers.add(row.number(0));
            assertThat(row.blank(0)).isEqualTo(text.isEmpty());
            assertThat(row.number(1)).isNaN();
            assertThat(row.text(1)).isEmpty();
        });

        assertThat(numbers).containsExactly(number);
        assertThat(DuckFile.rows(table)).containsExactly(List.of("1", text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"uncompressed", "snappy", "gzip", "zstd", "brotli", "lz4_raw"})
    void each_packing_is_unpacked(String codec) throws SQLException {
        ParquetTable table = table(
                "SELECT i * 0.5::DOUBLE AS t, 'w' || (i % 3) AS w FROM range(50000) x(i)",
                ", CODEC " + codec + ", ROW_GROUP_SIZE 4096, PARQUET_VERSION V2");
        List<List<String>> rows = DuckFile.rows(table);

        assertThat(rows).hasSize(50_000);
        assertThat(rows.get(49_999)).containsExactly("50000", "24999.5", "w1");
    }

    @Test
    void units_stand_in_the_names_or_beside_them() throws SQLException {
        ParquetTable table = table(
                "SELECT 1.0 AS \"coolant [degC]\", 2.0 AS speed, now()::TIMESTAMP AS ts",
                ", KV_METADATA {'unit.speed': 'km/h'}");

        assertThat(table.header()).containsExactly("coolant [degC]", "speed", "ts");
        assertThat(table.unit(0)).isEmpty();
        assertThat(table.unit(1)).contains("km/h");
        assertThat(table.unit(2)).contains("s");
    }

    @Test
    void lists_and_structures_are_left_out_and_told() throws SQLException {
        ParquetTable table = table("SELECT [1, 2] AS l, 1 AS a, {'x': 1} AS st, 2 AS b, MAP {'k': 1} AS m");

        assertThat(table.header()).containsExactly("a", "b");
        assertThat(DuckFile.rows(table)).containsExactly(List.of("1", "1", "2"));
        assertThat(table.findings()).hasSize(1);
        assertThat(table.findings().get(0).key()).isEqualTo("columns-left-out");
        assertThat(table.findings().get(0).message()).contains("l (INTEGER[])", "st (STRUCT", "m (MAP");
    }

    @Test
    void a_name_of_a_file_is_no_pattern() throws SQLException, IOException {
        Path odd = folder.resolve("year=2024");
        Files.createDirectory(odd);
        DuckFile.write(odd.resolve("run1.parquet"), "SELECT 1 AS other");
        Files.copy(DuckFile.write(folder.resolve("x.parquet"), "SELECT 2 AS a"), odd.resolve("it's run[1]*?.parquet"));

        ParquetTable table = ParquetTable.open(odd.resolve("it's run[1]*?.parquet"));

        assertThat(table.header()).containsExactly("a");
        assertThat(DuckFile.rows(table)).containsExactly(List.of("1", "2"));
    }

    @Test
    void a_file_cut_anywhere_is_refused_in_words() throws SQLException, IOException {
        byte[] whole = Files.readAllBytes(
                DuckFile.write(folder.resolve("w.parquet"), "SELECT i AS a, 'x' || i AS b FROM range(100) x(i)"));
        Path cut = folder.resolve("cut.parquet");
        for (int length = 4; length < whole.length; length += 7) {
            Files.write(cut, Arrays.copyOf(whole, length));

            assertThat(fault(cut).key()).isEqualTo("parquet-damaged");
            assertThat(fault(cut).message()).contains("cut short", "byte " + length);
        }
    }

    @Test
    void a_description_longer_than_the_file_is_refused_with_its_byte() throws IOException {
        Path file = folder.resolve("long.parquet");
        Files.write(file, "PAR1....\u007F\u007F\u007F\u007FPAR1".getBytes(StandardCharsets.ISO_8859_1));

        assertThat(fault(file).message()).contains("damaged at byte 8", "2139062143 bytes");
    }

    @Test
    void damaged_bytes_are_rows_or_a_fault_in_words() throws SQLException, IOException {
        damage(300, 1);
    }

    @Test
    @Tag("slow")
    void damaged_bytes_are_rows_or_a_fault_in_words_many_times() throws SQLException, IOException {
        damage(2_000, 2);
    }

    private void damage(int times, int seed) throws SQLException, IOException {
        byte[] whole = Files.readAllBytes(
                DuckFile.write(
                        folder.resolve("w.parquet"),
                        "SELECT i * 0.01 AS t, (i * 7919) % 1000 AS a, 'w' || i % 5 AS b, i::FLOAT AS c FROM range(1000) x(i)"));
        Random random = new Random(seed);
        Path broken = folder.resolve("broken.parquet");
        int refused = 0;
        for (int i = 0; i < times; i++) {
            byte[] bytes = whole.clone();
            for (int k = 0; k < 1 + random.nextInt(4); k++) {
                // half of them in the description at the end, which says where everything lies
                int at = random.nextBoolean() ? random.nextInt(bytes.length) : bytes.length - 1 - random.nextInt(600);
                bytes[Math.max(4, at)] = (byte) random.nextInt(256);
            }
            Files.write(broken, bytes);
            try {
                ParquetTable.open(broken).rows(row -> {});
            } catch (InputException e) {
                refused++;
                assertThat(e.findings().get(0).key()).isIn("parquet-damaged", "parquet-too-large", "no-columns");
                assertThat(e.findings().get(0).message()).doesNotContain("\n");
            }
        }
        assertThat(refused).isBetween(times / 20, times);
    }
}
