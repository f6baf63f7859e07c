package hotday.signals.channel;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.core.unit.UnitException;
import hotday.core.unit.Units;
import hotday.signals.log.DelimitedText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One file read through one map. */
final class MappedReading {
    private static final Pattern HEADER_UNIT = Pattern.compile("[\\[(]([^\\])]+)[\\])]\\s*$");
    /** Channels in which one value throughout means a dead sensor rather than a steady test. */
    private static final Set<ModelChannel> MUST_MOVE = Set.of(ModelChannel.COOLANT_TEMPERATURE);

    /** Channels in which one value other than zero throughout means the same. */
    private static final Set<ModelChannel> MUST_MOVE_UNLESS_ZERO = Set.of(
            ModelChannel.VEHICLE_SPEED, ModelChannel.ENGINE_SPEED, ModelChannel.FUEL_FLOW, ModelChannel.AIR_FLOW);

    private static final double FILLED_FORWARD = 0.9;

    private final String mapFile;
    private final DelimitedText text;
    private final String name;
    private final String file;
    private final ChannelMap.TimeRule timeRule;
    private final Map<ModelChannel, ChannelMap.Rule> rules;
    private final Map<String, Fact> facts;
    private final Map<ModelChannel, Integer> columns = new EnumMap<>(ModelChannel.class);
    private final List<Finding> faults = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    MappedReading(
            String mapFile,
            DelimitedText text,
            String name,
            ChannelMap.TimeRule timeRule,
            Map<ModelChannel, ChannelMap.Rule> rules,
            Map<String, Fact> facts) {
        this.mapFile = mapFile;
        this.text = text;
        this.name = name;
        this.file = text.path().toString();
        this.timeRule = timeRule;
        this.rules = rules;
        this.facts = facts;
    }

    Recording recording() {
        Map<ModelChannel, Unit> units = new EnumMap<>(ModelChannel.class);
        int timeColumn = timeColumn();
        Unit timeUnit = timeUnit(timeColumn);
        rules.forEach((kind, rule) -> {
            if (rule.constant().isEmpty()) {
                column(rule.column(), rule.position(), kind.key(), rule.place()).ifPresent(c -> {
                    columns.put(kind, c);
                    unit(kind, rule, c).ifPresent(u -> units.put(kind, u));
                });
            }
        });
        throwFaults();
        Rows rows = new Rows(timeColumn, timeRule.clock());
        columns.forEach((kind, c) -> rows.columns.put(
                kind, new ColumnReader(text.header().get(c), c, rules.get(kind).missing())));
        text.rows(rows);
        rows.columns.forEach((kind, reader) -> reader.judge(file, faults));
        rows.judge();
        throwFaults();
        return assemble(rows, timeUnit, units);
    }

    private void throwFaults() {
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
    }

    private int timeColumn() {
        return column(timeRule.column(), timeRule.position(), "time", timeRule.place())
                .orElse(-1);
    }

    private Unit timeUnit(int column) {
        if (timeRule.clock() || column < 0) {
            return Units.unit(Quantity.TIME, "s");
        }
        Optional<Unit> unit = timeRule.unit()
                .or(() -> headerUnit(text.header().get(column)).flatMap(u -> Units.find(Quantity.TIME, u)));
        if (unit.isEmpty()) {
            faults.add(Finding.fault(
                    "unit-missing",
                    timeRule.place(),
                    "the time column '" + text.header().get(column)
                            + "' has no unit: add 'unit: s' (or ms, min, h), or 'clock: hh:mm:ss'"));
            return Units.unit(Quantity.TIME, "s");
        }
        return unit.get();
    }

    private static Optional<String> headerUnit(String header) {
        Matcher m = HEADER_UNIT.matcher(header.replace("\u00C2", ""));
        return m.find() ? Optional.of(m.group(1).trim()) : Optional.empty();
    }

    private Optional<Integer> column(String name, int position, String key, Place place) {
        List<String> header = text.header();
        for (int i = 0; i < header.size(); i++) {
            if (same(header.get(i), name)) {
                return Optional.of(i);
            }
        }
        if (position > 0 && position <= header.size()) {
            findings.add(Finding.note(
                    "column-by-position",
                    new Place(file, text.headerLine(), position),
                    "'" + name + "' is not in the header; column " + position + " ('" + header.get(position - 1)
                            + "') is taken for " + key));
            return Optional.of(position - 1);
        }
        faults.add(Finding.fault(
                key.equals("time") ? "no-time-column" : "no-such-column",
                new Place(file, text.headerLine(), 0),
                "no column '" + name + "' for " + key + " (" + place + "). The header has: "
                        + String.join(", ", header)));
        return Optional.empty();
    }

    /** Header names agree when they do without case, outer blanks and the stray byte of a wrongly decoded degree sign. */
    private static boolean same(String a, String b) {
        return a.replace("\u00C2", "")
                .trim()
                .equalsIgnoreCase(b.replace("\u00C2", "").trim());
    }

