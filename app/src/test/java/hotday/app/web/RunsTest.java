package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.signals.channel.ChannelMap;
import hotday.study.demo.DemoShop;
import hotday.study.shop.Shop;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Recordings over HTTP: sent, named, looked at; and what somebody hostile sends instead. */
class RunsTest {
    private static final String PLAIN = """
            Time [s],ECT [degF],RPM,VSS [mph],cabin light
            0,181.0,700,0,on
            1,181.4,720,1,off
            2,182.0,900,4,off
            3,183.0,950,6,on
            """;

    private static final String MAP = """
            {"version":"VERSION","time":{"position":1,"unit":"s","clock":null},
             "channels":[{"channel":"coolant_temperature","position":2,"unit":"degF"},
                         {"channel":"engine_speed","position":3,"unit":"rpm"},
                         {"channel":"vehicle_speed","position":4,"unit":"mph"},
                         {"channel":"ambient_temperature","position":null,"constant":"22 degC"}],
             "facts":{"heater":"off"}}""";

    @TempDir
    private Path folder;

    private PageServer server;
    private PageClient page;

    @BeforeEach
    void start() {
        DemoShop.create(folder);
        server = PageServer.started(Shop.open(folder), 0, Reach.THIS_MACHINE, false, Map.of());
        page = new PageClient(server.address());
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private HttpResponse<String> send(String name, String text) {
        return page.upload(name, BodyPublishers.ofString(text));
    }

    private JsonNode run(String name) {
        return PageClient.json(page.get("api/runs/" + name));
    }

    @Test
    void aRecordingIsTakenOnceAndItsColumnsAreGuessed() {
        HttpResponse<String> sent = send("test%20drive.csv", PLAIN);
        assertThat(sent.statusCode()).isEqualTo(201);
        assertThat(PageClient.json(sent).get("name").asString()).isEqualTo("test drive");
        assertThat(send("test%20drive.csv", PLAIN).statusCode()).isEqualTo(200);
        assertThat(send("test%20drive.csv", PLAIN + "4,1,1,1,on\n").statusCode())
                .isEqualTo(409);
        JsonNode all = PageClient.json(page.get("api/runs")).get("runs");
        assertThat(all).hasSize(1);
        assertThat(all.get(0).get("map").asString()).isEqualTo("none");
        JsonNode run = run("test%20drive");
        assertThat(run.get("columns").get(1).get("examples").get(0).asString()).isEqualTo("181.0");
        assertThat(run.get("map").get("from").asString()).isEqualTo("guess");
        assertThat(run.get("map").get("time").get("position").asInt()).isEqualTo(1);
        JsonNode channels = run.get("map").get("channels");
        assertThat(channels).hasSize(3);
        assertThat(channels.get(2).get("channel").asString()).isEqualTo("coolant_temperature");
        assertThat(channels.get(2).get("unit").asString()).isEqualTo("degF");
        assertThat(channels.get(1).get("unit").isNull()).isTrue(); // rpm without a bracket is not guessed
        assertThat(run.get("recording").isNull()).isTrue();
        assertThat(run.get("findings").get(0).get("key").asString()).isEqualTo("unit-missing");
    }

    /** The name in the folder is ASCII; what it was called is kept beside it. */
    @Test
    void aNameWithUmlautsIsSpeltAndKept() {
        HttpResponse<String> sent = send("Messfahrt%20K%c3%b6ln.csv", PLAIN);
        assertThat(sent.statusCode()).isEqualTo(201);
        JsonNode run = PageClient.json(sent);
        assertThat(run.get("name").asString()).isEqualTo("Messfahrt Koeln");
        assertThat(run.get("title").asString()).isEqualTo("Messfahrt K\u00F6ln");
        assertThat(run.get("file").asString()).isEqualTo("Messfahrt Koeln.csv");
        assertThat(folder.resolve("runs/Messfahrt Koeln.title")).hasContent("Messfahrt K\u00F6ln\n");
        assertThat(run("Messfahrt%20Koeln").get("title").asString()).isEqualTo("Messfahrt K\u00F6ln");
        HttpResponse<String> other = send("Messfahrt%20Koeln.csv", PLAIN + "4,1,1,1,on\n");
        assertThat(other.statusCode()).isEqualTo(409);
        assertThat(other.body()).contains("'Messfahrt Koeln'");
        JsonNode plain = PageClient.json(send("a.csv", PLAIN));
        assertThat(plain.get("title").asString()).isEqualTo("a");
        assertThat(folder.resolve("runs/a.title")).doesNotExist();
        HttpResponse<String> nameless = send("%e8%a9%a6.csv", PLAIN);
        assertThat(nameless.statusCode()).isEqualTo(422);
        assertThat(nameless.body()).contains("run-name-wrong", "at least one letter or digit");
    }

    @Test
    void aMapIsTriedSavedAndReadByTheCommandLineToo() {
        send("a.csv", PLAIN);
        String version = run("a").get("version").asString();
        JsonNode tried = PageClient.json(page.change("POST", "api/runs/a/map", MAP));
        assertThat(tried.get("recording").get("rows").asInt()).isEqualTo(4);
        Path own = folder.resolve("runs/a.channels.yaml");
        assertThat(own).doesNotExist();
        HttpResponse<String> saved = page.change("PUT", "api/runs/a/map", MAP.replace("VERSION", version));
        assertThat(saved.statusCode()).isEqualTo(200);
        JsonNode now = PageClient.json(saved);
        assertThat(now.get("map").get("from").asString()).isEqualTo("own");
        assertThat(now.get("map").get("facts").get("heater").asString()).isEqualTo("off");
        assertThat(now.get("recording").get("channels").get(2).get("max").asDouble())
                .isBetween(21.9, 22.1);
        assertThat(ChannelMap.read(own).recording(folder.resolve("runs/a.csv")).time())
                .hasSize(4);
        HttpResponse<String> late = page.change("PUT", "api/runs/a/map", MAP.replace("VERSION", version));
        assertThat(late.statusCode()).isEqualTo(409);
        HttpResponse<String> wrong = page.change(
                "PUT",
                "api/runs/a/map",
                MAP.replace("VERSION", now.get("version").asString()).replace("degF", "mph"));
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(PageClient.json(wrong).get("findings").get(0).get("key").asString())
                .isEqualTo("unit-wrong");
        assertThat(run("a").get("version").asString())
                .isEqualTo(now.get("version").asString());
    }

    /** Nothing in it is time: the page says so, and how it can be read all the same. */
    @Test
    void aWarmUpWithoutTimeIsNotReadByItsTemperature() {
        send("a.csv", "ECT [degC],VSS [km/h]\n20,0\n21,3\n22,9\n");
        JsonNode run = run("a");
        assertThat(run.get("map").get("time").get("position").isNull()).isTrue();
        assertThat(run.get("recording").isNull()).isTrue();
        assertThat(run.get("findings").get(0).get("key").asString()).isEqualTo("no-time-column");
        String map = """
                {"version":"VERSION","time":{"position":null,"step":"0.5 s"},
                 "channels":[{"channel":"coolant_temperature","position":1,"unit":"degC"}],"facts":{}}""";
        String nothing = map.replace("\"0.5 s\"", "\"\"")
                .replace("VERSION", run.get("version").asString());
        assertThat(page.change("PUT", "api/runs/a/map", nothing).statusCode()).isEqualTo(422);
        JsonNode saved = PageClient.json(page.change(
                "PUT",
                "api/runs/a/map",
                map.replace("VERSION", run.get("version").asString())));
        assertThat(saved.get("recording").get("duration_s").asDouble()).isEqualTo(1.0);
        assertThat(saved.get("map").get("time").get("step").asString()).isEqualTo("0.5 s");
    }

    /** Time alone can be read, and nothing can be proven from it. */
    @Test
    void aMapWithoutChannelsSaysWhatAProofMisses() {
        send("a.csv", PLAIN);
        JsonNode tried = PageClient.json(page.change(
                "POST", "api/runs/a/map", "{\"time\":{\"position\":1,\"unit\":\"s\"},\"channels\":[],\"facts\":{}}"));
        assertThat(tried.get("recording").get("rows").asInt()).isEqualTo(4);
        assertThat(missing(tried))
                .containsExactly("coolant temperature", "ambient temperature", "vehicle speed", "fuel flow");
        JsonNode whole = PageClient.json(page.change("POST", "api/runs/a/map", MAP));
        assertThat(missing(whole)).isEmpty();
    }

    private static List<String> missing(JsonNode run) {
        List<String> missing = new ArrayList<>();
        for (JsonNode finding : run.get("findings")) {
            if (finding.get("key").asString().equals("channel-missing")) {
                assertThat(finding.get("severity").asString()).isEqualTo("warning");
                missing.add(finding.get("message").asString().replaceAll("for a proof: no (.*) in this run: .*", "$1"));
            }
        }
        return missing;
    }

    @Test
    void aTraceComesAsNumbers() {
        send("a.csv", PLAIN);
        page.change(
                "PUT",
                "api/runs/a/map",
                MAP.replace("VERSION", run("a").get("version").asString()));
        HttpResponse<byte[]> trace =
                page.send(page.ask("api/runs/a/trace/coolant_temperature"), BodyHandlers.ofByteArray());
        assertThat(trace.headers().firstValue("X-Unit")).contains("degC");
        ByteBuffer numbers = ByteBuffer.wrap(trace.body()).order(ByteOrder.LITTLE_ENDIAN);
        assertThat(numbers.getDouble()).isEqualTo(4.0);
        numbers.position(8 + 4 * 8);
        assertThat(numbers.getFloat()).isEqualTo((float) ((181.0 - 32.0) / 1.8));
        assertThat(page.get("api/runs/a/trace/oil_temperature").statusCode()).isEqualTo(404);
    }

    /** What the shop's logger writes needs nobody to say what it means; a change of that map keeps what it says besides. */
    @Test
    void theShopsMapReadsWhatItsLoggerWrites() {
        DemoShop.create(folder).drive("heron", 1);
        JsonNode first = PageClient.json(page.get("api/runs")).get("runs").get(0);
        assertThat(first.get("map").asString()).isEqualTo("shop");
        String name = first.get("name").asString();
        JsonNode look = run(name);
        assertThat(look.get("recording").get("rows").asInt()).isGreaterThan(1000);
        String map = look.get("map").toString();
        String body = "{\"version\":\"" + look.get("version").asString() + "\"," + map.substring(1);
        assertThat(page.change("PUT", "api/runs/" + name + "/map", body).statusCode())
                .isEqualTo(200);
        assertThat(folder.resolve("runs/" + name + ".channels.yaml"))
                .content()
                .contains("resolution: \"1 K\"", "heater: \"off\"");
        assertThat(run(name).get("recording")).isEqualTo(look.get("recording"));
    }

    @Test
    void aFileFromAnotherSitesPageIsRefused() {
        assertThat(page.send(
                                page.ask("api/runs?file=a.csv")
                                        .header("Content-Type", "text/plain")
                                        .POST(BodyPublishers.ofString(PLAIN)),
                                BodyHandlers.ofString())
                        .statusCode())
                .isEqualTo(403);
        assertThat(page.send(
                                page.ask("api/runs/a/map")
                                        .header("Content-Type", "application/octet-stream")
                                        .PUT(BodyPublishers.ofString(MAP)),
                                BodyHandlers.ofString())
                        .statusCode())
                .isEqualTo(403);
    }

    /** Two hundred files nobody honest sends; seeded. */
    @Test
    void hostileFilesLeaveTheServerAnsweringAndTheShopAsItIs() throws IOException {
        List<String> before = contents();
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 200; i++) {
            HttpResponse<String> answer = hostile(i % 10, random);
            assertThat(answer.statusCode()).as("file %d: %s", i, answer.body()).isBetween(400, 499);
        }
        assertThat(page.get("api/runs").statusCode()).isEqualTo(200);
        assertThat(contents()).isEqualTo(before);
    }

