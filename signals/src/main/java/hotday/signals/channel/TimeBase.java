package hotday.signals.channel;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.util.Arrays;
import java.util.List;

/** Makes recorded time stamps strictly rising seconds: spreads equal stamps, understands midnight, refuses the rest. */
final class TimeBase {
    private static final double DAY = 86400.0;
    /** A jump back by more than this on a wall clock is midnight. */
    private static final double MIDNIGHT_JUMP = 0.5 * DAY;
    /** Step given to equal stamps at the end of a file when nothing tells, s. */
    private static final double LAST_STEP = 0.1;

    private TimeBase() {}

    /**
     * Works in place.
     *
     * @param time s as recorded, no NaN
     * @param lines of each stamp
     * @param wallClock true when a jump back may be midnight
     */
    static void unify(String file, double[] time, int[] lines, boolean wallClock, List<Finding> findings) {
        if (wallClock) {
            unwrap(time);
        }
        for (int i = 1; i < time.length; i++) {
            if (time[i] < time[i - 1]) {
                throw InputException.at(
                        new Place(file, lines[i], 0),
                        "time-backwards",
                        "time runs backwards here, from " + time[i - 1] + " s to " + time[i]
                                + " s. Cut the file at this line, or map the right time column.");
            }
        }
        int spread = spread(time);
        if (spread > 0) {
            findings.add(Finding.note(
                            "time-stamps-equal",
                            Place.of(file),
                            spread + " of " + time.length
                                    + " rows share their time stamp with the row before; they are spread evenly up to the next stamp.")
                    .with("rows", spread));
        }
    }

    private static void unwrap(double[] time) {
        double days = 0.0;
        double last = time.length == 0 ? 0.0 : time[0];
        for (int i = 1; i < time.length; i++) {
            double stamp = time[i];
            if (stamp < last - MIDNIGHT_JUMP) {
                days += DAY;
            }
            last = stamp;
            time[i] = stamp + days;
        }
    }

    private static int spread(double[] time) {
        int spread = 0;
        double step = typicalStep(time);
        int i = 0;
        while (i < time.length) {
            int end = i + 1;
            while (end < time.length && time[end] == time[i]) {
                end++;
            }
            int count = end - i;
            if (count > 1) {
                double start = time[i];
                double gap = end < time.length ? time[end] - start : step * count;
                double within = Math.min(gap, Math.max(step, 1e-3) * count * 4.0);
                for (int k = 1; k < count; k++) {
                    time[i + k] = start + within * k / count;
                    spread++;
                }
            }
            i = end;
        }
        return spread;
    }

    private static double typicalStep(double[] time) {
        double[] steps = new double[Math.max(0, time.length - 1)];
        int n = 0;
        for (int i = 1; i < time.length; i++) {
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

    /** Seconds of {@code hh:mm:ss} with or without a fraction; NaN when it is not a clock reading. */
    static double clock(String text) {
        String[] parts = text.split(":", -1);
        if (parts.length != 3) {
            return Double.NaN;
        }
        try {
            int hours = Integer.parseInt(parts[0].trim());
            int minutes = Integer.parseInt(parts[1].trim());
            double seconds = Double.parseDouble(parts[2].trim());
            boolean right = hours >= 0 && hours < 48 && minutes >= 0 && minutes < 60 && seconds >= 0 && seconds < 61;
            return right ? hours * 3600.0 + minutes * 60.0 + seconds : Double.NaN;
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }
}
