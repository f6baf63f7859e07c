package hotday.study.design;

import hotday.core.unit.Unit;
import java.util.Arrays;
import java.util.List;

/**
 * A demand curve as a table of break points on the steps of an axis.
 *
 * @param unit of the axis
 * @param x rising, in that unit, on its steps
 * @param demand percent, whole
 * @param error largest distance from the curve between its ends, 0..1 of demand
 */
public record CurveTable(Unit unit, List<Double> x, List<Integer> demand, double error) {
    private static final int MOST_STEPS = 600;

    public CurveTable {
        x = List.copyOf(x);
        demand = List.copyOf(demand);
    }

    /**
     * The table with the least largest error, by dynamic programming over the steps of the axis.
     *
     * @param curve x in SI, rising
     * @param demand 0..1
     * @param points how many the controller has, at least 2
     * @param step of the axis, in its unit
     * @throws IllegalArgumentException when the axis has fewer steps than points, or too many of them
     */
    public static CurveTable of(List<Double> curve, List<Double> demand, Unit unit, int points, double step) {
        double first = Math.floor(unit.fromSi(curve.get(0)) / step + 1e-9);
        double last = Math.ceil(unit.fromSi(curve.get(curve.size() - 1)) / step - 1e-9);
        int ticks = (int) (last - first) + 1;
        if (points < 2 || ticks < points || ticks > MOST_STEPS) {
            throw new IllegalArgumentException(points + " break points do not fit on an axis of " + ticks + " steps of "
                    + step + " " + unit.symbol() + " (2 to " + MOST_STEPS + " steps, at least as many as points)");
        }
        double[] wanted = new double[ticks];
        for (int i = 0; i < ticks; i++) {
            wanted[i] = at(curve, demand, unit.toSi((first + i) * step));
        }
        int[] chosen = chosen(wanted, points);
        double error = 0.0;
        for (int i = 1; i < chosen.length; i++) {
            error = Math.max(error, error(wanted, chosen[i - 1], chosen[i]));
        }
        return new CurveTable(
                unit,
                Arrays.stream(chosen).mapToObj(i -> (first + i) * step).toList(),
                Arrays.stream(chosen).mapToObj(i -> percent(wanted[i])).toList(),
                error);
    }

    private static int percent(double share) {
        return (int) Math.round(100 * share);
    }

    /** Straight between points, held beyond. */
    static double at(List<Double> x, List<Double> y, double value) {
        int n = x.size() - 1;
        if (value <= x.get(0) || n == 0) {
            return y.get(0);
        }
        int i = 1;
        while (i < n && value > x.get(i)) {
            i++;
        }
        if (value >= x.get(n)) {
            return y.get(n);
        }
        return y.get(i - 1) + (y.get(i) - y.get(i - 1)) * (value - x.get(i - 1)) / (x.get(i) - x.get(i - 1));
    }

    /** Largest distance on the steps between two of them, ends rounded to whole percent. */
    private static double error(double[] wanted, int from, int to) {
        double low = percent(wanted[from]) / 100.0;
        double high = percent(wanted[to]) / 100.0;
        double worst = 0.0;
        for (int i = from; i <= to; i++) {
            double straight = low + (high - low) * (i - from) / (to - from);
            worst = Math.max(worst, Math.abs(straight - wanted[i]));
        }
        return worst;
    }

    /** Steps whose straight lines miss the curve least: best[k][i] is the least error with k lines that end at i. */
    private static int[] chosen(double[] wanted, int points) {
        int n = wanted.length;
        double[][] best = new double[points][n];
        int[][] from = new int[points][n];
        for (double[] row : best) {
            Arrays.fill(row, Double.MAX_VALUE);
        }
        best[0][0] = 0.0;
        for (int k = 1; k < points; k++) {
            for (int to = k; to < n; to++) {
                for (int start = k - 1; start < to; start++) {
                    double worst = best[k - 1][start] == Double.MAX_VALUE
                            ? Double.MAX_VALUE
                            : Math.max(best[k - 1][start], error(wanted, start, to));
                    if (worst < best[k][to]) {
                        best[k][to] = worst;
                        from[k][to] = start;
                    }
                }
            }
        }
        int[] chosen = new int[points];
        chosen[points - 1] = n - 1;
        for (int k = points - 1; k > 0; k--) {
            chosen[k - 1] = from[k][chosen[k]];
        }
        return chosen;
    }

    /** Axis in SI. */
    public List<Double> si() {
        return x.stream().map(unit::toSi).toList();
    }

    /** Demand, 0..1. */
    public List<Double> shares() {
        return demand.stream().map(d -> d / 100.0).toList();
    }
}
