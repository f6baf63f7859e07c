package hotday.signals.channel;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.finding.Sentence;
import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.core.unit.Units;
import hotday.signals.log.Table;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** One file read through one map. */
final class Reading {
    /** ISA at sea level, Pa; for gauge pressures where the run has no barometer. */
    private static final double STANDARD_PRESSURE = 101_325.0;

    private final Table text;
    private final String file;
    private final String name;
    private final TimeRule timeRule;
    private final Collection<ChannelRule> rules;
    private final boolean skipText;
    private final Map<String, Fact> facts;
    private final List<Finding> faults = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final Map<ModelChannel, Channel> channels = new EnumMap<>(ModelChannel.class);

    Reading(
            Table text,
            String name,
            TimeRule timeRule,
            Collection<ChannelRule> rules,
            boolean skipText,
            Map<String, Fact> facts) {
        this.text = text;
        this.file = text.path().toString();
        this.name = name;
        this.timeRule = timeRule;
        this.rules = rules;
        this.skipText = skipText;
        this.facts = facts;
    }

    Recording recording() {
        MappedColumns header = new MappedColumns(text, faults, findings);
        Optional<Integer> timeColumn = header.time(timeRule);
        Unit timeUnit = timeColumn
                .filter(c -> !timeRule.clock())
                .map(c -> header.timeUnit(timeRule, c))
                .orElseGet(() -> Units.unit(Quantity.TIME, "s"));
        List<MappedColumns.Mapped> columns = header.channels(rules);
        throwFaults();
        List<ColumnSamples> samples = columns.stream()
                .map(m -> new ColumnSamples(
                        m.rule(), m.name(), m.index(), m.unit().fromSi(1.0)))
                .toList();
        RowCollector rows = new RowCollector(text, timeColumn, timeRule, samples);
        text.rows(rows);
        rows.judge(skipText, faults, findings);
        throwFaults();
        double[] time = rows.times();
        for (int i = 0; i < time.length; i++) {
            time[i] = timeUnit.toSi(time[i]);
        }
        int[] lines = rows.lines();
        TimeBase.unify(
                file, timeColumn.map(c -> c + 1).orElse(0), time, lines, timeRule.clock(), shown(timeUnit), findings);
        assemble(columns, samples, time);
        Map<ModelChannel, Integer> numbers = new EnumMap<>(ModelChannel.class);
        columns.forEach(m -> numbers.put(m.rule().kind(), m.index() + 1));
        new ChannelChecks(file, time, lines, channels, numbers, faults, findings).judge();
        throwFaults();
        findings.addAll(0, text.findings());
        if (text.unitsLine() > 0) {
            findings.add(0, units());
        }
        findings.add(0, summary(time, rows.firstStamp()));
        return new Recording(name, file, time, lines, channels, facts, findings);
    }

    /** A stamp as it stands in the file. */
    private DoubleFunction<String> shown(Unit unit) {
        return timeRule.clock() ? Clock::shown : s -> Shown.stamp(unit.fromSi(s)) + " " + unit.symbol();
    }

    private void throwFaults() {
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
    }

    private Finding units() {
        return Finding.note(
                "units-under-header",
                new Place(file, text.unitsLine(), 0),
                Sentence.of(
                        "this line holds the units of the columns: they are taken where neither the name of a column nor ",
                        Named.MAP,
                        " says another"));
    }

    private Finding summary(double[] time, String firstStamp) {
        double length = time[time.length - 1] - time[0];
        return Finding.note(
                        "recording-read",
                        Place.of(file),
                        String.format(
                                Locale.ROOT,
                                "%d rows over %.1f s, first stamp %s; channels: %s",
                                time.length,
                                length,
                                firstStamp,
                                String.join(
                                        ", ",
                                        channels.keySet().stream()
                                                .map(ModelChannel::key)
                                                .toList())))
                .with("rows", time.length)
                .with("length_s", length);
    }

