package hotday.validation.signals;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** The Python library canmatrix (Debian's python3-canmatrix) as an outside reader of DBC files; one process for all. */
final class NetworkReference {
    private static final List<String> PYTHONS = List.of("/usr/bin/python3", "python3");

    private NetworkReference() {}

    /**
     * A signal as the reference has it.
     *
     * @param file which of the files, from 0
     * @param digest of the raw values of all payloads, or {@code beyond}
     */
    record Line(int file, long identifier, int length, String signal, double factor, double offset, String digest) {
        static Line of(String text) {
            String[] cells = text.split("\t", -1);
            return new Line(
                    Integer.parseInt(cells[0]),
                    Long.parseLong(cells[1]),
                    Integer.parseInt(cells[2]),
                    cells[3],
                    Double.parseDouble(cells[4]),
                    Double.parseDouble(cells[5]),
                    cells[6]);
        }
    }

    /** Skips the running test, with a line that is seen, where the library is not installed. */
    static List<Line> lines(Path folder, int payloads, List<Path> files) throws IOException, InterruptedException {
        List<String> words = new ArrayList<>(List.of(String.valueOf(payloads)));
        files.forEach(f -> words.add(f.toString()));
        return printed(folder, "network_reference.py", words).stream()
                .map(Line::of)
                .toList();
    }

    /**
     * A recording decoded: cells name, count, least, most, sum of every signal.
     *
     * @param kind {@code candump} or {@code rows}
     */
    static List<String[]> decoded(Path folder, String kind, Path dbc, Path log)
            throws IOException, InterruptedException {
        return printed(folder, "frame_log_reference.py", List.of(kind, dbc.toString(), log.toString())).stream()
                .map(l -> l.split("\t"))
                .toList();
    }

    /** The lines with tabs that a script prints. */
    private static List<String> printed(Path folder, String name, List<String> words)
            throws IOException, InterruptedException {
        Path script = folder.resolve("reference.py");
        try (InputStream in = NetworkReference.class.getResourceAsStream(name)) {
            Files.copy(in, script, StandardCopyOption.REPLACE_EXISTING);
        }
        List<String> command = new ArrayList<>(List.of(python(folder), script.toString()));
        command.addAll(words);
        Path out = folder.resolve("reference.txt");
        if (run(command, out.toFile(), 30) != 0) {
            throw new IOException("the reference failed: " + Files.readString(out));
        }
        try (var lines = Files.lines(out)) {
            return lines.filter(l -> l.indexOf('\t') > 0).toList();
        }
    }

    private static String python(Path folder) throws InterruptedException {
        for (String python : PYTHONS) {
            try {
                if (run(
                                List.of(python, "-c", "import canmatrix.formats"),
                                folder.resolve("try.txt").toFile(),
                                1)
                        == 0) {
                    return python;
                }
            } catch (IOException e) {
                continue; // no such program
            }
        }
        String message = "skipped: no canmatrix for Python to compare with (Debian: apt-get install python3-canmatrix)";
        System.err.println(message);
        Assumptions.abort(message);
        throw new AssertionError();
    }

    private static int run(List<String> command, File out, int minutes) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .redirectOutput(out)
                .start();
        if (!process.waitFor(minutes, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new IOException("no answer within " + minutes + " minutes");
        }
        return process.exitValue();
    }
}
