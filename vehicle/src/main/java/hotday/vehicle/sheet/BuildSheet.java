package hotday.vehicle.sheet;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.typed.Overlay;
import hotday.core.typed.Shelf;
import hotday.core.typed.TypedFile;
import hotday.core.typed.TypedText;
import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.core.unit.UnitSystem;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.Wiring;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A build as somebody typed it, read, checked and completed. Every default that was used is listed; every fault is
 * reported at once with file, line and column. Keys: docs/build-sheet.md.
 *
 * @param vehicle complete, SI
 * @param wiring of the fan, where the sheet says it
 * @param units what the reader of results wants to see
 * @param assumptions values the sheet left open, in the order of the sheet
 * @param typed single values of the sheet and its parts as typed, by key
 * @param places where every key of the sheet and its parts stands
 * @param quantities what typed values measure, by key; those without a unit are not in it
 * @param remarks what is used but should be looked at, with its place
 */
public record BuildSheet(
        VehicleSpec vehicle,
        Optional<Wiring> wiring,
        UnitSystem units,
        List<Assumption> assumptions,
        Map<String, String> typed,
        Map<String, Place> places,
        Map<String, Quantity> quantities,
        List<Finding> remarks) {
    public BuildSheet {
        typed = Collections.unmodifiableMap(new LinkedHashMap<>(typed));
        places = Map.copyOf(places);
        quantities = Map.copyOf(quantities);
        assumptions = List.copyOf(assumptions);
        remarks = List.copyOf(remarks);
    }

    /**
     * Reads a sheet; throws {@link hotday.core.finding.InputException} with all its faults. Parts it asks for come from the
     * folder {@code shelf} beside it or, in a shop, two folders up.
     */
    public static BuildSheet read(Path path) {
        return read(path, Overlay.none());
    }

    /** The same with values laid over it, as if they had been typed in the sheet. */
    public static BuildSheet read(Path path, Overlay overlay) {
        return of(path, TypedText.read(path), overlay);
    }

    /** The same for text that may not stand in the file yet. */
    public static BuildSheet of(Path path, String text, Overlay overlay) {
        TypedFile file = file(path, text, overlay);
        SheetReader reader = new SheetReader(file.root());
        BuildSheet sheet = reader.sheet();
        file.faults().throwIfAny();
        return new BuildSheet(
                sheet.vehicle(),
                sheet.wiring(),
                sheet.units(),
                sheet.assumptions(),
                file.root().singles(),
                file.root().places(),
                file.faults().quantities(),
                file.faults().remarks());
    }

    /** Single values as typed, by key, of a sheet that may have faults; empty when it cannot be taken apart. */
    public static Map<String, String> typed(Path path, String text) {
        try {
            return file(path, text, Overlay.none()).root().singles();
        } catch (InputException wrong) {
            return Map.of();
        }
    }

    /** A value of this sheet, or one that is to stand there, in somebody's units. */
    public String shown(String key, String typed, UnitSystem units) {
        return measured(key).map(q -> new Display(units).typed(q, typed)).orElse(typed);
    }

    /** Where a key stands, or the innermost block around it that is typed; empty where there is none. */
    public Optional<Place> place(String key) {
        for (String at = key; ; at = at.substring(0, at.lastIndexOf('.'))) {
            if (places.containsKey(at) || at.indexOf('.') < 0) {
                return Optional.ofNullable(places.get(at));
            }
        }
    }

    private Optional<Quantity> measured(String key) {
        return Optional.ofNullable(quantities.get(key))
                .or(() -> assumptions.stream()
                        .filter(a -> a.key().equals(key))
                        .findFirst()
                        .flatMap(Assumption::quantity));
    }

    private static TypedFile file(Path path, String text, Overlay overlay) {
        Path shelf = Path.of("shelf");
        return TypedFile.of(
                path,
                text,
                Shelf.firstOf(
                        path.resolveSibling(shelf).normalize(),
                        path.resolveSibling(Path.of("..", "..").resolve(shelf)).normalize()),
                overlay);
    }
}
