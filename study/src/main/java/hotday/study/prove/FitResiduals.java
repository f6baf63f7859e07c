package hotday.study.prove;

import hotday.core.solve.Residuals;
import hotday.vehicle.plant.Plant;
import java.util.List;

/**
 * Weighted residuals of several runs against a vector of unknowns. One sample every {@value #EVERY} s; each weighs
 * sqrt(EVERY / (2 tau)) of a free one, since neighbouring residuals of a thermal model say the same thing. Not
 * thread-safe: one a thread.
 */
final class FitResiduals implements Residuals {
    static final double EVERY = 5.0; // s
    /** What the model is taken to miss by, K. */
    static final double COOLANT_SIGMA = 1.5;

    static final double OIL_SIGMA = 3.0;
    /** Correlation time used in the fit, s; the covariance is scaled to the time found in the residuals afterwards. */
    static final double CORRELATION_TIME = 40.0;
    /** Nothing is fitted before this, s: key-on and first readings. */
    private static final double FIRST = 5.0;

    private final Unknowns unknowns;
    private final List<RunData> runs;
    private final boolean useOil;
    private final double[][] coolant;
    private final double[][] oil;
    private final int size;

    FitResiduals(Unknowns unknowns, List<RunData> runs, boolean useOil) {
        this.unknowns = unknowns;
        this.runs = runs;
        this.useOil = useOil;
        this.coolant = new double[runs.size()][];
        this.oil = new double[runs.size()][];
        int count = 0;
        for (int i = 0; i < runs.size(); i++) {
            RunData run = runs.get(i);
            coolant[i] = new double[run.size()];
            oil[i] = new double[run.size()];
            int stride = stride(run);
            for (int row = 0; row < run.size(); row += stride) {
                count += counts(run, row) ? 1 : 0;
                count += countsOil(run, row) ? 1 : 0;
            }
        }
        this.size = count;
    }

    private static int stride(RunData run) {
        return Math.max(1, (int) Math.round(EVERY / run.step()));
    }

    private static boolean counts(RunData run, int row) {
        return run.time()[row] >= Math.max(0.0, run.time()[0]) + FIRST && !Double.isNaN(run.coolant()[row]);
    }

    private boolean countsOil(RunData run, int row) {
        return useOil && counts(run, row) && !Double.isNaN(run.oil()[row]);
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public void residuals(double[] z, double[] out) {
        Plant plant = unknowns.plant(z);
        double share = Math.sqrt(EVERY / (2.0 * CORRELATION_TIME));
        int at = 0;
        for (int i = 0; i < runs.size(); i++) {
            RunData run = runs.get(i);
            Simulation.run(unknowns, plant, z, run, Branches.plain(run, unknowns.heaterByHabit()), coolant[i], oil[i]);
            int stride = stride(run);
            for (int row = 0; row < run.size(); row += stride) {
                if (counts(run, row)) {
                    out[at++] = share * (coolant[i][row] - run.coolant()[row]) / COOLANT_SIGMA;
                }
                if (countsOil(run, row)) {
                    out[at++] = share * (oil[i][row] - run.oil()[row]) / OIL_SIGMA;
                }
            }
        }
    }
}
