package hotday.signals.expect;

import java.util.ArrayDeque;
import java.util.function.Function;

/** One judge for each kind of expectation. */
final class Judges {
    private Judges() {}

    /** @param seen gives the last value of a signal */
    static Judge of(Expected expected, Function<Watched, Seen> seen) {
        if (expected instanceof Expected.Response response) {
            return new OfResponse(response, seen);
        }
        if (expected instanceof Expected.Bound bound) {
            return new OfBound(bound, seen);
        }
        if (expected instanceof Expected.Rate rate) {
            return new OfRate(rate);
        }
        return new OfEquality((Expected.Equality) expected, seen);
    }

    private static final class OfResponse extends Judge {
        private final Expected.Response expected;
        private final Seen when;
        private final Seen then;
        private final ArrayDeque<Long> demands = new ArrayDeque<>();
        private boolean known;
        private boolean before;

        OfResponse(Expected.Response expected, Function<Watched, Seen> seen) {
            super(expected);
            this.expected = expected;
            this.when = seen.apply(expected.when().signal());
            this.then = seen.apply(expected.then().signal());
        }

        @Override
        void value(Seen seen, long time) {
            if (seen == when) {
                boolean is = expected.when().holds(when);
                if (is && known && !before) {
                    judged();
                    demands.add(time);
                }
                known = true;
                before = is;
            }
            if (expected.then().holds(then)) {
                demands.clear();
            }
        }

        @Override
        void now(long time) {
            while (!demands.isEmpty() && time > demands.peek() + expected.within()) {
                long since = demands.remove();
                failed(
                        since,
                        expected.then().signal().name() + " is still " + then.text() + " after "
                                + ms(expected.within()),
                        expected.then().text() + " within " + ms(expected.within()));
            }
        }
    }

    private static final class OfBound extends Judge {
        private final Expected.Bound expected;
        private final Seen bounded;
        private final Seen during;
        private boolean stands;
        private long since;
        private boolean broken;
        private long lastFailure = -1;

        OfBound(Expected.Bound expected, Function<Watched, Seen> seen) {
            super(expected);
            this.expected = expected;
            this.bounded = seen.apply(expected.never().signal());
            this.during = expected.during().map(c -> seen.apply(c.signal())).orElse(null);
        }

        @Override
        void value(Seen seen, long time) {
            boolean is = during == null || expected.during().orElseThrow().holds(during);
            since = is && !stands ? time : since;
            stands = is;
            judge(seen, time);
        }

        /** A value that came is judged, and so is the one that stands when its time has come. */
        private void judge(Seen seen, long time) {
            boolean counts = stands && (during == null || time >= since + expected.after()) && bounded.ever();
            if (!counts) {
                broken = false;
                return;
            }
            boolean wrong = expected.never().holds(bounded) != expected.always();
            if (seen == bounded) {
                judged();
            }
            if (wrong && time != lastFailure && (seen == bounded || !broken)) {
                lastFailure = time;
                failed(time, bounded.signal().name() + " is " + bounded.text(), limit());
            }
            broken = wrong;
        }

        private String limit() {
            return (expected.always() ? "always " : "never ")
                    + expected.never().text()
                    + expected.during().map(c -> " while " + c.text()).orElse("");
        }

        @Override
        void now(long time) {
            if (during != null && stands && time >= since + expected.after() && !broken) {
                judge(during, since + expected.after());
            }
        }
    }

    private static final class OfRate extends Judge {
        private final Expected.Rate expected;
        private long last;
        private boolean any;

        OfRate(Expected.Rate expected) {
            super(expected);
            this.expected = expected;
        }

        @Override
        void value(Seen seen, long time) {}

        @Override
        void frame(int network, int id, boolean extended, long time) {
            if (network != expected.network() || id != expected.id() || extended != expected.extended()) {
                return;
            }
            judged();
            long apart = time - last;
            if (apart > expected.every()) {
                late(time, apart);
            } else if (any && apart < expected.notCloser()) {
                failed(
                        time,
                        expected.message() + " came after " + ms(apart),
                        "not closer than " + ms(expected.notCloser()));
            }
            last = time;
            any = true;
        }

        private void late(long time, long apart) {
            failed(
                    time,
                    expected.message() + (any ? " came after " : " came for the first time after ") + ms(apart),
                    "at least every " + ms(expected.every()));
        }

        @Override
        void end(long time) {
            if (time - last > expected.every()) {
                judged();
                failed(
                        last,
                        expected.message()
                                + (any ? " did not come any more for " : " did not come at all for ")
                                + ms(time - last),
                        "at least every " + ms(expected.every()));
            }
        }
    }

    private static final class OfEquality extends Judge {
        private static final double ROUNDING = 1e-9;

        private record Past(long time, double value) {}

        private final Expected.Equality expected;
        private final Seen signal;
        private final Seen source;
        private final Seen during;
        private final ArrayDeque<Past> past = new ArrayDeque<>();
        private boolean known;

        OfEquality(Expected.Equality expected, Function<Watched, Seen> seen) {
            super(expected);
            this.expected = expected;
            this.signal = seen.apply(expected.signal());
            this.source = seen.apply(expected.source());
            this.during = expected.during().map(c -> seen.apply(c.signal())).orElse(null);
        }

        @Override
        void value(Seen seen, long time) {
            if (seen == source && !Double.isNaN(source.number())) {
                known = true;
                past.add(new Past(time, source.number() * expected.factor() + expected.offset()));
            }
            while (!past.isEmpty() && past.peek().time() < time - expected.notOlder()) {
                past.remove();
            }
            boolean counts = known
                    && seen == signal
                    && !Double.isNaN(signal.number())
                    && (during == null || expected.during().orElseThrow().holds(during));
            if (counts) {
                judge(time);
            }
        }

        private void judge(long time) {
            judged();
            double room = expected.tolerance() + ROUNDING * Math.max(1, Math.abs(signal.number()));
            if (past.stream().noneMatch(p -> Math.abs(p.value() - signal.number()) <= room)) {
                double wanted = source.number() * expected.factor() + expected.offset();
                failed(
                        time,
                        signal.signal().name() + " is " + signal.text() + ", "
                                + source.signal().name() + " "
                                + (Double.isNaN(wanted)
                                        ? source.text()
                                        : signal.signal().text(wanted)),
                        "equal to within " + signal.signal().text(expected.tolerance()) + ", at most "
                                + ms(expected.notOlder()) + " old");
            }
        }
    }
}
