package hotday.signals.channel;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.finding.Sentence;
import hotday.core.finding.Setting;
import hotday.signals.log.Row;
import hotday.signals.log.Table;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Takes the rows of a file: time stamps and mapped columns into arrays. Rows that cannot be placed or trusted are left
 * out and counted.
 */
final class RowCollector implements Table.RowReader {
    /** More than a day at 100 Hz, and what a small machine can hold. */
    private static final int MOST_ROWS = 10_000_000;
    /** Share of rows without a time beyond which the column is no time column. */
    private static final double TIMELESS = 0.05;

    private static final int FEW = 3;
    private static final int NO_COLUMN = -1;
    private static final int LONGEST_SHOWN = 40;
    private static final Setting STAMPS =
            new Setting("time.clock", "hh:mm:ss", "put 'clock: hh:mm:ss' into the channel map");

    private final String file;
    private final Table text;
    private final int timeColumn;
    private final boolean clock;
    /** From row to row where there is no time column, s. */
    private final double step;

    private final List<ColumnSamples> columns;
    private double[] times = new double[4096];
    private int[] lines = new int[4096];
    private int size;
    private int rows;
    private String firstStamp = "";
    private String words = "";
    private final Tally underHeader = new Tally();
    private final Tally timeless = new Tally();
    private final Tally wide = new Tally();
    private final Tally narrow = new Tally();
    private final Tally damaged = new Tally();
    private final Tally cut = new Tally();

    /** Count and first place of something met in rows. */
    private static final class Tally {
        private int count;
        private int line;
        private int column;

        void at(int atLine, int atColumn) {
            if (count == 0) {
                line = atLine;
                column = atColumn;
            }
            count++;
        }
    }

    RowCollector(Table text, Optional<Integer> timeColumn, TimeRule time, List<ColumnSamples> columns) {
        this.file = text.path().toString();
        this.text = text;
        this.timeColumn = timeColumn.orElse(NO_COLUMN);
        this.clock = time.clock();
        this.step = time.step();
        this.columns = columns;
    }

    @Override
    public void row(Row row) {
        rows++;
        int width = text.header().size();
        boolean shortened = row.unfinished() && (row.count() < width || row.damage() != Row.Damage.NONE);
        if (shortened) {
            cut.at(row.line(), 0);
        }
        if (row.damage() != Row.Damage.NONE) {
            if (!shortened) {
                damaged.at(row.line(), 0);
            }
            return;
        }
        if (holdsMore(row, width)) {
            wide.at(row.line(), width + 1);
            return;
        }
        if (!shortened && row.count() < width) {
            narrow.at(row.line(), 0);
        }
        // the last cell of a row cut short may be half a number
        take(row, shortened ? row.count() - 1 : row.count());
    }

    private static boolean holdsMore(Row row, int width) {
        for (int i = width; i < row.count(); i++) {
            if (!row.blank(i)) {
                return true;
            }
        }
        return false;
    }

    private void take(Row row, int cells) {
        if (rows == 1 && wordsOnly(row)) {
            underHeader.at(row.line(), 0);
            words = shown(row);
            return;
        }
        double stamp = timeColumn < cells ? stamp(row) : Double.NaN;
        if (Double.isNaN(stamp)) {
            timeless.at(row.line(), timeColumn + 1);
            return;
        }
        makeRoom();
        firstStamp = size == 0 ? (timeColumn == NO_COLUMN ? "0" : row.text(timeColumn)) : firstStamp;
        times[size] = stamp;
        lines[size] = row.line();
        size++;
        for (ColumnSamples column : columns) {
            column.add(file, row, cells);
        }
    }

    private static boolean wordsOnly(Row row) {
        boolean words = false;
        for (int i = 0; i < row.count(); i++) {
            String text = row.text(i);
            if (!Double.isNaN(row.number(i)) || !Double.isNaN(Clock.seconds(text))) {
                return false;
            }
            words |= !text.isEmpty() && !ColumnSamples.saysNothing(text);
        }
        return words;
    }

    private static String shown(Row row) {
        String all = IntStream.range(0, Math.min(row.count(), FEW))
                .mapToObj(row::text)
                .collect(Collectors.joining("; "));
        return all.length() > LONGEST_SHOWN ? all.substring(0, LONGEST_SHOWN) + "..." : all;
    }

