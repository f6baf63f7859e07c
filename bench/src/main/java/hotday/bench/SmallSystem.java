package hotday.bench;

import hotday.core.solve.DenseLu;
import java.util.concurrent.TimeUnit;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Factor and solve of a small dense system: own factors in place, and Hipparchus' with its matrices. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SmallSystem {
    @Param({"7", "12", "24"})
    private int unknowns;

    private double[] entries;
    private double[] right;
    private double[] factors;
    private double[] answer;
    private int[] pivot;
    private RealMatrix matrix;
    private RealVector vector;

    /** Node balances of a network: every node touches every other a little. */
    @Setup
    public void prepare() {
        entries = new double[unknowns * unknowns];
        right = new double[unknowns];
        matrix = new Array2DRowRealMatrix(unknowns, unknowns);
        for (int i = 0; i < unknowns; i++) {
            right[i] = 1.0 + i;
            for (int j = 0; j < unknowns; j++) {
                double entry = i == j ? unknowns : -1.0 / (1 + i + j);
                entries[i * unknowns + j] = entry;
                matrix.setEntry(i, j, entry);
            }
        }
        vector = new ArrayRealVector(right);
        factors = new double[entries.length];
        answer = new double[unknowns];
        pivot = new int[unknowns];
    }

    /** The product. */
    @Benchmark
    public double own() {
        System.arraycopy(entries, 0, factors, 0, entries.length);
        System.arraycopy(right, 0, answer, 0, unknowns);
        DenseLu.factor(factors, unknowns, pivot);
        DenseLu.solve(factors, unknowns, pivot, answer);
        return answer[0];
    }

    /** The peer. */
    @Benchmark
    public double hipparchus() {
        return new LUDecomposition(matrix).getSolver().solve(vector).getEntry(0);
    }
}
