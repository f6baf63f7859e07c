package hotday.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.study.demo.DemoShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code gateway check} on the demo's networks: sound as shipped, and what a mistake in it says. */
class GatewayCommandTest {
    @TempDir
    private Path folder;

    private Path sheet;
    private String out;
    private String err;

    @BeforeEach
    void aShop() {
        sheet = DemoShop.create(folder).network();
    }

    private int run(String... words) {
        CommandRun run = CommandRun.of((Object[]) words);
        out = run.out();
        err = run.err();
        return run.status();
    }

    private int check(String... more) {
        return more.length == 0
                ? run("gateway", "check", sheet.toString())
                : run("gateway", "check", sheet.toString(), more[0]);
    }

    private JsonNode json() {
        return JsonMapper.builder().build().readTree(out);
    }

    private void change(String old, String other) throws IOException {
        String text = Files.readString(sheet);
        assertThat(text).containsOnlyOnce(old);
        Files.writeString(sheet, text.replace(old, other));
    }

    @Test
    void theDemoIsInOrder() {
        assertThat(check()).isZero();
        assertThat(out)
                .startsWith("Heron, engine side and body side: in order.")
                .contains("engine  500 kbit/s", "body  250 kbit/s", "x 0.621371", "by table", "x 1.8 + 32");
        assertThat(err).doesNotContain("fault:", "warning:").contains("note: " + sheet + ":");
    }

    /**
     * By hand, Davis et al. 2007: EngineFast waits 1 ms of jitter, a frame of 8 bytes that just began and Wheels, 0.27 ms
     * each, and takes 0.27 ms itself.
     */
    @Test
    void responseTimesAreThoseByHandAndPathsTheSumOfTheirParts() {
        assertThat(check("--json")).isZero();
        JsonNode engine = json().path("networks").path(0);
        JsonNode fast = engine.path("messages").path(1);
        assertThat(fast.path("name").stringValue()).isEqualTo("EngineFast");
        assertThat(fast.path("response_ms").doubleValue()).isCloseTo(1 + 3 * 0.27, within(1e-9));
        JsonNode path = json().path("paths").path(0);
        double sum = 0;
        for (JsonNode part : path.path("parts")) {
            sum += part.path("ms").doubleValue();
        }
        assertThat(path.path("worst_ms").doubleValue())
                .isCloseTo(sum, within(1e-9))
                .isLessThan(100);
        assertThat(path.path("parts")).hasSize(13);
        assertThat(json().path("holds").booleanValue()).isTrue();
    }

    @Test
    void aMistakeIsToldWithItsPlace() throws IOException {
        change("limit: 100 ms", "limit: 80 ms");
        assertThat(check()).isEqualTo(1);
        assertThat(out).startsWith("Heron, engine side and body side: 1 fault.");
        assertThat(err)
                .containsPattern(
                        "fault: .*heron.yaml:[0-9]+:12: 'A/C request to compressor enable' may take 9[0-9.]+ ms");
        assertThat(check("--json")).isEqualTo(1);
        JsonNode fault = json().path("findings").path(json().path("findings").size() - 1);
        assertThat(fault.path("key").stringValue()).isEqualTo("path-too-late");
        assertThat(fault.path("limit_ms").doubleValue()).isEqualTo(80);
        assertThat(fault.path("worst_ms").doubleValue()).isGreaterThan(90);
        assertThat(json().path("holds").booleanValue()).isFalse();
    }

    @Test
    void whatCannotBeReadIsRefused() throws IOException {
        change("dbc: body-side.dbc", "dbc: lost.dbc");
        assertThat(check()).isEqualTo(2);
        assertThat(out).isEmpty();
        assertThat(err).containsPattern("heron.yaml:[0-9]+:10: 'dbc': no such file beside the sheet: lost.dbc");
        assertThat(check("--json")).isEqualTo(2);
        assertThat(json().path("refused").booleanValue()).isTrue();
        assertThat(json().path("findings").path(0).path("key").stringValue()).isEqualTo("no-such-file");
        assertThat(err).isEmpty();
    }

    @Test
    void theCommandLineSaysWhatIsMissing() {
        assertThat(run("gateway")).isEqualTo(2);
        assertThat(err).contains("There are: check, replay, export", "'hotday gateway --help'");
        assertThat(run("gateway", "check")).isEqualTo(2);
        assertThat(err).contains("SHEET", "'hotday gateway check --help'");
        assertThat(run("gateway", "--help")).isZero();
        assertThat(out).contains("check", "translation sheet");
    }

