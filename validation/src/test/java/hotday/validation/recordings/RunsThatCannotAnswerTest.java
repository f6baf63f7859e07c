package hotday.validation.recordings;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import hotday.validation.CommandLineRun;
import hotday.validation.SharedData;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** Open recordings that cannot answer, cut short, cut thin or of another vehicle: refused in words, nothing written. */
class RunsThatCannotAnswerTest {
    private static final Path SEDAN = CommandLineRun.repository("validation/sets/d3-diesel-sedan/build.yaml");
    private static final Path SEDAN_MAP = CommandLineRun.repository("validation/sets/d3-diesel-sedan/channels.yaml");

    @TempDir
    private Path folder;

    private JsonNode refused(Path build, Path map, Path run, String... words) throws IOException {
        Path out = folder.resolve("out");
        List<Object> prove = List.of(
                "prove",
                "--build",
                build,
                "--map",
                map,
                "--fit",
                run,
                "--plots",
                out,
                "--signoff",
                out.resolve("a.pdf"));
        CommandLineRun text = CommandLineRun.of(prove.toArray());
        assertThat(text.status()).as(text.err()).isEqualTo(2);
        assertThat(text.err()).contains(words);
        assertThat(text.out()).isEmpty();
        List<Object> machine = new ArrayList<>(prove);
        machine.add("--json");
        CommandLineRun json = CommandLineRun.of(machine.toArray());
        assertThat(json.status()).isEqualTo(2);
        assertThat(json.err()).isEmpty();
        assertThat(json.json().get("refused").asBoolean()).isTrue();
        assertThat(json.json().has("ceilings")).isFalse();
        assertThat(out).doesNotExist();
        return json.json().get("findings");
    }

    private static Path sedan(String test) {
        return SharedData.file("data/d3-diesel-sedan/614100" + test + ".txt");
    }

    /** The first three minutes of the one mild cold start: coolant ends at 51 degC, the thermostat opens at 88 degC. */
    @Test
    void threeMinutesOfWarmUp() throws IOException {
        List<String> rows = Files.readAllLines(sedan("12"));
        Path cut = Files.write(folder.resolve("short.txt"), rows.subList(0, 1801));
        JsonNode findings = refused(SEDAN, SEDAN_MAP, cut, "lasts 3.0 min", "51 degC", "88 degC", "min in all");
        assertThat(findings.get(0).get("key").asString()).isEqualTo("run-never-warm");
        assertThat(findings.get(0).get("values").get("at_thermostat_s").asDouble())
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "coolant_temperature: {column: \"Engine_Coolant_Temp[C]\"}",
                "vehicle_speed: {column: \"Dyno_Speed[mph]\"}"
            })
    void oneChannel(String channel) throws IOException {
        Path map = Files.writeString(
                folder.resolve("one.yaml"),
                "time: {column: \"Time[sec]\", position: 1, unit: s}\nchannels:\n  " + channel + "\n");
        JsonNode findings = refused(SEDAN, map, sedan("13"), "ambient_temperature", "is needed");
        assertThat(findings.size()).isGreaterThan(1);
        findings.forEach(f -> assertThat(f.get("key").asString()).isEqualTo("channel-missing"));
    }

    /** The saloon's tests against an invented pick-up: coolant could be fitted to within 1 K, the gears tell. */
    @ParameterizedTest
    @ValueSource(strings = {"12", "13", "05", "17"})
    void anotherVehicle(String test) throws IOException {
        Path pickup = DemoShop.create(folder.resolve("shop")).build("oxbow");
        JsonNode findings =
                refused(pickup, SEDAN_MAP, sedan(test), "not the recording of the sheet's vehicle", "rpm per km/h");
        assertThat(findings.get(0).get("key").asString()).isEqualTo("other-vehicle");
        assertThat(findings.get(0).get("values").get("evidence").asString()).isEqualTo("gears");
    }

    /** An idling petrol saloon, alone and from cold: little to learn from, but its own. */
    @Test
    @Tag("slow")
    void anIdleRunOfItsOwnVehicleIsNotRefused() throws IOException {
        Path build = Files.writeString(folder.resolve("saloon.yaml"), """
                build: {name: Idling saloon}
                units: metric
                design_day: {ambient: 40 degC, altitude: 10 m}
                vehicle: {mass: 1150 kg, drag_area: 0.65 m2, tyre_radius: 295 mm}
                engine: {fuel: petrol, displacement: 1.5 l, cylinders: 4, rated_power: 70 kW, rated_speed: 5600 rpm, idle_speed: 750 rpm}
                gearbox: {ratios: [3.73, 2.05, 1.39, 1.03, 0.82], final_drive: 4.06}
                coolant: {glycol: 40 %, volume: 6 l, cap: 1.1 bar}
                thermostat: {opens: 86 degC, full: 97 degC, hysteresis: 3 K}
                radiator: {width: 500 mm, height: 350 mm, depth: 22 mm, fins: 16 /in}
                fan: {control: unknown, free_flow: 2000 m3/h, stall_pressure: 200 Pa}
                """);
        String channels =
                Files.readString(CommandLineRun.repository("validation/sets/carobd-idle-and-trips/channels.yaml"));
        Path map = Files.writeString(
                folder.resolve("map.yaml"),
                channels.replace("\nchannels:", "\nchannels:\n  ambient_temperature: {constant: 28 degC}"));
        CommandLineRun proof = CommandLineRun.of(
                "prove",
                "--json",
                "--build",
                build,
                "--map",
                map,
                "--fit",
                SharedData.file("data/carobd-idle-and-trips/idle43.csv"));
        assertThat(proof.status()).as(proof.out()).isIn(0, 1);
        assertThat(proof.json().has("ceilings")).isTrue();
    }
}
