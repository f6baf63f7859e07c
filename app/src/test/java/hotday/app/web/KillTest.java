package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import hotday.vehicle.sheet.BuildSheet;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The process is killed fifty times in the middle of saving, receiving and fitting: what was answered is there, nothing is there by half. */
@Tag("slow")
class KillTest {
    private static final int KILLS = 50;
    private static final long LONGEST_NS = 60_000_000_000L;
    private static final long FIT_NS = 10_000_000_000L;
    private static final String KEY = "stack.gearbox_cooler.bottom";

    @TempDir
    private Path folder;

    private final SplittableRandom random = new SplittableRandom(11);
    /** Content by name of every recording that was sent; those that were answered. */
    private final Map<String, byte[]> sent = new ConcurrentHashMap<>();

    private final Set<String> answered = ConcurrentHashMap.newKeySet();
    private volatile int saving;
    private volatile int saved;
    private volatile String proven = "";
    private volatile int done;

    @Test
    void whatWasAnsweredIsThereAndNothingIsThereByHalf() throws IOException, InterruptedException {
        DemoShop.create(folder).drive("heron", 1);
        for (String name : List.of("heron-mild-day.csv", "heron-next-morning.csv")) {
            sent.put(name, Files.readAllBytes(folder.resolve("runs").resolve(name)));
            answered.add(name);
        }
        int[] acts = new int[3];
        for (int i = 0; i < KILLS; i++) {
            int before = done;
            killed(i);
            acts[i % 3] += done - before;
            sheetIsWhole();
            recordingsAreWhole();
            proofIsWhole();
        }
        System.err.printf("%d kills; answered: %d saves, %d recordings, %d proofs%n", KILLS, acts[0], acts[1], acts[2]);
        assertThat(acts[0]).isPositive();
        assertThat(acts[1]).isPositive();
        assertThat(acts[2]).isPositive();
    }

    private void killed(int kill) throws IOException, InterruptedException {
        Process server = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        KilledServer.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(server.getInputStream(), StandardCharsets.UTF_8))) {
            PageClient page = new PageClient(said.readLine());
            Thread person = new Thread(() -> act(page, kill));
            person.start();
            inTheMiddle(kill);
            server.destroyForcibly().waitFor();
            person.join();
        } finally {
            server.destroyForcibly();
        }
    }

    /** Somewhere in the second thing that is done, as long as the first one took; a fit every other time in the first one already. */
    private void inTheMiddle(int kill) throws InterruptedException {
        int before = done;
        long began = System.nanoTime();
        long patience = kill % 6 == 2 ? random.nextLong(FIT_NS) : LONGEST_NS;
        while (done == before && System.nanoTime() - began < patience) {
            Thread.sleep(2);
        }
        if (done > before) {
            Thread.sleep(random.nextLong(1 + (System.nanoTime() - began) / 1_000_000));
        }
    }

    /** Goes on until the line is cut. */
    private void act(PageClient page, int kill) {
        try {
            for (int n = 0; ; n++) {
                switch (kill % 3) {
                    case 0 -> save(page);
                    case 1 -> send(page, "kill-" + kill + "-" + n + ".csv");
                    default -> prove(page);
                }
                done++;
            }
        } catch (AssertionError | RuntimeException cut) {
            // that is what the test is about
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void save(PageClient page) {
        String version =
                PageClient.json(page.get("api/builds/heron")).get("version").asString();
        saving = saved + 1;
        HttpResponse<String> answer = page.change(
                "PUT",
                "api/builds/heron",
                "{\"version\":\"" + version + "\",\"changes\":[{\"key\":\"" + KEY + "\",\"value\":\"" + saving
                        + " mm\"}]}");
        assertThat(answer.statusCode()).isEqualTo(200);
        saved = saving;
    }

    private void send(PageClient page, String name) {
        byte[] content = ("time [s],coolant [degC]\n" + "1,20.5\n".repeat(300_000) + "2," + name.length() + "\n")
                .getBytes(StandardCharsets.UTF_8);
        sent.put(name, content);
        assertThat(page.upload(name, BodyPublishers.ofByteArray(content)).statusCode())
                .isEqualTo(201);
        answered.add(name);
    }

    private void prove(PageClient page) throws InterruptedException {
        String id = PageClient.json(page.change(
                        "POST",
                        "api/jobs",
                        "{\"kind\":\"prove\",\"build\":\"heron\",\"fit\":[\"heron-mild-day\"],\"predict\":[]}"))
                .get("id")
                .asString();
        JsonNode job =
                page.until("api/jobs/" + id, j -> !j.get("state").asString().matches("waiting|running"));
        assertThat(job.get("state").asString()).isEqualTo("done");
        proven = "proof-" + id + ".pdf";
    }

    private void sheetIsWhole() {
        Path sheet = folder.resolve("builds/heron/build.yaml");
        String value =
                Optional.ofNullable(BuildSheet.read(sheet).typed().get(KEY)).orElse("");
        if (saving > 0) {
            assertThat(value).isIn(saved + " mm", saving + " mm", saved == 0 ? value : "");
            saved = value.equals(saving + " mm") ? saving : saved;
        }
    }

    private void recordingsAreWhole() throws IOException {
        Map<String, byte[]> there = new TreeMap<>();
        for (Path file : visible("runs")) {
            there.put(file.getFileName().toString(), Files.readAllBytes(file));
        }
        assertThat(there.keySet()).containsAll(answered);
        there.forEach((name, content) ->
                assertThat(Arrays.equals(content, sent.get(name))).as(name).isTrue());
    }

    private void proofIsWhole() throws IOException {
        Path file = folder.resolve("builds/heron/proof.json");
        if (!Files.exists(file)) {
            assertThat(proven).isEmpty();
            return;
        }
        JsonNode proof = JsonMapper.builder().build().readTree(Files.readString(file));
        String pdf = proof.get("pdf").asString();
        String document = Files.readString(folder.resolve("builds/heron").resolve(pdf), StandardCharsets.ISO_8859_1);
        assertThat(document).startsWith("%PDF-").endsWith("%%EOF\n");
        assertThat(proof.get("traces")).isNotEmpty();
        for (Path each : visible("builds/heron")) {
            assertThat(each.getFileName().toString()).matches("build\\.yaml|proof\\.json|proof-[0-9a-f]+\\.pdf");
        }
    }

    private List<Path> visible(String name) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(name))) {
            return files.filter(f -> !f.getFileName().toString().startsWith("."))
                    .sorted()
                    .toList();
        }
    }
}