    private Optional<Unit> unit(ModelChannel kind, ChannelMap.Rule rule, int column) {
        String header = text.header().get(column);
        Optional<String> symbol = rule.unit().or(() -> headerUnit(header));
        if (symbol.isEmpty()) {
            faults.add(Finding.fault(
                    "unit-missing",
                    rule.place(),
                    "column '" + header + "' for " + kind.key() + " has no unit: add one, such as 'unit: "
                            + kind.quantity().example() + "'"));
            return Optional.empty();
        }
        try {
            return Optional.of(Units.unit(kind.quantity(), symbol.get()));
        } catch (UnitException e) {
            faults.add(Finding.fault("unit-wrong", rule.place(), kind.key() + ": " + e.getMessage()));
            return Optional.empty();
        }
    }

    private Recording assemble(Rows rows, Unit timeUnit, Map<ModelChannel, Unit> units) {
        int[] keep = rows.timed();
        double[] time = new double[keep.length];
        int[] lines = new int[keep.length];
        for (int i = 0; i < keep.length; i++) {
            time[i] = timeUnit.toSi(rows.times[keep[i]]);
            lines[i] = rows.lines[keep[i]];
        }
        TimeBase.unify(file, time, lines, timeRule.clock(), findings);
        Map<ModelChannel, double[]> raw = new EnumMap<>(ModelChannel.class);
        rows.columns.forEach((kind, reader) -> {
            double[] all = reader.values();
            double[] values = new double[keep.length];
            for (int i = 0; i < keep.length; i++) {
                values[i] = all[keep[i]];
            }
            raw.put(kind, values);
        });
        boolean forward = filledForward(raw);
        if (forward) {
            findings.add(
                    Finding.note(
                            "filled-forward",
                            Place.of(file),
                            "one value arrives a row and the others repeat: repeats are marked and not counted as samples of their own"));
        }
        Map<ModelChannel, Channel> channels = new EnumMap<>(ModelChannel.class);
        rules.forEach((kind, rule) -> channels.put(
                kind,
                rule.constant().isPresent()
                        ? constant(kind, rule.constant().get(), time.length)
                        : channel(kind, rule, raw.get(kind), units.get(kind), time, forward)));
        channels.values().forEach(this::judge);
        throwFaults();
        return new Recording(name, file, time, lines, channels, facts, findings);
    }

    private static Channel constant(ModelChannel kind, double value, int size) {
        double[] values = new double[size];
        Arrays.fill(values, value);
        return new Channel(kind, "constant", "SI", values, new byte[size], 0.0);
    }

    /** True when nearly every row changes at most one mapped column. */
    private static boolean filledForward(Map<ModelChannel, double[]> raw) {
        if (raw.size() < 4) {
            return false;
        }
        int rows = raw.values().iterator().next().length;
        int few = 0;
        int changes = 0;
        for (int i = 1; i < rows; i++) {
            int changed = 0;
            for (double[] values : raw.values()) {
                changed += Double.compare(values[i], values[i - 1]) != 0 ? 1 : 0;
            }
            few += changed <= 1 ? 1 : 0;
            changes += changed;
        }
        return rows > 50 && few >= FILLED_FORWARD * (rows - 1) && changes > 0.2 * rows;
    }

    private Channel channel(
            ModelChannel kind, ChannelMap.Rule rule, double[] raw, Unit unit, double[] time, boolean forward) {
        double[] values = new double[raw.length];
        byte[] flags = new byte[raw.length];
        for (int i = 0; i < raw.length; i++) {
            values[i] = unit.toSi(raw[i]);
            if (Double.isNaN(raw[i])) {
                flags[i] |= Channel.BLANK;
            } else if (values[i] < rule.lowest() || values[i] > rule.highest()) {
                flags[i] |= Channel.OUT_OF_RANGE;
                values[i] = Double.NaN;
            } else if (values[i] < rule.floor() || values[i] > rule.ceiling()) {
                flags[i] |= Channel.CLIPPED;
                values[i] = Math.min(rule.ceiling(), Math.max(rule.floor(), values[i]));
            }
            if (forward && i > 0 && Double.compare(raw[i], raw[i - 1]) == 0) {
                flags[i] |= Channel.HELD;
            }
        }
        double[] shifted = rule.lag() == 0.0 ? values : earlier(values, time, rule.lag());
        return new Channel(
                kind, text.header().get(columns.get(kind)), unit.symbol(), shifted, flags, rule.resolution());
    }

    /** The value that arrived {@code lag} seconds later: undoes a signal that is late. */
    private static double[] earlier(double[] values, double[] time, double lag) {
        double[] out = new double[values.length];
        int j = 0;
        for (int i = 0; i < out.length; i++) {
            while (j < values.length - 1 && time[j] < time[i] + lag - 1e-9) {
                j++;
            }
            while (j > 0 && time[j] > time[i] + lag + 1e-9) {
                j--;
            }
            out[i] = values[j];
        }
        return out;
    }

