package hotday.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code new}, {@code check} and {@code predict} as somebody at a bench meets them: words, JSON, status, files. */
class CommandsTest {
    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private Path sheet;

    @BeforeEach
    void shop() {
        assertThat(run("new", folder.resolve("shop"))).isZero();
        sheet = folder.resolve("shop/builds/oxbow/build.yaml");
        out.reset();
    }

    private int run(Object... words) {
        String[] args = new String[words.length];
        for (int i = 0; i < words.length; i++) {
            args[i] = words[i].toString();
        }
        return CommandLineDoor.run(
                args,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    /** Only the one that is called is made; the help and a misspelt word see all of them. */
    @Test
    void everyCommandAnswersByItsName() {
        assertThat(run("--help")).isZero();
        String all = out();
        for (String name : List.of(
                "new",
                "check",
                "predict",
                "prove",
                "property",
                "decode",
                "gateway",
                "controller",
                "coverage",
                "faults",
                "serve",
                "demo")) {
            assertThat(all).contains("\n  " + name + " ");
            out.reset();
            assertThat(run("--debug", name, "--help")).isZero();
            assertThat(out()).startsWith("Usage: hotday " + name + " ");
        }
        assertThat(run("chek")).isEqualTo(CommandLineDoor.WRONG_INPUT);
        assertThat(err()).contains("check");
    }

    private JsonNode json() {
        return JsonMapper.builder().build().readTree(out());
    }

    private void retype(String typed, String instead) {
        try {
            String text = Files.readString(sheet);
            assertThat(text).contains(typed);
            Files.writeString(sheet, text.replace(typed, instead));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<String> files() {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.map(p -> folder.relativize(p) + " " + modified(p))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String modified(Path path) {
        try {
            return Files.isDirectory(path) ? "" : Files.getLastModifiedTime(path) + " " + Files.size(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Keys of every number in a tree, with those of the objects and lists around it. */
    private static void numberKeys(String path, JsonNode node, List<String> keys) {
        if (node.isNumber()) {
            keys.add(path);
        } else if (node.isObject()) {
            node.properties().forEach(e -> numberKeys(path + "/" + e.getKey(), e.getValue(), keys));
        } else {
            node.forEach(child -> numberKeys(path, child, keys));
        }
    }

    @Test
    void aPortThatCannotBeIsRefused() {
        assertThat(run("serve", folder.resolve("shop"), "--port", 99_999)).isEqualTo(2);
        assertThat(err()).contains("--port").contains("65535");
    }

    @Test
    void newRefusesAFolderThatIsThereAndWritesNothing() throws IOException {
        Path there = Files.createDirectory(folder.resolve("there"));
        Path file = Files.writeString(folder.resolve("file"), "mine");
        List<String> before = files();
        assertThat(run("new", there)).isEqualTo(2);
        assertThat(run("new", file)).isEqualTo(2);
        assertThat(files()).isEqualTo(before);
        assertThat(err()).contains(there.toString(), "is there already");
        assertThat(out()).isEmpty();
    }

    @Test
    void checkInJsonParsesAndListsEveryAssumption() {
        assertThat(run("check", sheet, "--json")).isZero();
        JsonNode root = json();
        assertThat(root.get("build").asString()).isEqualTo("Oxbow");
        assertThat(root.get("in_order").asBoolean()).isTrue();
        assertThat(root.get("assumptions")).isNotEmpty().allSatisfy(a -> {
            assertThat(a.get("key").asString()).isNotBlank();
            assertThat(a.get("value").asString()).isNotBlank();
            assertThat(a.get("reason").asString()).isNotBlank();
        });
        assertThat(err()).isEmpty();
    }

    @Test
    void checkNamesEveryFaultWithItsPlaceAndWritesNothing() {
        retype("displacement: 3.0 l", "displacement: 3.0");
        retype("mass: 2100 kg", "mas: 2100 kg");
        List<String> before = files();
        assertThat(run("check", sheet)).isEqualTo(2);
        assertThat(err().lines().toList())
                .hasSizeGreaterThanOrEqualTo(2)
                .allSatisfy(line ->
                        assertThat(line).matches(java.util.regex.Pattern.quote(sheet.toString()) + ":\\d+:\\d+: .+"));
        assertThat(err()).contains("displacement", "mass");
        assertThat(out()).isEmpty();
        assertThat(files()).isEqualTo(before);
    }

    @Test
    void predictInJsonParsesAndEveryNumberSaysItsUnit() {
        int status = run("predict", sheet, "--json", "--case", "hot-idle");
        assertThat(status).as(err()).isBetween(0, 1);
        JsonNode root = json();
        assertThat(root.get("cases")).hasSize(1);
        JsonNode one = root.get("cases").get(0);
        assertThat(one.get("case").asString()).isEqualTo("hot-idle");
        assertThat(one.get("ambient_degC").asDouble()).isEqualTo(43.0);
        assertThat(status == 0).isEqualTo(one.get("ambient_ceiling_degC").asDouble() >= 43.0);
        assertThat(one.get("limits"))
                .hasSize(6)
                .allMatch(l -> !l.get("unit").asString().isEmpty());
        assertThat(one.get("air_to_boil_K").asDouble())
                .isCloseTo(one.get("air_to_boil_degC").asDouble() - 43.0, within(1e-9));
        JsonNode interval = one.get("interval90_degC");
        assertThat(interval.get(0).asDouble())
                .isLessThanOrEqualTo(interval.get(1).asDouble());
        List<String> keys = new ArrayList<>();
        numberKeys("", one, keys);
        // the interval stands beside a value of the same unit; a chance has none: docs/formats.md
        assertThat(keys)
                .allMatch(
                        k -> k.matches(
                                ".*(degC|_K|_s|_percent|_A|_V|_rpm|_kW|_bar_abs|/chance_to_hold_there|/limits.*/(value|limit|headroom))"));
    }

    @Test
    void predictRunsAColdMorning() {
        assertThat(run("predict", sheet, "--json", "--case", "cold-morning")).isZero();
        assertThat(json().get("cases")).isEmpty();
        JsonNode cold = json().get("cold").get(0);
        assertThat(cold.get("ambient_degC").asDouble()).isCloseTo(-10.0, within(1e-9));
        assertThat(cold.get("verdict").asString()).isEqualTo("warm");
        assertThat(cold.get("reach")).hasSize(3);
        assertThat(run("predict", sheet, "--case", "cold-morning")).as(err()).isZero();
        assertThat(out()).contains("gets warm", "Cold morning", "cabin at").doesNotContain("gives way");
        retype("opens: ", "leak: 20 %, opens: ");
        assertThat(run("predict", sheet, "--case", "cold-morning")).as(out()).isEqualTo(1);
        assertThat(out()).contains("STAYS COLD");
    }

    @Test
    void predictTellsWhatAnotherValueWouldChange() {
        int status = run("predict", sheet, "--json", "--case", "loaded-climb", "--what-if", "radiator.depth=60 mm");
        assertThat(status).as(err()).isBetween(0, 1);
        JsonNode change = json().get("what_if").get("cases").get(0);
        assertThat(change.get("case").asString()).isEqualTo("loaded-climb");
        assertThat(change.get("change_K").asDouble()).isPositive();
        assertThat(run("predict", sheet, "--what-if", "radiator.depth=60")).isEqualTo(2);
        assertThat(err()).contains("--what-if radiator.depth", "radiator.depth", "unit");
        assertThat(run("predict", sheet, "--what-if", "radiator.deep=60 mm")).isEqualTo(2);
        assertThat(err()).contains("radiator.deep", "Known: width");
        assertThat(run("predict", sheet, "--what-if", "nonsense")).isEqualTo(2);
        assertThat(err()).contains("key=value");
    }

    @Test
    void predictTakesAnotherDayAndRefusesOneWithoutUnit() {
        run("predict", sheet, "--json", "--case", "hot-idle", "--ambient", "86 degF");
        assertThat(json().get("cases").get(0).get("ambient_degC").asDouble()).isCloseTo(30.0, within(1e-9));
        assertThat(run("predict", sheet, "--ambient", "40")).isEqualTo(2);
        assertThat(err()).contains("--ambient", "unit");
        assertThat(run("predict", sheet, "--ambient", "200 degC")).isEqualTo(2);
        assertThat(err()).contains("--ambient", "must lie between");
    }

    @Test
    void predictDrawsTheMapAndWritesItsNumbers() throws IOException {
        Path svg = sheet.resolveSibling("map.svg");
        run("predict", sheet, "--case", "motorway", "--map", svg);
        assertThat(Files.readString(svg)).startsWith("<svg").contains("ambient ceiling");
        List<String> lines = Files.readAllLines(svg.resolveSibling("map.csv"));
        assertThat(lines.get(0)).isEqualTo("speed_km_h,grade_percent,ambient_ceiling_degC,reach,binding_limit");
        assertThat(lines).hasSize(1 + 70);
        assertThat(run("predict", sheet, "--map", "map.png")).isEqualTo(2);
        assertThat(err()).contains("--map", ".svg");
    }

    @Test
    void predictSaysByItsStatusWhetherTheBuildHolds() {
        retype("ambient: 43 degC", "ambient: 15 degC");
        assertThat(run("predict", sheet, "--case", "motorway"))
                .as(out() + err())
                .isZero();
        retype("ambient: 15 degC", "ambient: 55 degC");
        retype("depth: 40 mm", "depth: 16 mm");
        assertThat(run("predict", sheet, "--case", "loaded-climb"))
                .as(out() + err())
                .isEqualTo(1);
        assertThat(out()).contains("Loaded climb", "not a warranty");
    }

    @Test
    void predictIsTheSameForTheSameSeedAndNamesTheCasesThereAre() {
        run("predict", sheet, "--case", "hot-idle", "--seed", "3");
        String first = out();
        out.reset();
        run("predict", sheet, "--case", "hot-idle", "--seed", "3");
        assertThat(out()).isEqualTo(first);
        assertThat(run("predict", sheet, "--case", "hot-idel")).isEqualTo(2);
        assertThat(err()).contains("'hot-idel'", "hot-idle", "loaded-climb");
    }

    @Test
    void predictDrawsTheFrontOrSaysWhyNot() throws IOException {
        Path svg = folder.resolve("face.svg");
        run("predict", sheet, "--case", "hot-idle", "--picture", svg);
        assertThat(out() + err()).contains("drawn in " + svg, "Air through the face");
        assertThat(Files.readString(svg)).startsWith("<svg").contains("Air reaching the radiator");
        assertThat(run("predict", sheet, "--picture", folder.resolve("face.png")))
                .isEqualTo(2);
        assertThat(err()).contains("must end in .svg");
        assertThat(folder.resolve("face.png")).doesNotExist();
    }
}
