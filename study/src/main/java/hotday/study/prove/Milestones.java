package hotday.study.prove;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The highest coolant of a run and when it reached levels, measured and over sample paths. */
final class Milestones {
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;
    private static final double[] LEVELS = {40.0, 60.0, 70.0, 80.0, 88.0}; // degC

    private final RunData run;

    Milestones(RunData run) {
        this.run = run;
    }

    /** @param paths coolant, K */
    RunReport.Peak peak(double[][] paths) {
        double[] peaks =
                Arrays.stream(paths).mapToDouble(this::highest).sorted().toArray();
        return new RunReport.Peak(
                highest(run.coolant()), Quantile.of(peaks, 0.5), Quantile.of(peaks, LOW), Quantile.of(peaks, HIGH));
    }

    /** Highest value of a trace from the scored start on, K; NaN without any. */
    double highest(double[] trace) {
        double highest = Double.NaN;
        for (int i = 0; i < trace.length; i++) {
            if (run.time()[i] >= run.scoredFrom() && !Double.isNaN(trace[i])) {
                highest = Double.isNaN(highest) ? trace[i] : Math.max(highest, trace[i]);
            }
        }
        return highest;
    }

    /** @param paths coolant, K */
    List<RunReport.Reach> reach(double[][] paths) {
        List<RunReport.Reach> all = new ArrayList<>();
        for (double level : LEVELS) {
            double kelvin = level + 273.15;
            double[] times = Arrays.stream(paths)
                    .mapToDouble(path -> firstAt(path, kelvin))
                    .map(t -> Double.isNaN(t) ? Double.POSITIVE_INFINITY : t)
                    .sorted()
                    .toArray();
            boolean starts = run.startCoolant() < kelvin;
            all.add(new RunReport.Reach(
                    kelvin,
                    starts ? firstAt(run.coolant(), kelvin) : Double.NaN,
                    starts ? finite(Quantile.of(times, 0.5)) : Double.NaN,
                    starts ? times[(int) (LOW * times.length)] : Double.NaN,
                    starts ? times[(int) (HIGH * times.length)] : Double.NaN));
        }
        return all;
    }

    private static double finite(double value) {
        return Double.isInfinite(value) ? Double.NaN : value;
    }

    private double firstAt(double[] trace, double level) {
        for (int i = 0; i < trace.length; i++) {
            if (run.time()[i] >= 0.0 && trace[i] >= level) {
                return run.time()[i];
            }
        }
        return Double.NaN;
    }
}
