package hotday.signals.gateway;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.typed.TypedFile;
import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.signals.dbc.DbcFile;
import hotday.signals.expect.Expected;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/** From keys and values to a sheet. All faults of form come out together. */
final class SheetReader {
    private static final double NANO = 1e9;
    private static final double SHORTEST = 1e-4; // s
    private static final double LONGEST = 60.0; // s
    private static final double SLOWEST_BUS = 1e4; // bit/s
    private static final double FASTEST_BUS = 1e6; // bit/s, classic frames
    private static final int MOST_NETWORKS = 8;
    private static final int MOST_TRANSLATIONS = 2000;
    private static final int MOST_PATHS = 100;
    private static final int MOST_STEPS = 20;
    private static final int MOST_ROWS = 1000;
    private static final int MOST_HELD = 100;
    private static final int MOST_COUNTED = 65_535;
    private static final int MOST_PERIODS = 100;
    private static final double USUAL_STALE = 5; // periods; common practice 3 to 5, no source

    private final Path folder;
    private final TypedFile file;
    private final TypedMap root;

    private SheetReader(Path folder, TypedFile file) {
        this.folder = folder;
        this.file = file;
        this.root = file.root();
    }

    static TranslationSheet read(Path path) {
        TypedFile file = TypedFile.read(path);
        Path folder = path.toAbsolutePath().getParent();
        TranslationSheet sheet = new SheetReader(folder, file).sheet();
        file.faults().throwIfAny();
        return sheet;
    }

    private TranslationSheet sheet() {
        root.refuseUnknown("sheet", "gateway", "networks", "translations", "paths", ExpectationReader.KEY);
        List<NetworkPlan> networks = networks();
        TranslationSheet sheet = new TranslationSheet(
                root.requiredText("sheet").orElse(""), gateway(), networks, translations(), paths(), List.of());
        // Of networks that are not understood nothing can be expected: their own faults come first.
        return file.faults().any() ? sheet : sheet.expecting(new ExpectationReader(sheet).read(root));
    }

    /** Expectations in a file of their own. */
    static List<Expected> expectations(TranslationSheet sheet, Path path) {
        TypedFile file = TypedFile.read(path);
        file.root().refuseUnknown(ExpectationReader.KEY);
        if (!file.root().has(ExpectationReader.KEY)) {
            file.root().requiredMap(ExpectationReader.KEY);
        }
        List<Expected> all = new ExpectationReader(sheet).read(file.root());
        file.faults().throwIfAny();
        return all;
    }

    private TranslationSheet.Gateway gateway() {
        Optional<TypedMap> given = root.requiredMap("gateway");
        if (given.isEmpty()) {
            return new TranslationSheet.Gateway(1, 1, 1);
        }
        TypedMap map = given.get();
        map.refuseUnknown("poll", "processing", "stale");
        double stale = map.quantity("stale", Quantity.NUMBER, 1, MOST_PERIODS, USUAL_STALE);
        return new TranslationSheet.Gateway(
                nanos(map.requiredQuantity("poll", Quantity.TIME, SHORTEST, LONGEST)),
                nanos(map.requiredQuantity("processing", Quantity.TIME, 0, LONGEST)),
                stale);
    }

    private static long nanos(double seconds) {
        return Math.round(seconds * NANO); // 0 for NaN, whose fault is booked
    }

    private static OptionalLong time(TypedMap map, String key, double shortest) {
        Optional<Double> typed = map.optionalQuantity(key, Quantity.TIME, shortest, LONGEST);
        return typed.isPresent() ? OptionalLong.of(nanos(typed.get())) : OptionalLong.empty();
    }

    private List<NetworkPlan> networks() {
        List<NetworkPlan> networks = new ArrayList<>();
        root.requiredMap("networks").ifPresent(all -> {
            if (all.keys().size() < 2 || all.keys().size() > MOST_NETWORKS) {
                root.fault(
                        "networks",
                        "'networks' describes " + all.keys().size() + "; 2 to " + MOST_NETWORKS + " are needed");
                return;
            }
            for (String name : all.keys()) {
                all.map(name).ifPresent(map -> network(name, map).ifPresent(networks::add));
            }
        });
        return networks;
    }

