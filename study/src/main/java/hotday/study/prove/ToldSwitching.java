package hotday.study.prove;

import hotday.core.finding.Finding;
import hotday.study.events.Event;
import hotday.study.events.Kind;
import hotday.vehicle.plant.Input;
import java.util.List;

/** Puts what was told of an actuator that nobody recorded into the inputs of a run, as far as it is likely enough. */
final class ToldSwitching {
    /** Confidence from which it is used; common practice, no source. */
    private static final double LIKELY = 0.6;

    private final String run;
    private final List<Event> switching;
    private final double[] grid;
    private final double[] inputs;
    private final List<Finding> findings;

    /**
     * @param grid end of each row, s
     * @param inputs filled, {@link Input#COUNT} values a row
     * @param findings told what was used
     */
    ToldSwitching(String run, List<Event> switching, double[] grid, double[] inputs, List<Finding> findings) {
        this.run = run;
        this.switching = switching;
        this.grid = grid;
        this.inputs = inputs;
        this.findings = findings;
    }

    /** Fills a column with 1 between each switching on and off; false when none is likely enough. */
    boolean fill(Kind on, Kind off, Input slot, String what) {
        double from = Double.NaN;
        int times = 0;
        for (Event event : switching) {
            if (event.confidence() < LIKELY) {
                continue;
            }
            if (event.kind() == on) {
                from = event.time();
            } else if (event.kind() == off && !Double.isNaN(from)) {
                fill(slot, from, event.time());
                from = Double.NaN;
                times++;
            }
        }
        if (times > 0) {
            findings.add(Finding.note(
                            "switching-told",
                            "run " + run + ": nobody recorded the " + what + "; the fit takes it to have run " + times
                                    + (times == 1 ? " time" : " times") + ", as coolant, load and voltage tell.")
                    .with("run", run)
                    .with("times", times));
        }
        return times > 0;
    }

    private void fill(Input slot, double from, double to) {
        for (int i = 0; i < grid.length; i++) {
            if (grid[i] > from && grid[i] <= to) {
                inputs[i * Input.COUNT + slot.index()] = 1.0;
            }
        }
    }
}
