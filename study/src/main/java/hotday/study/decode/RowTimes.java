package hotday.study.decode;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import java.util.List;

/** Times of the rows of a table, s: where they begin, how far they go, whether they go back. */
final class RowTimes {
    private static final double DAY = 86_400;
    /** Stamps of a clock that are larger have a date: no day is that long. */
    private static final double DATED = 1e7;

    private final String file;
    private final boolean clock;
    private double days;
    private double first = Double.NaN;
    private double last = Double.NaN;
    private double forward;
    private long count;
    private long back;
    private int firstBack;

    /** @param clock true for stamps of a wall clock: one far back is past midnight */
    RowTimes(String file, boolean clock) {
        this.file = file;
        this.clock = clock;
    }

    /** A stamp with the midnights that went by before it. */
    double placed(double stamp) {
        if (clock && stamp < DATED && stamp + days < last - DAY / 2) {
            days += DAY;
        }
        return stamp + days;
    }

    void add(double time, int line) {
        count++;
        first = Double.isNaN(first) ? time : first;
        forward += time > last ? time - last : 0;
        if (time < last) {
            firstBack = back == 0 ? line : firstBack;
            back++;
        }
        last = time;
    }

    /** s; NaN without rows. */
    double first() {
        return first;
    }

    /** Of which rows are counted that are written: the first where stamps have a date or are of a clock, else 0 s. */
    double zero() {
        return clock || Math.abs(first) > DATED ? first : 0;
    }

    /** How far time went forward, s; NaN without rows. */
    double duration() {
        return count == 0 ? Double.NaN : forward;
    }

    List<Finding> findings() {
        if (back == 0) {
            return List.of();
        }
        return List.of(Finding.warning(
                "clock-goes-back",
                new Place(file, firstBack, 0),
                "time goes back here" + (back == 1 ? "" : " and in " + (back - 1) + " more rows")
                        + "; rows stand as they were recorded"));
    }
}
