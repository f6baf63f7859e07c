package hotday.signals.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables written with every freedom that loggers take, from fixed seeds, must come back cell for cell. */
class RoundTripTest {
    private static final int TABLES_EACH = 40;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void everyTableComesBack(long seed) throws IOException {
        Random random = new Random(seed);
        for (int i = 0; i < TABLES_EACH; i++) {
            check(random);
        }
    }

    private void check(Random random) throws IOException {
        char delimiter = ",\t;".charAt(random.nextInt(3));
        boolean comma = delimiter != ',' && random.nextInt(3) == 0;
        boolean comments = random.nextBoolean();
        int columns = 2 + random.nextInt(8);
        List<List<String>> table = table(random, columns, 3 + random.nextInt(40), comma ? ',' : '.');
        String text = written(random, table, delimiter, comments);
        Path file = random.nextInt(3) == 0 ? WrittenFile.packed(folder, text) : WrittenFile.text(folder, text);
        ReaderOptions options = comments
                ? new ReaderOptions(java.util.Optional.empty(), ReaderOptions.Decimal.AUTO, "#", 1)
                : ReaderOptions.auto();
        DelimitedText read = DelimitedText.open(file, options);
        assertThat(read.header()).as(text).isEqualTo(table.get(0));
        List<List<String>> rows = new ArrayList<>();
        read.rows(row -> {
            List<String> cells = new ArrayList<>();
            for (int c = 0; c < columns; c++) {
                cells.add(row.text(c));
                String point = row.text(c).replace(',', '.');
                double expected = row.blank(c) ? Double.NaN : Double.parseDouble(point);
                if (Double.compare(row.number(c), expected) != 0) {
                    fail("line " + row.line() + " gives " + row.number(c) + " for " + row.text(c) + " in\n" + text);
                }
            }
            rows.add(cells);
        });
        assertThat(rows).as(text).isEqualTo(table.subList(1, table.size()));
    }

    private static List<List<String>> table(Random random, int columns, int rows, char mark) {
        List<List<String>> table = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (int c = 0; c < columns; c++) {
            names.add("Column " + c + List.of("", " [°C]", " (km/h)").get(random.nextInt(3)));
        }
        table.add(names);
        for (int r = 0; r < rows; r++) {
            List<String> cells = new ArrayList<>();
            for (int c = 0; c < columns; c++) {
                // the first column always has a value with a fraction: it shows the decimal mark and keeps the row
                boolean blank = c > 0 && random.nextInt(4) == 0;
                double value = (random.nextDouble() - 0.3) * Math.pow(10, random.nextInt(6));
                cells.add(blank ? "" : String.format(Locale.ROOT, "%.3f", value).replace('.', mark));
            }
            table.add(cells);
        }
        return table;
    }

    private static String written(Random random, List<List<String>> table, char delimiter, boolean comments) {
        StringBuilder out = new StringBuilder(random.nextBoolean() ? "\uFEFF" : "");
        boolean trailing = random.nextInt(3) == 0;
        for (int r = 0; r < table.size(); r++) {
            for (int c = 0; c < table.get(r).size(); c++) {
                String cell = table.get(r).get(c);
                boolean quoted = random.nextInt(5) == 0;
                String pad = " ".repeat(random.nextInt(3));
                out.append(c == 0 ? "" : String.valueOf(delimiter));
                out.append(pad).append(quoted ? '"' + cell + '"' : cell).append(pad);
            }
            out.append(trailing && r > 0 ? String.valueOf(delimiter) : "");
            boolean last = r == table.size() - 1;
            out.append(last && random.nextBoolean() ? "" : random.nextBoolean() ? "\n" : "\r\n");
            if (!last && random.nextInt(6) == 0) {
                out.append(comments && random.nextBoolean() ? "# note, with; marks\n" : "\n");
            }
        }
        return out.toString();
    }
}
