package hotday.vehicle.idle;

/**
 * One step of load through the idle governor: fourth-order Runge-Kutta at {@value #STEP} s. Steps end where the feed-forward or the load comes on and
 * where the ignition meets or leaves its reserve, extremes and crossings are found by stepping onto them; so nothing is finer inside than what is
 * given out. Each call has its own arrays; thread-safe.
 */
public final class IdleStudy {
    /** s. */
    public static final double STEP = 0.01;

    /** The load comes on here, s. */
    public static final double ENGAGED = 1.0;

    /** Length of a run, s. */
    public static final double LENGTH = 20.0;

    private static final double SAME = 1e-12; // s
    private static final double NUDGE = 1e-5; // s

    private final IdleLoop loop;
    private final double set;
    private final double announced;
    private double lowest;
    private double lowestTime;
    private double highest;
    private double highestTime;
    private double outside;

    private IdleStudy(IdleSettings settings, IdleLoad load, FeedForward forward) {
        loop = new IdleLoop(settings, load, forward);
        set = settings.speed();
        announced = ENGAGED - forward.lead();
    }

    public static IdleRun run(IdleSettings settings, IdleLoad load, FeedForward forward) {
        return run(settings, load, forward, LENGTH);
    }

    /** Only the first {@code length} s of it. */
    static IdleRun run(IdleSettings settings, IdleLoad load, FeedForward forward, double length) {
        return new IdleStudy(settings, load, forward).run(length);
    }

    private IdleRun run(double length) {
        int steps = (int) Math.round(length / STEP);
        double[] speed = new double[steps + 1];
        speed[0] = set;
        for (int i = 1; i <= steps; i++) {
            advance(i * STEP);
            speed[i] = set + loop.speed();
        }
        double settling = Math.max(0.0, outside - ENGAGED);
        return new IdleRun(
                set, set + lowest, lowestTime, set + highest, highestTime, settling, new IdleRun.Trace(speed));
    }

    private void advance(double end) {
        while (end - loop.time() > SAME) {
            double length = Math.min(upTo(announced, end), upTo(ENGAGED, end)) - loop.time();
            loop.begin(length);
            loop.attempt(length);
            if (loop.after(IdleLoop.RESERVE) < 0.0) {
                length = ofOneKind(length);
                loop.attempt(length);
            }
            watchTurning(length);
            watchBand(length);
            loop.accept();
        }
    }

    private double upTo(double change, double end) {
        return change - loop.time() > SAME ? Math.min(change, end) : end;
    }

    /** Length up to where the spark meets its reserve or leaves it. Already there and misjudged: a little further, then judged again. */
    private double ofOneKind(double length) {
        double left = loop.before(IdleLoop.RESERVE) > 0.0 ? loop.crossing(IdleLoop.RESERVE, length) : 0.0;
        return Math.max(left, Math.min(NUDGE, length));
    }

    private void watchTurning(double length) {
        if (loop.before(IdleLoop.TURNING) * loop.after(IdleLoop.TURNING) < 0.0) {
            loop.crossing(IdleLoop.TURNING, length);
            note();
            loop.attempt(length);
        }
        note();
    }

    private void note() {
        if (loop.nextSpeed() < lowest) {
            lowest = loop.nextSpeed();
            lowestTime = loop.nextTime();
        }
        if (loop.nextSpeed() > highest) {
            highest = loop.nextSpeed();
            highestTime = loop.nextTime();
        }
    }

    private void watchBand(double length) {
        if (loop.after(IdleLoop.BAND) > 0.0) {
            outside = loop.nextTime();
        } else if (loop.before(IdleLoop.BAND) > 0.0) {
            loop.crossing(IdleLoop.BAND, length);
            outside = loop.nextTime();
            loop.attempt(length);
        }
    }
}
