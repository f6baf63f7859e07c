package hotday.validation.code;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.signals.frame.Frame;
import hotday.signals.framelog.FrameLog;
import hotday.signals.framelog.FrameLogOptions;
import hotday.signals.gateway.SheetProgram;
import hotday.signals.gateway.TranslationSheet;
import hotday.signals.translator.Program;
import hotday.study.demo.DemoShop;
import hotday.study.export.GatewayExport;
import hotday.study.export.GatewayVectors;
import hotday.validation.SharedData;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The exported translation beside the Java form. */
final class GatewayCodeTest {
    private static final String[] SOURCES = {"gateway.c", "gateway_test.c"};

    @TempDir
    private Path folder;

    private Path code;

    @BeforeEach
    void aCompiler() {
        Gcc.require();
        code = folder.resolve("code");
    }

    private Program demo() {
        return SheetProgram.of(
                TranslationSheet.read(DemoShop.create(folder.resolve("shop")).network()));
    }

    private void compile(Program program) throws IOException {
        GatewayExport.write(program, code);
        Gcc.compile(code, SOURCES);
    }

    private Path written(GatewayVectors vectors) throws IOException {
        return Files.writeString(folder.resolve("vectors.txt"), vectors.text());
    }

    @Test
    void theVectorsThatGoWithTheDemoHold() throws IOException {
        compile(demo());
        Path vectors = code.resolve("gateway_vectors.txt");
        Gcc.assertAsWritten(code, vectors);
        List<String> lines = Files.readAllLines(vectors);
        assertThat(lines).filteredOn(l -> l.matches("r .* 0")).hasSizeGreaterThan(1000);
        assertThat(lines).filteredOn(l -> l.matches("r .* [23]")).hasSizeGreaterThan(100);
    }

    /** One bit of one expected frame is wrong: the runner must say so. */
    @Test
    void aWrongVectorIsFound() throws IOException {
        compile(demo());
        List<String> lines = Files.readAllLines(code.resolve("gateway_vectors.txt"));
        int at = lines.size() - 1;
        while (lines.get(at).charAt(0) != 's') {
            at--;
        }
        char digit = lines.get(at).charAt(lines.get(at).length() - 1);
        String wrong = lines.get(at).substring(0, lines.get(at).length() - 1) + (digit == '0' ? '1' : '0');
        lines.set(at, wrong);
        Path vectors = Files.write(folder.resolve("wrong.txt"), lines);
        Gcc.Answer answer = Gcc.vectors(code, "strict", vectors);
        assertThat(answer.status()).isEqualTo(1);
        assertThat(answer.text()).contains("line " + (at + 1) + " does not come out as written");
    }

    /** The demo's recording at its own pace. */
    @Test
    void theDemosRecordingComesOutTheSame() throws IOException {
        Program program = demo();
        compile(program);
        GatewayVectors vectors = new GatewayVectors(program);
        Path log = folder.resolve("shop/network/heron-drive.log");
        assertThat(replay(program, log, vectors, List.of("engine", "body"))).isGreaterThan(3000);
        Gcc.assertAsWritten(code, written(vectors));
    }

    /** Every frame to the gateway and a look whenever its time has come; frames that went in. */
    private static int replay(Program program, Path log, GatewayVectors vectors, List<String> buses)
            throws IOException {
        int frames = 0;
        double nextLook = Double.NaN;
        double poll = program.poll() / 1e9;
        try (FrameLog read = FrameLog.open(log, FrameLogOptions.NONE)) {
            Frame frame = new Frame();
            while (read.next(frame)) {
                nextLook = Double.isNaN(nextLook) ? frame.time() : nextLook;
                for (; nextLook < frame.time(); nextLook += poll) {
                    vectors.look();
                }
                int network = buses.isEmpty() ? 0 : buses.indexOf(read.buses().get(frame.bus()));
                if (frame.kind() == Frame.Kind.DATA && network >= 0) {
                    vectors.receive(
                            network, frame.id(), frame.extended(), frame.data(), frame.offset(), frame.length());
                    frames++;
                }
            }
        }
        return frames;
    }

    @Test
    @Tag("slow")
    void aMillionRandomFramesComeOutTheSame() throws IOException {
        Program program = demo();
        compile(program);
        GatewayVectors vectors = new GatewayVectors(program);
        vectors.random(1_000_000, 20);
        assertThat(vectors.count('r')).isEqualTo(1_000_000);
        assertThat(vectors.count('s')).isGreaterThan(100_000);
        Gcc.assertAsWritten(code, written(vectors));
    }

    /** All kinds of signals, rows, rules of counters and checksums in one sheet. */
    @Test
    @Tag("slow")
    void everyKindOfLineComesOutTheSame() throws IOException {
        Program program = SheetProgram.of(TranslationSheet.read(ManyKinds.in(folder)));
        compile(program);
        GatewayVectors vectors = new GatewayVectors(program);
        vectors.random(1_000_000, 21);
        Gcc.assertAsWritten(code, written(vectors));
    }

    /** Recorded frames of a climate network of the reference data, and of a truck. */
    @Test
    @Tag("slow")
    void recordedFramesComeOutTheSame() throws IOException {
        String logs = "data/can-logs/";
        Program climate = SheetProgram.of(
                TranslationSheet.read(Recorded.climate(folder, SharedData.file(logs + "kona_comp_can.dbc"))));
        assertRecorded(climate, SharedData.file(logs + "kona_250105-1-2020-comp-can-heating.gvret.csv"), 27_000);
        Program truck = SheetProgram.of(TranslationSheet.read(Recorded.truck(folder)));
        assertRecorded(truck, SharedData.file(logs + "css_j1939_truck_idle_127s.candump.log.gz"), 57_000);
        assertRecorded(truck, SharedData.file(logs + "css_j1939_engine_off_hot_soak_186s.candump.log"), 1_800);
    }

    private void assertRecorded(Program program, Path log, int least) throws IOException {
        compile(program);
        GatewayVectors vectors = new GatewayVectors(program);
        assertThat(replay(program, log, vectors, List.of())).isGreaterThan(least);
        String text = vectors.text();
        assertThat(text.lines().filter(l -> l.matches("r .* 0"))).hasSizeGreaterThan(100);
        Gcc.assertAsWritten(code, written(vectors));
    }
}
