package hotday.signals.framelog;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Looks at the first lines of a recording of delimited text: the line of names, what each column is, base of its numbers
 * and unit of its stamps. What they do not tell is refused, with the option that does.
 */
final class DelimitedHead {
    private static final char[] DELIMITERS = {',', ';', '\t', '|'};
    /** Remarks that may stand before the line of names. */
    private static final int MOST_BEFORE = 50;

    private final Place file;
    private final FrameLogOptions options;
    private final int headerLine;
    private final char delimiter;
    private final List<String> names;
    private final List<List<String>> rows;

    private DelimitedHead(
            Place file,
            FrameLogOptions options,
            int headerLine,
            char delimiter,
            List<String> names,
            List<List<String>> rows) {
        this.file = file;
        this.options = options;
        this.headerLine = headerLine;
        this.delimiter = delimiter;
        this.names = names;
        this.rows = rows;
    }

    /** Empty when no line names an identifier and a payload. */
    static Optional<Columns> columns(String file, List<byte[]> lines, FrameLogOptions options) {
        for (int i = 0; i < Math.min(lines.size(), MOST_BEFORE); i++) {
            for (char delimiter : DELIMITERS) {
                List<String> names = HeadRows.cells(unmarked(lines.get(i)), delimiter);
                if (names.size() < DelimitedLine.WIDEST && namesFrames(names)) {
                    return Optional.of(new DelimitedHead(
                                    Place.of(file), options, i + 1, delimiter, names, rows(lines, i + 1, delimiter))
                            .columns());
                }
            }
        }
        return Optional.empty();
    }

    /** Whether one of the first lines names an identifier and a payload. */
    static boolean isAmong(List<byte[]> lines) {
        return lines.stream().limit(MOST_BEFORE).map(DelimitedHead::unmarked).anyMatch(line -> {
            for (char delimiter : DELIMITERS) {
                if (namesFrames(HeadRows.cells(line, delimiter))) {
                    return true;
                }
            }
            return false;
        });
    }

    private static byte[] unmarked(byte[] line) {
        boolean marked = line.length > 2 && line[0] == (byte) 0xEF && line[1] == (byte) 0xBB && line[2] == (byte) 0xBF;
        return marked ? Arrays.copyOfRange(line, 3, line.length) : line;
    }

    static boolean namesFrames(List<String> names) {
        List<Role> roles =
                names.stream().map(Role::of).flatMap(Optional::stream).toList();
        boolean payload = roles.contains(Role.DATA) || names.stream().anyMatch(n -> Role.byteNumber(n) >= 0);
        return payload && (roles.contains(Role.ID) || roles.contains(Role.PGN));
    }

    private static List<List<String>> rows(List<byte[]> lines, int from, char delimiter) {
        List<List<String>> rows = new ArrayList<>();
        for (byte[] line : lines.subList(from, lines.size())) {
            List<String> cells = HeadRows.cells(line, delimiter);
            if (cells.size() > 1) {
                rows.add(cells);
            }
        }
        return rows;
    }

    private Columns columns() {
        if (rows.isEmpty()) {
            throw refused(0, "no-rows", "has a header and no rows");
        }
        Map<Role, Integer> at = roles();
        int[] bytes = at.containsKey(Role.DATA) ? new int[0] : byteColumns();
        boolean groups = at.containsKey(Role.PGN);
        if (groups) {
            require(at, Role.PRIORITY, Role.SOURCE, Role.DESTINATION);
        }
        NumberBase identifiers = identifierBase(at, groups);
        Columns untimed = new Columns(
                headerLine,
                delimiter,
                names.size(),
                at,
                bytes,
                StampUnit.SECONDS,
                identifiers,
                groups ? addressBase(at, identifiers) : identifiers,
                dataBase(at, bytes));
        return at.containsKey(Role.TIME) ? timed(untimed) : untimed;
    }

    private Map<Role, Integer> roles() {
        Map<Role, Integer> at = new EnumMap<>(Role.class);
        for (int i = 0; i < names.size(); i++) {
            Optional<Role> role = Role.of(names.get(i));
            if (role.isPresent() && at.putIfAbsent(role.get(), i) != null) {
                throw refused(
                        i + 1,
                        "column-twice",
                        "the columns '" + names.get(at.get(role.get())) + "' and '" + names.get(i)
                                + "' would both be the " + role.get().title() + "; rename one of them");
            }
        }
        if (at.containsKey(Role.PGN)) {
            at.remove(Role.ID);
        }
        return at;
    }

