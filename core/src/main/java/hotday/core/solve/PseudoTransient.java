package hotday.core.solve;

/**
 * Rest points of {@code dy/dt = f(y)} by pseudo-transient continuation (Kelley and Keyes, SIAM J. Numer. Anal. 35 (1998)
 * 508): linearly implicit steps whose length grows as the rates die away, which ends as Newton's method. Follows the real
 * way of the system where Newton alone would jump. One instance a thread; a solve allocates nothing.
 */
public final class PseudoTransient {
    /** What is to come to rest. */
    @FunctionalInterface
    public interface Rates {
        /** Writes the rates at {@code y} to {@code out}. */
        void of(double[] y, double[] out);
    }

    private static final double ENDLESS = 1e9; // s; a step that long is Newton's
    private static final double LONG = 1e6; // s; longer is as good as endless
    private static final double LONGEST_MOVE = 25.0; // in scales
    private static final double SHORTEST = 1e-3; // s
    private static final double SHORTEST_REACH =
            2.0; // in scales; halved while rates grow, not to jump a kink to and fro
    private static final double LONGER = 1.5; // reach after each step on which they do not
    private static final double AGAIN = 20.0; // s, after Newton's way failed
    private static final double GROWTH = 8.0; // of the step, halved each time Newton's way fails
    private static final double GAINING = 4.0; // at least, as long as rates die away
    private static final double SLOWEST_GROWTH = 1.3;
    private static final double FASTEST_SHRINKING = 0.2;
    private static final int NEWTON_STEPS = 12; // before its way counts as failed
    private static final int STEPS_BACK = 2; // with rates that grow, likewise
    private static final double RECOVERY = 1.5; // of growth, at each step that goes well
    private static final double CLOSE = 1e-9; // move in scales that ends the search
    private static final double SETTLING = 1e-3; // move in scales from which Newton's way is tried
    private static final double SLOW = 0.2; // contraction from which the slopes are taken anew

    private final int n;
    private final double[] low;
    private final double[] high;
    private final double[] scale;
    private final double[] matrix;
    private final int[] pivot;
    private final double[] f;
    private final double[] next;
    private final double[] trial;
    private final double[] move;
    private final int most;
    private boolean factored;
    private int evaluations;

    /**
     * @param low, high allowed values
     * @param scale change of each value that counts as one: convergence is 1e-9 of it, slopes are taken over 1e-5 of it
     * @param most iterations before giving up
     */
    public PseudoTransient(double[] low, double[] high, double[] scale, int most) {
        this.n = low.length;
        this.low = low.clone();
        this.high = high.clone();
        this.scale = scale.clone();
        this.most = most;
        this.matrix = new double[n * n];
        this.pivot = new int[n];
        this.f = new double[n];
        this.next = new double[n];
        this.trial = new double[n];
        this.move = new double[n];
    }

    /** Rate evaluations of the last solve. */
    public int evaluations() {
        return evaluations;
    }

    /** Forgets the slopes of the last solve. */
    public void forget() {
        factored = false;
    }

    /**
     * Moves {@code y} to rest.
     *
     * @param first pseudo time step, s: short from a far start; {@link Double#POSITIVE_INFINITY} from a close one, which gives up
     *     where Newton's way does not lead there
     * @return false when it did not come to rest; {@code y} is then where it got to
     */
    public boolean solve(Rates rates, double[] y, double first) {
        evaluations = 0;
        double dt = Math.min(ENDLESS, first);
        double growth = GROWTH;
        int newtonSteps = 0;
        int back = 0;
        double reach = LONGEST_MOVE;
        boolean near = dt >= ENDLESS;
        factored &= near;
        rate(rates, y, f);
        double before = size(f);
        double lastMove = Double.POSITIVE_INFINITY;
        for (int i = 0; i < most; i++) {
            if (!factored && !factor(rates, y, dt)) {
                return false;
            }
            System.arraycopy(f, 0, move, 0, n);
            DenseLu.solve(matrix, n, pivot, move);
            double moved = advance(y, reach);
            rate(rates, trial, next);
            double after = size(next);
            boolean newton = dt >= ENDLESS;
            boolean lost = !(after < Double.POSITIVE_INFINITY);
            back += newton && after > before && moved > SETTLING ? 1 : 0;
            if (lost || newtonSteps > NEWTON_STEPS || back > STEPS_BACK) {
                growth = Math.max(SLOWEST_GROWTH, 0.5 * growth);
                dt = newton ? AGAIN : Math.max(SHORTEST, 0.1 * dt);
                if (near) {
                    return false;
                }
                newtonSteps = 0;
                back = 0;
                factored = false;
                if (lost) {
                    continue;
                }
            }
            reach = after > before
                    ? Math.max(SHORTEST_REACH, 0.5 * Math.min(reach, moved))
                    : Math.min(LONGEST_MOVE, LONGER * reach);
            System.arraycopy(trial, 0, y, 0, n);
            System.arraycopy(next, 0, f, 0, n);
            if (newton && moved < CLOSE) {
                return true;
            }
            if (newton) {
                newtonSteps++;
                factored &= moved <= SLOW * lastMove;
            } else {
                double ratio = before / Math.max(after, Double.MIN_NORMAL);
                growth = ratio < 1.0 ? Math.max(SLOWEST_GROWTH, 0.6 * growth) : Math.min(GROWTH, RECOVERY * growth);
                dt *= Math.max(FASTEST_SHRINKING, Math.min(growth, ratio > 1.0 ? Math.max(GAINING, ratio) : ratio));
                dt = moved < SETTLING || dt > LONG ? ENDLESS : Math.max(SHORTEST, dt);
                factored = false;
            }
            lastMove = moved;
            before = after;
        }
        return false;
    }

    private void rate(Rates rates, double[] y, double[] out) {
        evaluations++;
        rates.of(y, out);
    }

    /** The largest rate in scales a second. */
    private double size(double[] rate) {
        double largest = 0.0;
        for (int i = 0; i < n; i++) {
            double r = Math.abs(rate[i]) / scale[i];
            if (!(r <= Double.MAX_VALUE)) {
                return Double.POSITIVE_INFINITY;
            }
            largest = Math.max(largest, r);
        }
        return largest;
    }

    /** Takes slopes by differences and factors 1/dt - slope. */
    private boolean factor(Rates rates, double[] y, double dt) {
        double[] a = matrix;
        System.arraycopy(y, 0, trial, 0, n);
        for (int j = 0; j < n; j++) {
            double h = 1e-5 * scale[j];
            h = y[j] + h > high[j] ? -h : h;
            trial[j] = y[j] + h;
            rate(rates, trial, next);
            double by = trial[j] - y[j];
            trial[j] = y[j];
            for (int i = 0; i < n; i++) {
                a[i * n + j] = -(next[i] - f[i]) / by;
            }
            a[j * n + j] += dt >= ENDLESS ? 0.0 : 1.0 / dt;
        }
        factored = DenseLu.factor(a, n, pivot);
        return factored;
    }

    /** Writes the moved values to {@code trial} and tells the largest move in scales; all moves shrink alike. */
    private double advance(double[] y, double reach) {
        double largest = 0.0;
        for (int i = 0; i < n; i++) {
            largest = Math.max(largest, Math.abs(move[i]) / scale[i]);
        }
        double limit = largest > reach ? reach / largest : 1.0;
        for (int i = 0; i < n; i++) {
            trial[i] = Math.max(low[i], Math.min(high[i], y[i] + limit * move[i]));
        }
        return largest;
    }
}
