package hotday.signals.j1939;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The parameters that are known; a table beside this class, with where each row comes from. */
public final class SpnTable {
    private static final String FILE = "spns.csv";

    private SpnTable() {}

    /** The shipped table, in its order. */
    public static List<Spn> shipped() {
        try (InputStream in = SpnTable.class.getResourceAsStream(FILE);
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> row(line.split(",", -1)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The parameters of every group. */
    static Map<Integer, List<Spn>> byGroup(List<Spn> spns) {
        return spns.stream().collect(Collectors.groupingBy(Spn::pgn, LinkedHashMap::new, Collectors.toList()));
    }

    private static Spn row(String[] cells) {
        boolean text = "text".equals(cells[6]);
        BigDecimal factor = text ? BigDecimal.ONE : new BigDecimal(cells[7]);
        return new Spn(
                Integer.parseInt(cells[0]),
                cells[1],
                Integer.parseInt(cells[2]),
                cells[3],
                (Integer.parseInt(cells[4]) - 1) * 8 + Integer.parseInt(cells[5]) - 1,
                text ? 0 : Integer.parseInt(cells[6]),
                factor.unscaledValue().doubleValue(),
                BigDecimal.TEN.pow(factor.scale()).doubleValue(),
                text ? 0 : Double.parseDouble(cells[8]),
                cells[9],
                words(cells[10]),
                cells[11]);
    }

    private static Map<Integer, String> words(String cell) {
        Map<Integer, String> words = new LinkedHashMap<>();
        for (String word : cell.isEmpty() ? new String[0] : cell.split(";")) {
            int mark = word.indexOf('=');
            words.put(Integer.parseInt(word.substring(0, mark)), word.substring(mark + 1));
        }
        return words;
    }
}
