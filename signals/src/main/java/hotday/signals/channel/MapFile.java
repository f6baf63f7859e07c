package hotday.signals.channel;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.signals.log.ReaderOptions;
import hotday.signals.log.ReaderOptions.Decimal;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The keys of a channel map file. Faults are booked in the file's own list. */
final class MapFile {
    /** States of a run that a map may state. */
    static final List<String> STATES = List.of("fan", "heater", "air_conditioning", "thermostat_blocked_open");

    private static final List<String> LISTS = List.of("range", "missing");
    private static final List<String> PLACE_KEYS = List.of("column", "position", "unit");

    private static final double INFINITE = Double.POSITIVE_INFINITY;
    private static final double LONGEST_LAG = 60.0; // s
    private static final double SHORTEST_STEP = 0.001; // s
    private static final double LONGEST_STEP = 60.0; // s
    private static final int MOST_COLUMNS = 4096;
    private static final int DEEPEST_HEADER = 1000;

    private MapFile() {}

    static ChannelMap map(TypedMap root) {
        root.refuseUnknown("time", "channels", "facts", "runs", "reader");
        return new ChannelMap(
                time(root),
                rules(root),
                root.map("facts").map(MapFile::facts).orElse(Map.of()),
                runs(root),
                root.map("reader").map(MapFile::reader).orElseGet(ReaderOptions::auto),
                root.map("reader").map(MapFile::skipsText).orElse(false));
    }

    private static ReaderOptions reader(TypedMap map) {
        map.refuseUnknown("delimiter", "decimal", "comment", "header", "text");
        Optional<Character> delimiter = switch (map.text("delimiter", "auto", "comma", "tab", "semicolon")
                .orElse("auto")) {
            case "comma" -> Optional.of(',');
            case "tab" -> Optional.of('\t');
            case "semicolon" -> Optional.of(';');
            default -> Optional.empty();
        };
        String decimal = map.text("decimal", "auto", "point", "comma").orElse("auto");
        return new ReaderOptions(
                delimiter,
                Decimal.valueOf(decimal.toUpperCase(Locale.ROOT)),
                map.text("comment").orElse(""),
                map.integer("header", 1, DEEPEST_HEADER, 1));
    }

    private static boolean skipsText(TypedMap map) {
        return map.text("text", "refuse", "skip").orElse("refuse").equals("skip");
    }

    private static TimeRule time(TypedMap root) {
        Optional<TypedMap> given = root.requiredMap("time");
        if (given.isEmpty()) {
            return new TimeRule("", 0, Optional.empty(), false, 0.0, root.place());
        }
        TypedMap map = given.get();
        map.refuseUnknown("column", "position", "unit", "clock", "step");
        if (map.has("step")) {
            return steps(map);
        }
        boolean clock =
                map.text("clock", "hh:mm:ss", "hh:mm:ss.SSS", "date and time").isPresent();
        if (clock && map.has("unit")) {
            map.fault("unit", "a time has either a unit (a column of numbers) or a clock (stamps), not both");
        }
        Optional<Unit> unit = map.text("unit").flatMap(u -> map.unit("unit", Quantity.TIME));
        int position = map.integer("position", 1, MOST_COLUMNS, 0);
        String column = position > 0
                ? map.text("column").orElse("")
                : map.requiredText("column").orElse("");
        return new TimeRule(column, position, unit, clock, 0.0, map.place());
    }

    private static TimeRule steps(TypedMap map) {
        if (Stream.of("column", "position", "unit", "clock").anyMatch(map::has)) {
            map.fault("step", "time stands either in a column or is counted in steps from row to row; both are given");
        }
        double step = map.quantity("step", Quantity.TIME, SHORTEST_STEP, LONGEST_STEP, SHORTEST_STEP);
        return new TimeRule("", 0, Optional.empty(), false, step, map.place());
    }

