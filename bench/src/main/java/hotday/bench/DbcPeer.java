package hotday.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The Python library canmatrix (Debian's python3-canmatrix) decoding frames in a process of its own, which is asked over a pipe: one question is a pass over
 * all frames, so that pipe and start do not count.
 */
final class DbcPeer implements AutoCloseable {
    private final List<Path> files = new ArrayList<>();
    private final Process process;
    private final BufferedReader answers;
    private final Writer questions;

    DbcPeer(byte[] dbc, byte[] payloads) throws IOException {
        Path script = Files.createTempFile("bench", ".py");
        files.add(script);
        try (InputStream in = DbcPeer.class.getResourceAsStream("dbc_peer.py")) {
            Files.write(script, in.readAllBytes());
        }
        process = new ProcessBuilder(
                        "/usr/bin/python3",
                        script.toString(),
                        written(dbc, ".dbc").toString(),
                        written(payloads, ".bin").toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        answers = process.inputReader(StandardCharsets.US_ASCII);
        questions = process.outputWriter(StandardCharsets.US_ASCII);
        if (!"ready".equals(answers.readLine())) {
            close();
            throw new IOException("no canmatrix to stand beside ours (Debian: apt-get install python3-canmatrix)");
        }
    }

    /** The sum of all physical values of all frames. */
    double pass() {
        try {
            questions.write('\n');
            questions.flush();
            return Double.parseDouble(answers.readLine());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() throws IOException {
        process.destroy();
        for (Path file : files) {
            Files.deleteIfExists(file);
        }
    }

    private Path written(byte[] content, String ending) throws IOException {
        Path file = Files.createTempFile("bench", ending);
        files.add(file);
        return Files.write(file, content);
    }
}