    private HttpResponse<String> hostile(int kind, SplittableRandom random) throws IOException {
        return switch (kind) {
            case 0 -> send("..%2f..%2fbuilds%2fheron%2fbuild.yaml", PLAIN);
            case 1 ->
                send(
                        List.of("a.channels.yaml", ".a.csv", "a.csv%00.txt", "a", "a%5cb.csv", "%e8%a9%a6.csv", "")
                                .get(random.nextInt(7)),
                        PLAIN);
            case 2 -> send("a".repeat(81 + random.nextInt(2000)) + ".csv", PLAIN);
            case 3 -> page.upload("a.csv", BodyPublishers.ofByteArray(noise(random, 1 + random.nextInt(100_000))));
            case 4 -> send("a.csv", "");
            case 5 -> send("a.csv", "t,b\n1,2" + ",3".repeat(1_000_000));
            case 6 -> {
                byte[] packed = packed(PLAIN.getBytes(StandardCharsets.UTF_8));
                yield bytes("a.csv.gz", java.util.Arrays.copyOf(packed, 12 + random.nextInt(packed.length - 20)));
            }
            case 7 -> bytes("a.csv.gz", packed(packed(PLAIN.getBytes(StandardCharsets.UTF_8))));
            case 8 -> send("a.csv", "time [s],coolant [degC]\n\n\n");
            default -> send("a.csv", "PK\u0003\u0004" + PLAIN);
        };
    }

