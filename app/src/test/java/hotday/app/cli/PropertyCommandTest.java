package hotday.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code property} as somebody with a set of gauges meets it. */
class PropertyCommandTest {
    private static final double PSI = 6894.757293168;

    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(Object... words) {
        out.reset();
        err.reset();
        String[] args = new String[words.length + 3];
        args[0] = "property";
        args[1] = "--fluid";
        args[2] = "R-134a";
        for (int i = 0; i < words.length; i++) {
            args[i + 3] = words[i].toString();
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

    private JsonNode json(Object... words) {
        Object[] all = java.util.Arrays.copyOf(words, words.length + 1);
        all[words.length] = "--json";
        assertThat(run(all)).as(err()).isZero();
        return JsonMapper.builder().build().readTree(out());
    }

    /** What a gauge shows counts from the air outside, at sea level 14.696 psi; everything else from vacuum. */
    @ParameterizedTest
    @CsvSource({
        "170 psi, 1273433.8",
        "170 psig, 1273433.8",
        "11 bar, 1201325",
        "184.7 psia, 1273461.7",
        "12 bar abs, 1200000",
        "1200 kPa, 1200000",
        "1.2 MPa, 1200000"
    })
    void pressuresAsPeopleType(String typed, double absolute) {
        JsonNode root = json("--pressure", typed, "--temperature", "60 degC");
        assertThat(root.get("p_Pa").asDouble()).isCloseTo(absolute, within(1.0));
        assertThat(root.get("gauge_Pa").asDouble()).isCloseTo(absolute - 101325, within(1.0));
        assertThat(root.get("T_K").asDouble()).isEqualTo(333.15);
        assertThat(root.get("region").asString()).isEqualTo("superheated");
        assertThat(root.get("x").isNull()).isTrue();
    }

    /** Standard atmosphere: 12.228 psia at 5000 ft. */
    @Test
    void theSameGaugeIsAnotherPressureUpAMountain() {
        double sea = json("--pressure", "170 psi").get("p_Pa").asDouble();
        double high = json("--pressure", "170 psi", "--altitude", "5000 ft")
                .get("p_Pa")
                .asDouble();
        assertThat((sea - high) / PSI).isCloseTo(14.696 - 12.228, within(0.002));
    }

    @Test
    void aColdTemperatureMayBeTyped() {
        assertThat(run("--temperature", "-10 degC")).as(err()).isZero();
        assertThat(out()).contains("liquid and vapour in equilibrium", "-10.0 degC", "2.01 bar abs", "kJ/kg");
    }

    /** R-134a at 170 psi boils near 119.6 degF (171 psi at 120 degF: truck-body service table). */
    @Test
    void superheatAndSubcoolingAreSaid() {
        assertThat(run("--pressure", "170 psi", "--temperature", "140 degF", "--units", "us"))
                .isZero();
        assertThat(out()).contains("superheat       20.4 degF, boils at 119.6 degF", "170.0 psi gauge, 184.7 psia");
        assertThat(run("--pressure", "170 psi", "--temperature", "110 degF", "--units", "us"))
                .isZero();
        assertThat(out()).contains("R-134a: subcooled", "subcooling      9.6 degF");
    }

    @Test
    void aMixtureHasAQualityAndNoSpeedOfSound() {
        assertThat(run("--pressure", "5 bar abs", "--enthalpy", "350 kJ/kg")).isZero();
        assertThat(out()).contains("two phase", "69.1 % vapour by mass").doesNotContain("speed of sound", "NaN");
        JsonNode root = json("--enthalpy", "350 kJ/kg", "--quality", "70 %");
        assertThat(root.get("x").asDouble()).isCloseTo(0.7, within(1e-12));
        assertThat(root.get("cp_J_kgK").isNull()).isTrue();
    }

    @Test
    void saturationForMachinesHasTheNamesOfTheFiles() {
        JsonNode root = json("--temperature", "300 K");
        assertThat(root.get("hL_J_kg").asDouble()).isCloseTo(237189.2, within(0.1));
        assertThat(root.get("sigma_N_m").asDouble()).isPositive();
    }

    @Test
    void theChartStandsInTheUnitsOfTheGauges() throws IOException {
        Path svg = folder.resolve("chart.svg");
        assertThat(run("--chart", "--units", "us", "--altitude", "5000 ft", "--picture", svg))
                .as(err())
                .isZero();
        assertThat(out()).contains("gauges at 5000 ft, air 12.2 psia", "psi gauge", Character.toString('\n'));
        String[] cells = out().lines()
                .filter(l -> l.startsWith("  120.0"))
                .findFirst()
                .orElseThrow()
                .trim()
                .split("\\s+");
        assertThat(Double.parseDouble(cells[1]))
                .as("service tables: 171.2 psi at sea level, 2.47 more at 5000 ft")
                .isCloseTo(171.2 + 2.47, within(0.3));
        assertThat(Double.parseDouble(cells[2])).isCloseTo(171.2 + 14.696, within(0.3));
        assertThat(Files.readString(svg)).startsWith("<svg").contains("R-134a at 5000 ft");
    }

    @Test
    void theChartRunsAsAsked() {
        JsonNode root = json(
                "--chart",
                "--from-temperature",
                "0 degC",
                "--to-temperature",
                "20 degC",
                "--step",
                "5 K",
                "--altitude",
                "300 m");
        assertThat(root.get("rows")).hasSize(5);
        assertThat(root.get("altitude_m").asDouble()).isEqualTo(300);
        assertThat(root.get("rows").get(4).get("T_K").asDouble()).isEqualTo(293.15);
    }

    @Test
    void aFileIsAnswered() throws IOException {
        Path from = Files.writeString(folder.resolve("points.csv"), "T_K,p_Pa\n300,101325\n310,101325\n");
        Path to = folder.resolve("deep/out.csv");
        assertThat(run("--from", from, "--to", to)).as(err()).isZero();
        assertThat(out()).contains("2 rows of R-134a");
        assertThat(Files.readAllLines(to)).hasSize(3);
    }

    @Test
    void theTablesErrorIsMeasuredAndItsVersionSaid() {
        assertThat(run("--table-error")).as(err()).isZero();
        assertThat(out()).contains("R-134a, table version ", "200000 random states", "temperature", "density");
        JsonNode root = json("--table-error");
        assertThat(root.get("version").asInt()).isPositive();
        assertThat(root.get("temperature_K").asDouble()).isPositive().isLessThan(0.05);
        assertThat(root.get("density_relative").asDouble()).isPositive().isLessThan(5e-4);
    }

    @Test
    void theTableSaysWhereItEndsAndWritesNothing() throws IOException {
        Path from = Files.writeString(folder.resolve("points.csv"), "p_Pa,h_J_kg\n5e5,4e5\n1000,4e5\n6e6,4e5\n");
        Path to = folder.resolve("out.csv");
        assertThat(run("--from", from, "--to", to, "--table")).isEqualTo(2);
        assertThat(err()).contains("points.csv:3:", "points.csv:4:", "1000.0 Pa", "outside the table, 32768.0 to");
        assertThat(to).doesNotExist();
        assertThat(run("--temperature", "20 degC", "--table")).isEqualTo(2);
        assertThat(err()).contains("--table: --table belongs to --from");
    }

    @Test
    void whatDoesNotFitTogetherIsSaid() {
        assertThat(run()).isEqualTo(2);
        assertThat(err()).contains("--chart", "--from");
        assertThat(run("--chart", "--temperature", "300 K")).isEqualTo(2);
        assertThat(err()).contains("one at a time");
        assertThat(run("--from", "x.csv", "--step", "5 K")).isEqualTo(2);
        assertThat(err()).contains("--to:", "belong to --chart", "x.csv: no such file");
        assertThat(run("--quality", "0.5")).isEqualTo(2);
        assertThat(err()).contains("two of --pressure");
        assertThat(run("--temperature", "300", "--pressure", "5 mph")).isEqualTo(2);
        assertThat(err()).contains("--temperature:", "--pressure:");
        assertThat(run("--temperature", "20 degC", "--altitude", "90000 ft")).isEqualTo(2);
        assertThat(err()).contains("--altitude:", "90000 ft", "11000");
        assertThat(run("--chart", "--to-temperature", "150 degC")).isEqualTo(2);
        assertThat(err()).contains("--chart:", "critical");
        assertThat(run("--chart", "--step", "0 K")).isEqualTo(2);
        assertThat(run("--chart", "--picture", folder)).isEqualTo(2);
        assertThat(out()).isEmpty();
    }
}
