package hotday.study.shop;

import hotday.vehicle.cases.AmbientCeiling;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Cases;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.List;

/**
 * What a sheet in order answers at once: ceilings of all cases, and the air at its cores on the design day.
 *
 * @param sheet with the values that were tried
 * @param ceilings in the order of the cases
 * @param saved those of the sheet on the disk; empty when that is this one or has faults
 * @param air at the cores
 * @param millis that it took
 */
public record Answer(BuildSheet sheet, List<Ceiling> ceilings, List<Ceiling> saved, AirAtCores air, double millis) {
    public Answer {
        ceilings = List.copyOf(ceilings);
        saved = List.copyOf(saved);
    }

    static Answer of(Path path, BuildSheet sheet, List<Ceiling> saved) {
        long began = System.nanoTime();
        VehicleSpec spec = sheet.vehicle();
        Plant plant = Plant.compile(spec);
        List<Case> cases =
                Cases.ofBuild(path).stream().filter(c -> !c.forCold()).toList();
        AirAtCores air = AirAtCores.of(spec, plant, cases.get(0));
        List<Ceiling> ceilings = new AmbientCeiling(spec).find(plant, cases, 0.0, spec.designAmbient());
        return new Answer(sheet, ceilings, saved, air, 1e-6 * (System.nanoTime() - began));
    }
}