    private static Map<ModelChannel, ChannelRule> rules(TypedMap root) {
        Map<ModelChannel, ChannelRule> rules = new EnumMap<>(ModelChannel.class);
        root.requiredMap("channels").ifPresent(channels -> {
            channels.refuseUnknown(ModelChannel.keys().toArray(String[]::new));
            for (String key : channels.keys()) {
                ModelChannel.of(key)
                        .ifPresent(kind -> channels.map(key).ifPresent(m -> rules.put(kind, rule(kind, m))));
            }
        });
        return rules;
    }

    private static ChannelRule rule(ModelChannel kind, TypedMap map) {
        map.refuseUnknown(
                "column",
                "position",
                "optional",
                "unit",
                "constant",
                "lag",
                "range",
                "floor",
                "ceiling",
                "spike",
                "engine_off",
                "resolution",
                "missing");
        Optional<Double> constant = map.optionalQuantity("constant", kind.quantity(), kind.lowest(), kind.highest());
        boolean found = map.has("column") || map.has("position");
        if (map.has("constant") == found) {
            map.fault(
                    "constant",
                    Named.key(kind, "", "'" + kind.key() + "'"),
                    " needs either ",
                    Named.key(kind, "column", "a column (or its position)"),
                    " or ",
                    Named.key(kind, "constant", "a constant"),
                    found ? "; both are given" : "");
        }
        return new ChannelRule(
                kind,
                map.text("column").orElse(""),
                map.integer("position", 1, MOST_COLUMNS, 0),
                map.text("optional", "yes", "no").orElse("no").equals("yes"),
                unit(kind, map),
                constant,
                limits(kind, map),
                map.quantity("lag", Quantity.TIME, -LONGEST_LAG, LONGEST_LAG, 0.0),
                map.quantity("resolution", kind.step(), 0.0, INFINITE, 0.0),
                missing(map),
                typed(map),
                map.place());
    }

    /** What a map written from this one must say again. */
    private static Map<String, String> typed(TypedMap map) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String key : map.keys()) {
            if (LISTS.contains(key)) {
                typed.put(
                        key, map.texts(key).stream().map(MapDraft::quoted).collect(Collectors.joining(", ", "[", "]")));
            } else if (!PLACE_KEYS.contains(key)) {
                map.text(key).ifPresent(t -> typed.put(key, key.equals("constant") ? t : MapDraft.quoted(t)));
            }
        }
        return typed;
    }

    private static Optional<String> unit(ModelChannel kind, TypedMap map) {
        Optional<String> symbol = map.text("unit");
        boolean known = symbol.isPresent()
                && (MappedColumns.isGauge(kind.quantity(), symbol.get())
                        || (kind.quantity() == Quantity.RATIO && symbol.get().equals("1"))
                        || map.unit("unit", kind.quantity()).isPresent());
        return symbol.filter(s -> known);
    }

    private static ChannelRule.Limits limits(ModelChannel kind, TypedMap map) {
        Quantity q = kind.quantity();
        List<Double> range = map.quantities("range", q, -INFINITE, INFINITE);
        if (map.has("range") && (range.size() != 2 || range.get(0) >= range.get(1))) {
            map.fault("range", "a range has two values, the lower first, such as [" + q.example() + ", ...]");
        }
        boolean given = range.size() == 2;
        return new ChannelRule.Limits(
                given ? range.get(0) : kind.lowest(),
                given ? range.get(1) : kind.highest(),
                map.quantity("floor", q, -INFINITE, INFINITE, -INFINITE),
                map.quantity("ceiling", q, -INFINITE, INFINITE, INFINITE),
                map.quantity("spike", kind.step(), 0.0, INFINITE, kind.spike()),
                map.optionalQuantity("engine_off", q, kind.lowest(), kind.highest()));
    }

    private static Set<String> missing(TypedMap map) {
        return map.texts("missing").stream()
                .map(w -> w.trim().toLowerCase(Locale.ROOT))
                .collect(Collectors.toUnmodifiableSet());
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
}