    private int[] byteColumns() {
        TreeMap<Integer, Integer> columns = new TreeMap<>();
        for (int i = 0; i < names.size(); i++) {
            int number = Role.byteNumber(names.get(i));
            if (number >= 0 && columns.putIfAbsent(number, i) != null) {
                throw refused(i + 1, "column-twice", "two columns are byte " + number);
            }
        }
        if (columns.lastKey() - columns.firstKey() != columns.size() - 1 || columns.firstKey() > 1) {
            throw refused(
                    1 + columns.get(columns.firstKey()),
                    "byte-columns-incomplete",
                    "columns of single bytes must count from 0 or 1 without a gap, these are " + columns.keySet());
        }
        return columns.values().stream().mapToInt(Integer::intValue).toArray();
    }

    private void require(Map<Role, Integer> at, Role... roles) {
        for (Role role : roles) {
            if (!at.containsKey(role)) {
                throw refused(
                        0,
                        "no-such-column",
                        "a column of the " + role.title() + " is needed beside the parameter group; found " + names);
            }
        }
    }

    private NumberBase identifierBase(Map<Role, Integer> at, boolean groups) {
        int column = at.get(groups ? Role.PGN : Role.ID);
        int limit = groups ? BaseRule.HIGHEST_GROUP : identifierLimit(at, column);
        return options.identifiers()
                .or(() -> Role.base(names.get(column)))
                .or(() -> BaseRule.ofNumbers(HeadRows.column(rows, column), limit))
                .orElseThrow(() -> unknownBase(column, "--id-base"));
    }

    /** The lowest of the limits that hold for all rows at which a number read as hexadecimal cannot be one. */
    private int identifierLimit(Map<Role, Integer> at, int column) {
        Integer extended = at.get(Role.EXTENDED);
        boolean standard = extended != null
                && rows.stream()
                        .filter(r -> r.size() > Math.max(column, extended))
                        .allMatch(r -> r.get(extended).matches("(?i)false|0|no|n|f"));
        return standard ? BaseRule.HIGHEST_STANDARD : BaseRule.HIGHEST_EXTENDED;
    }

    private NumberBase addressBase(Map<Role, Integer> at, NumberBase groups) {
        List<String> cells = new ArrayList<>(HeadRows.column(rows, at.get(Role.SOURCE)));
        cells.addAll(HeadRows.column(rows, at.get(Role.DESTINATION)));
        return options.identifiers()
                .or(() -> Role.base(names.get(at.get(Role.SOURCE))))
                .or(() -> BaseRule.ofNumbers(cells, BaseRule.HIGHEST_BYTE))
                .or(() -> BaseRule.sameInBoth(cells) ? Optional.of(groups) : Optional.empty())
                .orElseThrow(() -> unknownBase(at.get(Role.SOURCE), "--id-base"));
    }

    private NumberBase dataBase(Map<Role, Integer> at, int[] bytes) {
        int column = bytes.length > 0 ? bytes[0] : at.get(Role.DATA);
        return options.data()
                .or(() -> Role.base(names.get(column)))
                .or(() -> BaseRule.ofBytes(dataTokens(at, bytes)))
                .orElseThrow(() -> unknownBase(column, "--data-base"));
    }

    private List<String> dataTokens(Map<Role, Integer> at, int[] bytes) {
        List<String> tokens = new ArrayList<>();
        if (bytes.length == 0) {
            HeadRows.column(rows, at.get(Role.DATA)).forEach(c -> tokens.addAll(List.of(c.split("[ \\t:._-]+"))));
        }
        for (int column : bytes) {
            tokens.addAll(HeadRows.column(rows, column));
        }
        return tokens;
    }

    private Columns timed(Columns untimed) {
        int column = untimed.of(Role.TIME);
        StampUnit unit = options.stampUnit()
                .or(() -> Role.unit(names.get(column)))
                .or(() -> StampRule.of(untimed, rows))
                .orElseThrow(() -> refused(
                        column + 1,
                        "stamp-unit-unknown",
                        "the column '" + names.get(column) + "' names no unit, and its first " + rows.size()
                                + " rows allow for none or several: say --time-unit s, ms, us or ns"));
        return new Columns(
                headerLine,
                delimiter,
                names.size(),
                untimed.at(),
                untimed.bytes(),
                unit,
                untimed.identifiers(),
                untimed.addresses(),
                untimed.data());
    }

    private InputException unknownBase(int column, String option) {
        return refused(
                column + 1,
                "base-unknown",
                "the numbers of the column '" + names.get(column) + "' may be hexadecimal or decimal: say " + option
                        + " hex or dec");
    }

    /** @param column number of the cell in its row, from 1; 0 for the whole line */
    private InputException refused(int column, String key, String message) {
        return InputException.at(new Place(file.file(), headerLine, column), key, message);
    }
}
