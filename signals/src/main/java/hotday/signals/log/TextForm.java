package hotday.signals.log;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the header and the first rows tell about delimiter and decimal mark.
 *
 * @param delimiter between cells
 * @param mark between whole and fraction
 */
record TextForm(char delimiter, char mark) {
    private static final char[] DELIMITERS = {',', '\t', ';'};
    private static final Pattern COMMA_NUMBER = Pattern.compile("[+-]?\\d+,\\d+(?:[eE][+-]?\\d+)?");
    private static final Pattern POINT_NUMBER = Pattern.compile("[+-]?\\d*\\.\\d+(?:[eE][+-]?\\d+)?");
    /** A first line that spreadsheets write to name the delimiter. */
    private static final Pattern DECLARED = Pattern.compile("\"?sep=(.)\"?\\s*");

    /**
     * @param header line of names
     * @param rows the first lines after it
     * @param declared delimiter named by the file itself
     */
    static TextForm of(String header, List<String> rows, ReaderOptions options, Optional<Character> declared) {
        char delimiter = options.delimiter().or(() -> declared).orElseGet(() -> delimiter(header, rows));
        char mark = switch (options.decimal()) {
            case POINT -> '.';
            case COMMA -> ',';
            case AUTO -> mark(delimiter, rows);
        };
        return new TextForm(delimiter, mark);
    }

    static Optional<Character> declared(String line) {
        Matcher m = DECLARED.matcher(line);
        return m.matches() ? Optional.of(m.group(1).charAt(0)) : Optional.empty();
    }

    /**
     * The delimiter that cuts the most rows like the header. Of equals rather tab or semicolon, which seldom stand
     * inside names and numbers, and then the one that cuts finest.
     */
    private static char delimiter(String header, List<String> rows) {
        char best = ',';
        long most = -1;
        for (char delimiter : DELIMITERS) {
            int names = count(header, delimiter);
            long fits = rows.stream()
                    .filter(r -> count(r, delimiter) == names || count(r, delimiter) == names + 1)
                    .count();
            long sure = delimiter != ',' && fits > 0 ? TextRow.WIDEST : 0;
            long score = names == 0 ? 0 : 2 * fits * TextRow.WIDEST + sure + Math.min(names, TextRow.WIDEST - 1);
            if (score > most) {
                most = score;
                best = delimiter;
            }
        }
        return best;
    }

    private static int count(String text, char delimiter) {
        int n = 0;
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            quoted ^= text.charAt(i) == '"';
            n += !quoted && text.charAt(i) == delimiter ? 1 : 0;
        }
        return n;
    }

    /** A comma only where numbers such as 12,5 stand in the rows and none such as 12.5. */
    private static char mark(char delimiter, List<String> rows) {
        if (delimiter == ',') {
            return '.';
        }
        boolean comma = false;
        TextRow row = new TextRow(delimiter, '.', StandardCharsets.ISO_8859_1);
        for (String text : rows) {
            row.cut(text);
            for (int i = 0; i < row.count(); i++) {
                if (POINT_NUMBER.matcher(row.text(i)).matches()) {
                    return '.';
                }
                comma |= COMMA_NUMBER.matcher(row.text(i)).matches();
            }
        }
        return comma ? ',' : '.';
    }
}
