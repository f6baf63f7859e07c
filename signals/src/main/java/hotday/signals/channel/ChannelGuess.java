package hotday.signals.channel;

import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.core.unit.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What the columns of a recording might be, by their names, for a person to look over. A unit is taken from the header's bracket or not at
 * all: it is never guessed.
 */
public final class ChannelGuess {
    /** Words beside a name that make something else of it. */
    private static final Set<String> OTHERWISE = Set.of(
            "target",
            "desired",
            "commanded",
            "setpoint",
            "set",
            "requested",
            "reference",
            "max",
            "maximum",
            "min",
            "minimum",
            "limit",
            "error",
            "trim",
            "catalyst",
            "exhaust",
            "egr",
            "tank",
            "distance",
            "time",
            "since",
            "cleared",
            "bank",
            "rear",
            "wheel",
            "gear",
            "level",
            "actuator",
            "relative",
            "wind",
            "dew",
            "point",
            "cabin",
            "inverter",
            "motor",
            "idle",
            "ratio",
            "status",
            "warning",
            "fault",
            "delta",
            "difference",
            "average",
            "mean",
            "direction",
            "id",
            "gas",
            "b",
            "c",
            "e",
            "f",
            "2",
            "3",
            "4",
            "fuel",
            "turbo",
            "turbine",
            "charge",
            "boost",
            "pump",
            "rail",
            "side");

    private static final Set<String> TIMES = Set.of(
            "time",
            "timestamp",
            "time stamp",
            "elapsed time",
            "elapsed",
            "run time",
            "engine run time",
            "seconds",
            "t",
            "date time",
            "datetime",
            "time day",
            "clock",
            "log time",
            "recording time",
            "run time since engine start",
            "zeit",
            "uhrzeit",
            "zeitstempel");

    /** Words of what may rise from row to row and is no time. */
    private static final Set<String> MEASURED = Set.of(
            "temperature",
            "pressure",
            "speed",
            "rpm",
            "flow",
            "rate",
            "load",
            "torque",
            "power",
            "energy",
            "force",
            "position",
            "throttle",
            "pedal",
            "voltage",
            "current",
            "charge",
            "level",
            "fuel",
            "oil",
            "coolant",
            "water",
            "air",
            "ambient",
            "humidity",
            "altitude",
            "elevation",
            "latitude",
            "longitude",
            "distance",
            "odometer",
            "mileage",
            "trip",
            "consumption",
            "percent",
            "gear");

    private static final int SAME_WORDS = 1000;
    private static final int NAME_INSIDE = 500;
    private static final int A_WORD = 10;
    private static final int RIGHT_UNIT = 5;

    private final List<RecordingHead.Column> columns;

    private record Candidate(ChannelNames.Name name, RecordingHead.Column column, int score) {}

    private ChannelGuess(RecordingHead head) {
        this.columns = head.columns();
    }

    /** A map of the recording's own, as far as its header tells; what is known of the run's actuators is unknown. */
    public static MapDraft of(RecordingHead head) {
        ChannelGuess guess = new ChannelGuess(head);
        Optional<MapDraft.Time> time = guess.time();
        int taken = time.map(MapDraft.Time::position).orElse(0);
        return new MapDraft(time.orElse(MapDraft.Time.NONE), guess.channels(taken), Map.of(), head.reader());
    }

    private Optional<MapDraft.Time> time() {
        return first(c -> TIMES.contains(String.join(" ", ChannelNames.words(c.header()))), "named like a time")
                .or(() -> first(
                        c -> ChannelNames.words(c.header()).contains("time")
                                && unit(Quantity.TIME, c).isPresent(),
                        "a time by its name and its unit"))
                .or(() -> first(c -> c.clock() && c.rising(), "stamps of a clock that rise from row to row"))
                .or(() -> first(
                        c -> c.rising() && !isMeasured(c),
                        "the first column of no other name whose numbers never fall"));
    }

