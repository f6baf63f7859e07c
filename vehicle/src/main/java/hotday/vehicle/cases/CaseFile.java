package hotday.vehicle.cases;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.typed.TypedFile;
import hotday.core.typed.TypedMap;
import hotday.core.typed.TypedText;
import hotday.core.unit.Nearest;
import hotday.core.unit.Quantity;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Pattern;

/** One case as somebody typed it. Keys: docs/cases.md. */
public final class CaseFile {
    private static final double BRIGHTEST = 1500.0; // W/m2, above what reaches the ground
    private static final double LOWEST = -500.0; // m
    private static final double HIGHEST = 6000.0; // m
    private static final double COLDEST = 223.15; // K
    private static final double WARMEST = 298.15; // K
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final List<String> LIMITS =
            Arrays.stream(Limit.values()).map(Limit::id).toList();

    private final TypedFile file;
    private final TypedMap root;
    private final Function<String, Trace> traces;

    private CaseFile(TypedFile file, Function<String, Trace> traces) {
        this.file = file;
        this.root = file.root();
        Map<String, Trace> read = new HashMap<>();
        this.traces = name -> read.computeIfAbsent(name, traces);
    }

    /** Reads a file and the traces it names; throws {@link InputException} with all faults of them. */
    public static Case read(Path path) {
        return new CaseFile(TypedFile.read(path), name -> trace(path.resolveSibling(name))).kase();
    }

    private static Trace trace(Path path) {
        return TraceFile.read(path.toString(), TypedText.read(path));
    }

    /** Reads a file that lies beside this class. */
    static Case shipped(String name) {
        TypedFile file = TypedFile.of(name, resource(name));
        return new CaseFile(file, trace -> TraceFile.read(trace, resource(trace))).kase();
    }

    private static String resource(String name) {
        try (InputStream in = CaseFile.class.getResourceAsStream(name)) {
            return TypedText.read(Place.of(name), in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Case kase() {
        root.refuseUnknown("case", "title", "start", "sun", "humidity", "altitude", "ambient", "limits", "phases");
        String id = id();
        String title = root.requiredText("title").orElse("");
        Case.Start start = start();
        Case.Day day = day(start);
        List<Limit> limits = limits();
        List<Case.Phase> phases = phases(start);
        file.faults().throwIfAny();
        return new Case(id, title, start, day, phases, limits);
    }

    private String id() {
        String id = root.requiredText("case").orElse("");
        if (!id.isBlank() && !ID.matcher(id).matches()) {
            root.fault("case", "'case' is '" + id + "'; small letters, digits and hyphens are needed: 'hot-idle'");
        }
        return id;
    }

    private Case.Start start() {
        String settled = word(Case.Start.SETTLED);
        String soaked = word(Case.Start.SOAKED);
        root.requiredText("start");
        return soaked.equals(root.text("start", settled, soaked).orElse(settled))
                ? Case.Start.SOAKED
                : Case.Start.SETTLED;
    }

    private Case.Day day(Case.Start start) {
        double sun = root.requiredQuantity("sun", Quantity.IRRADIANCE, 0.0, BRIGHTEST);
        double humidity = root.requiredQuantity("humidity", Quantity.RATIO, 0.0, 1.0);
        OptionalDouble altitude = optional("altitude", Quantity.LENGTH, LOWEST, HIGHEST);
        OptionalDouble ambient = optional("ambient", Quantity.TEMPERATURE, COLDEST, WARMEST);
        if (ambient.isPresent() && start == Case.Start.SETTLED) {
            root.fault(
                    "ambient",
                    "'ambient' belongs to a cold start: 'start: soaked' is needed beside it, or leave it out and a ceiling is searched");
        }
        return new Case.Day(sun, humidity, altitude, ambient);
    }

    private OptionalDouble optional(String key, Quantity quantity, double least, double most) {
        return root.optionalQuantity(key, quantity, least, most).stream()
                .mapToDouble(Double::doubleValue)
                .findFirst();
    }

    private List<Limit> limits() {
        List<Limit> limits = new ArrayList<>();
        for (String typed : root.texts("limits")) {
            int at = LIMITS.indexOf(typed);
            if (at < 0) {
                String meant = Nearest.to(typed, LIMITS)
                        .map(n -> " (did you mean '" + n + "'?)")
                        .orElse("");
                root.fault(
                        "limits",
                        "'" + typed + "' is not a limit" + meant + "; there are " + String.join(", ", LIMITS));
            } else if (!limits.contains(Limit.values()[at])) {
                limits.add(Limit.values()[at]);
            }
        }
        return limits;
    }

    private List<Case.Phase> phases(Case.Start start) {
        List<TypedMap> blocks = root.maps("phases");
        if (blocks.isEmpty()) {
            root.fault("phases", "'phases' must list at least one phase such as {speed: 64 km/h, grade: 5 %}");
        }
        List<Case.Phase> phases = new ArrayList<>();
        for (TypedMap block : blocks) {
            phases.add(new PhaseBlock(block, file.faults(), traces).phase(phases.isEmpty(), start));
        }
        return phases;
    }

    /** As it is typed. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
