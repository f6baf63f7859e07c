package hotday.signals.log;

import hotday.core.unit.Quantity;
import hotday.core.unit.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The line under the names in which many loggers write the unit of each column. */
final class UnitsRow {
    private static final Pattern BRACKETS = Pattern.compile("\\[(.*)]|\\((.*)\\)|<(.*)>|\\{(.*)}");
    /** A degree sign, right or after a wrong decoding. */
    private static final Pattern DEGREE = Pattern.compile("[\\u00C2\\u00B0\\u00BA\\uFFFD]+");
    /** How a clock is written, such as hh:mm:ss.SSS. */
    private static final Pattern CLOCK = Pattern.compile("(?i)[dmy./\\- t]*h{1,2}:m{1,2}(:s{1,2})?([.,:][sf0]+)?");
    /** What stands where a column has no unit. */
    private static final Set<String> NONE = Set.of("", "-", "--", "1", "none", "n/a");

    private UnitsRow() {}

    /** The symbol of each column, empty where it has none; nothing when the line is no row of units. */
    static Optional<List<String>> of(Row row, int width) {
        if (row.damage() != Row.Damage.NONE || row.count() > width + 1) {
            return Optional.empty();
        }
        List<String> symbols = new ArrayList<>(Collections.nCopies(width, ""));
        int known = 0;
        int others = 0;
        for (int i = 0; i < row.count(); i++) {
            String symbol = bare(row.text(i));
            if (NONE.contains(symbol.toLowerCase(Locale.ROOT))) {
                continue;
            }
            if (i >= width || (!isUnit(symbol) && beginsLikeANumber(symbol))) {
                return Optional.empty();
            }
            known += isUnit(symbol) ? 1 : 0;
            others += isUnit(symbol) ? 0 : 1;
            symbols.set(i, symbol);
        }
        return known > 0 && known >= others ? Optional.of(List.copyOf(symbols)) : Optional.empty();
    }

    private static String bare(String cell) {
        Matcher m = BRACKETS.matcher(cell);
        String inside = cell;
        if (m.matches()) {
            for (int i = 1; i <= m.groupCount(); i++) {
                inside = m.group(i) == null ? inside : m.group(i);
            }
        }
        return DEGREE.matcher(inside).replaceAll("\u00B0").trim();
    }

    private static boolean beginsLikeANumber(String text) {
        char first = text.charAt(0);
        return Character.isDigit(first) || "+-.,".indexOf(first) >= 0;
    }

    private static boolean isUnit(String symbol) {
        return CLOCK.matcher(symbol).matches()
                || Arrays.stream(Quantity.values())
                        .anyMatch(q -> Units.find(q, symbol).isPresent());
    }
}