    private Optional<NetworkPlan> network(String name, TypedMap map) {
        map.refuseUnknown("dbc", "bit_rate", "gateway", "jitter", "load_limit", "messages", "not_on_bus");
        Optional<DbcFile> dbc = map.requiredText("dbc").flatMap(typed -> dbc(typed, map.place("dbc")));
        double bitRate = map.requiredQuantity("bit_rate", Quantity.BIT_RATE, SLOWEST_BUS, FASTEST_BUS);
        Optional<String> gateway = map.requiredText("gateway");
        OptionalLong jitter = time(map, "jitter", 0);
        Optional<Double> limit = map.optionalQuantity("load_limit", Quantity.RATIO, 0.01, 1.0);
        Map<String, MessagePlan> messages = messages(map);
        Set<String> silent = new LinkedHashSet<>(map.texts("not_on_bus")); // told in its order
        return dbc.map(d ->
                new NetworkPlan(name, d, bitRate, gateway.orElse(""), jitter, limit, messages, silent, map.place()));
    }

    /** A file beside the sheet. */
    private Optional<DbcFile> dbc(String typed, Place place) {
        try {
            Path path = folder.resolve(typed);
            if (!Files.exists(path)) {
                throw InputException.at(place, "no-such-file", "'dbc': no such file beside the sheet: " + typed);
            }
            return Optional.of(DbcFile.read(path));
        } catch (InvalidPathException e) {
            file.faults().include(InputException.at(place, "no-such-file", "'dbc' is no name of a file: " + typed));
        } catch (InputException e) {
            file.faults().include(e);
        }
        return Optional.empty();
    }

    private static Map<String, MessagePlan> messages(TypedMap network) {
        Map<String, MessagePlan> messages = new LinkedHashMap<>();
        network.map("messages").ifPresent(all -> {
            for (String name : all.keys()) {
                all.map(name).ifPresent(map -> messages.put(name, message(map)));
            }
        });
        return messages;
    }

    private static MessagePlan message(TypedMap map) {
        map.refuseUnknown(
                "from",
                "every",
                "on_change",
                "jitter",
                "deadline",
                "counter",
                "counter_first",
                "counter_last",
                "counter_step",
                "checksum",
                "checksum_rule");
        OptionalLong every = time(map, "every", SHORTEST);
        OptionalLong onChange = time(map, "on_change", SHORTEST);
        if (every.isPresent() && onChange.isPresent() && onChange.getAsLong() > every.getAsLong()) {
            map.fault("on_change", "'on_change' is the shortest time between two frames; it must not be above 'every'");
        }
        return new MessagePlan(
                map.text("from"),
                every,
                onChange,
                time(map, "jitter", 0),
                time(map, "deadline", SHORTEST),
                map.text("counter"),
                map.integer("counter_first", 0, MOST_COUNTED, 0),
                map.integer("counter_last", 1, MOST_COUNTED, 0),
                map.integer("counter_step", 1, MOST_COUNTED, 1),
                map.text("checksum"),
                map.map("checksum_rule").flatMap(GuardReader::read),
                map.place());
    }

    private List<Translation> translations() {
        List<TypedMap> maps = root.maps("translations");
        if (!root.has("translations")) {
            root.requiredMap("translations");
        } else if (maps.size() > MOST_TRANSLATIONS) {
            root.fault("translations", "lists " + maps.size() + "; no more than " + MOST_TRANSLATIONS + " are read");
            return List.of();
        }
        List<Translation> all = new ArrayList<>();
        maps.forEach(map -> translation(map).ifPresent(all::add));
        return all;
    }

