package hotday.vehicle.controller;

import java.util.Arrays;

/**
 * Straight lines through whole-number points, ends held. Division truncates toward zero, as in Java and C99. Immutable.
 */
public final class DemandCurve {
    /** Largest demand, 0.01 %. */
    public static final int FULL = 10_000;

    /** Keeps (y1 - y0) * (x - x0) inside 32 bits. */
    private static final int LARGEST_X = 100_000;

    private final int[] x;
    private final int[] y;

    private DemandCurve(int[] x, int[] y) {
        this.x = x;
        this.y = y;
    }

    /**
     * A curve through points.
     *
     * @param points pairs {x, y}: x strictly rising, -100000..100000; y a demand of 0..10000 in 0.01 %; at least one
     */
    public static DemandCurve of(int[]... points) {
        if (points.length == 0) {
            throw new IllegalArgumentException("a demand curve needs at least one point");
        }
        int[] x = new int[points.length];
        int[] y = new int[points.length];
        for (int i = 0; i < points.length; i++) {
            x[i] = Bounds.inside("x of point " + (i + 1), points[i][0], -LARGEST_X, LARGEST_X);
            y[i] = Bounds.inside("demand of point " + (i + 1), points[i][1], 0, FULL);
            if (i > 0 && x[i] <= x[i - 1]) {
                throw new IllegalArgumentException(
                        "x must rise: point " + (i + 1) + " is at " + x[i] + " after " + x[i - 1]);
            }
        }
        checkSpan(x);
        return new DemandCurve(x, y);
    }

    private static void checkSpan(int[] x) {
        Bounds.inside("span of x", x[x.length - 1] - x[0], 0, LARGEST_X);
    }

    /** The same demand everywhere. */
    public static DemandCurve constant(int demand) {
        return of(new int[] {0, demand});
    }

    /** Demand in 0.01 %. */
    public int demand(int at) {
        int last = x.length - 1;
        if (at <= x[0]) {
            return y[0];
        }
        if (at >= x[last]) {
            return y[last];
        }
        int i = 0;
        while (at >= x[i + 1]) {
            i++;
        }
        return y[i] + (y[i + 1] - y[i]) * (at - x[i]) / (x[i + 1] - x[i]);
    }

    /** The straight lines themselves, not in whole numbers: for looking ahead, never for the controller. 0.01 %. */
    public double between(double at) {
        int last = x.length - 1;
        if (at <= x[0]) {
            return y[0];
        }
        if (at >= x[last]) {
            return y[last];
        }
        int i = 0;
        while (at >= x[i + 1]) {
            i++;
        }
        return y[i] + (y[i + 1] - y[i]) * (at - x[i]) / (x[i + 1] - x[i]);
    }

    /** Number of points. */
    public int size() {
        return x.length;
    }

    public int x(int point) {
        return x[point];
    }

    public int y(int point) {
        return y[point];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DemandCurve c && Arrays.equals(x, c.x) && Arrays.equals(y, c.y);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(x) + Arrays.hashCode(y);
    }

    @Override
    public String toString() {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < x.length; i++) {
            out.append(i == 0 ? "[" : ", [")
                    .append(x[i])
                    .append(", ")
                    .append(y[i])
                    .append(']');
        }
        return out.toString();
    }
}
