package hotday.validation.signals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.signals.frame.Frame;
import hotday.signals.framelog.FrameLog;
import hotday.signals.framelog.FrameLogOptions;
import hotday.validation.CommandLineRun;
import hotday.validation.SharedData;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** Every recording of frames of the reference data, and what the notes beside them say they hold. */
class FrameLogRecordingsTest {
    private static final String FOLDER = "data/can-logs/";
    private static final String TRUCK = "css_j1939_truck_idle_127s.candump.log.gz";
    private static final String SOAK = "css_j1939_engine_off_hot_soak_186s.candump.log";
    private static final String KONA = "kona_250105-1-2020-comp-can-heating.gvret.csv";
    private static final String SCAN = "kona_221210-1-2021-dcan-obd-scan.gvret.csv";
    private static final String J1939_DBC = "CSS-Electronics-SAE-J1939-DEMO.dbc";

    @TempDir
    private Path folder;

    private static List<Frame> read(String name) throws IOException {
        List<Frame> frames = new ArrayList<>();
        try (FrameLog log = FrameLog.open(SharedData.file(FOLDER + name), FrameLogOptions.NONE)) {
            Frame frame = new Frame();
            while (log.next(frame)) {
                frames.add(frame.copy());
            }
            assertThat(log.broken()).isZero();
        }
        return frames;
    }

    private static void areEqual(List<Frame> ours, List<Frame> plain, boolean buses) {
        assertThat(ours).hasSameSizeAs(plain);
        for (int i = 0; i < ours.size(); i++) {
            Frame a = ours.get(i);
            Frame b = plain.get(i);
            assertThat(a.time()).as("time of frame " + i).isEqualTo(b.time());
            assertThat(a.id()).isEqualTo(b.id());
            assertThat(a.extended()).isEqualTo(b.extended());
            assertThat(!buses || a.bus() == b.bus()).isTrue();
            assertThat(Arrays.copyOfRange(a.data(), a.offset(), a.offset() + a.length()))
                    .isEqualTo(Arrays.copyOfRange(b.data(), b.offset(), b.offset() + b.length()));
        }
    }

    /** Frame by frame what the plainest reader finds, times to the last bit. */
    @Test
    void readsFrameByFrameWhatThePlainestReaderReads() throws IOException {
        areEqual(read(TRUCK), RecordedFrames.ofText(TRUCK), true);
        areEqual(read(SOAK), RecordedFrames.ofText(SOAK), true);
        areEqual(read(SCAN), RecordedFrames.ofBytes(SCAN), false);
        for (String tractor : List.of(
                "tractor_jd_highRPM1.csv",
                "tractor_jd_start1.csv",
                "tractor_jd_transmision123inGearAndPlusDiffLock.csv")) {
            areEqual(read(tractor), RecordedFrames.ofGroups(tractor), false);
        }
    }

    private static CommandLineRun summary(String name, Object... more) {
        List<Object> words = new ArrayList<>(List.of("decode", SharedData.file(FOLDER + name), "--summary", "--json"));
        words.addAll(List.of(more));
        return CommandLineRun.of(words.toArray());
    }

    /** Frames, seconds and identifiers from the notes beside the files; 37 groups in a tractor's. */
    @ParameterizedTest
    @CsvSource({
        TRUCK + ", 57849, 127.2, 54",
        SOAK + ", 1815, 186, 16",
        SCAN + ", 1845, 1057, 72",
        "tractor_jd_highRPM1.csv, 7736, 29.6, 67",
        "tractor_jd_start1.csv, 7519, 29.2, 67",
        "tractor_jd_transmision123inGearAndPlusDiffLock.csv, 14300, 45.7, 67",
    })
    void holdsWhatTheNotesSay(String name, long frames, double seconds, int identifiers) {
        JsonNode said = summary(name).json();
        assertThat(said.path("frames").longValue()).isEqualTo(frames);
        assertThat(said.path("duration_s").doubleValue()).isCloseTo(seconds, within(seconds < 100 ? 0.06 : 0.5));
        assertThat(said.path("identifiers").size()).isEqualTo(identifiers);
    }

    /**
     * The clock of this recording begins anew at line 90. The notes give 23.9 s, last stamp less first, and so 200 frames a
     * second of each identifier; the description of the network says 100, and so do the stamps on either side of line 90.
     */
    @Test
    void aClockThatBeginsAnewIsTold() {
        CommandLineRun run = summary(KONA);
        JsonNode said = run.json();
        assertThat(said.path("frames").longValue()).isEqualTo(27_982);
        JsonNode finding = said.path("findings").path(0);
        assertThat(finding.path("key").stringValue()).isEqualTo("clock-goes-back");
        assertThat(finding.path("line").intValue()).isEqualTo(90);
        assertThat(said.path("identifiers").size()).isEqualTo(6);
        said.path("identifiers")
                .forEach(i -> assertThat(i.path("rate_Hz").doubleValue()).isCloseTo(100, within(0.5)));
        assertThat(said.path("duration_s").doubleValue()).isCloseTo(23.94 + 22.72, within(0.02));
    }

    private static Map<String, JsonNode> signals(CommandLineRun run) {
        Map<String, JsonNode> signals = new LinkedHashMap<>();
        run.json().path("signals").forEach(s -> signals.put(s.path("name").stringValue(), s));
        return signals;
    }

