package hotday.study.decode;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.unit.Quantity;
import hotday.core.unit.Units;
import hotday.signals.channel.ChannelGuess;
import hotday.signals.channel.ChannelMap;
import hotday.signals.channel.Clock;
import hotday.signals.channel.MapDraft;
import hotday.signals.channel.RecordingHead;
import hotday.signals.frame.Frame;
import hotday.signals.frame.FrameSource;
import hotday.signals.frame.SampleSink;
import hotday.signals.framelog.StampUnit;
import hotday.signals.log.Row;
import hotday.signals.log.Table;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A table of measured values as a source of samples: of one time column and a signal in every other, or with a row for every sample as this
 * program writes it ({@link LongRow}). The time column is found by the rules for recordings; its unit stands in its name or is said.
 */
final class TableSource implements FrameSource {
    private static final Pattern UNIT_IN_NAME = Pattern.compile("[_ ](\\p{L}{1,2})$");
    private static final Pattern BRACKET = Pattern.compile("\\s*(?:\\[([^\\]]*)\\]|\\(([^)]*)\\))\\s*$");

    private final Path path;
    private final Table table;
    private final ToDoubleFunction<Row> clock;
    private final RowSamples samples;
    private final RowTimes times;
    private long rows;
    private long broken;
    private int firstBroken;
    private boolean read;

    /** What becomes of a row. */
    interface RowSamples {
        /** Says where they go; before the first row. */
        void to(SampleSink sink);

        /** @return false when the row is none */
        boolean row(Row row, double time);

        /** Samples so far. */
        long count();
    }

    private TableSource(Path path, Table table, ToDoubleFunction<Row> clock, boolean ofDay, RowSamples samples) {
        this.path = path;
        this.table = table;
        this.clock = clock;
        this.samples = samples;
        this.times = new RowTimes(path.toString(), ofDay);
    }

    /** @param said unit of the time column where it names none */
    static TableSource open(Path path, Optional<StampUnit> said) {
        Table table = ChannelMap.tableUnmapped(path);
        if (LongRow.isLong(table)) {
            int time = table.header().indexOf("time_s");
            return new TableSource(path, table, row -> row.number(time), false, new LongRow(table));
        }
        RecordingHead head = ChannelMap.headUnmapped(path);
        MapDraft.Time time = ChannelGuess.of(head).time();
        if (time.position() == 0) {
            throw InputException.at(
                    Place.of(path.toString()),
                    "no-time-column",
                    "no column is a time: call one 'time [s]'. It has: " + String.join(", ", table.header()));
        }
        int column = time.position() - 1;
        ToDoubleFunction<Row> clock = time.clock()
                ? row -> Clock.seconds(row.text(column))
                : scaled(column, seconds(path, head.columns().get(column), said));
        return new TableSource(path, table, clock, time.clock(), new WideRow(signals(head, column)));
    }

    private static ToDoubleFunction<Row> scaled(int column, double seconds) {
        return row -> row.number(column) * seconds;
    }

    private static double seconds(Path path, RecordingHead.Column column, Optional<StampUnit> said) {
        Matcher word = UNIT_IN_NAME.matcher(column.header());
        Optional<Double> named = column.unit()
                .flatMap(u -> Units.find(Quantity.TIME, u))
                .map(u -> u.toSi(1.0))
                .or(() -> word.find() ? StampUnit.of(word.group(1)).map(StampUnit::seconds) : Optional.empty());
        return named.or(() -> said.map(StampUnit::seconds))
                .orElseThrow(() -> InputException.at(
                        Place.of(path.toString()),
                        "stamp-unit-unknown",
                        "the time column '" + column.header()
                                + "' names no unit: say it with --time-unit s, ms, us or ns"));
    }

    /** Name and unit of each column; the time column's is null. */
    private static List<WideRow.Signal> signals(RecordingHead head, int time) {
        Set<String> taken = new HashSet<>();
        List<WideRow.Signal> signals = new ArrayList<>();
        for (RecordingHead.Column column : head.columns()) {
            String name = bare(column);
            String free = taken.add(name) ? name : column.header() + " #" + column.position();
            taken.add(free);
            signals.add(
                    column.position() - 1 == time
                            ? null
                            : new WideRow.Signal(free, column.unit().orElse("")));
        }
        return signals;
    }

    /** Without the bracket that holds the unit. */
    private static String bare(RecordingHead.Column column) {
        Matcher m = BRACKET.matcher(column.header());
        if (m.find() && m.start() > 0) {
            String inside = letters(m.group(1) == null ? m.group(2) : m.group(1));
            if (column.unit().filter(u -> letters(u).equals(inside)).isPresent()) {
                return column.header().substring(0, m.start());
            }
        }
        return column.header();
    }

    /** Without degree signs, right or mangled. */
    private static String letters(String unit) {
        return unit.replaceAll("[\\u00C2\\u00B0\\u00BA\\uFFFD\\s]+", "");
    }

    @Override
    public boolean holdsFrames() {
        return false;
    }

    @Override
    public void samplesTo(SampleSink sink) {
        samples.to(sink);
    }

    @Override
    public boolean next(Frame frame) {
        if (!read) {
            read = true;
            table.rows(this::take);
        }
        return false;
    }

    private void take(Row row) {
        rows++;
        double time = times.placed(clock.applyAsDouble(row));
        if (!Double.isNaN(time)) {
            times.add(time, row.line());
        }
        if (Double.isNaN(time) || !samples.row(row, time)) {
            firstBroken = broken == 0 ? row.line() : firstBroken;
            broken++;
        }
    }

    @Override
    public String layout() {
        return "table of " + table.header().size() + " columns";
    }

    @Override
    public List<String> buses() {
        return List.of();
    }

    @Override
    public long frames() {
        return 0;
    }

    @Override
    public long samples() {
        return samples.count();
    }

    @Override
    public long broken() {
        return broken;
    }

    @Override
    public double firstTime() {
        return times.first();
    }

    /** Times of day and dates count from the first; a recording's own seconds stay what they are. */
    @Override
    public double zero() {
        return times.zero();
    }

    @Override
    public double duration() {
        return times.duration();
    }

    @Override
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>(table.findings());
        if (broken > 0) {
            String what = broken + " rows have no readable time, signal or state and are left out";
            Place place = new Place(path.toString(), firstBroken, 0);
            all.add(
                    2 * broken > rows
                            ? Finding.fault("rows-without-time", place, what)
                            : Finding.warning("rows-without-time", place, what));
        }
        all.addAll(times.findings());
        return all;
    }

    @Override
    public void close() {
        // every reading of the table closes what it opened
    }
}