    private static Optional<Translation> translation(TypedMap map) {
        map.refuseUnknown(
                "from",
                "to",
                "fixed",
                "from_unit",
                "to_unit",
                "measures",
                "factor",
                "table",
                "special",
                "otherwise",
                "time_out",
                "hold",
                "safe",
                "clip",
                "coarser");
        if (map.has("from") == map.has("fixed")) {
            map.fault("from", "a translation has either a source ('from') or a fixed value ('fixed')");
        }
        if (map.has("table") && (map.has("special") || map.has("factor"))) {
            map.fault("table", "'table' says everything: 'special' and 'factor' are for values that are converted");
        }
        if (map.has("otherwise") && !map.has("table")) {
            map.fault("otherwise", "'otherwise' is for what stands in no row of a 'table'; there is none");
        }
        Optional<SignalName> from = name(map, "from", map.text("from"));
        Optional<SignalName> to = name(map, "to", map.requiredText("to"));
        double factor = map.quantity("factor", Quantity.NUMBER, -1e6, 1e6, 1.0);
        if (factor == 0) {
            map.fault("factor", "'factor' must not be 0; use 'fixed' for a value that never changes");
        }
        Map<String, String> table = rows(map, "table");
        Map<String, String> special = rows(map, "special");
        return to.map(target -> new Translation(
                from,
                target,
                map.text("fixed"),
                map.text("from_unit"),
                map.text("to_unit"),
                measures(map),
                factor,
                table,
                special,
                map.text("otherwise"),
                time(map, "time_out", SHORTEST),
                map.integer("hold", 0, MOST_HELD, 0),
                map.text("safe"),
                yes(map, "clip"),
                yes(map, "coarser"),
                places(map)));
    }

    private static Optional<String> measures(TypedMap map) {
        String[] titles = Arrays.stream(Quantity.values()).map(Quantity::title).toArray(String[]::new);
        return map.text("measures", titles);
    }

    private static boolean yes(TypedMap map, String key) {
        return map.text(key, "yes", "no").orElse("no").equals("yes");
    }

    private static Places places(TypedMap map) {
        Map<String, Place> places = new LinkedHashMap<>();
        map.keys().forEach(key -> places.put(key, map.place(key)));
        return new Places(map.place(), places);
    }

    private static Optional<SignalName> name(TypedMap map, String key, Optional<String> typed) {
        Optional<SignalName> name = typed.flatMap(SignalName::of);
        if (typed.isPresent() && name.isEmpty()) {
            map.fault(key, "'" + typed.get() + "' is no signal; one is typed as " + SignalName.FORM);
        }
        return name;
    }

    private static Map<String, String> rows(TypedMap map, String key) {
        Map<String, String> rows = new LinkedHashMap<>();
        map.map(key).ifPresent(table -> {
            if (table.keys().isEmpty() || table.keys().size() > MOST_ROWS) {
                map.fault(key, "has " + table.keys().size() + " rows; 1 to " + MOST_ROWS + " are needed");
                return;
            }
            table.keys().forEach(row -> table.text(row).ifPresent(value -> rows.put(row, value)));
        });
        return rows;
    }

    private List<PathPlan> paths() {
        List<TypedMap> maps = root.maps("paths");
        if (maps.size() > MOST_PATHS) {
            root.fault("paths", "lists " + maps.size() + "; no more than " + MOST_PATHS + " are read");
            return List.of();
        }
        List<PathPlan> paths = new ArrayList<>();
        maps.forEach(map -> paths.add(path(map)));
        return paths;
    }

    private static PathPlan path(TypedMap map) {
        map.refuseUnknown("name", "limit", "steps", "takes");
        List<String> typed = map.texts("steps");
        if (typed.isEmpty() || typed.size() > MOST_STEPS) {
            map.fault("steps", "'steps' lists " + typed.size() + " signals; 1 to " + MOST_STEPS + " are needed");
        }
        List<SignalName> steps = new ArrayList<>();
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            name(map, "steps", Optional.of(typed.get(i))).ifPresent(steps::add);
            places.add(map.place("steps", i));
        }
        Map<String, Long> takes = new LinkedHashMap<>();
        map.map("takes")
                .ifPresent(nodes ->
                        nodes.keys().forEach(node -> time(nodes, node, 0).ifPresent(ns -> takes.put(node, ns))));
        return new PathPlan(
                map.requiredText("name").orElse(""),
                nanos(map.requiredQuantity("limit", Quantity.TIME, SHORTEST, LONGEST)),
                steps,
                takes,
                places,
                map.place(),
                map.place("limit"));
    }
}
