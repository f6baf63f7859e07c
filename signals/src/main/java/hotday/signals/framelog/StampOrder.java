package hotday.signals.framelog;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.finding.Severity;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Whether the clock of a recording only goes forward. */
final class StampOrder {
    /** Of a hundred stamps more than so many going back are no slips of a clock. */
    private static final int NO_CLOCK_PERCENT = 10;

    private final String file;
    private double first = Double.NaN;
    private double last = Double.NaN;
    private double begun = Double.NaN;
    private double before;
    private long stamps;
    private long back;
    private double farthest;
    private int line;

    StampOrder(String file) {
        this.file = file;
    }

    void add(double time, int atLine) {
        if (Double.isNaN(time)) {
            return;
        }
        if (stamps++ == 0) {
            first = time;
            begun = time;
        }
        if (time < last) {
            before += last - begun;
            begun = time;
            line = back++ == 0 ? atLine : line;
            farthest = Math.max(farthest, last - time);
        }
        last = time;
    }

    /** s; NaN when there is no stamp. */
    double first() {
        return first;
    }

    /** s that the clock went forward; NaN when there is no stamp. */
    double duration() {
        return before + last - begun;
    }

    List<Finding> findings() {
        if (back == 0) {
            return List.of();
        }
        boolean noClock = back * 100 > stamps * NO_CLOCK_PERCENT;
        String what = String.format(
                Locale.ROOT,
                "the clock goes back %d time%s in %d frames, by %.6f s at most, here first",
                back,
                back == 1 ? "" : "s",
                stamps,
                farthest);
        String hint = "; these look like times from frame to frame: record times from one zero";
        return List.of(new Finding(
                "clock-goes-back",
                noClock ? Severity.FAULT : Severity.WARNING,
                Optional.of(new Place(file, line, 0)),
                noClock ? what + hint : what + "; frames are taken in the order of the file",
                Map.of("times", back, "farthest_s", farthest)));
    }
}
