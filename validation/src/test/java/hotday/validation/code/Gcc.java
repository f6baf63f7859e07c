package hotday.validation.code;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** The GNU compiler, twice: with every warning an error, and with what watches for undefined behaviour and wrong addresses. */
final class Gcc {
    private static final List<String> STRICT = List.of("-std=c99", "-Wall", "-Wextra", "-Werror", "-pedantic", "-O2");
    private static final List<String> WATCHED =
            List.of("-std=c99", "-g", "-O1", "-fsanitize=undefined,address", "-fno-sanitize-recover=all");

    private Gcc() {}

    /** Skips the running test, with a line, where there is no compiler. */
    static void require() {
        try {
            if (run(List.of("gcc", "--version"), Path.of(".")).status() == 0) {
                return;
            }
        } catch (IOException e) {
            // told below
        }
        String message = "skipped: no gcc to compile the exported C (Debian: apt-get install gcc libc6-dev)";
        System.err.println(message);
        Assumptions.abort(message);
    }

    /** Status and everything that was printed. */
    record Answer(int status, String text) {}

    /** Compiles the sources of a folder both ways; the programs are called {@code strict} and {@code watched}. */
    static void compile(Path folder, String... sources) throws IOException {
        compile(folder, "strict", STRICT, sources);
        compile(folder, "watched", WATCHED, sources);
    }

    private static void compile(Path folder, String name, List<String> flags, String... sources) throws IOException {
        List<String> words = new ArrayList<>(List.of("gcc"));
        words.addAll(flags);
        words.addAll(List.of(sources));
        words.addAll(List.of("-o", name));
        Answer answer = run(words, folder);
        assertThat(answer.text()).isEmpty();
        assertThat(answer.status()).isZero();
    }

    /** Runs both programs over a file of vectors. */
    static void assertAsWritten(Path folder, Path vectors) throws IOException {
        for (String program : List.of("strict", "watched")) {
            Answer answer = vectors(folder, program, vectors);
            assertThat(answer.text()).as(program).contains("lines as written");
            assertThat(answer.status()).as(program).isZero();
        }
    }

    static Answer vectors(Path folder, String program, Path vectors) throws IOException {
        return run(List.of(folder.resolve(program).toString(), vectors.toString()), folder);
    }

    private static Answer run(List<String> words, Path folder) throws IOException {
        File out = Files.createTempFile("hotday", ".txt").toFile();
        try {
            Process process = new ProcessBuilder(words)
                    .directory(folder.toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(out)
                    .start();
            if (!process.waitFor(10, TimeUnit.MINUTES)) {
                process.destroyForcibly();
                throw new IOException("no answer from " + words.get(0));
            }
            return new Answer(process.exitValue(), Files.readString(out.toPath()));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("stopped while waiting", e);
        } finally {
            Files.delete(out.toPath());
        }
    }
}
