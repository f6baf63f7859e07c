package hotday.signals.log;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.finding.Sentence;
import hotday.core.finding.Setting;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A recording, or a list of values, as delimited text: comma, tab or semicolon; UTF-8 or Latin-1; plain or gzip; mixed line ends; cells
 * padded or quoted. One line is one row, so that an open quote spoils one row and not the rest of the file. Rows are
 * handed out one at a time: memory does not grow with the file. Immutable; one file may be read several times.
 */
public final class DelimitedText implements Table {
    /** Enough to meet a decimal comma in a column that begins with whole numbers. */
    private static final int ROWS_LOOKED_AT = 500;

    private static final int LETTERS_LOOKED_AT = 4_000_000;
    /** Lines about car and logger that may stand above the names. */
    private static final int MOST_ABOVE = 20;

    private static final String ONE_COLUMN = "one-column";
    private static final byte[] BOM = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final TextSource source;
    private final List<String> header;
    private final int headerLine;
    /** Last line before the rows: that of the units, where there is one, else the header's. */
    private final int headEnd;

    private final List<String> units;
    private final TextForm form;
    private final byte[] comment;

    private DelimitedText(
            TextSource source,
            List<String> header,
            int headerLine,
            List<String> units,
            int headEnd,
            TextForm form,
            byte[] comment) {
        this.source = source;
        this.header = List.copyOf(header);
        this.headerLine = headerLine;
        this.units = units;
        this.headEnd = headEnd;
        this.form = form;
        this.comment = comment;
    }

    /** Looks at the head of a file; throws {@link InputException} when it is no delimited text with a header. */
    public static DelimitedText open(Path path, ReaderOptions options) {
        try {
            return at(path, options);
        } catch (InputException wrong) {
            boolean single = wrong.findings().get(0).key().equals(ONE_COLUMN);
            return (single ? furtherDown(path, options) : Optional.<DelimitedText>empty()).orElseThrow(() -> wrong);
        }
    }

    /** Names below lines that are none, where nobody said in which line they stand. */
    private static Optional<DelimitedText> furtherDown(Path path, ReaderOptions options) {
        for (int line = 2; line <= MOST_ABOVE + 1 && options.isRecording() && options.header() == 1; line++) {
            try {
                DelimitedText text = at(path, options.withHeader(line));
                if (text.looksLikeTable()) {
                    return Optional.of(text);
                }
            } catch (InputException none) {
                if (!none.findings().get(0).key().equals(ONE_COLUMN)) {
                    return Optional.empty();
                }
            }
        }
        return Optional.empty();
    }

    /** Names that begin with letters, above rows of as many cells. */
    private boolean looksLikeTable() {
        int[] rows = new int[2];
        rows(
                row -> {
                    rows[0]++;
                    rows[1] += row.count() == header.size() || row.count() == header.size() + 1 ? 1 : 0;
                },
                ROWS_LOOKED_AT);
        return 2 * rows[1] > rows[0]
                && header.stream().allMatch(name -> name.isEmpty() || Character.isLetter(name.charAt(0)));
    }

    private static DelimitedText at(Path path, ReaderOptions options) {
        TextSource source = TextSource.open(path);
        byte[] comment = options.comment().getBytes(StandardCharsets.UTF_8);
        try (LineReader lines = source.lines()) {
            Optional<Character> declared = Optional.empty();
            int names = 0;
            while (nextOfInterest(lines, comment)) {
                String text = text(lines, source.charset());
                if (lines.line() == 1 && TextForm.declared(text).isPresent()) {
                    declared = TextForm.declared(text);
                } else if (++names == options.header()) {
                    int line = lines.line();
                    Below below = Below.of(lines, comment, source.charset());
                    TextForm form = TextForm.of(text, below.rows(), options, declared);
                    List<String> header = names(path, text, line, form, options.fewestNames());
                    Optional<List<String>> units =
                            options.isRecording() ? below.units(form, header.size()) : Optional.empty();
                    return new DelimitedText(
                            source,
                            header,
                            line,
                            units.orElse(List.of()),
                            units.isPresent() ? below.line() : line,
                            form,
                            comment);
                }
            }
            throw InputException.at(
                    Place.of(path.toString()),
                    "no-header",
                    options.header() == 1
                            ? Sentence.of("no header line in this file: there is nothing in it")
                            : Sentence.of(
                                    "the file has " + names + " lines and the names should stand in line "
                                            + options.header() + ": check ",
                                    Setting.named("reader.header", "'header' in the channel map")));
        } catch (IOException e) {
            throw TextSource.unreadable(path, e);
        }
    }

