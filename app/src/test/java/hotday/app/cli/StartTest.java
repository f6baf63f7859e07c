package hotday.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code --help} and {@code --version} answer at once: they load no library that they do not need. */
class StartTest {
    @TempDir
    private Path folder;

    @Test
    void helpLoadsNeitherJsonNorDocumentsNorSolvers() throws IOException, InterruptedException {
        Path loaded = folder.resolve("loaded.txt");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xlog:class+load:file=" + loaded,
                        "-cp",
                        System.getProperty("java.class.path"),
                        "hotday.app.Main",
                        "--help")
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("out.txt").toFile())
                .start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isZero();
        List<String> classes = Files.readAllLines(loaded);
        assertThat(classes).anyMatch(line -> line.contains("hotday.app.cli.CheckCommand"));
        assertThat(classes)
                .noneMatch(line -> line.contains("tools.jackson.")
                        || line.contains("org.apache.pdfbox.")
                        || line.contains("org.snakeyaml.")
                        || line.contains("de.siegmar.")
                        || line.contains("org.hipparchus."));
    }
}
