package hotday.signals.channel;

import hotday.signals.log.ReaderOptions;
import hotday.signals.log.Row;
import hotday.signals.log.Table;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Header and first rows of a recording, for a person who says which column means what.
 *
 * @param columns in the order of the file
 * @param rows looked at
 * @param reader keys of the map's block {@code reader} by which the file was cut, as typed
 */
public record RecordingHead(List<Column> columns, int rows, Map<String, String> reader) {
    private static final int ROWS = 200;
    private static final int EXAMPLES = 3;
    private static final int LONGEST = 40;

    public RecordingHead {
        columns = List.copyOf(columns);
        reader = Map.copyOf(reader);
    }

    /**
     * A column.
     *
     * @param position from 1
     * @param header as it stands in the file
     * @param unit in the header's bracket or in a row of units under it
     * @param examples first values that differ
     * @param clock true when they are stamps of a clock
     * @param rising true when the first rows change and never fall
     */
    public record Column(
            int position, String header, Optional<String> unit, List<String> examples, boolean clock, boolean rising) {
        public Column {
            examples = List.copyOf(examples);
        }
    }

    /** Reads them; throws {@link hotday.core.finding.InputException} when the file is no delimited text with a header. */
    static RecordingHead of(Path log, ReaderOptions options, boolean skipText) {
        Table text = TableFile.open(log, options);
        List<Seen> seen = new ArrayList<>();
        text.header().forEach(name -> seen.add(new Seen()));
        int[] rows = new int[1];
        text.rows(
                row -> {
                    rows[0]++;
                    for (int i = 0; i < seen.size(); i++) {
                        seen.get(i).take(row, i);
                    }
                },
                ROWS);
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < seen.size(); i++) {
            columns.add(seen.get(i).column(i + 1, text.header().get(i), HeaderName.unit(text, i)));
        }
        return new RecordingHead(columns, rows[0], reader(options, skipText));
    }

    private static Map<String, String> reader(ReaderOptions options, boolean skipText) {
        Map<String, String> keys = new TreeMap<>();
        options.delimiter().ifPresent(d -> keys.put("delimiter", d == ',' ? "comma" : d == '\t' ? "tab" : "semicolon"));
        if (options.decimal() != ReaderOptions.Decimal.AUTO) {
            keys.put("decimal", options.decimal().name().toLowerCase(Locale.ROOT));
        }
        if (!options.comment().isEmpty()) {
            keys.put("comment", options.comment());
        }
        if (options.header() > 1) {
            keys.put("header", String.valueOf(options.header()));
        }
        if (skipText) {
            keys.put("text", "skip");
        }
        return keys;
    }

    /** What the first rows showed of one column. */
    private static final class Seen {
        private final List<String> examples = new ArrayList<>();
        private double last = Double.NaN;
        private boolean clock = true;
        private boolean falls;
        private boolean rises;

        void take(Row row, int cell) {
            if (row.blank(cell)) {
                return;
            }
            String text = row.text(cell);
            if (examples.size() < EXAMPLES && !examples.contains(shortened(text))) {
                examples.add(shortened(text));
            }
            double number = row.number(cell);
            clock &= Double.isNaN(number) && !Double.isNaN(Clock.seconds(text));
            double at = Double.isNaN(number) ? Clock.seconds(text) : number;
            falls |= Double.isNaN(at) || at < last;
            rises |= at > last;
            last = at;
        }

        private static String shortened(String text) {
            return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "...";
        }

        Column column(int position, String header, Optional<String> unit) {
            return new Column(position, header, unit, examples, clock && !examples.isEmpty(), rises && !falls);
        }
    }
}
