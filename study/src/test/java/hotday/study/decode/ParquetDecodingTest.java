package hotday.study.decode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hotday.core.finding.InputException;
import hotday.signals.dbc.DbcFile;
import hotday.signals.dbc.NetworkDecoder;
import hotday.signals.frame.FrameDecoder;
import hotday.signals.framelog.FrameLogOptions;
import hotday.signals.framelog.StampUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Parquet into and out of decoding; DuckDB 1.5.6 stands on the other side. */
class ParquetDecodingTest {
    private static final String DBC = """
            BO_ 256 Engine: 8 ECM
             SG_ Speed : 0|16@1+ (0.25,0) [0|16000] "rpm" BCM
             SG_ Coolant : 16|8@1+ (1,-40) [-40|215] "degC" BCM
            """;

    @TempDir
    Path folder;

    private LogDecoding decoding(Path log) throws IOException {
        Path dbc = Files.writeString(folder.resolve("net.dbc"), DBC);
        List<DbcFile> files = List.of(DbcFile.read(dbc));
        List<Supplier<FrameDecoder>> decoders = List.of(() -> new NetworkDecoder(files, false));
        return new LogDecoding(log, FrameLogOptions.NONE, decoders);
    }

    private Path frames(int count) throws IOException {
        StringBuilder rows = new StringBuilder("time_us,id_hex,extended,bus,len,data\n");
        Random random = new Random(3);
        byte[] data = new byte[8];
        for (int i = 0; i < count; i++) {
            random.nextBytes(data);
            rows.append(10_000L * i + random.nextInt(3000))
                    .append(i % 3 == 0 ? ",3A" : ",100")
                    .append(",false,0,8,")
                    .append(HexFormat.of().formatHex(data))
                    .append('\n');
        }
        return Files.writeString(folder.resolve("frames.csv"), rows);
    }

    private static void copy(String query, Path to) throws SQLException {
        ask("COPY (" + query + ") TO '" + to + "' (FORMAT parquet)");
    }

    private static List<String> ask(String query) throws SQLException {
        List<String> first = new ArrayList<>();
        try (Connection c = DriverManager.getConnection("jdbc:duckdb:");
                Statement s = c.createStatement()) {
            if (s.execute(query)) {
                try (ResultSet r = s.getResultSet()) {
                    while (r.next()) {
                        first.add(r.getString(1));
                    }
                }
            }
        }
        return first;
    }

    @Test
    void samples_come_back_as_they_were_written() throws IOException, SQLException {
        LogDecoding decoding = decoding(frames(5000));
        Path text = folder.resolve("long.csv");
        Path parquet = folder.resolve("long.parquet");
        decoding.writeRows(text);
        decoding.writeRows(parquet);
        String fromText = "SELECT time_s::DOUBLE, signal, value::DOUBLE, unit, state FROM read_csv('" + text + "')";
        String fromParquet = "SELECT time_s, signal, value, unit, state FROM '" + parquet + "'";

        assertThat(ask("SELECT count(*) FROM '" + parquet + "'")).containsExactly("6666");
        assertThat(ask("(" + fromText + ") EXCEPT ALL (" + fromParquet + ")")).isEmpty();
        Path back = folder.resolve("back.csv");
        decoding(parquet).writeRows(back);
        assertThat(back).hasSameTextualContentAs(text);
    }

