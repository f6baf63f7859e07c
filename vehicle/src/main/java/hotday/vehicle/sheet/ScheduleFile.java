package hotday.vehicle.sheet;

import hotday.core.finding.Place;
import hotday.core.typed.TypedFile;
import hotday.core.typed.TypedMap;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A fan schedule in a file of its own: the block {@code schedule} of a build sheet and nothing else; or the sheet's own block.
 *
 * @param schedule of the file, the standard schedule's where it says nothing
 * @param file where a thing stands that is not typed
 */
public record ScheduleFile(FanSchedule schedule, Place file, Map<String, Place> places) {
    private static final String BLOCK = "schedule";

    public ScheduleFile {
        places = Map.copyOf(places);
    }

    /** Reads a file for a vehicle; throws {@link hotday.core.finding.InputException} with all faults. */
    public static ScheduleFile read(Path path, VehicleSpec vehicle) {
        TypedFile file = TypedFile.read(path);
        TypedMap root = file.root();
        root.refuseUnknown(BLOCK);
        root.requiredMap(BLOCK);
        List<Assumption> assumptions = new ArrayList<>();
        FanSchedule schedule = new ScheduleSection(root, assumptions)
                .schedule(
                        vehicle.limits(),
                        vehicle.airConditioning().isPresent(),
                        vehicle.chargeAir().isPresent());
        file.faults().throwIfAny();
        return new ScheduleFile(schedule, root.place(BLOCK), places(root));
    }

    /** The schedule that a sheet itself has. */
    public static ScheduleFile ofSheet(Path path, VehicleSpec vehicle) {
        TypedMap root = TypedFile.read(path).root();
        Place place = root.has(BLOCK) ? root.place(BLOCK) : Place.of(path.toString());
        return new ScheduleFile(vehicle.schedule(), place, places(root));
    }

    private static Map<String, Place> places(TypedMap root) {
        Map<String, Place> places = new HashMap<>();
        root.map(BLOCK)
                .ifPresent(block -> block.keys().forEach(key -> {
                    places.put(key, block.place(key));
                    if (List.of("floor", "switching", "slew", "after_run").contains(key)) {
                        block.map(key).ifPresent(m -> m.keys().forEach(k -> places.put(key + "." + k, m.place(k))));
                    }
                }));
        return places;
    }

    /** Where a key stands, such as {@code switching.on}; else the block around it. */
    public Place place(String key) {
        int dot = key.lastIndexOf('.');
        Place around = dot < 0 ? file : places.getOrDefault(key.substring(0, dot), file);
        return places.getOrDefault(key, around);
    }
}