    private HttpResponse<String> bytes(String name, byte[] content) {
        return page.upload(name, BodyPublishers.ofByteArray(content));
    }

    private static byte[] noise(SplittableRandom random, int size) {
        byte[] bytes = new byte[size];
        random.nextBytes(bytes);
        bytes[0] = 0;
        return bytes;
    }

    private static byte[] packed(byte[] content) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (OutputStream zip = new GZIPOutputStream(out)) {
            zip.write(content);
        }
        return out.toByteArray();
    }

    /** A few megabytes that unpack to three thousand million bytes. */
    @Test
    void aFileThatUnpacksToTooMuchIsRefused() throws IOException {
        byte[] rows = "1,2\n".repeat(250_000).getBytes(StandardCharsets.UTF_8);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (OutputStream zip = new GZIPOutputStream(out, 1 << 16)) {
            zip.write("time [s],coolant [degC]\n0,1\n".getBytes(StandardCharsets.UTF_8));
            for (int i = 0; i < 50; i++) {
                zip.write(rows);
            }
        }
        assertThat(bytes("a.csv.gz", out.toByteArray()).statusCode()).isEqualTo(422);
        out.reset();
        byte[] zeros = new byte[1_000_000];
        try (OutputStream zip = new GZIPOutputStream(out, 1 << 16)) {
            zip.write("time [s],coolant [degC]\n0,1\n".getBytes(StandardCharsets.UTF_8));
            for (int i = 0; i < 3000; i++) {
                zip.write(zeros);
            }
        }
        HttpResponse<String> answer = bytes("a.csv.gz", out.toByteArray());
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(PageClient.json(answer).get("findings").get(0).get("key").asString())
                .isEqualTo("too-much-unpacked");
        assertThat(folder.resolve("runs/a.csv.gz")).doesNotExist();
    }

    /** As a disk that takes nothing: where the folder should be stands a file. */
    @Test
    void aRecordingTheDiskDoesNotTakeIsNoFaultOfTheRecording() throws IOException {
        Path runs = folder.resolve("runs");
        Files.deleteIfExists(runs);
        Files.writeString(runs, "in the way");
        HttpResponse<String> answer = send("a.csv", PLAIN);
        assertThat(answer.statusCode()).isEqualTo(507);
        assertThat(PageClient.json(answer).get("error").asString()).isEqualTo("cannot-write");
        assertThat(PageClient.json(answer).get("message").asString())
                .startsWith("a.csv cannot be kept (a file stands where a folder is needed)");
        Files.delete(runs);
        assertThat(send("a.csv", PLAIN).statusCode()).isEqualTo(201);
    }

    @Test
    void aFileWithoutEndIsBrokenOffAtTheLimit() {
        HttpResponse<String> answer = page.upload("a.csv", BodyPublishers.ofInputStream(Endless::new));
        assertThat(answer.statusCode()).isEqualTo(413);
        assertThat(PageClient.json(page.get("api/runs")).get("largest_bytes").asLong())
                .isEqualTo(256_000_000);
        assertThat(folder.resolve("runs")).isEmptyDirectory();
        assertThat(page.get("api/runs").statusCode()).isEqualTo(200);
    }

    /** Rows up to 300 MB. */
    private static final class Endless extends InputStream {
        private static final byte[] ROW = "1,2,3,4\n".getBytes(StandardCharsets.UTF_8);
        private long sent;

        @Override
        public int read() {
            return sent < 300_000_000 ? ROW[(int) (sent++ % ROW.length)] : -1;
        }
    }

    private List<String> contents() throws IOException {
        List<String> all = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder)) {
            files.filter(Files::isRegularFile).sorted().forEach(f -> all.add(folder.relativize(f) + "\n" + text(f)));
        }
        return all;
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