    @Test
    void columns_come_back_as_they_were_written() throws IOException {
        LogDecoding decoding = decoding(frames(5000));
        Path text = folder.resolve("wide.csv");
        Path parquet = folder.resolve("wide.parquet");
        decoding.writeColumns(text, 0);
        decoding.writeColumns(parquet, 0);

        Path back = folder.resolve("back.csv");
        decoding(parquet).writeColumns(back, 0);

        assertThat(back).hasSameTextualContentAs(text);
        assertThat(Files.readAllLines(back).get(0)).isEqualTo("time_s,Engine.Speed [rpm],Engine.Coolant [degC]");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "SELECT time_us, id_hex AS id, extended, bus, len, data FROM f",
                "SELECT make_timestamp(time_us) AS timestamp, ('0x' || id_hex)::INTEGER AS id, extended, bus, len,"
                        + " unhex(data) AS data FROM f",
                "SELECT time_us / 1e6 AS \"time [s]\", ('0x' || id_hex)::UINTEGER AS arbitration_id, bus AS channel,"
                        + " ('0x' || data[1:2])::UTINYINT AS d0, ('0x' || data[3:4])::UTINYINT AS d1, ('0x' || data[5:6])::UTINYINT AS d2 FROM f",
            })
    void frames_in_columns_are_frames(String columns) throws IOException, SQLException {
        Path frames = frames(3000);
        Path parquet = folder.resolve("frames.parquet");
        copy(
                "WITH g AS (FROM read_csv('" + frames
                        + "', all_varchar=true)), f AS (SELECT time_us::BIGINT AS time_us, id_hex,"
                        + " extended::BOOLEAN AS extended, bus::INTEGER AS bus, len::INTEGER AS len, data FROM g) "
                        + columns,
                parquet);
        Path expected = folder.resolve("expected.csv");
        decoding(frames).writeRows(expected);

        Path found = folder.resolve("found.csv");
        LogSummary summary = decoding(parquet).writeRows(found);

        assertThat(summary.frames()).isEqualTo(3000);
        assertThat(summary.brokenLines()).isZero();
        assertThat(found).hasSameTextualContentAs(expected);
    }

    private LogDecoding table(String query) throws SQLException {
        Path parquet = folder.resolve("table.parquet");
        copy(query, parquet);
        return new LogDecoding(parquet, FrameLogOptions.NONE, List.of());
    }

    @Test
    void measured_columns_are_signals() throws SQLException, IOException {
        Path to = folder.resolve("wide.csv");
        LogSummary summary = table(
                        "SELECT TIMESTAMP '2024-01-01 00:00:00' + to_milliseconds(500 * i) AS t, 80 + i AS \"coolant [degC]\","
                                + " CASE WHEN i = 1 THEN NULL ELSE i * 0.5 END AS load, i = 2 AS fan, [i] AS raw FROM range(3) x(i)")
                .writeColumns(to, 0);

        assertThat(Files.readAllLines(to))
                .containsExactly(
                        "time_s,coolant [degC],load,fan",
                        "0.000000,80,0,false",
                        "0.500000,81,,false",
                        "1.000000,82,1,true");
        assertThat(summary.duration()).isEqualTo(1.0);
        assertThat(summary.findings()).extracting(f -> f.key()).containsExactly("columns-left-out");
    }

    @Test
    void a_unit_of_time_is_never_guessed() throws SQLException {
        LogDecoding decoding = table("SELECT i AS time, i AS speed FROM range(9) x(i)");

        InputException wrong = catchThrowableOfType(InputException.class, decoding::summary);

        assertThat(wrong.findings().get(0).key()).isEqualTo("stamp-unit-unknown");
        assertThat(new LogDecoding(
                                decoding.log(),
                                new FrameLogOptions(
                                        Optional.of(StampUnit.MILLISECONDS), Optional.empty(), Optional.empty()),
                                List.of())
                        .summary()
                        .duration())
                .isEqualTo(0.008);
    }

    @Test
    void a_clock_goes_past_midnight() throws SQLException {
        LogSummary summary = table(
                        "SELECT TIME '23:59:59' + to_milliseconds(500 * i) AS clock, i AS speed FROM range(5) x(i)")
                .summary();

        assertThat(summary.duration()).isEqualTo(2.0);
        assertThat(summary.findings()).isEmpty();
    }

    @Test
    void nothing_is_left_of_a_file_that_cannot_be_written_whole() throws SQLException, IOException {
        LogDecoding decoding = table("SELECT i AS \"time [s]\", NULL::DOUBLE AS speed FROM range(9) x(i)");
        Path to = folder.resolve("to").resolve("out.parquet");

        assertThat(catchThrowableOfType(InputException.class, () -> decoding.writeRows(to)))
                .isNotNull();

        try (Stream<Path> left = Files.list(to.getParent())) {
            assertThat(left).isEmpty();
        }
    }
}
