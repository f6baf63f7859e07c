package hotday.physics;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rows of a plain comma-separated table of the reference folder by column name; skips the running test where it is absent. */
public final class ReferenceTable {
    private ReferenceTable() {}

    public static List<Map<String, String>> rows(String name) {
        try {
            List<String> lines = Files.readAllLines(WorkedProblem.file(name));
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
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
