package hotday.study.design;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import java.util.ArrayList;
import java.util.List;

/** What must not be wired as it was rendered. Keys: docs/schedule.md. */
public final class RenderedFindings {
    /** What helps where relays do not hold. */
    static final String INSTEAD = "take a stage of another speed, or a fan that can be told any speed";

    private RenderedFindings() {}

    /** @param tables where they are written */
    public static List<Finding> of(Rendering r, Display display, Place tables) {
        List<Finding> all = new ArrayList<>();
        if (!r.relaysHold()) {
            all.add(Finding.fault(
                    "relays-do-not-hold",
                    tables,
                    "no thresholds were found with which these relays hold all that a fan at full speed holds, on the design day and on milder ones: "
                            + INSTEAD));
        }
        for (int i = 0; i < r.cases().size(); i++) {
            if (r.lost(i) > r.stated(i)) {
                all.add(lost(r, i, display, tables));
            }
        }
        return all;
    }

    private static Finding lost(Rendering r, int i, Display display, Place tables) {
        String message = r.cases().get(i).title() + " gives way at "
                + display.format(Quantity.TEMPERATURE, r.rendered()[i]) + ", "
                + display.format(Quantity.TEMPERATURE_DIFFERENCE, r.lost(i)) + " below the ceiling of the schedule; "
                + display.format(Quantity.TEMPERATURE_DIFFERENCE, r.stated(i))
                + " was to be expected of what the tables miss: do not wire it so; give the tables more points or another fan drive";
        return Finding.fault("rendered-gives-way", tables, message)
                .with("case", r.cases().get(i).id())
                .with("lost_K", r.lost(i))
                .with("stated_K", r.stated(i));
    }
}
