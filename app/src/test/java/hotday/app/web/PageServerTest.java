package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import hotday.study.shop.Shop;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The server as a browser, another site's page and somebody hostile meet it. */
class PageServerTest {
    private static final String RAISE =
            "{\"changes\":[{\"key\":\"stack.gearbox_cooler.bottom\",\"value\":\"250 mm\"}]}";

    @TempDir
    private Path folder;

    private PageServer server;
    private final HttpClient client = HttpClient.newHttpClient();

    @BeforeEach
    void start() {
        DemoShop.create(folder);
        server = PageServer.started(Shop.open(folder), 0, Reach.THIS_MACHINE, false);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private HttpRequest.Builder ask(String path) {
        return HttpRequest.newBuilder(URI.create(server.address() + path));
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), BodyHandlers.ofString());
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    private HttpResponse<String> change(String method, String path, String body) {
        return send(ask(path)
                .header("Content-Type", "application/json")
                .method(method, HttpRequest.BodyPublishers.ofString(body)));
    }

    private static JsonNode json(HttpResponse<String> response) {
        return JsonMapper.builder().build().readTree(response.body());
    }

    @Test
    void theShopNamesItsBuildsAndTheWorstOfEach() {
        JsonNode shop = json(send(ask("api/shop")));
        assertThat(shop.get("shop").asString()).isEqualTo("Millrace Conversions");
        assertThat(shop.get("builds")).hasSize(2);
        JsonNode heron = shop.get("builds").get(0);
        assertThat(heron.get("name").asString()).isEqualTo("Heron");
        assertThat(heron.get("worst").get("case").asString()).isEqualTo("drop-to-idle");
        assertThat(heron.get("worst").get("holds").asBoolean()).isFalse();
        assertThat(heron.get("stage").get("signed").asBoolean()).isFalse();
    }

    @Test
    void aTryMovesTheDrawingAndTheCeilings() {
        JsonNode saved = json(send(ask("api/builds/heron"))).get("answer");
        JsonNode tried = json(change("POST", "api/builds/heron/try", RAISE));
        assertThat(tried.get("stack").get("cores").get(0).get("bottom_mm").asDouble())
                .isEqualTo(250.0);
        assertThat(saved.get("stack").get("cores").get(0).get("bottom_mm").asDouble())
                .isZero();
        JsonNode idle = tried.get("ceilings").get(0);
        assertThat(idle.get("saved_degC").asDouble())
                .isEqualTo(saved.get("ceilings").get(0).get("ceiling_degC").asDouble());
        assertThat(idle.get("ceiling_degC").asDouble())
                .isNotEqualTo(idle.get("saved_degC").asDouble());
    }

    @Test
    void valuesComeInTheUnitsOfWhoeverWantsOthers() throws IOException {
        JsonNode build = json(send(ask("api/builds/heron")));
        JsonNode width = null;
        for (JsonNode value : build.get("values")) {
            width = value.get("key").asString().equals("radiator.width") ? value : width;
        }
        String typed = width.get("typed").asString();
        assertThat(typed).endsWith(" in");
        assertThat(width.get("shown").get("metric").asString()).endsWith(" mm");
        assertThat(width.get("shown").has("us")).isFalse();
        JsonNode changed = json(change("POST", "api/builds/heron/try", RAISE)).get("changed");
        assertThat(changed).hasSize(1);
        assertThat(changed.get(0).get("typed").asString()).isEqualTo("250 mm");
        assertThat(changed.get(0).get("shown").get("us").asString()).isEqualTo("9.843 in");
    }

    @Test
    void aSheetTheDiskDoesNotTakeIsNoFaultOfTheSheet() throws IOException {
        Path sheet = folder.resolve("builds/heron/build.yaml");
        String before = Files.readString(sheet);
        String version = json(send(ask("api/builds/heron"))).get("version").asString();
        String body = "{\"version\":\"" + version + "\"," + RAISE.substring(1);
        try (ReadOnly closed = ReadOnly.of(sheet.getParent())) {
            HttpResponse<String> refused = change("PUT", "api/builds/heron", body);
            assertThat(refused.statusCode()).isEqualTo(507);
            assertThat(json(refused).get("error").asString()).isEqualTo("cannot-write");
            assertThat(json(refused).get("message").asString())
                    .startsWith("build.yaml cannot be written (no permission); nothing was changed.")
                    .doesNotContain(folder.toString());
            assertThat(json(refused).has("findings")).isFalse();
        }
        assertThat(sheet).content().isEqualTo(before);
        assertThat(change("PUT", "api/builds/heron", body).statusCode()).isEqualTo(200);
    }