    @Test
    void theDemoRunsThroughAndItsExpectationsHold() throws IOException {
        Path log = sheet.resolveSibling("heron-drive.log");
        Path to = folder.resolve("gateway.log");
        Path csv = folder.resolve("both.csv");
        assertThat(run(
                        "gateway",
                        "replay",
                        sheet.toString(),
                        log.toString(),
                        "--to",
                        to.toString(),
                        "--decoded",
                        csv.toString()))
                .isZero();
        assertThat(out)
                .contains("all of 6 expectations hold.", "1 with a wrong checksum", "The gateway's frames are in");
        assertThat(err).isEmpty();
        assertThat(Files.readAllLines(csv).get(0)).isEqualTo("time_s,signal,value,unit,state");
        assertThat(Files.readString(csv))
                .contains("engine.Wheels.VehicleSpeed,60,km/h,valid", "body.EngineToBody.VehicleSpeed,37.28,mph,valid")
                .contains("engine.EngineSlow.CoolantTemperature,error,degC,valid");
        assertThat(run("gateway", "replay", sheet.toString(), log.toString(), "--json"))
                .isZero();
        assertThat(json().path("expectations")).hasSize(6);
        assertThat(json().path("translations")
                        .path(0)
                        .path("target")
                        .path("unit")
                        .stringValue())
                .isEqualTo("rpm");
    }

    @Test
    void anExpectationThatFailsIsStatusOneWithItsPlace() throws IOException {
        Path log = sheet.resolveSibling("heron-drive.log");
        change("within: 100 ms", "within: 20 ms");
        assertThat(run("gateway", "replay", sheet.toString(), log.toString())).isEqualTo(1);
        assertThat(out)
                .contains("1 of 6 expectations does not hold.")
                .containsPattern(
                        "compressor enable follows the A/C request: DOES NOT HOLD, 1 time \\(.*heron.yaml:[0-9]+:5\\)")
                .contains("CompressorEnable is still off after 20 ms; expected: ");
        assertThat(run("gateway", "replay", sheet.toString(), log.toString(), "--json"))
                .isEqualTo(1);
        assertThat(json().path("expectations")
                        .path(1)
                        .path("first")
                        .path(0)
                        .path("time_s")
                        .doubleValue())
                .isCloseTo(3.0, within(0.01));
    }

    @Test
    void whatCannotBeReplayedIsRefused() {
        String log = sheet.resolveSibling("heron-drive.log").toString();
        assertThat(run("gateway", "replay", sheet.toString())).isEqualTo(2);
        assertThat(err).contains("LOG");
        assertThat(run(
                        "gateway",
                        "replay",
                        sheet.toString(),
                        log,
                        "--network",
                        "gearbox=can0",
                        "--speed",
                        "fast",
                        "--to",
                        log))
                .isEqualTo(2);
        assertThat(err).contains("'gearbox' is no network", "'fast' must be a number", "must not be written over");
        assertThat(run(
                        "gateway",
                        "replay",
                        sheet.toString(),
                        log,
                        "--network",
                        "engine=can0",
                        "--network",
                        "body=can1"))
                .isEqualTo(2);
        assertThat(err).contains("was recorded on 'engine', 'body'", "type --network engine=BUS");
    }

    @Test
    void theTranslationIsWrittenAsC() throws IOException {
        Path to = folder.resolve("c");
        assertThat(run("gateway", "export", sheet.toString(), "--to", to.toString()))
                .isZero();
        assertThat(out).contains("gateway.h, gateway.c, gateway_test.c, gateway_vectors.txt");
        assertThat(Files.readString(to.resolve("gateway.c")))
                .contains("engine.EngineFast.EngineSpeed to body.EngineToBody.EngineSpeed")
                .doesNotContain("double", "float ", "malloc", "@");
        change("limit: 100 ms", "limit: 80 ms");
        assertThat(run("gateway", "export", sheet.toString(), "--to", to.toString()))
                .isEqualTo(2);
        assertThat(err).contains("may take");
    }

    @Test
    void theControllersAreWrittenAsC() throws IOException {
        Path build = sheet.resolveSibling("../builds/heron/build.yaml").normalize();
        Path to = folder.resolve("c");
        assertThat(run("controller", "export", build.toString(), "--to", to.toString()))
                .isZero();
        assertThat(out).contains("fan_controller.c", "compressor_rules.c", "controller_vectors.txt");
        assertThat(Files.readString(to.resolve("fan_controller.c")))
                .contains("#define COOLANT_ON ")
                .doesNotContain("@");
        assertThat(run("controller")).isEqualTo(2);
        assertThat(err).contains("There is: export");
    }
}
