package hotday.study.prove;

import java.util.Arrays;

/** Spells of a run in which nothing was recorded: a grid carries the last reading through them, but nobody measured it. */
final class Pauses {
    private static final double SHORTEST = 10.0; // s
    /** A slow logger does not pause: a pause is as long as this many of its usual steps. */
    private static final double STEPS = 10.0;

    private Pauses() {}

    /**
     * Sets what stands between two readings far apart to NaN.
     *
     * @param measured on the grid, changed; returned
     * @param grid end of each step, s, rising
     * @param step of the grid, s
     * @param recorded stamps of the rows, s, rising
     */
    static double[] blank(double[] measured, double[] grid, double step, double[] recorded) {
        double longest = Math.max(SHORTEST, STEPS * usualStep(recorded));
        int at = 0;
        for (int i = 1; i < recorded.length; i++) {
            boolean pause = recorded[i] - recorded[i - 1] > longest;
            for (; at < grid.length && grid[at] < recorded[i]; at++) {
                if (pause && grid[at] - step >= recorded[i - 1]) {
                    measured[at] = Double.NaN;
                }
            }
        }
        return measured;
    }

    /** Median, s. */
    private static double usualStep(double[] recorded) {
        double[] steps = new double[Math.max(0, recorded.length - 1)];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = recorded[i + 1] - recorded[i];
        }
        Arrays.sort(steps);
        return steps.length == 0 ? 0.0 : steps[steps.length / 2];
    }
}
