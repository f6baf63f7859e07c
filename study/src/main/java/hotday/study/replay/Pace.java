package hotday.study.replay;

/** Waits until a moment of the recording has come on the clock of the person who looks on. */
final class Pace {
    private static final long MILLI = 1_000_000; // ns

    private final double speed;
    private final long began = System.nanoTime();

    /** @param speed times the recorded one; 0 never waits */
    Pace(double speed) {
        this.speed = speed;
    }

    /** @param time ns from the beginning of the recording */
    void waitFor(long time) {
        if (speed <= 0) {
            return;
        }
        long left = began + Math.round(time / speed) - System.nanoTime();
        if (left < MILLI) {
            return;
        }
        try {
            Thread.sleep(left / MILLI, (int) (left % MILLI));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while waiting", e);
        }
    }
}