    private double stamp(Row row) {
        if (timeColumn == NO_COLUMN) {
            return (rows - 1 - underHeader.count) * step;
        }
        return clock ? Clock.seconds(row.text(timeColumn)) : row.number(timeColumn);
    }

    private void makeRoom() {
        if (size == MOST_ROWS) {
            throw InputException.at(
                    Place.of(file),
                    "too-many-rows",
                    "has more than " + MOST_ROWS + " rows: cut it into runs, or record fewer samples a second");
        }
        if (size == times.length) {
            times = Arrays.copyOf(times, 2 * size);
            lines = Arrays.copyOf(lines, 2 * size);
        }
    }

    /** Time as it stands in the file, one for every row taken. */
    double[] times() {
        return Arrays.copyOf(times, size);
    }

    int[] lines() {
        return Arrays.copyOf(lines, size);
    }

    /** The first time stamp as text. */
    String firstStamp() {
        return firstStamp;
    }

    /** @param skipText true when text among numbers is to be left out */
    void judge(boolean skipText, List<Finding> faults, List<Finding> findings) {
        if (rows == underHeader.count) {
            faults.add(Finding.fault(
                    "no-rows", Place.of(file), "the file has a header and no rows: nothing was recorded"));
            return;
        }
        judge(
                wide,
                "rows-too-wide",
                "rows have more cells than the header has names, so their values may stand under wrong names; they are"
                        + " left out. A decimal comma in a file cut by commas does this.",
                faults,
                findings);
        judge(
                damaged,
                "rows-damaged",
                "rows hold an open quote or zero bytes (a logger that lost its power leaves them) and are left out.",
                faults,
                findings);
        if (underHeader.count > 0) {
            findings.add(Finding.warning(
                    "words-under-header",
                    place(underHeader),
                    Sentence.of(
                            "the first line under the header holds words ('" + words
                                    + "') and neither numbers nor units known here; it is left out. If the names of the"
                                    + " columns stand there, say so with ",
                            new Setting("reader.header", "2", "'reader: {header: 2}' in the channel map"))));
        }
        judgeTime(faults, findings);
        if (narrow.count > 0) {
            warn(
                    narrow,
                    "rows-too-narrow",
                    "rows have fewer cells than the header has names; the cells that are not there count as blank.",
                    findings);
        }
        if (cut.count > 0) {
            findings.add(Finding.warning(
                    "last-row-cut",
                    place(cut),
                    "the last row is cut short: recording or copying was broken off. What is whole of it is taken."));
        }
        if (size == 0 && faults.isEmpty()) {
            faults.add(Finding.fault(
                    "no-rows",
                    Place.of(file),
                    String.format(
                            "none of its %d rows can be read: %d are damaged, %d have more cells than the header",
                            rows, damaged.count, wide.count)));
        }
        columns.forEach(c -> c.judge(skipText, faults, findings));
    }

    private void judge(Tally tally, String key, String what, List<Finding> faults, List<Finding> findings) {
        if (2 * tally.count > rows) {
            faults.add(Finding.fault(key, place(tally), tally.count + " of " + rows + " " + what)
                    .with("rows", tally.count));
        } else if (tally.count > 0) {
            warn(tally, key, what, findings);
        }
    }

    private void judgeTime(List<Finding> faults, List<Finding> findings) {
        int seen = size + timeless.count;
        if (timeless.count > Math.max(FEW, TIMELESS * seen) || (seen > 0 && size == 0)) {
            faults.add(Finding.fault(
                            "time-unreadable",
                            place(timeless),
                            Sentence.of(
                                    timeless.count + " of " + seen + " rows have no readable time in column '",
                                    text.header().get(timeColumn),
                                    clock
                                            ? "'; stamps such as 12:30:05.250 are expected"
                                            : "'; for stamps such as 12:30:05 ",
                                    clock ? "" : STAMPS))
                    .with("rows", timeless.count));
        } else if (timeless.count > 0) {
            warn(
                    timeless,
                    "rows-without-time",
                    "rows have no readable time and cannot be placed; they are left out.",
                    findings);
        }
    }

    private void warn(Tally tally, String key, String what, List<Finding> findings) {
        findings.add(Finding.warning(key, place(tally), tally.count + " of " + rows + " " + what)
                .with("rows", tally.count));
    }

    private Place place(Tally tally) {
        return new Place(file, tally.line, tally.column);
    }
}
