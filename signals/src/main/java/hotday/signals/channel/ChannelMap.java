package hotday.signals.channel;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.typed.TypedFile;
import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.signals.log.DelimitedText;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which column of a recording means what, in which unit. Read from a small YAML file, docs/channel-map.md; used on any
 * number of recordings of the same make.
 */
public final class ChannelMap {
    private static final List<String> STATES = List.of("fan", "heater", "air_conditioning");

    /**
     * How one channel is found.
     *
     * @param column name in the header; empty for a constant
     * @param position from 1, used when no header cell has the name; 0 when not given
     * @param unit as typed; empty when the header must carry it
     * @param constant SI, for the whole run; empty for a column
     * @param lag s by which the column is late
     * @param lowest, highest range of usable samples, SI
     * @param floor, ceiling samples beyond are moved here, SI; infinite for none
     * @param resolution SI; 0 when unknown
     * @param missing further words that mean no value, lower case
     * @param place in the map file
     */
    record Rule(
            String column,
            int position,
            Optional<String> unit,
            Optional<Double> constant,
            double lag,
            double lowest,
            double highest,
            double floor,
            double ceiling,
            double resolution,
            Set<String> missing,
            Place place) {}

    /**
     * How time is found.
     *
     * @param unit of a number column
     * @param clock true for hh:mm:ss stamps
     */
    record TimeRule(String column, int position, Optional<Unit> unit, boolean clock, Place place) {}

    private final String file;
    private final TimeRule time;
    private final Map<ModelChannel, Rule> rules;
    private final Map<String, Fact> facts;
    private final Map<String, Map<String, Fact>> runs;
    private final Optional<Character> delimiter;
    private final String comment;
    private final int headerRow;

    private ChannelMap(TypedMap root) {
        this.file = root.place().file();
        root.refuseUnknown("time", "channels", "facts", "runs", "reader");
        this.time = time(root);
        this.rules = rules(root);
        this.facts = root.map("facts").map(ChannelMap::facts).orElse(Map.of());
        this.runs = runs(root);
        Optional<TypedMap> reader = root.map("reader");
        reader.ifPresent(r -> r.refuseUnknown("delimiter", "comment", "header"));
        this.delimiter = reader.flatMap(r -> delimiter(
                r.text("delimiter", "auto", "comma", "tab", "semicolon").orElse("auto")));
        this.comment = reader.flatMap(r -> r.text("comment")).orElse("");
        this.headerRow = reader.map(r -> r.integer("header", 1, 1000, 1)).orElse(1);
    }

    /** Reads a channel map; all its faults come in one {@link InputException}. */
    public static ChannelMap read(Path path) {
        TypedFile typed = TypedFile.read(path);
        ChannelMap map = new ChannelMap(typed.root());
        typed.faults().throwIfAny();
        return map;
    }

    private static Optional<Character> delimiter(String word) {
        return switch (word) {
            case "comma" -> Optional.of(',');
            case "tab" -> Optional.of('\t');
            case "semicolon" -> Optional.of(';');
            default -> Optional.empty();
        };
    }

    private static TimeRule time(TypedMap root) {
        Optional<TypedMap> given = root.requiredMap("time");
        if (given.isEmpty()) {
            return new TimeRule("", 0, Optional.empty(), false, root.place());
        }
        TypedMap map = given.get();
        map.refuseUnknown("column", "position", "unit", "clock");
        boolean clock = map.text("clock", "hh:mm:ss").isPresent();
        Optional<Unit> unit = map.text("unit").flatMap(u -> map.unit("unit", Quantity.TIME));
        return new TimeRule(
                map.requiredText("column").orElse(""), map.integer("position", 1, 4096, 0), unit, clock, map.place());
    }

    private static Map<ModelChannel, Rule> rules(TypedMap root) {
        Map<ModelChannel, Rule> rules = new EnumMap<>(ModelChannel.class);
        root.requiredMap("channels").ifPresent(channels -> {
            channels.refuseUnknown(ModelChannel.keys().toArray(String[]::new));
            for (String key : channels.keys()) {
                ModelChannel.of(key)
                        .ifPresent(kind -> channels.map(key).ifPresent(m -> rules.put(kind, rule(kind, m))));
            }
        });
        return rules;
    }

    private static Rule rule(ModelChannel kind, TypedMap map) {
        map.refuseUnknown(
                "column", "position", "unit", "constant", "lag", "range", "floor", "ceiling", "resolution", "missing");
        Quantity q = kind.quantity();
        double inf = Double.POSITIVE_INFINITY;
        Optional<Double> constant = map.optionalQuantity("constant", q, kind.lowest(), kind.highest());
        Optional<String> unit = map.text("unit");
        if (unit.isPresent()) {
            map.unit("unit", q);
        }
        List<Double> range = map.quantities("range", q, -inf, inf);
        if (constant.isEmpty() && map.text("column").isEmpty() && !map.has("position")) {
            map.fault("channel-without-column", "'" + kind.key() + "' needs a column (or a constant)");
        }
        Quantity step = q == Quantity.TEMPERATURE ? Quantity.TEMPERATURE_DIFFERENCE : q;
        return new Rule(
                map.text("column").orElse(""),
                map.integer("position", 1, 4096, 0),
                unit,
                constant,
                map.quantity("lag", Quantity.TIME, -60.0, 60.0, 0.0),
                range.size() == 2 ? range.get(0) : kind.lowest(),
                range.size() == 2 ? range.get(1) : kind.highest(),
                map.quantity("floor", q, -inf, inf, -inf),
                map.quantity("ceiling", q, -inf, inf, inf),
                map.quantity("resolution", step, 0.0, inf, 0.0),
                Set.copyOf(map.texts("missing").stream()
                        .map(w -> w.toLowerCase(Locale.ROOT))
                        .toList()),
                map.place());
    }

    private static Map<String, Fact> facts(TypedMap map) {
        map.refuseUnknown(STATES.toArray(String[]::new));
        Map<String, Fact> facts = new LinkedHashMap<>();
        for (String state : STATES) {
            map.text(state, "on", "off", "unknown")
                    .ifPresent(word -> facts.put(state, Fact.valueOf(word.toUpperCase(Locale.ROOT))));
        }
        return facts;
    }

    private static Map<String, Map<String, Fact>> runs(TypedMap root) {
        Map<String, Map<String, Fact>> runs = new LinkedHashMap<>();
        root.map("runs").ifPresent(map -> {
            for (String run : map.keys()) {
                map.map(run).ifPresent(m -> runs.put(run, facts(m)));
            }
        });
        return runs;
    }

    /** Reads a recording through this map; throws {@link InputException} with every fault found. */
    public Recording recording(Path log) {
        DelimitedText text = DelimitedText.open(log, delimiter, comment, headerRow);
        String name = nameOf(log);
        Map<String, Fact> stated = new LinkedHashMap<>(facts);
        stated.putAll(runs.getOrDefault(name, Map.of()));
        return new MappedReading(file, text, name, time, rules, stated).recording();
    }

    private static String nameOf(Path log) {
        String name = log.getFileName().toString();
        int dot = name.indexOf('.');
        return dot <= 0 ? name : name.substring(0, dot);
    }
}