    private void assemble(List<MappedColumns.Mapped> columns, List<ColumnSamples> samples, double[] time) {
        for (ChannelRule rule : rules) {
            rule.constant().ifPresent(v -> channels.put(rule.kind(), constant(rule, v, time.length)));
        }
        List<double[]> raw = samples.stream().map(ColumnSamples::values).toList();
        boolean filled = ForwardFill.recognised(raw);
        if (filled) {
            findings.add(Finding.note(
                    "filled-forward",
                    Place.of(file),
                    "one value arrives a row and the other columns repeat theirs: repeats are marked and do not count"
                            + " as samples"));
        }
        int turn = filled ? text.header().size() - 1 : 0;
        // the barometer first: gauge pressures stand on it
        for (int pass = 0; pass < 2; pass++) {
            for (int i = 0; i < columns.size(); i++) {
                if ((columns.get(i).rule().kind() == ModelChannel.BAROMETER) == (pass == 0)) {
                    channels.put(
                            columns.get(i).rule().kind(),
                            channel(columns.get(i), raw.get(i), samples.get(i).flags(), time, turn));
                }
            }
        }
        List<ChannelRule> late =
                rules.stream().filter(r -> r.limits().engineOff().isPresent()).toList();
        late.forEach(r -> EngineOff.apply(r, channels, time, file, findings));
    }

    private static Channel constant(ChannelRule rule, double value, int size) {
        double[] values = new double[size];
        Arrays.fill(values, value);
        String unit = rule.kind().quantity().units().get(0).symbol();
        return new Channel(rule.kind(), Channel.CONSTANT, unit, values, new byte[size], 0.0, 0.0);
    }

    /** @param turn rows of one turn in a file filled forward; 0 in others */
    private Channel channel(MappedColumns.Mapped mapped, double[] raw, byte[] flags, double[] time, int turn) {
        ChannelRule rule = mapped.rule();
        ChannelRule.Limits limits = rule.limits();
        if (turn > 0) {
            ForwardFill.mark(raw, flags, turn);
        }
        double[] values = si(mapped, raw);
        for (int i = 0; i < values.length; i++) {
            if (values[i] < limits.lowest() || values[i] > limits.highest()) {
                flags[i] |= Channel.OUT_OF_RANGE;
                values[i] = Double.NaN;
            }
        }
        Spikes.mark(time, values, flags, limits.spike());
        for (int i = 0; i < values.length; i++) {
            if (values[i] < limits.floor() || values[i] > limits.ceiling()) {
                flags[i] |= Channel.CLIPPED;
                values[i] = Math.min(limits.ceiling(), Math.max(limits.floor(), values[i]));
            }
        }
        double resolution = rule.resolution() > 0.0
                ? rule.resolution()
                : Resolution.of(raw) * mapped.unit().factor();
        return new Channel(rule.kind(), mapped.name(), mapped.unit().symbol(), values, flags, resolution, rule.lag());
    }

    private double[] si(MappedColumns.Mapped mapped, double[] raw) {
        double[] values = new double[raw.length];
        for (int i = 0; i < raw.length; i++) {
            values[i] = mapped.unit().toSi(raw[i]);
        }
        if (mapped.gauge()) {
            addPressureOutside(mapped, values);
        }
        return values;
    }

    private void addPressureOutside(MappedColumns.Mapped mapped, double[] values) {
        Channel barometer = channels.get(ModelChannel.BAROMETER);
        if (barometer == null) {
            findings.add(Finding.note(
                            "gauge-on-standard-air",
                            mapped.rule().place(),
                            Sentence.of(
                                    Named.channel(mapped.rule().kind()),
                                    " is a gauge pressure and the run has no barometer: 101.325 kPa is taken for the"
                                            + " air outside. Map a barometer, or give it as ",
                                    Named.key(ModelChannel.BAROMETER, "constant", "a constant"),
                                    "."))
                    .with("channel", mapped.rule().kind().key()));
        }
        double outside = STANDARD_PRESSURE;
        for (int i = 0; i < values.length; i++) {
            if (barometer != null && !Double.isNaN(barometer.values()[i])) {
                outside = barometer.values()[i];
            }
            values[i] += outside;
        }
    }
}