    @Test
    void faultsComeBackAtTheirKeysAndNothingElse() {
        JsonNode wrong = json(change(
                "POST", "api/builds/heron/try", "{\"changes\":[{\"key\":\"radiator.depth\",\"value\":\"52\"}]}"));
        assertThat(wrong.get("in_order").asBoolean()).isFalse();
        assertThat(wrong.get("findings").get(0).get("sheet_key").asString()).isEqualTo("radiator.depth");
        JsonNode thick = json(change(
                "POST", "api/builds/heron/try", "{\"changes\":[{\"key\":\"radiator.depth\",\"value\":\"520 mm\"}]}"));
        assertThat(thick.get("findings").get(0).get("message").asString())
                .startsWith("'radiator.depth' is 520 mm; it must lie between");
        assertThat(wrong.get("findings").get(0).get("message").asString()).contains("has no unit");
        assertThat(wrong.has("ceilings")).isFalse();
    }

    @Test
    void savingWritesOnceAndRefusesWhatWasChangedElsewhere() throws IOException {
        String version = json(send(ask("api/builds/heron"))).get("version").asString();
        String body = RAISE.replace("{\"changes\"", "{\"version\":\"" + version + "\",\"changes\"");
        HttpResponse<String> first = change("PUT", "api/builds/heron", body);
        assertThat(first.statusCode()).isEqualTo(200);
        String text = Files.readString(folder.resolve("builds/heron/build.yaml"));
        assertThat(text).contains("bottom: 250 mm", "# big panes");
        HttpResponse<String> second = change("PUT", "api/builds/heron", body);
        assertThat(second.statusCode()).isEqualTo(409);
        assertThat(json(second).get("error").asString()).isEqualTo("changed-elsewhere");
        assertThat(Files.readString(folder.resolve("builds/heron/build.yaml"))).isEqualTo(text);
    }

    @Test
    void aSheetWithFaultsIsRepairedAtItsFields() throws IOException {
        Path sheet = folder.resolve("builds/oxbow/build.yaml");
        String whole = Files.readString(sheet);
        Files.writeString(sheet, whole.replace("depth: 40 mm", "depth: banana"));
        JsonNode build = json(send(ask("api/builds/oxbow")));
        assertThat(build.get("name").asString()).isEqualTo("Oxbow");
        assertThat(build.get("answer").isNull()).isTrue();
        assertThat(build.get("values").size()).isGreaterThan(50);
        assertThat(build.get("findings")).hasSize(1);
        assertThat(build.get("findings").get(0).get("sheet_key").asString()).isEqualTo("radiator.depth");
        String repair = "{\"version\":\"" + build.get("version").asString()
                + "\",\"changes\":[{\"key\":\"radiator.depth\",\"value\":\"40 mm\"}]}";
        assertThat(change("PUT", "api/builds/oxbow", repair).statusCode()).isEqualTo(200);
        assertThat(Files.readString(sheet)).isEqualTo(whole);
    }

    @Test
    void aSheetThatIsNoTextLeavesTheOthersInTheShop() throws IOException {
        Path sheet = folder.resolve("builds/oxbow/build.yaml");
        for (byte[] content : List.of(new byte[0], new byte[] {1, 0, 2}, new byte[] {(byte) 0xff, 'a'})) {
            Files.write(sheet, content);
            JsonNode builds = json(send(ask("api/shop"))).get("builds");
            assertThat(builds).hasSize(2);
            assertThat(builds.get(0).get("worst").isNull()).isFalse();
            assertThat(builds.get(1).get("faults")).hasSize(1);
            JsonNode build = json(send(ask("api/builds/oxbow")));
            assertThat(build.get("findings")).hasSize(1);
            String over = "{\"version\":\"" + build.get("version").asString()
                    + "\",\"changes\":[{\"key\":\"radiator.depth\",\"value\":\"40 mm\"}]}";
            assertThat(change("PUT", "api/builds/oxbow", over).statusCode()).isEqualTo(422);
            assertThat(Files.readAllBytes(sheet)).isEqualTo(content);
        }
    }

    @Test
    void aShopThatWentAwayIsSaidSoAndNotMadeAnew() throws IOException {
        Path away = folder.resolveSibling(folder.getFileName() + "-away");
        Files.move(folder, away);
        try {
            HttpResponse<String> recording = send(ask("api/runs?file=day.csv")
                    .header("Content-Type", "application/octet-stream")
                    .POST(HttpRequest.BodyPublishers.ofString("time [s],coolant [degC]\n0,20\n1,21\n")));
            for (HttpResponse<String> each :
                    List.of(recording, send(ask("api/shop")), send(ask("api/builds/oxbow")), send(ask("api/runs")))) {
                assertThat(each.statusCode()).isEqualTo(422);
                assertThat(json(each).at("/findings/0/key").asString()).isEqualTo("shop-gone");
                assertThat(each.body()).doesNotContain(folder.toString());
            }
            assertThat(folder).doesNotExist();
        } finally {
            Files.move(away, folder);
        }
        assertThat(send(ask("api/shop")).statusCode()).isEqualTo(200);
    }

