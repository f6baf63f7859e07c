package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.core.unit.Display;
import hotday.core.unit.UnitSystem;
import hotday.study.demo.DemoShop;
import hotday.study.design.Aim;
import hotday.study.design.ScheduleDesign;
import hotday.study.design.ScheduleReport;
import hotday.study.shop.Shop;
import hotday.vehicle.cases.Cases;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.sheet.ScheduleFile;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The fan schedule of a build, read, judged piece by piece and saved over HTTP. */
class ScheduleRoutesTest {
    private static final String JUDGE = "api/builds/%s/schedule/judge";

    @TempDir
    private Path folder;

    private PageServer server;
    private PageClient page;

    @BeforeEach
    void start() {
        DemoShop.create(folder);
        server = PageServer.started(Shop.open(folder), 0, Reach.THIS_MACHINE, false);
        page = new PageClient(server.address());
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private Path sheet(String build) {
        return folder.resolve("builds").resolve(build).resolve("build.yaml");
    }

    private static String wish(String changes) {
        return "{\"page\":\"one\",\"aim\":\"balanced\",\"units\":\"metric\",\"changes\":[" + changes + "]}";
    }

    private static String change(String key, String value) {
        return "{\"key\":\"schedule." + key + "\",\"value\":\"" + value + "\"}";
    }

    private List<JsonNode> judged(String build, String changes) {
        return lines(page.change("POST", JUDGE.formatted(build), wish(changes)));
    }

    private static List<JsonNode> lines(HttpResponse<String> response) {
        assertThat(response.statusCode()).isEqualTo(200);
        List<JsonNode> lines = new ArrayList<>();
        response.body()
                .lines()
                .forEach(line -> lines.add(JsonMapper.builder().build().readTree(line)));
        return lines;
    }

    private static boolean whole(List<JsonNode> lines) {
        return !lines.isEmpty() && lines.get(lines.size() - 1).has("air_conditioning");
    }

    @Test
    void everyCurveAndEveryValueOfTheSheetIsRead() {
        JsonNode read = PageClient.json(page.get("api/builds/heron/schedule"));
        assertThat(read.get("curves").findValuesAsString("title"))
                .contains("Coolant", "A/C head pressure", "Gearbox fluid", "Road-speed allowance");
        List<String> keys = new ArrayList<>();
        read.get("values").forEach(v -> keys.add(v.get("key").asString()));
        assertThat(keys)
                .contains(
                        "schedule.coolant",
                        "schedule.on",
                        "schedule.head_hysteresis",
                        "schedule.switching.least_on",
                        "schedule.after_run.curve");
        read.get("curves").forEach(c -> assertThat(keys).contains(c.get("key").asString()));
        assertThat(read.get("values").get(0).get("typed").asString())
                .isEqualTo("[[205.5 degF, 25 %], [213 degF, 40 %], [221 degF, 60 %], [228 degF, 100 %]]");
    }

    @Test
    void whatComesPieceByPieceIsWhatTheCommandSaysAtOnce() {
        List<JsonNode> lines = judged("heron", "");
        BuildSheet read = BuildSheet.read(sheet("heron"));
        ScheduleReport meant = new ScheduleDesign(
                        read.vehicle(), Cases.ofBuild(sheet("heron")), Aim.BALANCED, new Display(UnitSystem.METRIC))
                .judged(read.vehicle().schedule(), ScheduleFile.ofSheet(sheet("heron"), read.vehicle())::place);
        assertThat(lines.get(0).get("in_order").asBoolean()).isTrue();
        int cases = lines.get(1).get("cases").asInt();
        assertThat(cases).isEqualTo(meant.lines().size());
        assertThat(lines).hasSize(cases + 4);
        for (JsonNode line : lines.subList(2, cases + 2)) {
            ScheduleReport.Line same = meant.lines().get(line.get("index").asInt());
            assertThat(line.get("case").asString())
                    .isEqualTo(same.passage().kase().id());
            assertThat(line.get("energy_Wh_per_h").asDouble())
                    .isCloseTo(same.passage().energy(), within(1e-9));
        }
        double day = read.vehicle().designAmbient() - 273.15;
        for (JsonNode line : lines.subList(2, 2 + lines.get(1).get("first").asInt() - 1)) {
            assertThat(line.get("ambient_degC").asDouble())
                    .as("the design day first")
                    .isCloseTo(day, within(1e-9));
        }
        JsonNode report = lines.get(cases + 2).get("report");
        assertThat(report.get("energy_Wh_per_h").asDouble()).isCloseTo(meant.energy(), within(1e-9));
        assertThat(report.get("cost_W").asDouble()).isCloseTo(meant.cost(), within(1e-9));
        assertThat(report.get("findings")).hasSize(meant.findings().size());
        assertThat(report.at("/after_run/time_s").asDouble())
                .isEqualTo(meant.keyOff().orElseThrow().seconds());
        JsonNode rules = lines.get(cases + 3);
        assertThat(rules.at("/air_conditioning/cases")).hasSize(6);
        assertThat(rules.at("/air_conditioning/soaked_cabin/time_s").asDouble()).isPositive();
        assertThat(rules.get("findings")).isEmpty();
    }

    /** A fan that waits for coolant alone leaves head pressure to the cut-out. */
    @Test
    void aCurveThatLetsTheCompressorBeCutOutIsToldAtItsKey() {
        List<JsonNode> lines = judged(
                "heron",
                String.join(
                        ",",
                        change("head_pressure", "[[30 bar abs, 25 %], [31 bar abs, 100 %]]"),
                        change("coolant", "[[226 degF, 25 %], [227 degF, 100 %]]"),
                        change("on", "226 degF")));
        JsonNode rules = lines.get(lines.size() - 1);
        assertThat(rules.get("findings")).anySatisfy(f -> {
            assertThat(f.get("key").asString()).isEqualTo("ac-held-off");
            assertThat(f.get("sheet_key").asString()).isEqualTo("schedule.head_pressure");
        });
    }

    @Test
    void aFanThatStartsTooLateGivesWayAndIsToldAtItsKeyInTheUnitsAskedFor() {
        String late =
                "{\"page\":\"one\",\"aim\":\"quiet\",\"units\":\"us\",\"changes\":[" + change("on", "229 degF") + "]}";
        List<JsonNode> lines = lines(page.change("POST", JUDGE.formatted("heron"), late));
        JsonNode report = lines.get(lines.size() - 2).get("report");
        assertThat(report.get("holds").asBoolean()).isFalse();
        assertThat(report.get("aim").asString()).isEqualTo("quiet");
        JsonNode finding = report.get("findings").get(0);
        assertThat(finding.get("key").asString()).isEqualTo("limit-not-held");
        assertThat(finding.get("sheet_key").asString()).isEqualTo("schedule.coolant");
        assertThat(finding.get("message").asString()).contains("degF").doesNotContain("degC");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            coolant | [[94 degC, 25 %], [94 degC, 60 %]]   | must rise
            coolant | [[94 degC, 25 %], [94.1 degC, 60 %]] | lies closer than two
            coolant | [[94 degC, 60 %], [106 degC, 25 %]]  | must not ask for less fan
            coolant | [[94 degC, 25 %], [106 degC, 130 %]] | between 0 % and 100 %
            coolant | [[94 degC, -5 %], [106 degC, 100 %]] | between 0 % and 100 %
            coolant | [[94, 25 %], [106 degC, 100 %]]      | has no unit
            head_pressure | [[12 bar, 25 %], [20 bar abs, 100 %]] | could be gauge or absolute
            off     | 210 degF | must lie below 'schedule.on'
            on      | 190 degF | must lie below 'schedule.on'
            on      | 240 degF | must lie below 'limits.coolant'
            switching.off | 90 % | must not lie above
            slow    | 3 s | is not a key known here
            """)
    void whatIsNoScheduleIsRefusedInWordsAtItsKey(String key, String value, String words) throws IOException {
        String before = Files.readString(sheet("heron"));
        List<JsonNode> lines = judged("heron", change(key, value));
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0).get("in_order").asBoolean()).isFalse();
        JsonNode fault = lines.get(0).get("findings").get(0);
        assertThat(fault.get("message").asString()).contains(words).doesNotContain("the map");
        assertThat(fault.get("sheet_key").asString()).startsWith("schedule.");
        assertThat(page.change(
                                "PUT",
                                "api/builds/heron",
                                "{\"version\":\""
                                        + PageClient.json(page.get("api/builds/heron/schedule"))
                                                .get("version")
                                                .asString()
                                        + "\",\"changes\":[" + change(key, value) + "]}")
                        .statusCode())
                .isEqualTo(422);
        assertThat(Files.readString(sheet("heron"))).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "[]",
                "{\"page\":\"\",\"aim\":\"quiet\",\"units\":\"us\",\"changes\":[]}",
                "{\"page\":\"a\",\"aim\":\"fast\",\"units\":\"us\",\"changes\":[]}",
                "{\"page\":\"a\",\"aim\":\"quiet\",\"units\":\"old\",\"changes\":[]}",
                "{\"page\":\"a\",\"aim\":\"quiet\",\"units\":\"us\"}",
                "{\"page\":\"a\",\"aim\":\"quiet\",\"units\":\"us\",\"changes\":[{\"key\":\"schedule.on\"}]}",
                "{\"page\":\"a\",\"aim\":\"quiet\",\"units\":\"us\",\"changes\":[{\"key\":\"radiator.depth\",\"value\":\"40 mm\"}]}",
                "{\"page\":\"a\",\"aim\":\"quiet\",\"units\":\"us\",\"changes\":[{\"key\":\"radiator.depth\",\"out\":true}]}",
                "{\"page\"",
            })
    void whatCannotBeMeantIsRefused(String body) {
        HttpResponse<String> refused = page.change("POST", JUDGE.formatted("heron"), body);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(PageClient.json(refused).get("message").asString()).isNotBlank();
        assertThat(page.change("POST", JUDGE.formatted("nobody"), wish("")).statusCode())
                .isEqualTo(404);
    }

    @Test
    void anOlderPositionOfOnePageIsLeftForANewerOne() throws InterruptedException {
        CompletableFuture<List<JsonNode>> older = CompletableFuture.supplyAsync(() -> judged("heron", ""));
        Thread.sleep(150); // on its way; what a fan at full speed holds takes longer
        List<JsonNode> newer = judged("heron", change("on", "206 degF"));
        assertThat(whole(newer)).isTrue();
        assertThat(whole(older.join())).isFalse();
        assertThat(whole(judged("heron", ""))).isTrue();
    }

    @Test
    void aCurveTakesThePlaceOfTheOneDemandThatStoodThere() throws IOException {
        String typed = Files.readString(sheet("oxbow"));
        assertThat(typed).contains("  air_conditioning: 40 %\n");
        String changes = change("head_pressure", "[[12 bar abs, 25 %], [20 bar abs, 100 %]]")
                + ",{\"key\":\"schedule.air_conditioning\",\"out\":true}";
        assertThat(whole(judged("oxbow", changes))).isTrue();
        String version = PageClient.json(page.get("api/builds/oxbow/schedule"))
                .get("version")
                .asString();
        HttpResponse<String> saved = page.change(
                "PUT", "api/builds/oxbow", "{\"version\":\"" + version + "\",\"changes\":[" + changes + "]}");
        assertThat(saved.statusCode()).isEqualTo(200);
        assertThat(Files.readString(sheet("oxbow")))
                .isEqualTo(typed.replace(
                        "  air_conditioning: 40 %\n", "  head_pressure: [[12 bar abs, 25 %], [20 bar abs, 100 %]]\n"));
    }

    @Test
    void aSheetWithFaultsIsToldByThem() throws IOException {
        Files.writeString(sheet("heron"), Files.readString(sheet("heron")).replace("altitude:", "altitud:"));
        JsonNode read = PageClient.json(page.get("api/builds/heron/schedule"));
        assertThat(read.get("in_order").asBoolean()).isFalse();
        assertThat(read.get("findings").get(0).get("message").asString()).contains("altitud");
        assertThat(judged("heron", "").get(0).get("in_order").asBoolean()).isFalse();
    }

    @Test
    void aDesignWithoutAnAimIsRefusedAndOneThatIsTakenBackEnds() throws InterruptedException {
        assertThat(page.change("POST", "api/jobs", "{\"kind\":\"schedule\",\"build\":\"heron\"}")
                        .statusCode())
                .isEqualTo(400);
        String id = PageClient.json(page.change(
                        "POST",
                        "api/jobs",
                        "{\"kind\":\"schedule\",\"build\":\"heron\",\"aim\":\"cold\",\"units\":\"metric\"}"))
                .get("id")
                .asString();
        page.until("api/jobs/" + id, j -> j.get("share").asDouble() > 0.0);
        long asked = System.nanoTime();
        page.change("DELETE", "api/jobs/" + id, "{}");
        JsonNode job =
                page.until("api/jobs/" + id, j -> !j.get("state").asString().equals("running"));
        assertThat(job.get("state").asString()).isEqualTo("cancelled");
        System.out.printf(Locale.ROOT, "design cancelled after %.1f s%n", 1e-9 * (System.nanoTime() - asked));
    }
}