    /**
     * The first lines under the header.
     *
     * @param line of the first of them
     */
    private record Below(int line, List<String> rows) {
        static Below of(LineReader lines, byte[] comment, Charset charset) throws IOException {
            List<String> rows = new ArrayList<>();
            int line = 0;
            int letters = 0;
            while (rows.size() < ROWS_LOOKED_AT && letters < LETTERS_LOOKED_AT && nextOfInterest(lines, comment)) {
                line = rows.isEmpty() ? lines.line() : line;
                rows.add(text(lines, charset));
                letters += rows.get(rows.size() - 1).length();
            }
            return new Below(line, rows);
        }

        Optional<List<String>> units(TextForm form, int width) {
            if (rows.isEmpty()) {
                return Optional.empty();
            }
            TextRow row = new TextRow(form.delimiter(), form.mark(), StandardCharsets.UTF_8);
            row.cut(rows.get(0));
            return UnitsRow.of(row, width);
        }
    }

    private static boolean nextOfInterest(LineReader lines, byte[] comment) throws IOException {
        while (lines.next()) {
            if (!isBlank(lines) && !isComment(lines, comment)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isBlank(LineReader lines) {
        byte[] bytes = lines.bytes();
        int at = lines.start();
        while (at < lines.end() && (bytes[at] == ' ' || bytes[at] == '\t')) {
            at++;
        }
        return at == lines.end();
    }

    private static boolean isComment(LineReader lines, byte[] comment) {
        if (comment.length == 0 || lines.end() - lines.start() < comment.length) {
            return false;
        }
        return java.util.Arrays.equals(
                lines.bytes(), lines.start(), lines.start() + comment.length, comment, 0, comment.length);
    }

    private static String text(LineReader lines, Charset charset) {
        byte[] bytes = lines.bytes();
        int from = lines.start();
        boolean marked = lines.line() == 1
                && lines.end() - from >= BOM.length
                && java.util.Arrays.equals(bytes, from, from + BOM.length, BOM, 0, BOM.length);
        int start = marked ? from + BOM.length : from;
        return new String(bytes, start, lines.end() - start, charset);
    }

    private static List<String> names(Path path, String text, int line, TextForm form, int fewest) {
        TextRow row = new TextRow(form.delimiter(), '.', StandardCharsets.UTF_8);
        row.cut(text);
        Place place = new Place(path.toString(), line, 1);
        if (row.damage() != Row.Damage.NONE) {
            throw InputException.at(place, "header-damaged", "a quote is opened in the header and never closed");
        }
        List<String> names = new ArrayList<>();
        for (int i = 0; i < Math.min(row.count(), TextRow.WIDEST); i++) {
            names.add(row.text(i));
        }
        while (names.size() > 1 && names.get(names.size() - 1).isEmpty()) {
            names.remove(names.size() - 1);
        }
        if (names.size() < fewest) {
            throw InputException.at(
                    place,
                    ONE_COLUMN,
                    Sentence.of(
                            "the header has a single column: names cut by comma, tab or semicolon are expected. If they stand"
                                    + " further down, say so in ",
                            new Setting("reader.header", "3", "the channel map, such as 'reader: {header: 3}'")));
        }
        return names;
    }

    /** As they stand in the header; empty ones at its end are left out. */
    @Override
    public List<String> header() {
        return header;
    }

    /** What stands for a column in a row of units under the names. */
    @Override
    public Optional<String> unit(int column) {
        return column < units.size() ? Optional.of(units.get(column)).filter(u -> !u.isEmpty()) : Optional.empty();
    }

    @Override
    public int unitsLine() {
        return units.isEmpty() ? 0 : headEnd;
    }

    @Override
    public int headerLine() {
        return headerLine;
    }

    public char delimiter() {
        return form.delimiter();
    }

    /** Point or comma. */
    public char decimalMark() {
        return form.mark();
    }

    @Override
    public Path path() {
        return source.path();
    }

    /** Those after header and units, blank and comment lines left out. */
    @Override
    public void rows(RowReader to, int most) {
        TextRow row = new TextRow(form.delimiter(), form.mark(), source.charset());
        try (LineReader lines = source.lines()) {
            int rows = 0;
            while (rows < most && nextOfInterest(lines, comment)) {
                if (lines.line() > headEnd) {
                    rows++;
                    row.cut(lines);
                    to.row(row);
                }
            }
        } catch (IOException e) {
            throw TextSource.unreadable(path(), e);
        }
    }
}