    private void judge(Channel channel) {
        if (channel.column().equals("constant")) {
            return;
        }
        report(channel, Channel.BLANK, "blank-samples", "have no value");
        report(channel, Channel.OUT_OF_RANGE, "samples-out-of-range", "lie outside what can be right and are left out");
        report(channel, Channel.CLIPPED, "samples-clipped", "lay beyond floor or ceiling and were moved there");
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double v : channel.values()) {
            low = Double.isNaN(v) ? low : Math.min(low, v);
            high = Double.isNaN(v) ? high : Math.max(high, v);
        }
        String shown = channel.kind().key() + " (column '" + channel.column() + "')";
        if (low > high) {
            faults.add(Finding.fault("channel-empty", Place.of(file), shown + " holds no usable sample"));
        } else if (low == high && channel.values().length > 1) {
            stuck(channel, shown, low);
        }
    }

    private void stuck(Channel channel, String shown, double value) {
        String typed = Units.unit(channel.kind().quantity(), channel.unit()).fromSi(value) + " " + channel.unit();
        String message = shown + " is " + typed + " in all " + channel.values().length + " rows";
        boolean dead =
                MUST_MOVE.contains(channel.kind()) || (MUST_MOVE_UNLESS_ZERO.contains(channel.kind()) && value != 0.0);
        if (dead) {
            faults.add(
                    Finding.fault(
                            "channel-constant",
                            Place.of(file),
                            message
                                    + ": the sensor or the column is dead. Map another column; if the value is right, give it as 'constant'."));
        } else {
            findings.add(Finding.warning("channel-constant", Place.of(file), message)
                    .with("channel", channel.kind().key()));
        }
    }

    private void report(Channel channel, byte bit, String key, String what) {
        int n = channel.count(bit);
        if (n > 0) {
            String message = n + " of " + channel.values().length + " samples of "
                    + channel.kind().key() + " " + what;
            Finding finding = bit == Channel.OUT_OF_RANGE
                    ? Finding.warning(key, Place.of(file), message)
                    : Finding.note(key, Place.of(file), message);
            findings.add(finding.with("channel", channel.kind().key()).with("samples", n));
        }
    }

    /** Collects rows as they come. */
    private final class Rows implements DelimitedText.RowReader {
        private final Map<ModelChannel, ColumnReader> columns = new EnumMap<>(ModelChannel.class);
        private final int timeColumn;
        private final boolean clock;
        private double[] times = new double[4096];
        private int[] lines = new int[4096];
        private int size;
        private int timeless;
        private int firstTimeless;
        private int wide;
        private int firstWide;

        Rows(int timeColumn, boolean clock) {
            this.timeColumn = timeColumn;
            this.clock = clock;
        }

        @Override
        public void row(String[] cells, int count, int line) {
            if (size == times.length) {
                times = Arrays.copyOf(times, 2 * size);
                lines = Arrays.copyOf(lines, 2 * size);
            }
            int last = text.header().size();
            if (count > last + 1 || (count == last + 1 && !cells[last].isEmpty())) {
                firstWide = wide == 0 ? line : firstWide;
                wide++;
            }
            double t = stamp(timeColumn < count ? cells[timeColumn] : "");
            if (Double.isNaN(t)) {
                firstTimeless = timeless == 0 ? line : firstTimeless;
                timeless++;
            }
            times[size] = t;
            lines[size] = line;
            size++;
            for (ColumnReader column : columns.values()) {
                column.add(cells, count, line);
            }
        }

        private double stamp(String cell) {
            if (clock) {
                return TimeBase.clock(cell);
            }
            try {
                return cell.isEmpty() ? Double.NaN : Double.parseDouble(cell);
            } catch (NumberFormatException e) {
                return Double.NaN;
            }
        }

        void judge() {
            if (size == 0) {
                faults.add(Finding.fault(
                        "no-rows", Place.of(file), "the file has a header and no rows: nothing was recorded"));
            } else if (timeless > 0.05 * size) {
                faults.add(Finding.fault(
                        "time-unreadable",
                        new Place(file, firstTimeless, timeColumn + 1),
                        timeless + " of " + size + " rows have no readable time in column '"
                                + text.header().get(timeColumn) + "'"
                                + (clock
                                        ? " (hh:mm:ss is expected)"
                                        : "; for stamps such as 12:30:05 use 'clock: hh:mm:ss'")));
            } else if (timeless > 0) {
                findings.add(Finding.warning(
                                "rows-without-time",
                                new Place(file, firstTimeless, timeColumn + 1),
                                timeless + " rows have no readable time and cannot be placed; they are left out")
                        .with("rows", timeless));
            }
            if (wide > 0) {
                findings.add(Finding.warning(
                                "rows-too-wide",
                                new Place(file, firstWide, 0),
                                wide + " rows have more cells than the header has names; the extra cells are not read")
                        .with("rows", wide));
            }
        }

        /** Rows with a time stamp. */
        int[] timed() {
            int[] keep = new int[size - timeless];
            int n = 0;
            for (int i = 0; i < size; i++) {
                if (!Double.isNaN(times[i])) {
                    keep[n++] = i;
                }
            }
            return keep;
        }
    }
}
