package hotday.signals.expect;

import hotday.core.finding.Place;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Looks on for one expectation and keeps count. Times in ns. */
abstract class Judge {
    private static final int KEPT = 5;

    private final String name;
    private final Place place;
    private final List<Verdict.Failure> first = new ArrayList<>();
    private long judged;
    private long failed;

    Judge(Expected expected) {
        this.name = expected.name();
        this.place = expected.place();
    }

    /** A value came of a signal that this one looks at. */
    abstract void value(Seen seen, long time);

    /** A frame came. */
    void frame(int network, int id, boolean extended, long time) {}

    /** Time has passed up to now, nothing came since. */
    void now(long time) {}

    /** The frames end. */
    void end(long time) {
        now(time);
    }

    void judged() {
        judged++;
    }

    void failed(long time, String what, String limit) {
        failed++;
        if (first.size() < KEPT) {
            first.add(new Verdict.Failure(time, what, limit));
        }
    }

    Verdict verdict() {
        return new Verdict(name, place, judged, failed, first);
    }

    /** A time in ms, for people. */
    static String ms(long ns) {
        return BigDecimal.valueOf(ns, 6).stripTrailingZeros().toPlainString() + " ms";
    }
}
