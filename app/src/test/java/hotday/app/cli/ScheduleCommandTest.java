package hotday.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import hotday.study.demo.VirtualCar;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code hotday schedule} as somebody with a schedule in hand meets it. */
@Tag("slow")
class ScheduleCommandTest {
    @TempDir
    private static Path folder;

    private static DemoShop shop;
    private static Path build;

    @BeforeAll
    static void shop() {
        shop = DemoShop.create(folder.resolve("shop"));
        build = shop.build("heron");
    }

    private static CommandRun run(Object... words) {
        return CommandRun.of(
                Stream.concat(Stream.of("schedule"), Stream.of(words)).toArray());
    }

    private static Path written(String text) throws IOException {
        return Files.writeString(folder.resolve("mine.yaml"), text);
    }

    @Test
    void theSheetsOwn() {
        CommandRun run = run(build, "--sheet");
        assertThat(run.status()).isZero();
        assertThat(run.out())
                .contains(
                        "Heron, fan schedule judged, aim balanced: holds whatever a fan at full speed holds.",
                        "a plain switch at 205/195 degF",
                        "Key off after the climb: the fan runs on for",
                        "compressor, design ambient",
                        "A cabin that stood in the heat: ",
                        "Keep hands, hair and clothes away from a fan");
        assertThat(run.err()).containsPattern("build.yaml:\\d+:8: City crawl .* the fan starts \\d+ times an hour");
    }

    @Test
    void oneWithAFaultForMachines() throws IOException {
        Path mine =
                written("schedule:\n  coolant: [[95 degC, 25 %], [100 degC, 60 %]]\n  on: 95 degC\n  off: 91 degC\n");
        CommandRun run = run(build, "--check", mine, "--aim", "quiet", "--json");
        assertThat(run.status()).isEqualTo(1);
        JsonNode root = JsonMapper.builder().build().readTree(run.out());
        assertThat(root.path("aim").asString()).isEqualTo("quiet");
        assertThat(root.path("schedule").path("on_degC").asDouble()).isEqualTo(95.0);
        assertThat(root.path("cases").size()).isGreaterThan(15);
        JsonNode line = root.path("cases").get(0);
        assertThat(line.has("energy_Wh_per_h")).isTrue();
        assertThat(line.path("cycling").has("amplitude_K")).isTrue();
        assertThat(line.path("cycling").has("period_s")).isTrue();
        assertThat(line.path("margins").has("coolant_K")).isTrue();
        assertThat(root.at("/after_run/allowed_Ah").asDouble()).isEqualTo(7.0); // 10 % of 70 Ah
        assertThat(root.at("/after_run/time_s").asDouble()).isBetween(0.0, 180.0);
        assertThat(root.at("/air_conditioning/cases").size()).isEqualTo(6);
        assertThat(root.at("/air_conditioning/cases/0/clutch_per_min").isNumber())
                .isTrue();
        assertThat(root.at("/air_conditioning/soaked_cabin/time_s").asDouble()).isPositive();
        List<String> keys = StreamSupport.stream(root.path("findings").spliterator(), false)
                .map(f -> f.path("key").asString())
                .toList();
        assertThat(keys).contains("never-full").noneMatch(key -> key.startsWith("ac-"));
        assertThat(root.path("findings").get(0).path("line").asInt()).isEqualTo(2);
    }

    @Test
    void rendered() throws IOException {
        Path to = folder.resolve("tables");
        CommandRun run = run(build, "--sheet", "--render", to, "--points", "5", "--duty", "10 %,90 %", "--inverted");
        assertThat(run.status()).as("%s", run.err()).isZero();
        assertThat(Files.readAllLines(to.resolve("schedule.csv")))
                .contains("table,unit,axis,percent", "duty,%,0,95", "duty,%,100,10")
                .filteredOn(row -> row.startsWith("coolant,degF,"))
                .hasSize(5);
        assertThat(Files.readString(to.resolve("schedule.md"))).contains("(inverted)", "| at most lower by |");
    }

