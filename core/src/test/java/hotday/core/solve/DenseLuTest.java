package hotday.core.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DenseLuTest {
    /** Two backward-stable eliminations of a random matrix of order 30 differ by its condition times rounding. */
    private static final double RELATIVE = 1e-10;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 12, 30})
    void agreesWithHipparchus(int n) {
        Random random = new Random(n);
        for (int run = 0; run < 20; run++) {
            double[] a = random.doubles((long) n * n).map(v -> 2 * v - 1).toArray();
            double[] b = random.doubles(n).toArray();
            double[][] rows = new double[n][n];
            for (int i = 0; i < n; i++) {
                System.arraycopy(a, i * n, rows[i], 0, n);
            }
            double[] expected = new LUDecomposition(new Array2DRowRealMatrix(rows), 0)
                    .getSolver()
                    .solve(new ArrayRealVector(b))
                    .toArray();
            int[] pivot = new int[n];
            assertThat(DenseLu.factor(a, n, pivot)).isTrue();
            DenseLu.solve(a, n, pivot, b);
            double size = new ArrayRealVector(expected).getNorm();
            for (int i = 0; i < n; i++) {
                assertThat(b[i]).isCloseTo(expected[i], within(RELATIVE * size));
            }
        }
    }

    @Test
    void needsTheRowExchange() {
        double[] a = {0, 1, 2, 0};
        double[] b = {3, 4};
        int[] pivot = new int[2];
        assertThat(DenseLu.factor(a, 2, pivot)).isTrue();
        DenseLu.solve(a, 2, pivot, b);
        assertThat(b).containsExactly(2, 3);
    }

    @Test
    void tellsSingularAndBrokenMatrices() {
        int[] pivot = new int[2];
        assertThat(DenseLu.factor(new double[] {1, 2, 2, 4}, 2, pivot)).isFalse();
        assertThat(DenseLu.factor(new double[4], 2, pivot)).isFalse();
        assertThat(DenseLu.factor(new double[] {Double.NaN, 1, 1, 1}, 2, pivot)).isFalse();
        assertThat(DenseLu.factor(new double[] {1, 1, 1, Double.POSITIVE_INFINITY}, 2, pivot))
                .isFalse();
    }

    @Test
    void allocatesNothing() {
        var threads = (com.sun.management.ThreadMXBean) java.lang.management.ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        double[] kept = new Random(1).doubles(144).toArray();
        double[] a = new double[144];
        double[] b = new double[12];
        int[] pivot = new int[12];
        long before = 0;
        for (int i = 0; i < 20_000; i++) {
            if (i == 10_000) {
                before = threads.getThreadAllocatedBytes(id);
            }
            System.arraycopy(kept, 0, a, 0, a.length);
            DenseLu.factor(a, 12, pivot);
            DenseLu.solve(a, 12, pivot, b);
        }
        assertThat(threads.getThreadAllocatedBytes(id) - before).isLessThan(10_000);
    }
}
