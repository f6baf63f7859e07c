package hotday.study.prove;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Against the exact 5 % quantile of a sum of independent normal numbers: -1.6449 standard deviations (table of the normal distribution). */
class EvenDrawsTest {
    private static final int SIZE = 34;
    private static final int COUNT = 400;
    private static final int SEEDS = 100;

    @Test
    void everyNumberIsStandardNormal() {
        EvenDraws draws = new EvenDraws(COUNT, SIZE, 7);
        for (int k = 0; k < SIZE; k++) {
            double sum = 0.0;
            double squares = 0.0;
            for (int i = 0; i < COUNT; i++) {
                sum += draws.at(i)[k];
                squares += draws.at(i)[k] * draws.at(i)[k];
            }
            assertEquals(0.0, sum / COUNT, 0.03, "mean of number " + k);
            assertEquals(1.0, squares / COUNT, 0.06, "variance of number " + k);
        }
    }

    /** Of a sum in which a few of many unknowns matter, as in a vehicle: the k-th weighs 0.6 to the k. */
    @Test
    void theEndOfAnIntervalSettlesSoonerThanWithIndependentDraws() {
        double exact = -1.644854 * Math.sqrt((1.0 - Math.pow(0.36, SIZE)) / (1.0 - 0.36));
        double even = 0.0;
        double independent = 0.0;
        for (int seed = 1; seed <= SEEDS; seed++) {
            EvenDraws draws = new EvenDraws(COUNT, SIZE, seed);
            even += square(end(i -> sum(k -> draws.at(i)[k])) - exact);
            Random random = new Random(seed);
            independent += square(end(i -> sum(k -> random.nextGaussian())) - exact);
        }
        assertTrue(even < 0.6 * independent, "squared error " + even + " against " + independent);
    }

    private static double sum(IntToDoubleFunction normal) {
        double sum = 0.0;
        for (int k = 0; k < SIZE; k++) {
            sum += Math.pow(0.6, k) * normal.applyAsDouble(k);
        }
        return sum;
    }

    private static double end(IntToDoubleFunction draw) {
        double[] all = new double[COUNT];
        Arrays.setAll(all, draw);
        Arrays.sort(all);
        return Quantile.of(all, 0.05);
    }

    private static double square(double x) {
        return x * x;
    }

    @Test
    void theSameSeedGivesTheSameDraws() {
        assertArrayEquals(new EvenDraws(9, 3, 1, 2).at(8), new EvenDraws(9, 3, 1, 2).at(8));
        assertTrue(new EvenDraws(9, 3, 1, 2).at(8)[0] != new EvenDraws(9, 3, 1, 3).at(8)[0]);
    }
}