    @Test
    void anotherSitesPageIsRefused() {
        assertThat(send(ask("api/shop").header("Origin", "http://elsewhere.example"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(send(ask("api/shop").header("Origin", "null")).statusCode()).isEqualTo(403);
        assertThat(send(ask("api/shop").header("Sec-Fetch-Site", "cross-site")).statusCode())
                .isEqualTo(403);
        assertThat(send(ask("api/builds/heron/try")
                                .header("Content-Type", "text/plain")
                                .POST(HttpRequest.BodyPublishers.ofString(RAISE)))
                        .statusCode())
                .isEqualTo(403);
        HttpResponse<String> own =
                send(ask("api/shop").header("Origin", server.address().replaceAll("/$", "")));
        assertThat(own.statusCode()).isEqualTo(200);
    }

    /** A foreign name that was pointed at this machine. */
    @Test
    void anotherHostIsRefused() throws IOException {
        assertThat(raw("GET /api/shop HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 403");
        assertThat(raw("GET /api/shop HTTP/1.1\r\nHost: localhost:1\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 200");
    }

    private String raw(String request) throws IOException {
        try (Socket socket =
                new Socket("127.0.0.1", URI.create(server.address()).getPort())) {
            socket.setSoTimeout(10_000);
            OutputStream out = socket.getOutputStream();
            out.write(request.getBytes(StandardCharsets.ISO_8859_1));
            out.flush();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void everyAnswerForbidsScriptsThatAreNotItsOwn() {
        assertThat(send(ask("api/shop"))
                        .headers()
                        .firstValue("Content-Security-Policy")
                        .orElse(""))
                .contains("default-src 'none'", "script-src 'self'")
                .doesNotContain("unsafe");
        assertThat(send(ask("nothing/here")).headers().firstValue("X-Content-Type-Options"))
                .contains("nosniff");
    }

    /** Two hundred requests nobody honest sends; seeded. */
    @Test
    void hostileRequestsLeaveTheServerAnsweringAndTheShopAsItIs() throws IOException {
        List<String> before = contents();
        SplittableRandom random = new SplittableRandom(6);
        for (int i = 0; i < 200; i++) {
            int status = hostile(i % 10, random);
            assertThat(status).as("request %d", i).isBetween(200, 499);
        }
        assertThat(send(ask("api/shop")).statusCode()).isEqualTo(200);
        assertThat(contents()).isEqualTo(before);
    }

    private int hostile(int kind, SplittableRandom random) throws IOException {
        return switch (kind) {
            case 0 ->
                status(raw("GET /api/builds/..%2f..%2fetc HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"));
            case 1 -> status(raw("GET /../../../etc/passwd HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"));
            case 2 ->
                change("POST", "api/builds/heron/try", "x".repeat(1_100_000)).statusCode();
            case 3 ->
                change("POST", "api/builds/heron/try", "[".repeat(1 + random.nextInt(20_000)))
                        .statusCode();
            case 4 ->
                change("PUT", "api/builds/heron", "{\"version\":7,\"changes\":{}}")
                        .statusCode();
            case 5 -> change("PUT", "api/builds/heron", RAISE).statusCode();
            case 6 ->
                change("POST", "api/builds/heron/try", RAISE.substring(0, random.nextInt(RAISE.length())))
                        .statusCode();
            case 7 -> change("DELETE", "api/builds/heron", "{}").statusCode();
            case 8 -> change("POST", "api/builds/heron/try", wild(random)).statusCode();
            default ->
                status(raw("GET /api/builds/" + "a".repeat(7000)
                        + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"));
        };
    }

    private static int status(String answer) {
        return Integer.parseInt(answer.substring(9, 12));
    }

    private static String wild(SplittableRandom random) {
        StringBuilder value = new StringBuilder();
        for (int i = 0; i < 60; i++) {
            value.append((char) (32 + random.nextInt(95)));
        }
        return JsonMapper.builder()
                .build()
                .writeValueAsString(java.util.Map.of(
                        "changes", List.of(java.util.Map.of("key", "radiator.depth", "value", value.toString()))));
    }

    private List<String> contents() throws IOException {
        List<String> all = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                all.add(folder.relativize(file) + "\n" + Files.readString(file));
            }
        }
        return all;
    }
}
