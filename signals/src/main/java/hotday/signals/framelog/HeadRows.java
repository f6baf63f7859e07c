package hotday.signals.framelog;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The first lines of a recording cut into cells, for looking at; reading goes straight from the bytes. */
final class HeadRows {
    private HeadRows() {}

    /** Cells without outer blanks and quotes. */
    static List<String> cells(byte[] line, char delimiter) {
        String text = new String(line, StandardCharsets.ISO_8859_1);
        List<String> cells = new ArrayList<>();
        boolean quoted = false;
        int from = 0;
        for (int i = 0; i <= text.length(); i++) {
            if (i == text.length() || !quoted && text.charAt(i) == delimiter) {
                cells.add(bare(text.substring(from, i)));
                from = i + 1;
            } else {
                quoted ^= text.charAt(i) == '"';
            }
        }
        return cells;
    }

    private static String bare(String cell) {
        String stripped = cell.strip();
        boolean quoted = stripped.length() > 1 && stripped.startsWith("\"") && stripped.endsWith("\"");
        return quoted ? stripped.substring(1, stripped.length() - 1).strip() : stripped;
    }

    /** The filled cells of a column. */
    static List<String> column(List<List<String>> rows, int column) {
        return rows.stream()
                .filter(r -> r.size() > column)
                .map(r -> r.get(column))
                .filter(c -> !c.isEmpty())
                .toList();
    }
}
