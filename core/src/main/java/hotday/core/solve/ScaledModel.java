package hotday.core.solve;

import hotday.core.solve.FitOptions.Difference;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.ValueAndJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * The residuals as the solver sees them: parameters counted from their origin in units of their scale, priors as further
 * residuals, derivatives by differences. Remembers the last values and the last Jacobian, because the solver asks for
 * the same point several times, and the best point seen.
 *
 * <p>Every column of the Jacobian is made by one thread from the same base, so the number of threads changes nothing.
 */
final class ScaledModel implements ValueAndJacobianFunction, AutoCloseable {
    /** Stands for residuals that could not be computed: so large that no step to it is ever accepted. */
    private static final double REFUSED = 1e120;

    private static final double PRIOR_STEP = 0.05;
    private static final double FORWARD_STEP = Math.sqrt(Math.ulp(1.0));
    private static final double CENTRAL_STEP = Math.cbrt(Math.ulp(1.0));
    /** Relative steps shrink with the parameter, but not below this share of its scale. */
    private static final double STEP_FLOOR = 1e-3;

    private final List<Parameter> parameters;
    private final int[] priors;
    private final Difference difference;
    private final BooleanSupplier cancelled;
    private final List<Residuals> models = new ArrayList<>();
    private final Workers workers;
    private final AtomicInteger evaluations = new AtomicInteger();
    private final int size;

    private double[] valuePoint = {};
    private double[] values = {};
    private double[] jacobianPoint = {};
    private double[][] jacobian = {};
    private double[] bestPoint = {};
    private double[] bestValues = {};
    private double bestCost = Double.POSITIVE_INFINITY;

    ScaledModel(Supplier<? extends Residuals> factory, List<Parameter> parameters, FitOptions options) {
        this.parameters = List.copyOf(parameters);
        this.difference = options.difference();
        this.cancelled = options.cancelled();
        this.priors = IntStream.range(0, parameters.size())
                .filter(i -> parameters.get(i).hasPrior())
                .toArray();
        int count = Math.max(1, Math.min(options.threads(), parameters.size()));
        for (int i = 0; i < count; i++) {
            models.add(factory.get());
        }
        this.size = models.get(0).size();
        this.workers = new Workers(count);
    }

    int evaluations() {
        return evaluations.get();
    }

    /** Residuals of the data. */
    int dataSize() {
        return size;
    }

    /** Residuals of data and priors. */
    int size() {
        return size + priors.length;
    }

    double bestCost() {
        return bestCost;
    }

    double[] bestPoint() {
        return bestPoint;
    }

    double[] bestValues() {
        return bestValues;
    }

    double[] start() {
        double[] point = new double[parameters.size()];
        for (int i = 0; i < point.length; i++) {
            Parameter p = parameters.get(i);
            point[i] = (p.start() - p.origin()) / p.scale();
        }
        return point;
    }

    /** Back to the units of the parameters. */
    double[] physical(double[] point) {
        double[] out = new double[point.length];
        for (int i = 0; i < out.length; i++) {
            Parameter p = parameters.get(i);
            out[i] = p.origin() + p.scale() * point[i];
        }
        return out;
    }

    @Override
    public Pair<RealVector, RealMatrix> value(RealVector point) {
        double[] p = point.toArray();
        return new Pair<>(computeValue(p), computeJacobian(p));
    }

    @Override
    public RealVector computeValue(double[] point) {
        return new ArrayRealVector(valuesAt(point), true);
    }

    @Override
    public RealMatrix computeJacobian(double[] point) {
        return new Array2DRowRealMatrix(jacobianAt(point), true);
    }

    /** Data residuals first, then one for every prior. */
    double[] valuesAt(double[] point) {
        if (!Arrays.equals(point, valuePoint)) {
            values = evaluate(point);
            valuePoint = point.clone();
            remember();
        }
        return values;
    }

    private double[] evaluate(double[] point) {
        double[] out = new double[size];
        double[] p = physical(point);
        if (allFinite(p)) {
            count();
            models.get(0).residuals(p, out);
        } else {
            Arrays.fill(out, Double.NaN);
        }
        double[] all = Arrays.copyOf(out, size());
        if (!allFinite(out)) {
            Arrays.fill(all, REFUSED);
            return all;
        }
        for (int i = 0; i < priors.length; i++) {
            all[size + i] = point[priors[i]];
        }
        return all;
    }

    private void remember() {
        double cost = squares(values, values.length);
        if (cost < bestCost && cost < REFUSED) {
            bestCost = cost;
            bestPoint = valuePoint.clone();
            bestValues = values.clone();
        }
    }

    double[][] jacobianAt(double[] point) {
        if (!Arrays.equals(point, jacobianPoint)) {
            double[] base = valuesAt(point);
            double[] p = physical(point);
            double[][] rows = new double[size()][point.length];
            for (int i = 0; i < priors.length; i++) {
                rows[size + i][priors[i]] = 1;
            }
            columns(p, base, rows);
            jacobian = rows;
            jacobianPoint = point.clone();
        }
        return jacobian;
    }

    private void columns(double[] p, double[] base, double[][] rows) {
        AtomicInteger next = new AtomicInteger();
        List<Runnable> pieces = new ArrayList<>();
        for (Residuals model : models) {
            pieces.add(() -> {
                for (int j = next.getAndIncrement(); j < p.length; j = next.getAndIncrement()) {
                    column(model, p.clone(), base, j, rows);
                }
            });
        }
        workers.all(pieces);
    }

    /** One column; a side on which the model fails is left out, and without any side the parameter has no slope. */
    private void column(Residuals model, double[] p, double[] base, int j, double[][] rows) {
        double at = p[j];
        double step = step(j, at);
        double[] above = new double[size];
        double[] below = new double[size];
        boolean hasAbove = side(model, p, j, at + step, base, above);
        boolean wantsBelow = difference == Difference.CENTRAL || !hasAbove;
        boolean hasBelow = wantsBelow && side(model, p, j, at - step, base, below);
        double high = hasAbove ? at + step : at;
        double low = hasBelow ? at - step : at;
        double perUnit = high > low ? parameters.get(j).scale() / (high - low) : 0;
        for (int i = 0; i < size; i++) {
            double up = hasAbove ? above[i] : base[i];
            double down = hasBelow ? below[i] : base[i];
            double slope = (up - down) * perUnit;
            rows[i][j] = Double.isFinite(slope) ? slope : 0;
        }
    }

    private boolean side(Residuals model, double[] p, int j, double moved, double[] base, double[] out) {
        double kept = p[j];
        System.arraycopy(base, 0, out, 0, size);
        p[j] = moved;
        count();
        model.moved(p, j, out);
        p[j] = kept;
        return allFinite(out);
    }

    private double step(int j, double at) {
        Parameter p = parameters.get(j);
        if (p.step() > 0) {
            return p.step();
        }
        if (p.hasPrior()) {
            return PRIOR_STEP * p.priorSd();
        }
        double relative = difference == Difference.CENTRAL ? CENTRAL_STEP : FORWARD_STEP;
        return relative * Math.max(Math.abs(at), STEP_FLOOR * p.scale());
    }

    private void count() {
        if (cancelled.getAsBoolean()) {
            throw new Workers.Stopped();
        }
        evaluations.incrementAndGet();
    }

    static double squares(double[] values, int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += values[i] * values[i];
        }
        return sum;
    }

    private static boolean allFinite(double[] values) {
        for (double v : values) {
            if (!Double.isFinite(v)) {
                return false;
            }
        }
        return true;
    }

    @Override
    public void close() {
        workers.close();
    }
}
