package hotday.core.table;

import java.util.Arrays;
import java.util.List;

/**
 * Straight lines through points with rising x; beyond the ends the end values hold. Immutable; {@link #value} allocates
 * nothing. Units are the caller's.
 */
public final class Curve {
    private final double[] x;
    private final double[] y;

    private Curve(double[] x, double[] y) {
        this.x = x;
        this.y = y;
    }

    /**
     * A curve through points.
     *
     * @param x strictly rising, finite, at least one point
     * @param y finite, as many as {@code x}
     */
    public static Curve of(double[] x, double[] y) {
        if (x.length == 0 || x.length != y.length) {
            throw new IllegalArgumentException(
                    "a curve needs as many x as y, at least one; there are " + x.length + " x and " + y.length + " y");
        }
        for (int i = 0; i < x.length; i++) {
            if (!Double.isFinite(x[i]) || !Double.isFinite(y[i])) {
                throw new IllegalArgumentException("point " + (i + 1) + " (" + x[i] + ", " + y[i] + ") is not finite");
            }
            if (i > 0 && !(x[i] > x[i - 1])) {
                throw new IllegalArgumentException(
                        "x must rise: point " + (i + 1) + " is at " + x[i] + " after " + x[i - 1]);
            }
        }
        return new Curve(x.clone(), y.clone());
    }

    public static Curve of(List<Double> x, List<Double> y) {
        return of(
                x.stream().mapToDouble(Double::doubleValue).toArray(),
                y.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** y at {@code at}, ends held; NaN only for NaN. */
    public double value(double at) {
        int last = x.length - 1;
        if (at <= x[0]) {
            return y[0];
        }
        if (at >= x[last]) {
            return y[last];
        }
        int i = segment(at);
        return y[i] + (y[i + 1] - y[i]) * ((at - x[i]) / (x[i + 1] - x[i]));
    }

    /** dy/dx right of {@code at}; 0 outside the points. */
    public double slope(double at) {
        if (!(at >= x[0]) || at >= x[x.length - 1]) {
            return 0;
        }
        int i = segment(at);
        return (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
    }

    /** Number of points. */
    public int size() {
        return x.length;
    }

    public double x(int point) {
        return x[point];
    }

    public double y(int point) {
        return y[point];
    }

    /** Largest i with x[i] <= at, at most the last but one; 0 for NaN. */
    private int segment(double at) {
        int low = 0;
        int high = x.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (x[middle] <= at) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Curve c && Arrays.equals(x, c.x) && Arrays.equals(y, c.y);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(x) + Arrays.hashCode(y);
    }

    @Override
    public String toString() {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < x.length; i++) {
            out.append(i == 0 ? "" : " ")
                    .append('(')
                    .append(x[i])
                    .append(", ")
                    .append(y[i])
                    .append(')');
        }
        return out.toString();
    }
}
