package hotday.core.solve;

/**
 * LU factors with partial pivoting of a small dense matrix on the caller's arrays: row-major, in place, no allocation.
 * For the Newton steps inside a time step, where n is a dozen or two. Thread-safe: no state of its own.
 */
public final class DenseLu {
    private DenseLu() {}

    /**
     * Overwrites {@code a} with its factors: unit lower triangle below the diagonal, upper triangle on and above it.
     *
     * @param a n x n, row-major
     * @param n rows
     * @param pivot filled with the row taken at each step
     * @return false when a pivot is zero or not finite: the matrix is singular and {@code a} is spoilt
     */
    public static boolean factor(double[] a, int n, int[] pivot) {
        for (int k = 0; k < n; k++) {
            int p = largest(a, n, k);
            pivot[k] = p;
            double head = a[p * n + k];
            if (head == 0 || !Double.isFinite(head)) {
                return false;
            }
            if (p != k) {
                swapRows(a, n, p, k);
            }
            eliminate(a, n, k, head);
        }
        return true;
    }

    /** Solves with the factors of {@link #factor}; {@code b} becomes the solution. */
    public static void solve(double[] a, int n, int[] pivot, double[] b) {
        for (int k = 0; k < n; k++) {
            int p = pivot[k];
            double value = b[p];
            b[p] = b[k];
            b[k] = value;
        }
        for (int i = 1; i < n; i++) {
            double sum = b[i];
            int row = i * n;
            for (int j = 0; j < i; j++) {
                sum -= a[row + j] * b[j];
            }
            b[i] = sum;
        }
        for (int i = n - 1; i >= 0; i--) {
            double sum = b[i];
            int row = i * n;
            for (int j = i + 1; j < n; j++) {
                sum -= a[row + j] * b[j];
            }
            b[i] = sum / a[row + i];
        }
    }

    private static int largest(double[] a, int n, int k) {
        int p = k;
        double best = Math.abs(a[k * n + k]);
        for (int i = k + 1; i < n; i++) {
            double size = Math.abs(a[i * n + k]);
            if (size > best) {
                best = size;
                p = i;
            }
        }
        return p;
    }

    private static void swapRows(double[] a, int n, int p, int k) {
        for (int j = 0; j < n; j++) {
            double value = a[p * n + j];
            a[p * n + j] = a[k * n + j];
            a[k * n + j] = value;
        }
    }

    private static void eliminate(double[] a, int n, int k, double head) {
        int top = k * n;
        for (int i = k + 1; i < n; i++) {
            int row = i * n;
            double factor = a[row + k] / head;
            a[row + k] = factor;
            if (factor != 0) {
                for (int j = k + 1; j < n; j++) {
                    a[row + j] -= factor * a[top + j];
                }
            }
        }
    }
}
