package hotday.study.events;

import java.util.Arrays;

/** Where a run stands with the engine idling, second by second. */
final class Idle {
    private static final double STANDS = 0.5; // m/s
    /** After rolling out and before driving off idle is not idle yet, s. */
    private static final int AFTER_STOP = 4;

    private static final int BEFORE_START = 2;
    /** Idle with everything on is not faster than this times the lowest idle; above it someone opens the throttle. */
    private static final double FASTEST = 1.7;

    private static final double LOWEST_SHARE = 0.1;
    /** No warm road engine idles faster, whatever is on, rad/s (1250 rpm). Common practice, no source. */
    private static final double NO_IDLE = 130.0;
    /** A run without road speed stands when the engine idles for so much of it. */
    private static final double STANDS_SHARE = 0.95;

    private final Seconds run;
    private final double fastest;
    private final boolean stood;
    private final boolean[] idle;

    Idle(Seconds run) {
        this.run = run;
        this.fastest = Math.min(FASTEST * lowest(run), NO_IDLE);
        this.stood = !Seconds.recorded(run.speed) && idleShare() >= STANDS_SHARE;
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
        return (stood || run.speed[i] <= STANDS) && run.runs(i) && !(run.engineSpeed[i] > fastest);
    }

    private double idleShare() {
        double[] running = run.engineSpeed.clone();
        for (int i = 0; i < running.length; i++) {
            running[i] = run.runs(i) ? running[i] : Double.NaN;
        }
        double[] present = Middle.present(running);
        return (double) Arrays.stream(present).filter(n -> n <= fastest).count() / Math.max(1, present.length);
    }

    /** True when nobody recorded the road speed but the engine idled all the time. */
    boolean stoodThroughout() {
        return stood;
    }

    boolean at(int second) {
        return idle[second];
    }
}
