package hotday.signals.channel;

import hotday.signals.log.Table;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a header cell says, however its degree sign was mangled on the way. */
final class HeaderName {
    /** A degree sign, right or after a wrong decoding, and what is left of it when it was lost. */
    private static final Pattern DEGREE = Pattern.compile("[\\u00C2\\u00B0\\u00BA\\uFFFD]+");

    private static final Pattern UNIT = Pattern.compile("(?:\\[([^\\]]*)\\]|\\(([^)]*)\\))\\s*$");

    private HeaderName() {}

    /** For comparing: without case, degree signs, quotes and outer or double blanks. */
    static String plain(String name) {
        return DEGREE.matcher(name)
                .replaceAll("")
                .replace('\u00A0', ' ')
                .trim()
                .replaceAll("\\s+", " ")
                .toLowerCase(Locale.ROOT);
    }

    /** What stands in the last square or round brackets, degree sign mended; empty when there is nothing. */
    static Optional<String> unit(String name) {
        Matcher m = UNIT.matcher(name);
        if (!m.find()) {
            return Optional.empty();
        }
        String inside = m.group(1) == null ? m.group(2) : m.group(1);
        return Optional.of(DEGREE.matcher(inside).replaceAll("\u00B0").trim()).filter(s -> !s.isEmpty());
    }

    /** The unit of a column: a known one in the brackets of its name, else that of the row of units, else whatever the brackets hold. */
    static Optional<String> unit(Table text, int column) {
        Optional<String> inBrackets = unit(text.header().get(column));
        return inBrackets
                .filter(MappedColumns::isAnyUnit)
                .or(() -> text.unit(column))
                .or(() -> inBrackets);
    }
}
