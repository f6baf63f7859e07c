package hotday.study.findings;

/**
 * One number of a run that speaks for a fault.
 *
 * @param what for people
 * @param from, to s of the recording
 * @param measured, expected of a sound car, in {@code unit}
 * @param spread standard deviation over sound cars
 */
public record Evidence(
        String what, double from, double to, double measured, double expected, double spread, String unit) {}
