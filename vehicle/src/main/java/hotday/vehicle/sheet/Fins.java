package hotday.vehicle.sheet;

import hotday.physics.component.CatalogueCore;
import hotday.physics.transfer.LouveredFin;

/** Says where a core's fins lie outside what the published relations were made from. */
final class Fins {
    private static final double FACE_SPEED = 3.0; // m/s, where conductances are quoted

    private Fins() {}

    static void remark(Section block, CatalogueCore core) {
        for (LouveredFin.Excess excess : core.outsideThePublishedData(FACE_SPEED)) {
            block.remark(
                    key(excess.name()),
                    "outside-published-data",
                    excess.text()
                            + ": heat and pressure drop from dimensions are a rough guess, a test point is better");
        }
    }

    /** The key of the sheet that a quantity follows from. */
    private static String key(String name) {
        if (name.startsWith("tube depth")) {
            return "depth";
        }
        return name.startsWith("fin") ? "fins" : "tube_pitch";
    }
}
