package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.app.cli.CommandLineDoor;
import hotday.study.demo.DemoShop;
import hotday.study.shop.Shop;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A proof over HTTP: made, the same as the command line's, kept, signed, outdated, taken back. */
@Tag("slow")
class ProofTest {
    private static final String ORDER =
            "{\"kind\":\"prove\",\"build\":\"heron\",\"fit\":[\"heron-mild-day\"],\"predict\":[\"heron-next-morning\"],\"seed\":3}";
    /** From asking to the end, s; twice what is promised on a quiet machine. */
    private static final double CANCELLED_WITHIN = 2.0;

    @TempDir
    private Path folder;

    private PageServer server;
    private PageClient page;

    @BeforeEach
    void start() {
        DemoShop.create(folder).drive("heron", 1);
        server = PageServer.started(Shop.open(folder), 0, Reach.THIS_MACHINE, false);
        page = new PageClient(server.address());
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private String started() {
        HttpResponse<String> taken = page.change("POST", "api/jobs", ORDER);
        assertThat(taken.statusCode()).as(taken.body()).isEqualTo(202);
        return PageClient.json(taken).get("id").asString();
    }

    private JsonNode stage() {
        return PageClient.json(page.get("api/shop")).get("builds").get(0).get("stage");
    }

    private List<String> documents() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("builds/heron"))) {
            return files.map(f -> f.getFileName().toString())
                    .filter(n -> n.contains("proof") || n.contains("part"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void aProofIsTheCommandLinesIsKeptAndSignedAndGetsOld() throws IOException, InterruptedException {
        assertThat(page.get("api/builds/heron/proof").statusCode()).isEqualTo(204);
        String id = started();
        JsonNode job =
                page.until("api/jobs/" + id, j -> !j.get("state").asString().matches("waiting|running"));
        assertThat(job.get("state").asString()).as(job.toString()).isEqualTo("done");
        JsonNode proof = PageClient.json(page.get("api/builds/heron/proof"));
        assertThat(withoutWords(proof.get("proof"))).isEqualTo(withoutWords(commandLine()));
        assertThat(proof.get("proof").toString())
                .contains("set 'Thermostat held open'")
                .doesNotContain("channel map");
        assertThat(proof.get("current").asBoolean()).isTrue();
        assertThat(proof.get("signed").asBoolean()).isFalse();
        JsonNode trace = proof.get("traces").get(0);
        assertThat(trace.get("role").asString()).isEqualTo("fit");
        assertThat(trace.get("residual_K")).hasSameSizeAs(trace.get("time_s"));
        String pdf = proof.get("pdf").asString();
        assertThat(documents()).containsExactly(pdf, "proof.json");
        assertThat(onTheShopPage().get("case").asString()).isEqualTo("drop-to-idle");
        assertThat(onTheShopPage().get("interval90")).hasSize(2);
        signed(pdf);
        outdated(pdf);
    }

    private JsonNode onTheShopPage() {
        return PageClient.json(page.get("api/shop")).get("builds").get(0).get("proven");
    }

    /** Without what the two doors say in words of their own. */
    private static JsonNode withoutWords(JsonNode node) {
        JsonNode rest = node.deepCopy();
        rest.findParents("message").forEach(f -> ((ObjectNode) f).remove("message"));
        rest.findParents("caution").forEach(t -> ((ObjectNode) t).remove("caution"));
        return rest;
    }

    private JsonNode commandLine() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream to = new PrintStream(out, true, StandardCharsets.UTF_8);
        String[] words = {
            "prove",
            "--build",
            folder.resolve("builds/heron/build.yaml").toString(),
            "--map",
            folder.resolve("channels.yaml").toString(),
            "--fit",
            folder.resolve("runs/heron-mild-day.csv").toString(),
            "--predict",
            folder.resolve("runs/heron-next-morning.csv").toString(),
            "--seed",
            "3",
            "--json"
        };
        CommandLineDoor.run(words, to, to);
        return JsonMapper.builder().build().readTree(out.toString(StandardCharsets.UTF_8));
    }

    private void signed(String pdf) throws IOException {
        assertThat(stage().get("proven").asBoolean()).isTrue();
        assertThat(stage().get("commissioned").asBoolean()).isTrue();
        assertThat(stage().get("signed").asBoolean()).isFalse();
        assertThat(page.change("POST", "api/builds/heron/signoff", "{\"proof\":\"proof-0.pdf\"}")
                        .statusCode())
                .isEqualTo(409);
        assertThat(page.change("POST", "api/builds/heron/signoff", "{\"proof\":\"" + pdf + "\"}")
                        .statusCode())
                .isEqualTo(200);
        byte[] document = page.send(page.ask("api/builds/heron/proof.pdf"), BodyHandlers.ofByteArray())
                .body();
        assertThat(new String(document, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        assertThat(Files.readAllBytes(folder.resolve("builds/heron/signoff.pdf")))
                .isEqualTo(document);
        assertThat(stage().get("signed").asBoolean()).isTrue();
    }

    private void outdated(String pdf) throws IOException {
        Path sheet = folder.resolve("builds/heron/build.yaml");
        String text = Files.readString(sheet);
        Files.writeString(sheet, text + "# looked over\n");
        assertThat(stage().get("proven").asBoolean()).isFalse();
        assertThat(onTheShopPage().isNull()).isTrue();
        assertThat(stage().get("proof_old").asBoolean()).isTrue();
        assertThat(page.change("POST", "api/builds/heron/signoff", "{\"proof\":\"" + pdf + "\"}")
                        .statusCode())
                .isEqualTo(409);
        Files.writeString(sheet, text);
        assertThat(stage().get("proven").asBoolean()).isTrue();
        Path part = folder.resolve("shelf/cores.yaml");
        Files.writeString(part, Files.readString(part) + "# looked over\n");
        assertThat(stage().get("proven").asBoolean()).isFalse();
    }

    /** At any moment of the work. */
    @Test
    void whoTakesItBackNeedNotWait() throws IOException, InterruptedException {
        for (int wait = 100; wait < 6000; wait += 700) {
            String id = started();
            page.until("api/jobs/" + id, j -> j.get("state").asString().equals("running"));
            Thread.sleep(wait);
            JsonNode before = PageClient.json(page.change("DELETE", "api/jobs/" + id, ""));
            long asked = System.nanoTime();
            JsonNode after =
                    page.until("api/jobs/" + id, j -> !j.get("state").asString().equals("running"));
            double took = 1e-9 * (System.nanoTime() - asked);
            System.err.printf("cancelled after %d ms (%s) in %.2f s%n", wait, before.get("share"), took);
            assertThat(took).as("%s", before).isLessThan(CANCELLED_WITHIN);
            if (after.get("state").asString().equals("done")) {
                return;
            }
            assertThat(after.get("state").asString()).isEqualTo("cancelled");
            assertThat(documents()).isEmpty();
        }
    }

    @Test
    void whatCannotBeProvenIsRefusedAtOnce() {
        HttpResponse<String> none = page.change("POST", "api/jobs", "{\"kind\":\"prove\",\"build\":\"heron\"}");
        assertThat(none.statusCode()).isEqualTo(422);
        HttpResponse<String> gone = page.change(
                "POST",
                "api/jobs",
                "{\"kind\":\"prove\",\"build\":\"heron\",\"fit\":[\"../../channels\",\"heron-mild-day\"],\"predict\":[\"heron-mild-day\"]}");
        assertThat(gone.statusCode()).isEqualTo(422);
        assertThat(PageClient.json(gone).get("findings")).hasSize(2);
    }
}
