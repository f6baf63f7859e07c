package hotday.signals.channel;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.finding.Sentence;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;

/** Makes recorded time stamps strictly rising seconds: spreads equal stamps and small slips, refuses a clock that runs backwards. */
final class TimeBase {
    /** Step given to equal stamps when nothing tells, s. */
    private static final double LAST_STEP = 0.1;
    /** Stamps beyond this count from some epoch; the run then begins at 0 s. A third of a year, s. */
    private static final double EPOCH = 1e7;

    private static final int STEPS_LOOKED_AT = 50_000;
    /** Rows on one stamp before a pause do not spread over it: no further than this many steps. */
    private static final double LONGEST_SHARE = 4.0;

    /** Share of rows that come too late beyond which it is no accident. */
    private static final double MANY_SLIPS = 0.05;

    private static final int FEW = 3;
    /** A recording with more rows than this and no second stamp has no time. */
    private static final int MOST_ON_ONE_STAMP = 10;

    private static final double GAP_STEPS = 10.0;
    private static final double SHORTEST_GAP = 5.0; // s

    private final String file;
    private final int column;
    private final double[] time;
    private final int[] lines;
    private final List<Finding> findings;

    private TimeBase(String file, int column, double[] time, int[] lines, List<Finding> findings) {
        this.file = file;
        this.column = column;
        this.time = time;
        this.lines = lines;
        this.findings = findings;
    }

    /**
     * Works in place.
     *
     * @param column of time in the file, from 1
     * @param time s as recorded, no NaN
     * @param lines of each stamp
     * @param clock true for stamps of a wall clock: midnight is understood, the run begins at 0 s
     * @param shown a stamp as people read it in the file
     */
    static void unify(
            String file,
            int column,
            double[] time,
            int[] lines,
            boolean clock,
            DoubleFunction<String> shown,
            List<Finding> findings) {
        if (time.length == 0) {
            return;
        }
        if (clock) {
            Clock.passMidnight(time);
        }
        refuseOneStamp(file, column, time, lines, shown);
        BackwardTime.refuse(file, column, time, lines, shown);
        TimeBase base = new TimeBase(file, column, time, lines, findings);
        if (clock || Math.abs(time[0]) > EPOCH) {
            base.startAtZero();
        }
        double step = base.typicalStep();
        base.spread(step);
        base.gaps(step);
    }

    private static void refuseOneStamp(
            String file, int column, double[] time, int[] lines, DoubleFunction<String> shown) {
        if (time.length > MOST_ON_ONE_STAMP && Arrays.stream(time).allMatch(t -> t == time[0])) {
            throw new InputException(Finding.fault(
                    "time-stands",
                    new Place(file, lines[0], column),
                    Sentence.of(
                            "time stands at " + shown.apply(time[0]) + " in all " + time.length
                                    + " rows: record again with the clock running, or ",
                            Named.OTHER_TIME)));
        }
    }

    private void startAtZero() {
        double first = time[0];
        for (int i = 0; i < time.length; i++) {
            time[i] -= first;
        }
    }

    /** To a millisecond: what a stamp can tell. */
    static double rounded(double seconds) {
        return Math.rint(1000.0 * seconds) / 1000.0;
    }

    /** Rows that do not come after the row before share the time up to the next row that does. */
    private void spread(double step) {
        int equal = 0;
        int slips = 0;
        int firstSlip = 0;
        double largest = 0.0;
        int i = 0;
        while (i < time.length) {
            int end = i + 1;
            while (end < time.length && time[end] <= time[i]) {
                double back = time[i] - time[end];
                equal += back == 0.0 ? 1 : 0;
                if (back > 0.0) {
                    firstSlip = slips == 0 ? lines[end] : firstSlip;
                    slips++;
                    largest = Math.max(largest, back);
                }
                end++;
            }
            spread(i, end, step);
            i = end;
        }
        report(equal, slips, firstSlip, largest);
    }

    private void spread(int from, int end, double step) {
        int count = end - from;
        double room = end < time.length ? time[end] - time[from] : step;
        double within = Math.min(room, LONGEST_SHARE * step);
        for (int k = 1; k < count; k++) {
            time[from + k] = time[from] + within * k / count;
        }
    }

    private void report(int equal, int slips, int firstSlip, double largest) {
        if (equal > 0) {
            findings.add(Finding.note(
                            "time-stamps-equal",
                            Place.of(file),
                            equal + " of " + time.length
                                    + " rows share their time stamp with the row before; they are spread evenly up to the next stamp.")
                    .with("rows", equal));
        }
        if (slips > 0) {
            findings.add(slipped(slips, new Place(file, firstSlip, column), rounded(largest))
                    .with("rows", slips)
                    .with("largest_s", rounded(largest)));
        }
    }

    private Finding slipped(int slips, Place first, double largest) {
        String message = "the clock steps back by " + Shown.number(largest) + " s here; " + slips
                + " rows are spread evenly over the time until it has caught up.";
        return slips > Math.max(FEW, MANY_SLIPS * time.length)
                ? Finding.warning(
                        "time-slips",
                        first,
                        message
                                + " That many are no accident: see how the logger writes its time, or map another column.")
                : Finding.note("time-slips", first, message);
    }

    private void gaps(double step) {
        double limit = Math.max(SHORTEST_GAP, GAP_STEPS * step);
        int gaps = 0;
        int longest = 0;
        double most = 0.0;
        for (int i = 1; i < time.length; i++) {
            double pause = time[i] - time[i - 1];
            gaps += pause > limit ? 1 : 0;
            if (pause > most) {
                most = pause;
                longest = i;
            }
        }
        if (gaps > 0) {
            findings.add(Finding.warning(
                            "recording-gaps",
                            new Place(file, lines[longest], column),
                            "nothing was recorded for " + Shown.number(rounded(most)) + " s before this line"
                                    + (gaps == 1 ? "" : "; there are " + gaps + " such gaps")
                                    + ". What happened meanwhile is unknown to a simulation of this run.")
                    .with("gaps", gaps)
                    .with("longest_s", rounded(most)));
        }
    }

    /** Median of the steps forward, of a sample of them in a long file. */
    private double typicalStep() {
        int stride = 1 + time.length / STEPS_LOOKED_AT;
        double[] steps = new double[1 + time.length / stride];
        int n = 0;
        for (int i = 1; i < time.length; i += stride) {
            if (time[i] > time[i - 1]) {
                steps[n++] = time[i] - time[i - 1];
            }
        }
        if (n == 0) {
            return LAST_STEP;
        }
        Arrays.sort(steps, 0, n);
        return steps[n / 2];
    }
}
