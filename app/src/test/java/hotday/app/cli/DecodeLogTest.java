package hotday.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Recordings of frames on the command line. */
class DecodeLogTest {
    @TempDir
    private Path folder;

    private Path dbc;
    private Path log;
    private Path csv;
    private String out;
    private String err;

    @BeforeEach
    void files() throws IOException {
        dbc = folder.resolve("car.dbc");
        csv = folder.resolve("out.csv");
        log = folder.resolve("car.log");
        Files.writeString(dbc, """
                BO_ 2364540158 EEC1: 8 x
                 SG_ Speed : 24|16@1+ (0.125,0) [0|0] "rpm" x
                BO_ 291 Air: 2 x
                 SG_ T : 0|8@1+ (1,-40) [0|0] "degC" x
                BA_DEF_  "ProtocolType" STRING ;
                BA_ "ProtocolType" "J1939";
                """);
        Files.writeString(log, """
                (10.000000) can0 0CF00400#FFFFFFE015FFFFFF
                (10.100000) can0 123#3200
                (10.200000) can0 0CF00421#FFFFFFFFFFFFFFFF
                (10.300000) can0 7DF#02
                """);
    }

    private int run(Object... words) {
        CommandRun run = CommandRun.of(
                Stream.concat(Stream.of("decode"), Stream.of(words)).toArray());
        out = run.out();
        err = run.err();
        return run.status();
    }

    private JsonNode json() {
        return JsonMapper.builder().build().readTree(out);
    }

    /** A table of measured values needs no description, is text or Parquet, and comes back the same. */
    @Test
    void measuredColumnsOfText() throws IOException {
        Path run = Files.writeString(folder.resolve("run.csv"), """
                # logger 7
                t (s);coolant (degC);gear;note
                0,0;80,5;1;begin
                0,5;81,25;2;
                """);
        Path parquet = folder.resolve("run.parquet");
        assertThat(run(run, "--to", parquet)).as("%s", err).isZero();
        assertThat(run(parquet, "--to", csv)).as("%s", err).isZero();
        String twice = Files.readString(csv);
        assertThat(run(run, "--to", csv)).isZero();
        assertThat(Files.readString(csv)).isEqualTo(twice);
        assertThat(twice.lines())
                .contains(
                        "0.000000,coolant,80.5,degC,valid",
                        "0.500000,coolant,81.25,degC,valid",
                        "0.500000,gear,2,,valid");
    }

    /** Neither frames nor a column of time. */
    @Test
    void aTableWithoutTimeIsRefused() throws IOException {
        Path run = Files.writeString(folder.resolve("run.csv"), "name,colour\na,red\nb,blue\n");
        assertThat(run(run, "--j1939", "--to", csv)).isEqualTo(2);
        assertThat(err).contains("run.csv:1", "is no recording of frames");
        assertThat(csv).doesNotExist();
    }

    @Test
    void sumsUpForPeople() {
        assertThat(run(log, "--dbc", dbc, "--bitrate", "250k")).isZero();
        assertThat(out)
                .contains(
                        "car.log: candump text, 4 frames, 0.300 s from 10.000000 s on",
                        "bus can0: 4 frames",
                        "of 250 kbit/s",
                        "4 identifiers, 1 of them not described (25.0 % of the data frames)",
                        "EEC1.Speed@00",
                        "not-available");
        assertThat(err).isEmpty();
    }

    @Test
    void sumsUpForMachines() {
        assertThat(run(log, "--dbc", dbc, "--summary", "--json", "--bitrate", "500 kbit/s"))
                .isZero();
        assertThat(json().path("frames").longValue()).isEqualTo(4);
        assertThat(json().path("duration_s").doubleValue())
                .isEqualTo(0.3, org.assertj.core.api.Assertions.within(1e-9));
        JsonNode bus = json().path("buses").path(0);
        // two frames of 29 bits and 8 bytes, one of 11 and 2, one of 11 and 1: 131 + 131 + 63 + 55 bits in 0.3 s
        assertThat(bus.path("unstuffed_bit_s").doubleValue())
                .isEqualTo(380 / 0.3, org.assertj.core.api.Assertions.within(1e-6));
        assertThat(bus.path("unstuffed_load_percent").doubleValue())
                .isEqualTo(380 / 0.3 / 5000, org.assertj.core.api.Assertions.within(1e-9));
        JsonNode silent = json().path("signals").path(2);
        assertThat(silent.path("name").stringValue()).isEqualTo("EEC1.Speed@21");
        assertThat(silent.path("states").path("not-available").longValue()).isEqualTo(1);
        assertThat(silent.path("min").isNull()).isTrue();
        assertThat(json().path("identifiers").size()).isEqualTo(4);
    }

