package hotday.study.wiring;

/**
 * Currents at hot idle, A.
 *
 * @param capacity what the alternator can give there, hot
 * @param base ignition, fuel pump, lights and the rest
 */
public record IdleBalance(double capacity, double base, double blower, double fan, double clutch) {
    /** All that is drawn. */
    public double load() {
        return base + blower + fan + clutch;
    }

    /** What the battery has to give, 0 or more. */
    public double deficit() {
        return Math.max(0.0, load() - capacity);
    }

    /** Charge taken from the battery in a time, A s; time in s. */
    public double drawn(double time) {
        return deficit() * time;
    }
}
