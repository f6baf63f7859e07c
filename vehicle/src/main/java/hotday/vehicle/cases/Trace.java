package hotday.vehicle.cases;

import java.util.Arrays;

/** Speed and grade against time, straight between its points; immutable. */
public final class Trace {
    private final double[] time;
    private final double[] speed;
    private final double[] grade;

    /**
     * @param time s from 0, rising
     * @param speed m/s, 0 or more
     * @param grade rise over run
     */
    public Trace(double[] time, double[] speed, double[] grade) {
        if (time.length < 2 || time.length != speed.length || time.length != grade.length) {
            throw new IllegalArgumentException(
                    "a trace needs two points or more and as many speeds and grades as times;" + " there are "
                            + time.length + ", " + speed.length + " and " + grade.length);
        }
        for (int i = 1; i < time.length; i++) {
            if (!(time[i] > time[i - 1])) {
                throw new IllegalArgumentException(
                        "trace point " + (i + 1) + " at " + time[i] + " s must come after " + time[i - 1] + " s");
            }
        }
        this.time = time.clone();
        this.speed = speed.clone();
        this.grade = grade.clone();
    }

    /** s. */
    public double duration() {
        return time[time.length - 1] - time[0];
    }

    private int before(double t) {
        int i = Arrays.binarySearch(time, t);
        int low = i >= 0 ? i : -i - 2;
        return Math.max(0, Math.min(time.length - 2, low));
    }

    private double at(double[] values, double elapsed) {
        double t = Math.max(time[0], Math.min(time[time.length - 1], time[0] + elapsed));
        int i = before(t);
        return values[i] + (values[i + 1] - values[i]) * (t - time[i]) / (time[i + 1] - time[i]);
    }

    /** m/s after a time from its beginning, s. */
    public double speed(double elapsed) {
        return at(speed, elapsed);
    }

    /** Rise over run. */
    public double grade(double elapsed) {
        return at(grade, elapsed);
    }

    /** m/s2. */
    public double acceleration(double elapsed) {
        int i = before(Math.min(time[time.length - 1], time[0] + elapsed));
        return (speed[i + 1] - speed[i]) / (time[i + 1] - time[i]);
    }
}
