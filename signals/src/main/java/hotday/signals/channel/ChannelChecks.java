package hotday.signals.channel;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.finding.Sentence;
import hotday.core.finding.Severity;
import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.core.unit.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Says what to think of every channel: samples left out, dead columns. */
final class ChannelChecks {
    /** From here on an engine runs by itself, rad/s (300 rpm); common practice, no source. */
    private static final double RUNS = 31.4;
    /** From here on a vehicle moves, m/s (20 km/h). */
    private static final double MOVES = 5.6;
    /** A coolant gauge of whole degrees may stand still for minutes, not for longer, s. */
    private static final double LONGEST_STILL = 300.0;
    /** Samples of a running engine that make a dead channel certain. */
    private static final int ENOUGH = 50;

    /** Channels that hold one value in many good recordings. */
    private static final Set<ModelChannel> MAY_STAND = EnumSet.of(
            ModelChannel.AMBIENT_TEMPERATURE,
            ModelChannel.BAROMETER,
            ModelChannel.ALTITUDE,
            ModelChannel.RELATIVE_HUMIDITY,
            ModelChannel.GRADE,
            ModelChannel.PEDAL,
            ModelChannel.THROTTLE,
            ModelChannel.HEATER,
            ModelChannel.COMPRESSOR,
            ModelChannel.FAN_DEMAND,
            ModelChannel.FAN_SPEED);

    /** Channels that move whenever the engine runs. */
    private static final Set<ModelChannel> ALIVE_WITH_ENGINE =
            EnumSet.of(ModelChannel.FUEL_FLOW, ModelChannel.AIR_FLOW, ModelChannel.ENGINE_LOAD);

    private final String file;
    private final double[] time;
    private final int[] lines;
    private final Map<ModelChannel, Channel> channels;
    private final Map<ModelChannel, Integer> columns;
    private final List<Finding> faults;
    private final List<Finding> findings;

    /** @param columns number of a channel's column in the file, from 1 */
    ChannelChecks(
            String file,
            double[] time,
            int[] lines,
            Map<ModelChannel, Channel> channels,
            Map<ModelChannel, Integer> columns,
            List<Finding> faults,
            List<Finding> findings) {
        this.file = file;
        this.time = time;
        this.lines = lines;
        this.channels = channels;
        this.columns = columns;
        this.faults = faults;
        this.findings = findings;
    }

    void judge() {
        List<Channel> recorded = channels.values().stream()
                .filter(c -> !c.column().equals(Channel.CONSTANT))
                .toList();
        blanks(recorded);
        recorded.forEach(this::judge);
    }

    private void blanks(List<Channel> recorded) {
        Map<ModelChannel, Integer> counts = new LinkedHashMap<>();
        for (Channel c : recorded) {
            if (c.count(Channel.BLANK) > 0) {
                counts.put(c.kind(), c.count(Channel.BLANK));
            }
        }
        if (!counts.isEmpty()) {
            List<Object> list = new ArrayList<>();
            Map<String, Integer> samples = new LinkedHashMap<>();
            counts.forEach((kind, count) -> {
                list.add(Sentence.of(list.isEmpty() ? "" : ", ", Named.channel(kind), " ", count));
                samples.put(kind.key(), count);
            });
            Sentence said = Sentence.of("samples without a value, of ", time.length, ": ", Sentence.of(list.toArray()));
            findings.add(Finding.note("samples-blank", Place.of(file), said).with("samples", samples));
        }
    }

    private void judge(Channel c) {
        report(
                c,
                Channel.OUT_OF_RANGE,
                Severity.WARNING,
                "samples-out-of-range",
                Sentence.of(
                        "lie outside what can be right and are left out; if they are right, widen ",
                        Named.key(c.kind(), "range", "'range' in the channel map")));
        report(
                c,
                Channel.SPIKE,
                Severity.NOTE,
                "samples-spike",
                Sentence.of("lie far from the samples around and are left out"));
        report(
                c,
                Channel.CLIPPED,
                Severity.NOTE,
                "samples-clipped",
                Sentence.of("lie beyond floor or ceiling and are moved there"));
        if (c.good() == 0) {
            faults.add(Finding.fault("channel-empty", Place.of(file), Sentence.of(named(c), " holds no usable sample"))
                    .with("channel", c.kind().key()));
        } else if (time.length > 1 && stands(c)) {
            constant(c);
        }
    }

