package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.study.demo.DemoShop;
import hotday.study.shop.Shop;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Scanner;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Long work over HTTP: waiting, told of, taken back, failing. */
class JobsTest {
    @TempDir
    private Path folder;

    private PageServer server;
    private PageClient page;
    private final CountDownLatch open = new CountDownLatch(1);

    @BeforeEach
    void start() {
        DemoShop.create(folder);
        server = PageServer.started(
                Shop.open(folder),
                0,
                Reach.THIS_MACHINE,
                false,
                Map.of(
                        "count", (bench, asked) -> JobsTest::counted,
                        "gate", (bench, asked) -> this::gated,
                        "wrong",
                                (bench, asked) -> job -> {
                                    throw InputException.at(new Place("a.csv", 7, 2), "bad", "is bad");
                                },
                        "full",
                                (bench, asked) -> job -> {
                                    throw InputException.at(
                                            Place.of("/shop/proof.json"),
                                            "cannot-write",
                                            "cannot be written (the disk is full)");
                                },
                        "broken",
                                (bench, asked) -> job -> {
                                    throw new IllegalStateException("inner matters");
                                }));
        page = new PageClient(server.address());
    }

    @AfterEach
    void stop() {
        open.countDown();
        server.close();
    }

    private static ObjectNode counted(Job job) {
        for (int i = 0; i < 1000; i++) {
            job.at("counting " + i, 1e-3 * i);
        }
        return Reply.object().put("counted", 1000);
    }

    /** Works until it is let go or taken back. */
    private ObjectNode gated(Job job) {
        while (open.getCount() > 0) {
            job.endWhenCancelled();
            Thread.onSpinWait();
        }
        return Reply.object();
    }

    private HttpResponse<String> start(String kind) {
        return page.change("POST", "api/jobs", "{\"kind\":\"" + kind + "\",\"build\":\"heron\"}");
    }

    private static String id(HttpResponse<String> taken) {
        assertThat(taken.statusCode()).isEqualTo(202);
        return PageClient.json(taken).get("id").asString();
    }

    private JsonNode ended(String id, String state) throws InterruptedException {
        return page.until("api/jobs/" + id, j -> j.get("state").asString().equals(state));
    }

    @Test
    void workIsDoneAndItsResultKept() throws InterruptedException {
        String id = id(start("count"));
        JsonNode job = ended(id, "done");
        assertThat(job.get("share").asDouble()).isEqualTo(1.0);
        assertThat(job.get("build").asString()).isEqualTo("heron");
        assertThat(PageClient.json(page.get("api/jobs/" + id + "/result"))
                        .get("counted")
                        .asInt())
                .isEqualTo(1000);
        assertThat(page.get("api/jobs/nothing").statusCode()).isEqualTo(404);
    }

    @Test
    void wrongInputIsToldWithItsPlaceAndOurOwnFaultWithoutItsInnerMatters() throws InterruptedException {
        JsonNode finding = ended(id(start("wrong")), "failed").get("findings").get(0);
        assertThat(finding.get("key").asString()).isEqualTo("bad");
        assertThat(finding.get("line").asInt()).isEqualTo(7);
        JsonNode full = ended(id(start("full")), "failed");
        assertThat(full.get("findings")).isEmpty();
        assertThat(full.get("message").asString()).isEqualTo("proof.json cannot be written (the disk is full)");
        JsonNode own = ended(id(start("broken")), "failed");
        assertThat(own.get("message").asString()).contains("of our own").doesNotContain("inner");
    }

    @Test
    void oneWorksTheOthersWaitAndAnyCanBeTakenBack() throws InterruptedException {
        String first = id(start("gate"));
        ended(first, "running");
        String second = id(start("gate"));
        assertThat(ended(second, "waiting").get("running_s").asDouble()).isZero();
        page.change("DELETE", "api/jobs/" + second, "");
        ended(second, "cancelled");
        page.change("DELETE", "api/jobs/" + first, "");
        ended(first, "cancelled");
        assertThat(page.get("api/jobs/" + first + "/result").statusCode()).isEqualTo(404);
        JsonNode all = PageClient.json(page.get("api/jobs")).get("jobs");
        assertThat(all).hasSize(2);
        assertThat(all.get(0).get("id").asString()).isEqualTo(second);
    }

    @Test
    void moreThanTwentyWaitingAreRefused() throws InterruptedException {
        ended(id(start("gate")), "running");
        for (int i = 0; i < 20; i++) {
            id(start("gate"));
        }
        HttpResponse<String> refused = start("gate");
        assertThat(refused.statusCode()).isEqualTo(429);
        assertThat(PageClient.json(refused).get("error").asString()).isEqualTo("busy");
    }

    @Test
    void whatCannotBeAskedIsRefused() {
        assertThat(start("nothing").statusCode()).isEqualTo(400);
        assertThat(page.change("POST", "api/jobs", "{\"kind\":\"count\",\"build\":\"../x\"}")
                        .statusCode())
                .isEqualTo(404);
        assertThat(page.change("POST", "api/jobs", "[]").statusCode()).isEqualTo(400);
    }

    /** A thousand changes within milliseconds: a listener gets few of them and the last. */
    @Test
    void aListenerHearsOfTheEnd() throws IOException {
        HttpResponse<InputStream> line =
                page.send(page.ask("api/events").header("Accept", "text/event-stream"), BodyHandlers.ofInputStream());
        assertThat(line.statusCode()).isEqualTo(200);
        List<String> heard = new ArrayList<>();
        try (InputStream in = line.body();
                Scanner lines = new Scanner(in, StandardCharsets.UTF_8)) {
            assertThat(lines.nextLine()).startsWith(":");
            String id = id(start("count"));
            while (heard.isEmpty() || !heard.get(heard.size() - 1).contains("\"done\"")) {
                String text = lines.nextLine();
                if (text.startsWith("data:")) {
                    heard.add(text);
                    assertThat(text).contains(id);
                }
            }
        }
        assertThat(heard).hasSizeLessThan(20);
    }

    @Test
    void aListenerHearsOfASavedSheet() throws IOException {
        HttpResponse<InputStream> line =
                page.send(page.ask("api/events").header("Accept", "text/event-stream"), BodyHandlers.ofInputStream());
        try (InputStream in = line.body();
                Scanner lines = new Scanner(in, StandardCharsets.UTF_8)) {
            lines.nextLine();
            String version =
                    PageClient.json(page.get("api/builds/heron")).get("version").asString();
            JsonNode saved = PageClient.json(page.change(
                    "PUT",
                    "api/builds/heron",
                    "{\"version\":\"" + version
                            + "\",\"changes\":[{\"key\":\"stack.gearbox_cooler.bottom\",\"value\":\"250 mm\"}]}"));
            String text = lines.nextLine();
            while (!text.startsWith("data:")) {
                text = lines.nextLine();
            }
            assertThat(text)
                    .contains("\"heron\"", saved.get("version").asString())
                    .doesNotContain(version);
        }
    }

    @Test
    void noMoreThanThirtyTwoListen() {
        for (int i = 0; i < 32; i++) {
            assertThat(page.send(
                                    page.ask("api/events").header("Accept", "text/event-stream"),
                                    BodyHandlers.ofInputStream())
                            .statusCode())
                    .isEqualTo(200);
        }
        assertThat(page.send(page.ask("api/events").header("Accept", "text/event-stream"), BodyHandlers.ofString())
                        .statusCode())
                .isEqualTo(429);
    }
}
