package hotday.signals.channel;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.finding.Sentence;
import java.util.function.DoubleFunction;

/**
 * Refuses a clock that runs backwards, at once or little by little. A clock set right, a couple of rows out of order and a quick restart are none:
 * the clock is then behind the latest stamp so far by a second at most, and falls three rows in a row at most.
 */
final class BackwardTime {
    /** No clock that was set right is further behind than this, s. */
    private static final double LARGEST_SLIP = 1.0;
    /** Of sums of decimal fractions, s. */
    private static final double ROUNDING = 1e-6;
    /** Rows in a row that may each come before the one before. */
    private static final int MOST_FALLS = 3;

    private final double[] time;
    private int stretches;
    /** Row of the latest stamp before the first stretch that is refused. */
    private int before;
    /** Its last row. */
    private int last;

    private int falls;

    private BackwardTime(double[] time) {
        this.time = time;
    }

    /**
     * @param column of time in the file, from 1
     * @param time s, no NaN
     * @param lines of each stamp
     * @param shown a stamp as people read it in the file
     */
    static void refuse(String file, int column, double[] time, int[] lines, DoubleFunction<String> shown) {
        BackwardTime backward = new BackwardTime(time);
        backward.look();
        if (backward.stretches > 0) {
            throw new InputException(backward.fault(file, column, lines, shown));
        }
    }

    private void look() {
        int latest = 0;
        int i = 1;
        while (i < time.length) {
            latest = time[i - 1] >= time[latest] ? i - 1 : latest;
            int down = 0;
            int lowest = i;
            for (; i < time.length && time[i] <= time[i - 1]; i++) {
                if (time[i] < time[i - 1]) {
                    down++;
                    lowest = i;
                }
                latest = time[i] == time[latest] ? i : latest;
            }
            if (down > MOST_FALLS || (down > 0 && time[lowest] < time[latest] - LARGEST_SLIP - ROUNDING)) {
                refuse(latest, lowest);
                latest = lowest;
            }
            falls += down;
            i++;
        }
    }

    private void refuse(int latest, int lowest) {
        if (stretches == 0) {
            before = latest;
            last = lowest;
        }
        stretches++;
    }

    private Finding fault(String file, int column, int[] lines, DoubleFunction<String> shown) {
        int first = before + 1;
        double back = TimeBase.rounded(time[before] - time[last]);
        boolean one = last == first;
        String how = one
                ? "from " + shown.apply(time[before]) + " to " + shown.apply(time[first])
                : "from " + shown.apply(time[before]) + " over " + shown.apply(time[first]) + " down to "
                        + shown.apply(time[last]) + " in line " + lines[last];
        String more = stretches == 1 ? "" : " It happens " + stretches + " times.";
        return Finding.fault(
                        "time-backwards",
                        new Place(file, lines[first], column),
                        Sentence.of(
                                "time runs backwards here, " + how + ", by " + Shown.number(back) + " s." + more + " ",
                                advice(one),
                                ", or ",
                                Named.OTHER_TIME,
                                "."))
                .with("back_s", back)
                .with("jumps", stretches)
                .with("rows", last - before)
                .with("before", shown.apply(time[before]))
                .with("after", shown.apply(time[first]));
    }

    private String advice(boolean one) {
        if (2 * falls > time.length) {
            return "The newest row stands first: sort the file by time, the oldest row first";
        }
        return one ? "Cut the file at this line into two recordings" : "Sort these rows by time or take them out";
    }
}