    private static Sentence named(Channel c) {
        return Sentence.of(Named.channel(c.kind()), " (column '" + c.column() + "')");
    }

    private void report(Channel c, byte bit, Severity severity, String key, Sentence what) {
        int n = c.count(bit);
        if (n == 0) {
            return;
        }
        int first = 0;
        while ((c.flags()[first] & bit) == 0) {
            first++;
        }
        Place place = new Place(file, lines[first], columns.get(c.kind()));
        Sentence message = Sentence.of(n + " of " + time.length + " samples of ", named(c), " ", what);
        Finding finding =
                severity == Severity.NOTE ? Finding.note(key, place, message) : Finding.warning(key, place, message);
        findings.add(finding.with("channel", c.kind().key()).with("samples", n));
    }

    private static boolean stands(Channel c) {
        double first = Double.NaN;
        for (double v : c.values()) {
            if (!Double.isNaN(v)) {
                first = Double.isNaN(first) ? v : first;
                if (v != first) {
                    return false;
                }
            }
        }
        return true;
    }

    private void constant(Channel c) {
        int n = (int) Arrays.stream(c.values()).filter(v -> !Double.isNaN(v)).count();
        double si = Arrays.stream(c.values())
                .filter(v -> !Double.isNaN(v))
                .findFirst()
                .orElseThrow();
        Sentence message = Sentence.of(
                named(c),
                " is " + shown(c, si) + " in all " + n + (n == time.length ? " rows" : " rows that have a value"));
        int running = samplesBeyond(ModelChannel.ENGINE_SPEED, RUNS);
        int moving = samplesBeyond(ModelChannel.VEHICLE_SPEED, MOVES);
        boolean still = time[time.length - 1] - time[0] >= LONGEST_STILL;
        if (ALIVE_WITH_ENGINE.contains(c.kind()) && running >= ENOUGH) {
            dead(
                    c,
                    n,
                    si,
                    Sentence.of(
                            message,
                            " while the engine runs in " + running
                                    + " of them: the channel is dead and is of no use to a model. Map another source, or repair it and"
                                    + " record again."));
        } else if (c.kind() == ModelChannel.ENGINE_SPEED && si == 0.0 && moving >= ENOUGH) {
            dead(
                    c,
                    n,
                    si,
                    Sentence.of(message, " while the vehicle moves in " + moving + " of them: the channel is dead."));
        } else if (c.kind() == ModelChannel.COOLANT_TEMPERATURE && still) {
            faults.add(with(
                    Finding.fault(
                            "channel-constant",
                            Place.of(file),
                            Sentence.of(
                                    message,
                                    ": the sensor or the column is dead. Map another column; if the value is right, ",
                                    Named.value(c.kind(), "constant", "it", "give it as 'constant'"),
                                    ".")),
                    c,
                    n,
                    si));
        } else if (MAY_STAND.contains(c.kind()) || (c.kind() == ModelChannel.VEHICLE_SPEED && si == 0.0)) {
            findings.add(with(Finding.note("channel-constant", Place.of(file), message), c, n, si));
        } else {
            findings.add(with(
                    Finding.warning(
                            "channel-constant",
                            Place.of(file),
                            Sentence.of(message, ": check that its sensor was connected")),
                    c,
                    n,
                    si));
        }
    }

    private void dead(Channel c, int samples, double si, Sentence message) {
        findings.add(with(Finding.warning("channel-dead", Place.of(file), message), c, samples, si));
    }

    private static Finding with(Finding finding, Channel c, int samples, double si) {
        return finding.with("channel", c.kind().key())
                .with("value", shown(c, si))
                .with("samples", samples);
    }

    private int samplesBeyond(ModelChannel kind, double limit) {
        Channel c = channels.get(kind);
        int n = 0;
        for (int i = 0; c != null && i < c.values().length; i++) {
            n += c.values()[i] > limit ? 1 : 0;
        }
        return n;
    }

    /** A value in the unit of the file. */
    private static String shown(Channel c, double si) {
        Quantity quantity = c.kind().quantity();
        Unit unit = Units.find(quantity, c.unit()).orElse(quantity.units().get(0));
        return (Shown.number(unit.fromSi(si)) + " " + unit.symbol()).trim();
    }
}