    @Test
    void writesRowsAndColumns() throws IOException {
        assertThat(run(log, "--dbc", dbc, "--to", csv)).isZero();
        assertThat(csv).hasContent("""
                time_s,signal,value,unit,state
                0.000000,EEC1.Speed@00,700,rpm,valid
                0.100000,Air.T,10,degC,valid
                0.200000,EEC1.Speed@21,,rpm,not-available
                """);
        assertThat(out).contains("3 samples of 3 signals");
        assertThat(run(log, "--dbc", dbc, "--to", csv, "--wide")).isZero();
        assertThat(csv).hasContent("""
                time_s,EEC1.Speed@00 [rpm],Air.T [degC],EEC1.Speed@21 [rpm]
                0.000000,700,,
                0.100000,,10,
                """);
        assertThat(run(log, "--dbc", dbc, "--to", csv, "--wide", "--raster", "250 ms", "--json"))
                .isZero();
        assertThat(csv).hasContent("""
                time_s,EEC1.Speed@00 [rpm],Air.T [degC],EEC1.Speed@21 [rpm]
                0.000000,700,,
                0.250000,,10,
                """);
        assertThat(json().path("signals").size()).isEqualTo(3);
    }

    @Test
    void keepsBusesApart() throws IOException {
        Files.writeString(log, "(1.0) can0 123#32\n(2.0) can1 123#33\n(3.0) can0 123#34\n");
        assertThat(run(log, "--dbc", dbc, "--to", csv)).isZero();
        assertThat(Files.readAllLines(csv))
                .contains("0.000000,can0:Air.T,10,degC,valid", "1.000000,can1:Air.T,11,degC,valid");
    }

    @Test
    void tellsOfBrokenLinesAndGoesOn() throws IOException {
        Files.writeString(log, Files.readString(log) + "(10.400000) can0 123#3G\n");
        assertThat(run(log, "--dbc", dbc)).isZero();
        assertThat(err).contains("warning: " + log + ":5:23: two hexadecimal digits", "1 line is no frame");
        assertThat(out).contains("4 frames, 1 broken and left out");
    }

    @Test
    void aBitRateThatCannotBeIsAFault() throws IOException {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 1000; i++) {
            text.append(String.format("(0.%06d) can0 123#1122334455667788%n", i * 300));
        }
        Files.writeString(log, text);
        assertThat(run(log, "--bitrate", "250k")).isEqualTo(1);
        assertThat(err).contains("bus 'can0' would be loaded to 148.1 % of 250000 bit/s");
        assertThat(run(log, "--bitrate", "500k")).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--to out.csv|--dbc: nothing says what the bytes mean",
                "--wide --dbc DBC|--to: say where",
                "--to out.csv --raster 1s --dbc DBC|needs --wide",
                "--to out.csv --wide --raster 0 --dbc DBC|from 1 ms to 3600 s",
                "--bitrate 2M|from 5k to 1M",
                "--bitrate fast|from 5k to 1M",
                "--time-unit min|must be s, ms, us or ns",
                "--id-base oct|must be hex or dec",
                "--to LOG --dbc DBC|must not be written over",
                "--dbc no.dbc|no such file",
            })
    void refusesWhatCannotBeDone(String options, String message) throws IOException {
        String before = Files.readString(log);
        String words = options.replace("DBC", dbc.toString())
                .replace("LOG", log.toString())
                .replace("out.csv", csv.toString());
        Object[] all = (log + " " + words).split(" ");
        assertThat(run(all)).isEqualTo(2);
        assertThat(err).contains(message);
        assertThat(csv).doesNotExist();
        assertThat(Files.readString(log)).isEqualTo(before);
    }

    @Test
    void writesNothingWhenNothingIsDescribed() throws IOException {
        Files.writeString(log, "(1.0) can0 7FF#32\n");
        assertThat(run(log, "--dbc", dbc, "--to", csv)).isEqualTo(2);
        assertThat(err).contains("no frame of it holds a signal that is described");
        assertThat(run(log, "--dbc", dbc, "--to", csv, "--wide", "--json")).isEqualTo(2);
        assertThat(json().path("refused").booleanValue()).isTrue();
        Files.writeString(log, "can0 123 [1] 32\n");
        assertThat(run(log, "--dbc", dbc, "--to", csv, "--wide")).isEqualTo(2);
        assertThat(err).contains("has no time stamps");
        try (var left = Files.list(folder)) {
            assertThat(left).containsExactlyInAnyOrder(dbc, log);
        }
    }

    @Test
    void rowsWithoutStampsHaveEmptyTimes() throws IOException {
        Files.writeString(log, "can0 123 [1] 32\n");
        assertThat(run(log, "--dbc", dbc, "--to", csv)).isZero();
        assertThat(csv).hasContent("time_s,signal,value,unit,state\n,Air.T,10,degC,valid\n");
    }

    @Test
    void refusesRowsThatAreNoFrames() throws IOException {
        Files.writeString(log, "time_s,id,data\nx,y,z\n");
        assertThat(run(log, "--id-base", "hex", "--data-base", "hex", "--json")).isEqualTo(2);
        assertThat(json().path("findings").path(0).path("key").stringValue()).isEqualTo("no-frames");
    }
}
