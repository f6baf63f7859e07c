package hotday.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class WiringAndIdleCommandTest {
    @TempDir
    private Path folder;

    private Path heron;

    @BeforeEach
    void shop() {
        heron = DemoShop.create(folder.resolve("shop")).build("heron");
    }

    private static JsonNode json(String text) {
        return JsonMapper.builder().build().readTree(text);
    }

    @Test
    void wiringForPeopleAndMachines() {
        CommandRun text = CommandRun.of("wiring", heron);
        assertThat(text.status()).as(text.err()).isZero();
        assertThat(text.out())
                .contains(
                        "Heron: the fan's wiring is in order, 1 to look at.",
                        "16 mm2 (IEC 60228), 2.44 m",
                        "build.yaml:")
                .contains("wiring.drive.highest_voltage", "Local codes and licensed practice")
                .doesNotContain("NaN");
        JsonNode root = json(CommandRun.of("wiring", heron, "--json").out());
        assertThat(root.get("holds").asBoolean()).isTrue();
        assertThat(root.get("rules")).hasSize(14);
        assertThat(root.get("hot_idle").get("deficit_A").asDouble()).isZero();
        JsonNode finding = root.get("findings").get(0);
        assertThat(finding.get("key").asString()).isEqualTo("wiring-ground");
        assertThat(finding.get("line").asInt()).isPositive();
        assertThat(finding.get("value_V").asDouble()).isBetween(0.1, 0.2);
    }

    @Test
    void aFaultIsAnExitStatus() throws IOException {
        String sheet = Files.readString(heron, StandardCharsets.UTF_8);
        Files.writeString(heron, sheet.replace("{rating: 80 A, ", "{rating: 50 A, "), StandardCharsets.UTF_8);
        CommandRun run = CommandRun.of("wiring", heron);
        assertThat(run.status()).isEqualTo(CommandLineDoor.DOES_NOT_HOLD);
        assertThat(run.out()).contains("has 1 fault, 1 to look at", "take 70 A");
        Files.writeString(heron, sheet.replace("kind: driver", "kind: sliver"), StandardCharsets.UTF_8);
        CommandRun wrong = CommandRun.of("wiring", heron);
        assertThat(wrong.status()).isEqualTo(CommandLineDoor.WRONG_INPUT);
        assertThat(wrong.err()).contains("did you mean 'driver'?");
    }

    @Test
    void idleForPeopleMachinesAndFiles() throws IOException {
        Path csv = folder.resolve("idle.csv");
        Path svg = folder.resolve("idle.svg");
        CommandRun text = CommandRun.of("idle", heron, "--to", csv, "--picture", svg);
        assertThat(text.status()).as(text.err()).isZero();
        assertThat(text.out()).contains("keeps the speed", "0.1 s too short", "Suction is that", "psia");
        assertThat(Files.readAllLines(csv)).hasSize(37);
        assertThat(Files.readString(svg)).contains("<svg");
        JsonNode root = json(CommandRun.of("idle", heron, "--json").out());
        assertThat(root.get("cells")).hasSize(36);
        assertThat(root.get("cells").get(35).get("with").get("sag_rpm").asDouble())
                .isLessThan(50);
        CommandRun wrong = CommandRun.of("idle", heron, "--to", folder.resolve("idle.txt"));
        assertThat(wrong.status()).isEqualTo(CommandLineDoor.WRONG_INPUT);
        assertThat(wrong.err()).contains("must end in .csv");
    }
}
