package hotday.study.prove;

import java.util.Arrays;
import java.util.List;

/**
 * What somebody without a model would say: the coolant sits at the level the fit runs sat at once warm. Stands beside
 * every score.
 *
 * @param level K
 */
record NullModel(double level) {
    /** Coolant counts as warm from here, K. */
    private static final double WARM = 273.15 + 80.0;

    static NullModel of(List<RunData> fitRuns) {
        double sum = 0.0;
        int n = 0;
        for (RunData run : fitRuns) {
            for (int i = 0; i < run.size(); i++) {
                double coolant = run.coolant()[i];
                if (run.time()[i] >= run.scoredFrom() && coolant >= WARM) {
                    sum += coolant;
                    n++;
                }
            }
        }
        return new NullModel(n == 0 ? Double.NaN : sum / n);
    }

    Score score(RunData run) {
        return score(run, run.scoredFrom());
    }

    /** @param from s; samples before are left out */
    Score score(RunData run, double from) {
        double[] flat = new double[run.size()];
        Arrays.fill(flat, level);
        return Score.of(run, flat, from);
    }
}
