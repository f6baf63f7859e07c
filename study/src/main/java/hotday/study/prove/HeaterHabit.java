package hotday.study.prove;

import java.util.List;

/**
 * How people set a heater that nobody recorded: full in the cold, off in the warm, by the weather alone. One habit for all runs, so
 * that one conductance carries what the heater takes; free settings would trade off against heat capacities and say nothing of
 * another season.
 */
final class HeaterHabit {
    /** Mean outside temperature up to which the heater is fully on, K; common practice, no source. */
    private static final double ON = 273.15 + 10.0;
    /** Doubt about a setting, on the logarithm of its odds. */
    private static final double DOUBT = 1.0;

    private static final double LEAST_ODDS = 0.03;

    private HeaterHabit() {}

    /** Setting 0..1 in weather of this mean temperature, K. */
    static double setting(double meanAmbient) {
        double share = (Branches.HEATER_WEATHER - meanAmbient) / (Branches.HEATER_WEATHER - ON);
        double s = Math.min(1.0, Math.max(0.0, share));
        return s * s * (3.0 - 2.0 * s);
    }

    /** A setting as it may have been in a single run, 0..1. */
    static double doubted(double setting, double normal) {
        double s = Math.min(1.0 - LEAST_ODDS, Math.max(LEAST_ODDS, setting));
        return 1.0 / (1.0 + Math.exp(-(Math.log(s / (1.0 - s)) + DOUBT * normal)));
    }

    /** Whether the fit runs show what the heater takes: one of unknown heater in weather that makes most people use it. */
    static boolean shownBy(List<RunData> fitRuns) {
        return fitRuns.stream().anyMatch(r -> Branches.heaterUnknown(r) && setting(r.meanAmbient()) >= 0.5);
    }

    /** Whether the heater of this run follows the habit. */
    static boolean rules(RunData run, boolean shown) {
        return shown && Branches.heaterUnknown(run);
    }
}
