package hotday.study.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hotday.core.finding.InputException;
import hotday.signals.expect.Expected;
import hotday.signals.expect.Verdict;
import hotday.signals.framelog.FrameLogOptions;
import hotday.signals.gateway.TranslationSheet;
import hotday.study.demo.DemoShop;
import hotday.study.replay.ReplayReport.SignalLine;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's recording through the demo's sheet. What must come out follows from what happens in that drive. */
class ReplayTest {
    @TempDir
    private Path folder;

    private DemoShop shop;
    private Path expect;

    @BeforeEach
    void aShop() {
        shop = DemoShop.create(folder.resolve("shop"));
        expect = folder.resolve("expect.yaml");
    }

    private ReplayReport run(List<Path> logs, Map<String, String> networks, Optional<Path> to, String more) {
        TranslationSheet sheet = TranslationSheet.read(shop.network());
        List<Expected> expected = new ArrayList<>(sheet.expectations());
        if (!more.isEmpty()) {
            write(expect, "expect:\n" + more);
            expected.addAll(sheet.expectations(expect));
        }
        return Replay.of(new ReplayRequest(
                sheet, logs, FrameLogOptions.NONE, networks, expected, to, Optional.empty(), 0, (what, ns) -> {}));
    }

    private ReplayReport run(String more) {
        return run(List.of(shop.networkDrive()), Map.of(), Optional.empty(), more);
    }

    private static void write(Path path, String text) {
        try {
            Files.writeString(path, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String drive() throws IOException {
        return Files.readString(shop.networkDrive());
    }

    private static SignalLine line(ReplayReport report, String to) {
        return report.lines().stream()
                .filter(l -> l.to().endsWith(to))
                .findFirst()
                .orElseThrow();
    }

    private static Verdict last(ReplayReport report) {
        return report.verdicts().get(report.verdicts().size() - 1);
    }

    @Test
    void theDemoHolds() {
        ReplayReport report = run("");
        assertThat(report.verdicts()).hasSize(6).allMatch(Verdict::holds).allMatch(v -> v.judged() > 0);
        assertThat(report.findings()).isEmpty();
        assertThat(report.listened().get(0).message()).isEqualTo("engine.EngineFast");
        assertThat(report.listened().get(0).wrongChecksum()).isEqualTo(1);
        assertThat(report.listened().get(0).wrongCounter()).isEqualTo(1);
        // silent from 10 to 11 s, the last frame at 9.915: 250 ms later held five times, then safe until 11.015
        assertThat(line(report, "EngineToBody.FanDemand").held()).isEqualTo(5);
        assertThat(line(report, "EngineToBody.FanDemand").safe()).isBetween(75L, 85L);
        assertThat(line(report, "EngineToBody.FanDemand").target().orElseThrow().max())
                .isEqualTo(100);
        // 60 km/h are 37.28 mph
        assertThat(line(report, "EngineToBody.VehicleSpeed")
                        .target()
                        .orElseThrow()
                        .max())
                .isEqualTo(37.28);
    }

    @Test
    void whatDoesNotHoldIsToldWithTimeValueAndLimit() {
        Verdict late = last(run("""
                - {name: quick, when: body.ClimateRequest.AcRequest is on, then: body.EngineToBody.CompressorEnable is on, within: 40 ms}
                """));
        assertThat(late.failed()).isEqualTo(1);
        assertThat(late.first().get(0).time()).isBetween(2_998_000_000L, 3_001_000_000L);
        assertThat(late.first().get(0).what()).isEqualTo("body.EngineToBody.CompressorEnable is still off after 40 ms");
        Verdict fast = last(run("- {name: slow, never: body.EngineToBody.VehicleSpeed above 50 km/h}\n"));
        assertThat(fast.failed()).isGreaterThan(100);
        assertThat(fast.first().get(0).what()).startsWith("body.EngineToBody.VehicleSpeed is 31.");
        // 50 km/h are reached 7 s in, seen within a period and a look
        assertThat(fast.first().get(0).time()).isBetween(6_990_000_000L, 7_030_000_000L);
        Verdict rate = last(run("- {name: often, message: engine.EngineSlow, every: 120 ms}\n"));
        assertThat(rate.failed()).isEqualTo(1);
        assertThat(rate.first().get(0).what()).startsWith("engine.EngineSlow came after 1100");
        Verdict old = last(run("""
                - {name: same, signal: body.EngineToBody.VehicleSpeed, equals: engine.Wheels.VehicleSpeed, tolerance: 1 step, not_older: 1 ms}
                """));
        assertThat(old.failed()).isPositive();
    }

    @Test
    void theFramesOfTheGatewayAreWritten() throws IOException {
        Path to = folder.resolve("out/gateway.log");
        ReplayReport report = run(List.of(shop.networkDrive()), Map.of(), Optional.of(to), "");
        List<String> lines = Files.readAllLines(to);
        assertThat(lines)
                .hasSize((int) report.sent().stream().mapToLong(m -> m.frames()).sum())
                .allMatch(l -> l.matches("\\(10[01]\\d\\.\\d{6}\\) (engine 290|body (180|300))#[0-9A-F]+"));
        // before anything came: safe values of the sheet, 30 bar are 0x0BB8; the first counter, CRC by an outside look
        assertThat(lines.get(0)).contains("engine 290#00B80B00000000");
    }

    @Test
    void twoRecordingsRunSideBySideUnderOtherNames() throws IOException {
        Path engine = folder.resolve("a.log");
        Path body = folder.resolve("b.log");
        write(
                engine,
                drive().lines()
                        .filter(l -> l.contains(" engine "))
                        .map(l -> l.replace("engine", "can0") + "\n")
                        .reduce("", String::concat));
        write(
                body,
                drive().lines()
                        .filter(l -> l.contains(" body "))
                        .map(l -> l.replace("body", "can0") + "\n")
                        .reduce("", String::concat));
        ReplayReport both = run(
                List.of(engine, body),
                Map.of("engine", engine + ":can0", "body", body.toString()),
                Optional.empty(),
                "");
        assertThat(both.verdicts()).isEqualTo(run("").verdicts());
        ReplayReport one = run(List.of(engine), Map.of("engine", "can0"), Optional.empty(), "");
        assertThat(one.findings()).extracting(f -> f.key()).containsExactly("network-silent");
        assertThat(one.verdicts().get(0).judged()).isZero();
        assertThatThrownBy(() -> run(List.of(engine), Map.of(), Optional.empty(), ""))
                .isInstanceOfSatisfying(
                        InputException.class,
                        e -> assertThat(e.findings().get(0).key()).isEqualTo("network-not-recorded"));
    }

    @Test
    void recordingsThatCannotBeRunAreRefusedAndNothingIsWritten() {
        Path log = folder.resolve("c.log");
        Path to = folder.resolve("d.log");
        write(log, "(1000.000000) engine 0A4#0000000000000000\n(9000.000000) engine 0A4#0000000000000000\n");
        assertThatThrownBy(() -> run(List.of(log), Map.of(), Optional.of(to), ""))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("1000.000 s to 9000.000 s");
        assertThat(to).doesNotExist();
        write(log, "engine 0A4#0000000000000000\nengine 0A4#0000000000000001\n");
        assertThatThrownBy(() -> run(List.of(log), Map.of(), Optional.of(to), ""))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("time stamp");
    }
}
