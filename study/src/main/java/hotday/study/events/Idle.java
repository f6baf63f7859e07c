package hotday.study.events;

/** Where a run stands with the engine idling, second by second. */
final class Idle {
    private static final double STANDS = 0.5; // m/s
    /** After rolling out and before driving off idle is not idle yet, s. */
    private static final int AFTER_STOP = 4;

    private static final int BEFORE_START = 2;
    /** Idle with everything on is not faster than this times the lowest idle; above it someone opens the throttle. */
    private static final double FASTEST = 1.7;

    private static final double LOWEST_SHARE = 0.1;

    private final Seconds run;
    private final double fastest;
    private final boolean[] idle;

    Idle(Seconds run) {
        this.run = run;
        this.fastest = FASTEST * lowest(run);
        this.idle = new boolean[run.size()];
        for (int i = 0; i < idle.length; i++) {
            idle[i] = all(i);
        }
    }

    /** Tenth of the engine speeds of a running, standing vehicle, rad/s; of the running engine where no speed is known. */
    private static double lowest(Seconds run) {
        double[] speeds = run.engineSpeed.clone();
        for (int i = 0; i < speeds.length; i++) {
            speeds[i] = run.runs(i) && !(run.speed[i] > STANDS) ? speeds[i] : Double.NaN;
        }
        double[] sorted = Middle.present(speeds);
        return sorted.length == 0 ? Double.NaN : sorted[(int) (LOWEST_SHARE * (sorted.length - 1))];
    }

    private boolean all(int second) {
        for (int i = Math.max(0, second - AFTER_STOP); i <= Math.min(idle.length - 1, second + BEFORE_START); i++) {
            if (!one(i)) {
                return false;
            }
        }
        return true;
    }

    private boolean one(int i) {
        boolean stands = Seconds.recorded(run.speed) ? run.speed[i] <= STANDS : true;
        return stands && run.runs(i) && !(run.engineSpeed[i] > fastest);
    }

    boolean at(int second) {
        return idle[second];
    }
}
