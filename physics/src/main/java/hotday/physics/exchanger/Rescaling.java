package hotday.physics.exchanger;

import hotday.core.solve.Bracket;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One factor on the conductance of a core, so that marched under even air it gives the tested heat. With several points the factor with the
 * least sum of squared relative misfits. For building a model, not for time loops (it allocates).
 */
public final class Rescaling {
    private static final double INFINITE = 1e6;
    private static final double WIDEST = Math.log(1e3);
    private static final double TOLERANCE = 1e-12;
    private static final double DIFFERENCE = 1e-4;
    private static final int MOST_EVALUATIONS = 200;

    private final LiquidMarch march;
    private final double[] rates;
    private final double[] air;

    public Rescaling(Passes passes) {
        march = new LiquidMarch(passes, TileLaw.TUBE_MIXED);
        rates = new double[passes.footprint().face().tiles()];
        air = new double[rates.length];
    }

    /**
     * What came out.
     *
     * @param factor on the overall conductance
     * @param misfits of the points in their order: marched heat over tested heat less 1
     */
    public record Scale(double factor, List<Double> misfits) {
        public Scale {
            misfits = List.copyOf(misfits);
        }
    }

    /** Heat of the marched core with a factor on its conductance, W. */
    public double heat(TestPoint point, double factor) {
        march.passes().spread(point.airRate(), rates);
        march.passes().spread(factor * point.airConductance(), march.airConductance());
        march.passes().spread(factor * point.liquidConductance(), march.liquidConductance());
        Arrays.fill(air, 0.0);
        march.flow(point.liquidRate(), point.inletDifference());
        march.march(rates, air);
        return march.heat();
    }

    /** The most that the flows of a point can exchange in this core, however good it is, W. */
    public double most(TestPoint point) {
        return heat(point, INFINITE);
    }

    /** The factor that meets one point; empty when its flows cannot exchange its heat, or the factor lies outside 0.001..1000. */
    public OptionalDouble factor(TestPoint point) {
        Bracket.Root root =
                Bracket.root(log -> misfit(point, Math.exp(log)), -WIDEST, WIDEST, TOLERANCE, MOST_EVALUATIONS);
        return root.found() ? OptionalDouble.of(Math.exp(root.value())) : OptionalDouble.empty();
    }

    /**
     * The factor that meets all points best. Each point alone must be reachable, ask {@link #factor} first.
     *
     * @param points at least one
     */
    public Scale scale(List<TestPoint> points) {
        double[] single = points.stream()
                .mapToDouble(p -> factor(p)
                        .orElseThrow(() -> new IllegalArgumentException("test point: heat " + p.heat()
                                + " W cannot be met, the most these flows exchange is " + most(p) + " W")))
                .toArray();
        double low = Arrays.stream(single).min().orElseThrow();
        double high = Arrays.stream(single).max().orElseThrow();
        double log = low == high ? Math.log(low) : leastSquares(points, Math.log(low), Math.log(high));
        double factor = Math.exp(log);
        return new Scale(factor, points.stream().map(p -> misfit(p, factor)).toList());
    }

    private double misfit(TestPoint point, double factor) {
        return heat(point, factor) / point.heat() - 1.0;
    }

    /** Below the lowest single factor all points lie below, so the sum falls; above the highest it grows: the slope changes sign between. */
    private double leastSquares(List<TestPoint> points, double low, double high) {
        return Bracket.root(log -> slope(points, log), low, high, TOLERANCE, MOST_EVALUATIONS)
                .value();
    }

    private double slope(List<TestPoint> points, double log) {
        double slope = 0;
        for (TestPoint p : points) {
            double up = misfit(p, Math.exp(log + DIFFERENCE));
            double down = misfit(p, Math.exp(log - DIFFERENCE));
            slope += misfit(p, Math.exp(log)) * (up - down);
        }
        return slope;
    }
}