    /** What is named like a channel, or by a word of what is measured, is no time, however steadily it rises. */
    private static boolean isMeasured(RecordingHead.Column column) {
        return ChannelNames.words(column.header()).stream().anyMatch(MEASURED::contains)
                || ChannelNames.ALL.stream()
                        .anyMatch(name -> candidate(name, column).isPresent());
    }

    private Optional<MapDraft.Time> first(Predicate<RecordingHead.Column> wanted, String why) {
        return columns.stream()
                .filter(c -> unit(Quantity.TIME, c).isPresent() || !measuresSomethingElse(c))
                .filter(wanted)
                .findFirst()
                .map(c -> new MapDraft.Time(
                        c.position(),
                        c.clock() ? Optional.empty() : unit(Quantity.TIME, c),
                        c.clock(),
                        Optional.empty(),
                        why));
    }

    /** The symbol in the header's bracket, where it measures that. */
    private static Optional<String> unit(Quantity quantity, RecordingHead.Column column) {
        return column.unit()
                .filter(s -> Units.find(quantity, s).isPresent() || MappedColumns.isGauge(quantity, s))
                .map(s -> Units.find(quantity, s)
                        .map(Unit::symbol)
                        .filter(known -> !known.isEmpty())
                        .orElse(s));
    }

    private List<MapDraft.Line> channels(int timePosition) {
        List<Candidate> all = new ArrayList<>();
        for (RecordingHead.Column column : columns) {
            if (column.position() != timePosition) {
                ChannelNames.ALL.forEach(name -> candidate(name, column).ifPresent(all::add));
            }
        }
        all.sort(Comparator.comparingInt(Candidate::score)
                .reversed()
                .thenComparing(c -> c.column().position()));
        Set<ModelChannel> found = EnumSet.noneOf(ModelChannel.class);
        Set<Integer> used = new HashSet<>();
        Map<ModelChannel, MapDraft.Line> lines = new LinkedHashMap<>();
        for (Candidate c : all) {
            ModelChannel channel = c.name().channel();
            if (!found.contains(channel) && !used.contains(c.column().position())) {
                found.add(channel);
                used.add(c.column().position());
                lines.put(channel, line(c));
            }
        }
        return lines.values().stream()
                .sorted(Comparator.comparing(MapDraft.Line::channel))
                .toList();
    }

    private static MapDraft.Line line(Candidate c) {
        return new MapDraft.Line(
                c.name().channel(),
                c.column().position(),
                unit(c.name().channel().quantity(), c.column()),
                Optional.empty(),
                Map.of(),
                "named like " + c.name().source());
    }

    private static Optional<Candidate> candidate(ChannelNames.Name name, RecordingHead.Column column) {
        boolean unit = unit(name.channel().quantity(), column).isPresent();
        if (!unit && measuresSomethingElse(column)) {
            return Optional.empty();
        }
        List<String> words = ChannelNames.words(column.header());
        if (!words.containsAll(name.words())) {
            return Optional.empty();
        }
        List<String> beside =
                words.stream().filter(w -> !name.words().contains(w)).toList();
        if (beside.stream().anyMatch(OTHERWISE::contains) || (!beside.isEmpty() && vague(name, unit))) {
            return Optional.empty();
        }
        int score = (beside.isEmpty() ? SAME_WORDS : NAME_INSIDE)
                + A_WORD * (name.words().size() - beside.size())
                + (unit ? RIGHT_UNIT : 0);
        return Optional.of(new Candidate(name, column, score));
    }

    /** A single word inside a longer name is too little, unless the unit speaks for it as well. */
    private static boolean vague(ChannelNames.Name name, boolean unit) {
        return name.words().size() == 1 && !unit;
    }

    /** A known unit that is not the channel's. */
    private static boolean measuresSomethingElse(RecordingHead.Column column) {
        return column.unit().filter(MappedColumns::isAnyUnit).isPresent();
    }
}
