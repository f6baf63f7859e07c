package hotday.signals.log;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPOutputStream;

/** Files of a test and what is read back from them. */
final class WrittenFile {
    private WrittenFile() {}

    static Path text(Path folder, String text) throws IOException {
        return text(folder, text, StandardCharsets.UTF_8);
    }

    static Path text(Path folder, String text, Charset charset) throws IOException {
        return Files.write(folder.resolve("log.csv"), text.getBytes(charset));
    }

    static Path packed(Path folder, String text) throws IOException {
        Path file = folder.resolve("log.csv.gz");
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(file))) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
        return file;
    }

    /** Every row as a list of cells, the line first. */
    static List<List<String>> rows(DelimitedText text) {
        List<List<String>> rows = new ArrayList<>();
        text.rows(row -> {
            List<String> cells = new ArrayList<>();
            cells.add(String.valueOf(row.line()));
            for (int i = 0; i < row.count(); i++) {
                cells.add(row.text(i));
            }
            rows.add(cells);
        });
        return rows;
    }
}
