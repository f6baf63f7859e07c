package hotday.study.prove;

import hotday.core.solve.Fit;
import hotday.core.solve.FitOptions;
import hotday.core.solve.LeastSquares;
import hotday.core.solve.Parameter;
import hotday.core.solve.PriorSearch;
import hotday.vehicle.plant.Plant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.random.Well19937c;

/**
 * The vehicle after the fit: best unknowns, how sure they are, and what the model is known to miss.
 *
 * @param unknowns what was fitted
 * @param z best vector, in prior standard deviations
 * @param posteriorSd of each, in prior standard deviations: near 1 when the runs said nothing
 * @param factor lower triangle; {@code z + factor * n} with n standard normal draws from the posterior
 * @param trainingRmse coolant, over the fit runs, K
 * @param correlationTime of the coolant residuals, s
 * @param discrepancy standard deviation of what an unseen run will show beyond the parameters, K
 * @param oilDiscrepancy the same of oil, K; NaN where oil was not fitted
 * @param cost of the fit, sum of squares with priors
 * @param converged whether the descent ended by itself
 * @param evaluations model runs spent
 */
record FittedVehicle(
        Unknowns unknowns,
        double[] z,
        double[] posteriorSd,
        double[][] factor,
        double trainingRmse,
        double correlationTime,
        double discrepancy,
        double oilDiscrepancy,
        double cost,
        boolean converged,
        int evaluations) {

    /** Unseen runs miss by more than fitted ones; factor from a study on open chassis-dynamometer recordings. */
    private static final double UNSEEN_OVER_FITTED = 1.3;
    /** What a reading is taken to miss by at least, K: gauges show whole degrees, no loop is that simple; more than the fit weighs with is the discrepancy's. */
    private static final double LEAST_SCATTER = 1.3;
    /** Least discrepancy, K: nobody knows a coolant loop better. */
    private static final double LEAST_DISCREPANCY = 1.0;
    /** Difference step in prior standard deviations: below about 0.03 switching noise shows, above 0.1 curvature. */
    private static final double STEP = 0.05;

    private static final double LARGEST_DRAW = 3.0;
    /** Best draws that are followed down to the end. */
    private static final int STARTS = 2;
    /**
     * Where fuel is worked out descents end in valleys far apart: more draws are followed for a few steps, the lowest alone to the
     * end.
     */
    private static final int MANY_STARTS = 10;

    private static final int FIRST_STEPS = 6;
    /** What the model misses before any run has shown it, K; about what fitted runs of open recordings show. */
    private static final double SHEET_DISCREPANCY = 2.5;

    /** The sheet as it stands, with the engineer's doubt about it: what is known before any run. */
    static FittedVehicle ofSheet(Unknowns unknowns) {
        int n = unknowns.size();
        double[] sd = new double[n];
        Arrays.fill(sd, 1.0);
        return new FittedVehicle(
                unknowns,
                new double[n],
                sd,
                MatrixUtils.createRealIdentityMatrix(n).getData(),
                Double.NaN,
                FitResiduals.CORRELATION_TIME,
                SHEET_DISCREPANCY,
                Double.NaN,
                0.0,
                true,
                0);
    }

    /**
     * Fits the runs.
     *
     * @param draws prior draws tried as starts before descending
     */
    static FittedVehicle fit(
            Unknowns unknowns, List<RunData> runs, boolean useOil, int draws, long seed, FitOptions options) {
        List<Parameter> parameters = new ArrayList<>();
        for (Unknown unknown : unknowns.all()) {
            parameters.add(new Parameter(unknown.id(), 0.0, 0.0, 1.0, STEP));
        }
        Supplier<FitResiduals> model = () -> new FitResiduals(unknowns, runs, useOil);
        boolean rugged = unknowns.fuelWorkedOut();
        List<PriorSearch.Start> found = PriorSearch.best(
                model, parameters, draws, rugged ? MANY_STARTS : STARTS, seed, options.threads(), options.cancelled());
        if (!rugged) {
            return assess(unknowns, runs, useOil, lowest(model, parameters, found, options));
        }
        FitOptions few = options.withMaxIterations(FIRST_STEPS).withDifference(FitOptions.Difference.FORWARD);
        double[] start = lowest(model, parameters, found, few).parameters();
        return assess(unknowns, runs, useOil, LeastSquares.fit(model, from(parameters, start), options));
    }

    /** Fits on from a fit, after something about the runs has been understood better. */
    static FittedVehicle fitOn(FittedVehicle from, List<RunData> runs, boolean useOil, FitOptions options) {
        List<Parameter> parameters = new ArrayList<>();
        for (Unknown unknown : from.unknowns().all()) {
            parameters.add(new Parameter(unknown.id(), 0.0, 0.0, 1.0, STEP));
        }
        Supplier<FitResiduals> model = () -> new FitResiduals(from.unknowns(), runs, useOil);
        return assess(from.unknowns(), runs, useOil, LeastSquares.fit(model, from(parameters, from.z()), options));
    }

    private static Fit lowest(
            Supplier<FitResiduals> model,
            List<Parameter> parameters,
            List<PriorSearch.Start> found,
            FitOptions options) {
        Fit lowest = null;
        for (PriorSearch.Start start : found) {
            Fit fit = LeastSquares.fit(model, from(parameters, start.parameters()), options);
            if (lowest == null || fit.cost() < lowest.cost()) {
                lowest = fit;
            }
        }
        return lowest;
    }

    private static List<Parameter> from(List<Parameter> parameters, double[] start) {
        List<Parameter> from = new ArrayList<>();
        for (int i = 0; i < start.length; i++) {
            double z = Math.max(-LARGEST_DRAW, Math.min(LARGEST_DRAW, start[i]));
            from.add(parameters.get(i).withStart(z));
        }
        return from;
    }

    private static FittedVehicle assess(Unknowns unknowns, List<RunData> runs, boolean useOil, Fit fit) {
        double[] z = fit.parameters();
        List<List<double[]>> missed = residuals(unknowns, z, runs);
        List<double[]> residuals = missed.get(0);
        double rmse = rms(residuals);
        double tau = correlationTime(residuals);
        double left = Math.max(LEAST_SCATTER, Math.min(rmse, FitResiduals.COOLANT_SIGMA));
        double scatter = FitResiduals.COOLANT_SIGMA / left;
        RealMatrix covariance = covariance(fit, scatter * scatter * FitResiduals.CORRELATION_TIME / tau);
        double[] sd = new double[z.length];
        for (int i = 0; i < sd.length; i++) {
            sd[i] = Math.sqrt(covariance.getEntry(i, i));
        }
        return new FittedVehicle(
                unknowns,
                z,
                sd,
                new CholeskyDecomposition(covariance, 1e-9, 1e-14).getL().getData(),
                rmse,
                tau,
                Math.max(LEAST_DISCREPANCY, UNSEEN_OVER_FITTED * rmse),
                useOil ? Math.max(LEAST_DISCREPANCY, UNSEEN_OVER_FITTED * rms(missed.get(1))) : Double.NaN,
                fit.cost(),
                fit.converged(),
                fit.evaluations());
    }

    /** Inverse of (scaled data information + unit prior). */
    private static RealMatrix covariance(Fit fit, double scale) {
        RealMatrix h = new Array2DRowRealMatrix(fit.information()).scalarMultiply(scale);
        h = h.add(MatrixUtils.createRealIdentityMatrix(h.getRowDimension()));
        RealMatrix inverse = MatrixUtils.inverse(h);
        return inverse.add(inverse.transpose()).scalarMultiply(0.5);
    }

    /** Root mean square over all runs, K; 0 without samples. */
    private static double rms(List<double[]> residuals) {
        double squares = 0.0;
        int n = 0;
        for (double[] r : residuals) {
            for (double v : r) {
                squares += v * v;
            }
            n += r.length;
        }
        return Math.sqrt(squares / Math.max(1, n));
    }

    /** Model less measured run by run: of coolant first, then of oil. */
    private static List<List<double[]>> residuals(Unknowns unknowns, double[] z, List<RunData> runs) {
        List<double[]> ofCoolant = new ArrayList<>();
        List<double[]> ofOil = new ArrayList<>();
        Plant plant = unknowns.plant(z);
        for (RunData run : runs) {
            double[] coolant = new double[run.size()];
            double[] oil = new double[run.size()];
            Simulation.run(unknowns, plant, z, run, Branches.plain(run, unknowns.heaterByHabit()), coolant, oil);
            ofCoolant.add(residuals(run, coolant, run.coolant()));
            ofOil.add(residuals(run, oil, run.oil()));
        }
        return List.of(ofCoolant, ofOil);
    }

    private static double[] residuals(RunData run, double[] model, double[] measured) {
        int stride = Math.max(1, (int) Math.round(FitResiduals.EVERY / run.step()));
        return IntStream.iterate(0, i -> i < run.size(), i -> i + stride)
                .filter(i -> run.time()[i] >= run.scoredFrom())
                .mapToDouble(i -> model[i] - measured[i])
                .filter(error -> !Double.isNaN(error))
                .toArray();
    }

    /** Whether the fit saw oil. */
    boolean oilFitted() {
        return !Double.isNaN(oilDiscrepancy);
    }

    /** Integral correlation time of the residuals, s: sum of the autocorrelation up to its first negative value. */
    static double correlationTime(List<double[]> residuals) {
        double total = 0.0;
        for (double[] r : residuals) {
            for (double v : r) {
                total += v * v;
            }
        }
        double time = 0.5 * FitResiduals.EVERY;
        for (int lag = 1; lag < 200 && total > 0.0; lag++) {
            double sum = 0.0;
            for (double[] r : residuals) {
                for (int i = lag; i < r.length; i++) {
                    sum += r[i] * r[i - lag];
                }
            }
            double correlation = sum / total;
            if (correlation <= 0.0) {
                break;
            }
            time += correlation * FitResiduals.EVERY;
        }
        return Math.max(FitResiduals.CORRELATION_TIME, time);
    }

    /** A draw from the posterior, reproducible from its generator. */
    double[] draw(Well19937c random) {
        int n = z.length;
        double[] normal = new double[n];
        for (int i = 0; i < n; i++) {
            normal[i] = random.nextGaussian();
        }
        return at(normal);
    }

    /**
     * The draw that goes with standard normal numbers.
     *
     * @param normal at least one for each unknown
     */
    double[] at(double[] normal) {
        int n = z.length;
        double[] out = z.clone();
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                out[i] += factor[i][j] * normal[j];
            }
        }
        return out;
    }
}
