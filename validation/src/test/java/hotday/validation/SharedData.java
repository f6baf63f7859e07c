package hotday.validation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;

/**
 * The folder of reference values and recordings that is not part of the repository; system property {@code hotday.data}.
 * Where it is absent a test says so on standard error and is skipped.
 */
public final class SharedData {
    private SharedData() {}

    public static boolean present() {
        return Files.isDirectory(folder().resolve("reference"));
    }

    /** A file of the folder; skips the running test when the folder is absent. */
    public static Path file(String name) {
        if (!present()) {
            String message = "skipped: no reference data at " + folder() + " (set HOTDAY_DATA)";
            System.err.println(message);
            Assumptions.abort(message);
        }
        return folder().resolve(name);
    }

    /** The rows of a plain table with one header line, no quotes, by column name. */
    public static List<Map<String, String>> rows(String name) {
        List<String> lines = lines(file(name));
        String[] header = lines.get(0).split(",", -1);
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < header.length; i++) {
                row.put(header[i], cells[i]);
            }
            rows.add(row);
        }
        return rows;
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path folder() {
        return Path.of(System.getProperty("hotday.data", "../shared"));
    }
}
