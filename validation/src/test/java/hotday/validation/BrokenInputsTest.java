package hotday.validation;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What people get wrong: each must end with status 2, a message that says where and what to do, and nothing written. */
class BrokenInputsTest {
    @TempDir
    private Path folder;

    private DemoShop shop;
    private Path build;
    private Path map;
    private Path run;

    @BeforeEach
    void aGoodShop() throws IOException {
        shop = DemoShop.create(folder.resolve("shop"));
        build = shop.build("heron");
        map = shop.channels();
        run = folder.resolve("run.csv");
        StringBuilder rows = new StringBuilder(
                "time [s],speed [km/h],engine speed [rpm],fuel flow [g/s],outside air [degC],barometer [kPa],coolant [degC],oil [degC],fan demand [%],compressor [%]\n");
        for (int i = 0; i < 400; i++) {
            rows.append(i)
                    .append(i % 2 == 0 ? ",0,700,0.40,20,101.3," : ",0,704,0.41,20,101.3,")
                    .append(20 + i / 10)
                    .append(",30,0,0\n");
        }
        Files.writeString(run, rows);
    }

    private void replace(Path file, String what, String with) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(what);
        Files.writeString(file, text.replace(what, with));
    }

    private CommandLineRun prove() {
        return CommandLineRun.of(
                "prove", "--build", build, "--map", map, "--fit", run, "--signoff", folder.resolve("out.pdf"));
    }

    private void refused(CommandLineRun result, String... words) throws IOException {
        assertThat(result.status()).as(result.err()).isEqualTo(2);
        assertThat(result.err()).contains(words).doesNotContain("Exception").doesNotContain("\tat ");
        assertThat(result.out()).isEmpty();
        assertThat(folder.resolve("out.pdf")).doesNotExist();
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.map(p -> p.getFileName().toString()).toList())
                    .allMatch(n -> List.of("shop", "run.csv").contains(n));
        }
    }

    @Test
    void missingUnit() throws IOException {
        replace(build, "mass: 2150 kg", "mass: 2150");
        refused(CommandLineRun.of("check", build), "build.yaml:5:", "'vehicle.mass'", "has no unit", "kg");
    }

    @Test
    void wrongUnit() throws IOException {
        replace(build, "cap: 16 psi", "cap: 16 mph");
        refused(CommandLineRun.of("check", build), "'coolant.cap'", "mph is a unit of speed", "gauge pressure");
    }

    @Test
    void unknownKey() throws IOException {
        replace(build, "thermostat:", "thermostate:");
        refused(CommandLineRun.of("check", build), "'thermostate'", "did you mean 'thermostat'");
    }

    @Test
    void negativeArea() throws IOException {
        replace(build, "drag_area: 2.6 m2", "drag_area: -2.6 m2");
        refused(CommandLineRun.of("check", build), "'vehicle.drag_area' is -2.6 m2", "between 0.2 m2 and 15 m2");
    }

    @Test
    void allFaultsOfASheetComeAtOnce() throws IOException {
        replace(build, "drag_area: 2.6 m2", "drag_area: -2.6 m2");
        replace(build, "cap: 16 psi", "cap: 16 mph");
        replace(build, "thermostat:", "thermostate:");
        CommandLineRun result = CommandLineRun.of("check", build);
        refused(result, "drag_area", "coolant.cap", "thermostate");
        assertThat(result.err().lines().filter(l -> l.contains("build.yaml:")).count())
                .isGreaterThanOrEqualTo(3);
    }

    @Test
    void machinesReadTheFaultsFromStandardOutput() throws IOException {
        replace(build, "cap: 16 psi", "cap: 16");
        CommandLineRun result = CommandLineRun.of("check", build, "--json");
        assertThat(result.status()).isEqualTo(2);
        assertThat(result.out())
                .contains("\"in_order\" : false", "\"key\" : \"unit-missing\"", "\"line\" : 17", "coolant.cap");
        assertThat(result.err()).isEmpty();
    }

    @Test
    void aCoreWithoutItsWidth() throws IOException {
        replace(build, "width: 31.5 in, ", "");
        refused(CommandLineRun.of("check", build), "'radiator.width' is missing");
    }

    @Test
    void textInANumberColumn() throws IOException {
        replace(run, "100,0,700,0.40,20,101.3,30,30", "100,0,700,0.40,20,101.3,warm,30");
        refused(prove(), "run.csv:102:7", "'coolant [degC]'", "'warm'");
    }

    @Test
    void emptyFile() throws IOException {
        Files.writeString(run, "");
        refused(prove(), "run.csv", "empty");
    }

    @Test
    void emptySheet() throws IOException {
        Files.writeString(build, "");
        refused(CommandLineRun.of("check", build), "build.yaml", "empty");
    }

    @Test
    void binaryFile() throws IOException {
        Files.write(run, new byte[] {0x50, 0x4b, 3, 4, 0, 0, 0, 1, 2, 3});
        refused(prove(), "run.csv", "binary");
    }

    @Test
    void noTimeColumn() throws IOException {
        replace(run, "time [s],", "sample,");
        refused(prove(), "run.csv:1", "no column 'time [s]'", "sample");
    }

    @Test
    void timeRunningBackwards() throws IOException {
        replace(run, "\n200,", "\n20,");
        refused(prove(), "run.csv:202", "time runs backwards", "199.0 s to 20.0 s");
    }

    @Test
    void allConstantChannel() throws IOException {
        String text = Files.readString(run).replaceAll("(?m)^(\\d+,0,70.,0.4.,20,101.3),\\d+,", "$1,88,");
        Files.writeString(run, text);
        refused(prove(), "run.csv", "coolant_temperature", "88.0 degC in all 400 rows");
    }

    @Test
    void folderInsteadOfAFile() throws IOException {
        run = folder.resolve("shop");
        refused(prove(), "is a folder");
    }

    @Test
    void signOffOntoAFolder() throws IOException {
        CommandLineRun result = CommandLineRun.of(
                "prove", "--build", build, "--map", map, "--fit", run, "--signoff", folder.resolve("shop"));
        assertThat(result.status()).isEqualTo(2);
        assertThat(result.err()).contains("is a folder");
        assertThat(Files.isDirectory(folder.resolve("shop"))).isTrue();
    }

    private CommandLineRun property(String fluid) {
        return CommandLineRun.of("property", "--fluid", fluid, "--from", run, "--to", folder.resolve("out.pdf"));
    }

    @Test
    void refrigerantPointsOutOfRangeComeAllAtOnce() throws IOException {
        Files.writeString(
                run, "id,T_K,p_Pa,h_J_kg,x\n1,300,5e5,,\n2,900,5e5,,\n3,300,,,1.5\n4,300,1,2,\n5,,1 bar,,0\n");
        CommandLineRun result = property("R-134a");
        refused(
                result,
                "run.csv:3:2: R-134a: temperature 900.0 K, must be 180.0 to 455.0 K",
                "run.csv:4:5: R-134a: quality 1.5, must be 0 to 1",
                "run.csv:5:4: T_K 300, p_Pa 1, h_J_kg 2 are too many",
                "run.csv:6:3: 'p_Pa' is '1 bar'");
        assertThat(result.err().lines()).hasSize(4);
    }

    @Test
    void unknownRefrigerantAndUnknownColumnsAreSaidTogether() throws IOException {
        Files.writeString(run, "T_C,p_Pa\n20,5e5\n");
        refused(property("R-12"), "'R-12' is not known; there are R-134a, R-1234yf", "run.csv:1:1: 'T_C'", "'T_K'");
    }

    @Test
    void refrigerantPointsThatAreNotThere() throws IOException {
        run = folder.resolve("nowhere.csv");
        refused(property("R-134a"), "nowhere.csv: no such file");
        run = folder.resolve("shop");
        refused(property("R-134a"), "is a folder");
    }

    @Test
    void gaugeOfAnotherKind() throws IOException {
        refused(
                CommandLineRun.of("property", "--fluid", "R-134a", "--pressure", "170 mph", "--quality", "0.5"),
                "--pressure",
                "mph is a unit of speed");
        refused(
                CommandLineRun.of("property", "--fluid", "R-134a", "--pressure", "-20 psi"),
                "R-134a: saturation at -36",
                "must be");
    }

    @Test
    void wordsOfTheCommandLineAreCheckedToo() {
        CommandLineRun result = CommandLineRun.of("prove", "--bild", "x");
        assertThat(result.status()).isEqualTo(2);
        assertThat(result.err()).contains("--build");
        assertThat(CommandLineRun.of("predict", build, "--case", "hot-idl").status())
                .isEqualTo(2);
    }

    @Test
    void everyMessageIsUtf8AndShort() {
        CommandLineRun result = CommandLineRun.of("check", folder.resolve("nowhere.yaml"));
        assertThat(result.status()).isEqualTo(2);
        assertThat(result.err().getBytes(StandardCharsets.UTF_8).length).isLessThan(300);
    }
}
