package hotday.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code --help}, {@code --version} and a state of a refrigerant answer at once: they load no library that they do not need. */
class StartTest {
    @TempDir
    private Path folder;

    @Test
    void helpLoadsNeitherJsonNorDocumentsNorSolvers() throws IOException, InterruptedException {
        List<String> classes = loaded("--help");
        assertThat(classes).anyMatch(line -> line.contains("hotday.app.cli.CheckCommand"));
        assertThat(classes).noneMatch(StartTest::isLibrary);
        assertThat(classes).noneMatch(line -> line.contains("hotday.physics.refrigerant.R134aFacts"));
    }

    @Test
    void aRefrigerantStateLoadsNoLibraryAndNoTable() throws IOException, InterruptedException {
        List<String> classes = loaded("property", "--fluid", "R-134a", "--temperature", "20 degC");
        assertThat(classes).anyMatch(line -> line.contains("hotday.app.cli.PropertyText"));
        assertThat(classes).noneMatch(line -> line.contains("hotday.app.cli.CheckCommand "));
        assertThat(classes).noneMatch(StartTest::isLibrary);
        assertThat(classes).noneMatch(line -> line.contains("hotday.physics.refrigerant.PropertyTable"));
    }

    @Test
    void aNetworkDescriptionLoadsNoLibrary() throws IOException, InterruptedException {
        Path dbc = folder.resolve("car.dbc");
        Files.writeString(dbc, "BO_ 1 a: 8 x\n SG_ s : 0|8@1+ (1,0) [0|0] \"\" x\n");
        List<String> classes = loaded("decode", "--dbc", dbc.toString(), "--summary");
        assertThat(classes).anyMatch(line -> line.contains("hotday.app.cli.DecodeText"));
        assertThat(classes).noneMatch(StartTest::isLibrary);
    }

    private static boolean isLibrary(String line) {
        return line.contains("tools.jackson.")
                || line.contains("org.apache.pdfbox.")
                || line.contains("org.snakeyaml.")
                || line.contains("de.siegmar.")
                || line.contains("org.hipparchus.");
    }

    private List<String> loaded(String... words) throws IOException, InterruptedException {
        Path loaded = folder.resolve("loaded.txt");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load:file=" + loaded,
                "-cp",
                System.getProperty("java.class.path"),
                "hotday.app.Main"));
        command.addAll(List.of(words));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("out.txt").toFile())
                .start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isZero();
        return Files.readAllLines(loaded);
    }
}
