package hotday.study.predict;

import hotday.core.typed.Overlay;
import hotday.vehicle.cases.AmbientCeiling;
import hotday.vehicle.cases.Case;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.BuildSheet;
import java.nio.file.Path;
import java.util.List;

/**
 * The ceiling of one case with the sheet as it stands and with other values.
 *
 * @param kase the case
 * @param before K, as the sheet stands
 * @param after K, with the other values
 */
public record WhatIf(Case kase, double before, double after) {
    /** K; positive when the change helps. */
    public double change() {
        return after - before;
    }

    /**
     * All cases with {@code key=value} texts laid over the sheet together.
     *
     * @param source where the texts come from, for places in faults
     */
    public static List<WhatIf> of(Path build, List<Case> cases, String source, List<String> texts) {
        BuildSheet sheet = BuildSheet.read(build);
        BuildSheet other = BuildSheet.read(build, Overlay.of(source, texts));
        Plant plant = Plant.compile(sheet.vehicle());
        Plant changed = Plant.compile(other.vehicle());
        return cases.parallelStream()
                .map(kase -> {
                    double before = new AmbientCeiling(sheet.vehicle())
                            .ambient(plant, kase, 0.0, sheet.vehicle().designAmbient());
                    double after = new AmbientCeiling(other.vehicle()).ambient(changed, kase, 0.0, before);
                    return new WhatIf(kase, before, after);
                })
                .toList();
    }
}
