package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.study.demo.DemoShop;
import hotday.study.shop.Shop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** What a sheet predicts, asked for over HTTP. */
class PredictionJobsTest {
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

    private JsonNode job(String kind, String state) throws InterruptedException {
        String id = PageClient.json(page.change("POST", "api/jobs", "{\"kind\":\"" + kind + "\",\"build\":\"heron\"}"))
                .get("id")
                .asString();
        return page.until("api/jobs/" + id, j -> j.get("state").asString().equals(state));
    }

    private JsonNode result(String kind) throws InterruptedException {
        String id = job(kind, "done").get("id").asString();
        return PageClient.json(page.get("api/jobs/" + id + "/result"));
    }

    @Test
    void intervalsStandAroundTheCeilingsOfTheSheet() throws InterruptedException {
        JsonNode sheet = PageClient.json(page.get("api/builds/heron"));
        JsonNode ceilings = sheet.get("answer").get("ceilings");
        JsonNode result = result("intervals");
        assertThat(result.get("version").asString())
                .isEqualTo(sheet.get("version").asString());
        assertThat(result.get("day_degC").asDouble())
                .isCloseTo(sheet.get("day_degC").asDouble(), within(1e-9));
        assertThat(result.get("cases")).hasSize(ceilings.size());
        for (int i = 0; i < ceilings.size(); i++) {
            JsonNode each = result.get("cases").get(i);
            assertThat(each.get("case")).isEqualTo(ceilings.get(i).get("case"));
            assertThat(each.get("ambient_ceiling_degC").asDouble())
                    .isCloseTo(ceilings.get(i).get("ceiling_degC").asDouble(), within(0.05));
            JsonNode interval = each.get("interval90_degC");
            assertThat(interval.get(0).asDouble()).isLessThan(interval.get(1).asDouble());
        }
        assertThat(result.get("cold").get(0).get("reach")).isNotEmpty();
    }

    @Test
    void theMapFallsWithTheGradeAndIsKeptTillTheSheetChanges() throws IOException, InterruptedException {
        JsonNode map = result("map");
        int speeds = map.get("speeds_km_h").size();
        int grades = map.get("grades_percent").size();
        assertThat(map.get("points")).hasSize(speeds * grades);
        double flat = map.get("points").get(3).get("ambient_ceiling_degC").asDouble();
        double steep = map.get("points")
                .get(3 + 3 * speeds)
                .get("ambient_ceiling_degC")
                .asDouble();
        assertThat(steep).isLessThan(flat);
        assertThat(result("map")).isEqualTo(map);
        Path sheet = folder.resolve("builds/heron/build.yaml");
        Files.writeString(sheet, Files.readString(sheet) + "\n# weighed again\n");
        assertThat(result("map").get("version")).isNotEqualTo(map.get("version"));
    }

    @Test
    void theValueThatMovesMostComesFirst() throws InterruptedException {
        JsonNode rows = result("sensitivity").get("sensitivity");
        assertThat(rows.size()).isGreaterThan(20);
        double before = Double.POSITIVE_INFINITY;
        for (JsonNode row : rows) {
            double largest = 0.0;
            for (JsonNode move : row.get("change_K")) {
                largest = Math.max(largest, Math.abs(move.asDouble()));
            }
            assertThat(largest).as(row.get("key").asString()).isLessThanOrEqualTo(before);
            before = largest;
        }
    }

    /** Long before it would be done. */
    @ParameterizedTest
    @ValueSource(strings = {"map", "sensitivity", "intervals"})
    void whatIsTakenBackEndsWithinASecond(String kind) throws InterruptedException {
        page.get("api/builds/heron");
        String id = PageClient.json(page.change("POST", "api/jobs", "{\"kind\":\"" + kind + "\",\"build\":\"heron\"}"))
                .get("id")
                .asString();
        page.until("api/jobs/" + id, j -> j.get("state").asString().equals("running"));
        long asked = System.nanoTime();
        page.change("DELETE", "api/jobs/" + id, "{}");
        JsonNode job =
                page.until("api/jobs/" + id, j -> !j.get("state").asString().equals("running"));
        double waited = 1e-9 * (System.nanoTime() - asked);
        System.out.printf(Locale.ROOT, "%s cancelled after %.3f s%n", kind, waited);
        assertThat(job.get("state").asString()).isEqualTo("cancelled");
        assertThat(waited).isLessThan(1.0);
    }

    @Test
    void aSheetWithFaultsIsToldByItsFaults() throws IOException, InterruptedException {
        Path sheet = folder.resolve("builds/heron/build.yaml");
        Files.writeString(sheet, Files.readString(sheet).replace("altitude:", "altitud:"));
        JsonNode job = job("map", "failed");
        assertThat(job.get("findings").get(0).get("message").asString()).contains("altitud");
    }
}
