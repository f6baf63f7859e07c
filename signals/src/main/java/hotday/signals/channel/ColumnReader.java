package hotday.signals.channel;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Collects one column as numbers in the unit of the file, with the reason where a cell gives none. */
final class ColumnReader {
    private static final Set<String> NO_VALUE =
            Set.of("", "-", "--", "---", "nan", "null", "none", "n/a", "na", "#n/a", "no data", "nodata", "?");
    private static final int SHOWN = 5;

    private final String column;
    private final int index;
    private final Set<String> missing;
    private double[] values = new double[4096];
    private int size;
    private int blanks;
    private int texts;
    private int firstTextLine;
    private String firstText = "";
    private final StringBuilder textLines = new StringBuilder();

    /** @param missing further words, lower case, that stand for no value */
    ColumnReader(String column, int index, Set<String> missing) {
        this.column = column;
        this.index = index;
        this.missing = missing;
    }

    int index() {
        return index;
    }

    void add(String[] cells, int count, int line) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size);
        }
        values[size++] = number(index < count ? cells[index] : "", line);
    }

    private double number(String cell, int line) {
        if (cell.isEmpty()) {
            blanks++;
            return Double.NaN;
        }
        char first = cell.charAt(0);
        if (first <= '9' && first >= '+') {
            try {
                double value = Double.parseDouble(cell);
                if (!Double.isInfinite(value)) {
                    return value;
                }
            } catch (NumberFormatException e) {
                // falls through to the words below: a cell such as "-" or "12:30"
            }
        }
        String word = cell.toLowerCase(Locale.ROOT);
        if (NO_VALUE.contains(word) || missing.contains(word)) {
            blanks++;
            return Double.NaN;
        }
        text(cell, line);
        return Double.NaN;
    }

    private void text(String cell, int line) {
        if (texts == 0) {
            firstTextLine = line;
            firstText = cell.length() > 30 ? cell.substring(0, 30) + "..." : cell;
        }
        if (texts < SHOWN) {
            textLines.append(texts == 0 ? "" : ", ").append(line);
        }
        texts++;
    }

    double[] values() {
        return Arrays.copyOf(values, size);
    }

    int blanks() {
        return blanks;
    }

    /** A fault when cells hold text that is no number and no known word for a missing value. */
    void judge(String file, List<Finding> faults) {
        if (texts > 0) {
            faults.add(Finding.fault(
                            "text-in-number-column",
                            new Place(file, firstTextLine, index + 1),
                            "column '" + column + "' should hold numbers; " + texts + " cells hold text, the first is '"
                                    + firstText + "' (lines " + textLines + (texts > SHOWN ? ", ..." : "")
                                    + "). Correct them, or name the word under 'missing' in the channel map.")
                    .with("cells", texts));
        }
    }
}