    private static void spans(JsonNode signal, double min, double max, String unit) {
        assertThat(signal.path("unit").stringValue()).isEqualTo(unit);
        assertThat(signal.path("min").doubleValue()).isBetween(min, max);
        assertThat(signal.path("max").doubleValue()).isBetween(min, max);
    }

    /** Decoded check values of the notes: idling truck 646 to 654 rpm, standing; compressor 523 to 637 W. */
    @Test
    void decodesTheCheckValues() {
        Map<String, JsonNode> truck = signals(summary(TRUCK, "--dbc", SharedData.file(FOLDER + J1939_DBC)));
        spans(truck.get("can0:EEC1.EngineSpeed@00"), 646, 654, "rpm");
        spans(truck.get("can0:CCVS1.WheelBasedVehicleSpeed@00"), 0, 0, "km/h");
        assertThat(truck).hasSize(2);
        JsonNode power = signals(summary(KONA, "--dbc", SharedData.file(FOLDER + "kona_comp_can.dbc")))
                .get("CompressorStatus.CompressorPower");
        assertThat(power.path("min").doubleValue()).isEqualTo(523);
        assertThat(power.path("max").doubleValue()).isEqualTo(637);
        assertThat(power.path("unit").stringValue()).isEqualTo("W");
    }

    /** Count, least, most and mean of every signal as an outside library decodes the same recordings. */
    @Test
    void decodesAsAnOutsideLibrary() throws IOException, InterruptedException {
        Path truck = SharedData.file(FOLDER + J1939_DBC);
        Path kona = SharedData.file(FOLDER + "kona_comp_can.dbc");
        areEqual(NetworkReference.decoded(folder, "candump", truck, SharedData.file(FOLDER + TRUCK)), "", TRUCK, truck);
        areEqual(NetworkReference.decoded(folder, "rows", kona, SharedData.file(FOLDER + KONA)), "0:", KONA, kona);
    }

    private static void areEqual(List<String[]> reference, String before, String log, Path dbc) {
        Map<String, JsonNode> ours = signals(summary(log, "--dbc", dbc));
        assertThat(ours).hasSameSizeAs(reference);
        for (String[] line : reference) {
            JsonNode signal = ours.get(line[0].substring(before.length()));
            assertThat(signal).as(line[0]).isNotNull();
            long count = Long.parseLong(line[1]);
            assertThat(signal.path("samples").longValue()).isEqualTo(count);
            assertThat(signal.path("min").doubleValue()).isEqualTo(Double.parseDouble(line[2]));
            assertThat(signal.path("max").doubleValue()).isEqualTo(Double.parseDouble(line[3]));
            double mean = Double.parseDouble(line[4]) / count;
            assertThat(signal.path("mean").doubleValue()).isCloseTo(mean, within(1e-9 * Math.abs(mean)));
        }
    }

    /** Engine off: 0 rpm; coolant 86 falling to 85 degC. Tractor: supply and barometer all ones, never 3276 V or 1775 degC. */
    @Test
    void decodesGroupsWithoutADescription() {
        Map<String, JsonNode> soak = signals(summary(SOAK, "--j1939"));
        spans(soak.get("can0:EEC1.EngineSpeed@00"), 0, 0, "rpm");
        Map<String, JsonNode> tractor = signals(summary("tractor_jd_highRPM1.csv", "--j1939"));
        assertThat(tractor).isNotEmpty();
        tractor.values().stream()
                .filter(s -> s.path("unit").stringValue().equals("degC"))
                .forEach(s -> assertThat(s.path("max").isNull() || s.path("max").doubleValue() < 200)
                        .as(s.path("name").stringValue())
                        .isTrue());
        assertThat(tractor.values())
                .anyMatch(s -> s.path("states").path("not-available").longValue() > 0
                        && s.path("max").isNull());
    }

    @Test
    void writesEverySampleOnce() throws IOException {
        Path rows = folder.resolve("rows.csv");
        Path columns = folder.resolve("columns.csv");
        Path dbc = SharedData.file(FOLDER + "kona_comp_can.dbc");
        CommandLineRun run =
                CommandLineRun.of("decode", SharedData.file(FOLDER + KONA), "--dbc", dbc, "--to", rows, "--json");
        long samples = 0;
        for (JsonNode signal : run.json().path("signals")) {
            samples += signal.path("samples").longValue();
        }
        List<String> lines = Files.readAllLines(rows);
        assertThat(lines).hasSize((int) samples + 1);
        assertThat(lines.get(1)).isEqualTo("0.000000,HeaterControl.OnOff,0,,valid");
        CommandLineRun.of("decode", SharedData.file(FOLDER + KONA), "--dbc", dbc, "--to", columns, "--wide");
        List<String> wide = Files.readAllLines(columns);
        assertThat(wide.get(0)).contains("CompressorStatus.CompressorPower [W]");
        long cells = wide.stream()
                .skip(1)
                .mapToLong(l -> Arrays.stream(l.split(","))
                        .skip(1)
                        .filter(c -> !c.isEmpty())
                        .count())
                .sum();
        assertThat(cells).isEqualTo(samples);
    }
}