    @Test
    void judgedInTheVehicleThatARecordedRunShows() {
        VirtualCar car = shop.drive("heron", 1);
        CommandRun run = run(build, "--sheet", "--json", "--map", shop.channels(), "--fit", car.commissioning());
        JsonNode fitted = JsonMapper.builder().build().readTree(run.out());
        JsonNode sheet = JsonMapper.builder()
                .build()
                .readTree(run(build, "--sheet", "--json").out());
        assertThat(fitted.path("fitted_runs").asInt()).isEqualTo(1);
        assertThat(sheet.path("fitted_runs").asInt()).isZero();
        for (String key : List.of(
                "/energy_Wh_per_h", "/after_run/room_K", "/air_conditioning/soaked_cabin/vent_after_10_min_degC")) {
            assertThat(fitted.at(key).isNumber()).as(key).isTrue();
            assertThat(fitted.at(key).asDouble())
                    .as(key)
                    .isNotEqualTo(sheet.at(key).asDouble());
        }
    }

    @Test
    void runsAndTheirMapGoTogether() throws IOException {
        assertThat(run(build, "--sheet", "--fit", "run.csv").err()).contains("--map", "needs its channel map");
        assertThat(run(build, "--sheet", "--map", shop.channels()).err()).contains("--fit", "name a recorded run");
        CommandRun missing = run(build, "--sheet", "--map", shop.channels(), "--fit", folder.resolve("none.csv"));
        assertThat(missing.status()).isEqualTo(2);
        assertThat(missing.err()).contains("none.csv");
    }

    @Test
    void aScheduleFromAFileAsC() throws IOException {
        Path mine =
                written("schedule:\n  coolant: [[95 degC, 25 %], [103 degC, 100 %]]\n  on: 95 degC\n  off: 91 degC\n");
        Path own = folder.resolve("c-own");
        Path other = folder.resolve("c-other");
        assertThat(export(build, "--to", own).status()).isZero();
        CommandRun run = export(build, "--schedule", mine, "--to", other);
        assertThat(run.status()).as("%s", run.err()).isZero();
        assertThat(run.out()).contains("Heron, fan schedule of mine.yaml");
        List<String> rules = Files.readAllLines(other.resolve("compressor_rules.c"));
        assertThat(rules.subList(1, rules.size()))
                .isEqualTo(Files.readAllLines(own.resolve("compressor_rules.c")).subList(1, rules.size()));
        assertThat(Files.readString(other.resolve("fan_controller.c")))
                .contains("{950, 2500}, {1030, 10000}")
                .isNotEqualTo(Files.readString(own.resolve("fan_controller.c")));
        assertThat(export(build, "--schedule", written("schedule:\n  on: 95\n"), "--to", folder.resolve("c-none"))
                        .status())
                .isEqualTo(2);
        assertThat(folder.resolve("c-none")).doesNotExist();
    }

    private static CommandRun export(Object... words) {
        return CommandRun.of(Stream.concat(Stream.of("controller", "export"), Stream.of(words))
                .toArray());
    }

    @Test
    void wrongInputIsToldAndNothingIsWritten() throws IOException {
        Path mine = written("schedule:\n  on: 95\n  slew: {up: fast}\n");
        CommandRun run = run(build, "--check", mine);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("mine.yaml:2:7", "mine.yaml:3:14");
        assertThat(run(build, "--aim", "loud").err()).contains("--aim", "'loud' is none of quiet, balanced, cold");
        assertThat(run(build, "--check", mine, "--sheet").status()).isEqualTo(2);
        assertThat(run(build, "--relays", "50 %,40 %").err()).contains("--render", "one to three rising speeds");
        assertThat(run(build, "--sheet", "--to", folder.resolve("x.yaml")).status())
                .isEqualTo(2);
        assertThat(folder.resolve("x.yaml")).doesNotExist();
    }
}
