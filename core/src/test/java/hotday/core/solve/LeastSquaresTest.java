package hotday.core.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hotday.core.solve.Fit.Status;
import hotday.core.solve.FitOptions.Difference;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;

class LeastSquaresTest {
    private static final FitOptions OPTIONS = FitOptions.standard().withTolerance(1e-12);

    /** y = a + b x, exact answer by hand. */
    private static Residuals line(double[] x, double[] y, double sigma) {
        return residuals(x.length, (p, i) -> (p[0] + p[1] * x[i] - y[i]) / sigma);
    }

    private interface One {
        double at(double[] p, int i);
    }

    private static Residuals residuals(int size, One one) {
        return new Residuals() {
            @Override
            public int size() {
                return size;
            }

            @Override
            public void residuals(double[] p, double[] out) {
                for (int i = 0; i < size; i++) {
                    out[i] = one.at(p, i);
                }
            }
        };
    }

    private static Supplier<Residuals> decay(int size, double noise, long seed) {
        Well19937c random = new Well19937c(seed);
        double[] y = new double[size];
        for (int i = 0; i < size; i++) {
            y[i] = 5 * Math.exp(-0.1 * i) + 2 + noise * random.nextGaussian();
        }
        return () -> residuals(size, (p, i) -> (p[0] * Math.exp(-p[1] * i) + p[2] - y[i]) / noise);
    }

    private static List<Parameter> decayParameters() {
        return List.of(
                Parameter.around("height", 3, 3), Parameter.around("rate", 0.2, 0.2), Parameter.free("level", 1));
    }

    /**
     * The ordinary straight-line regression of the thermometer calibration in JCGM 100:2008, H.3 (data from memory; the
     * results agree with the printed ones): y1 -0.1712, y2 0.00218, s 0.0035, u 0.0029 and 0.00067, r -0.930.
     */
    @Test
    void thermometerLineOfTheGuide() {
        double[] t = {21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511};
        double[] b = {-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160};
        double[] x = new double[t.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = t[i] - 20;
        }
        List<Parameter> parameters = List.of(Parameter.free("y1", 0), Parameter.free("y2", 0));
        Fit fit = LeastSquares.fit(() -> line(x, b, 1), parameters, OPTIONS);
        double s = Math.sqrt(fit.dataCost() / (x.length - 2));
        assertThat(fit.converged()).isTrue();
        assertThat(fit.parameters()[0]).isCloseTo(-0.1712, within(0.00005));
        assertThat(fit.parameters()[1]).isCloseTo(0.00218, within(0.000005));
        assertThat(s).isCloseTo(0.0035, within(0.00005));
        assertThat(s * fit.posteriorSd()[0]).isCloseTo(0.0029, within(0.00005));
        assertThat(s * fit.posteriorSd()[1]).isCloseTo(0.00067, within(0.000005));
        double r = fit.covariance()[0][1] / (fit.posteriorSd()[0] * fit.posteriorSd()[1]);
        assertThat(r).isCloseTo(-0.930, within(0.0005));
    }

    /** One value measured once: the posterior of two Gaussians has a closed form. */
    @Test
    void priorAndMeasurementShareByTheirPrecision() {
        double prior = 10;
        double priorSd = 2;
        double measured = 14;
        double sigma = 1;
        Fit fit = LeastSquares.fit(
                () -> residuals(1, (p, i) -> (p[0] - measured) / sigma),
                List.of(Parameter.around("value", prior, priorSd)),
                OPTIONS);
        assertThat(fit.parameters()[0]).isCloseTo((10 / 4.0 + 14) / (1 / 4.0 + 1), within(1e-9));
        assertThat(fit.posteriorSd()[0]).isCloseTo(Math.sqrt(1 / (1 / 4.0 + 1)), within(1e-9));
        assertThat(fit.dataCost()).isCloseTo(0.8 * 0.8, within(1e-9));
        assertThat(fit.cost()).isCloseTo(0.8 * 0.8 + 1.6 * 1.6, within(1e-9));
        assertThat(fit.information()[0][0]).isCloseTo(1, within(1e-9));
        assertThat(fit.residuals()).hasSize(1);
    }

    @Test
    void whatTheDataDoNotSeeKeepsItsPrior() {
        Fit fit = LeastSquares.fit(
                () -> residuals(3, (p, i) -> p[0] - i),
                List.of(Parameter.free("seen", 7), Parameter.around("unseen", 4, 0.5)),
                OPTIONS);
        assertThat(fit.parameters()[0]).isCloseTo(1, within(1e-9));
        assertThat(fit.parameters()[1]).isCloseTo(4, within(1e-9));
        assertThat(fit.posteriorSd()[1]).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void withoutPriorAnUnseenParameterIsOpen() {
        Fit fit = LeastSquares.fit(
                () -> residuals(3, (p, i) -> p[0] + p[1] - i),
                List.of(Parameter.free("a", 7), Parameter.free("b", 4), Parameter.free("unused", 1)),
                OPTIONS);
        assertThat(fit.parameters()[0] + fit.parameters()[1]).isCloseTo(1, within(1e-9));
        assertThat(fit.posteriorSd()).containsOnly(Double.POSITIVE_INFINITY);
        for (double[] row : fit.covariance()) {
            for (double c : row) {
                assertThat(c).isNotNaN();
            }
        }
    }

    @Test
    void anyNumberOfThreadsGivesTheSameBits() {
        for (Difference difference : Difference.values()) {
            FitOptions options = OPTIONS.withDifference(difference);
            Fit one = LeastSquares.fit(decay(80, 0.1, 3), decayParameters(), options);
            for (int threads : new int[] {2, 3, 8}) {
                Fit more = LeastSquares.fit(decay(80, 0.1, 3), decayParameters(), options.withThreads(threads));
                assertThat(more.parameters()).containsExactly(one.parameters());
                assertThat(more.covariance()).isDeepEqualTo(one.covariance());
                assertThat(more.cost()).isEqualTo(one.cost());
                assertThat(more.evaluations()).isEqualTo(one.evaluations());
            }
        }
    }

    @Test
    void forwardAndCentralAgree() {
        Fit central = LeastSquares.fit(decay(80, 0.1, 5), decayParameters(), OPTIONS);
        Fit forward =
                LeastSquares.fit(decay(80, 0.1, 5), decayParameters(), OPTIONS.withDifference(Difference.FORWARD));
        for (int i = 0; i < 3; i++) {
            assertThat(forward.parameters()[i])
                    .isCloseTo(central.parameters()[i], within(0.05 * central.posteriorSd()[i]));
        }
        assertThat(forward.evaluations()).isLessThan(central.evaluations());
    }

    /** sqrt of a negative number: the model has an edge, the minimum lies close to it. */
    @Test
    void stepsIntoNotANumberAreRefused() {
        Supplier<Residuals> edge = () -> residuals(2, (p, i) -> i == 0 ? Math.sqrt(p[0]) - 0.01 : 0.001 * (p[1] - 1));
        for (Difference difference : Difference.values()) {
            Fit fit = LeastSquares.fit(
                    edge,
                    List.of(new Parameter("edge", 4, 0, Double.POSITIVE_INFINITY, 1e-5), Parameter.free("b", 3)),
                    OPTIONS.withDifference(difference));
            assertThat(fit.parameters()).doesNotContain(Double.NaN);
            assertThat(fit.parameters()[0]).isCloseTo(1e-4, within(2e-5));
            assertThat(fit.posteriorSd()).doesNotContain(Double.NaN);
        }
    }

    @Test
    void noFiniteStartIsAStatus() {
        Fit fit = LeastSquares.fit(
                () -> residuals(2, (p, i) -> i == 0 ? Double.NaN : p[0]),
                List.of(Parameter.around("a", 1, 2)),
                OPTIONS);
        assertThat(fit.status()).isEqualTo(Status.NO_START);
        assertThat(fit.parameters()).containsExactly(1);
        assertThat(fit.posteriorSd()).containsExactly(2);
        assertThat(fit.cost()).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void spentIterationsKeepTheBestSoFar() {
        Supplier<Residuals> valley = () -> residuals(2, (p, i) -> i == 0 ? 10 * (p[1] - p[0] * p[0]) : 1 - p[0]);
        List<Parameter> parameters = List.of(Parameter.free("x", -1.2), Parameter.free("y", 1));
        Fit fit = LeastSquares.fit(valley, parameters, OPTIONS.withMaxIterations(2));
        assertThat(fit.status()).isEqualTo(Status.ITERATIONS_SPENT);
        assertThat(fit.cost()).isLessThan(24.2); // cost at the start, by hand
        assertThat(LeastSquares.fit(valley, parameters, OPTIONS).parameters()[0])
                .isCloseTo(1, within(1e-8));
    }

    @Test
    void cancelKeepsTheBestSoFarAndTellsSo() {
        for (int threads : new int[] {1, 4}) {
            AtomicInteger runs = new AtomicInteger();
            FitOptions options = OPTIONS.withThreads(threads).withCancelled(() -> runs.incrementAndGet() > 15);
            Fit fit = LeastSquares.fit(decay(80, 0.1, 3), decayParameters(), options);
            assertThat(fit.status()).isEqualTo(Status.CANCELLED);
            assertThat(fit.cost()).isFinite();
            assertThat(fit.evaluations()).isLessThanOrEqualTo(15);
        }
        Fit never = LeastSquares.fit(decay(80, 0.1, 3), decayParameters(), OPTIONS.withCancelled(() -> true));
        assertThat(never.status()).isEqualTo(Status.CANCELLED);
        assertThat(never.evaluations()).isZero();
    }

    @Test
    void progressFallsAndCounts() {
        List<Double> costs = new ArrayList<>();
        Fit fit = LeastSquares.fit(
                decay(80, 0.1, 3), decayParameters(), OPTIONS.withProgress((i, cost, n) -> costs.add(cost)));
        assertThat(costs).isNotEmpty().isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThat(fit.iterations()).isEqualTo(costs.size());
    }

    @Test
    void anExceptionOfTheModelPassesThrough() {
        for (int threads : new int[] {1, 2}) {
            AtomicInteger calls = new AtomicInteger();
            Supplier<Residuals> broken = () -> residuals(2, (p, i) -> {
                if (calls.incrementAndGet() > 5) {
                    throw new IllegalStateException("broken model");
                }
                return p[i];
            });
            assertThatThrownBy(() -> LeastSquares.fit(
                            broken,
                            List.of(Parameter.free("a", 1), Parameter.free("b", 1)),
                            OPTIONS.withThreads(threads)))
                    .hasMessage("broken model");
        }
    }

    /** A model of two runs, each with a parameter of its own, that recomputes only the run that feels the change. */
    @Test
    void aModelMaySkipWhatAParameterDoesNotTouch() {
        AtomicInteger halves = new AtomicInteger();
        Supplier<Residuals> two = () -> new Residuals() {
            @Override
            public int size() {
                return 4;
            }

            @Override
            public void residuals(double[] p, double[] out) {
                half(p, 0, out);
                half(p, 1, out);
            }

            @Override
            public void moved(double[] p, int changed, double[] out) {
                half(p, changed, out);
            }

            private void half(double[] p, int k, double[] out) {
                halves.incrementAndGet();
                out[2 * k] = p[k] * p[k] - 3;
                out[2 * k + 1] = p[k] - 2;
            }
        };
        Supplier<Residuals> plain = () -> residuals(4, (p, i) -> i % 2 == 0 ? p[i / 2] * p[i / 2] - 3 : p[i / 2] - 2);
        List<Parameter> parameters = List.of(Parameter.free("a", 5), Parameter.free("b", 1));
        Fit lean = LeastSquares.fit(two, parameters, OPTIONS);
        Fit whole = LeastSquares.fit(plain, parameters, OPTIONS);
        assertThat(lean.parameters()).containsExactly(whole.parameters());
        assertThat(halves.get()).isLessThan(2 * lean.evaluations());
    }

    @Test
    void theBestOfSeveralStartsWins() {
        // two valleys, at -1 (deep) and at about +2 (shallow)
        Supplier<Residuals> valleys = () -> residuals(1, (p, i) -> (p[0] + 1) * (p[0] - 2) + 0.05 * (p[0] + 1));
        List<Parameter> parameters = List.of(Parameter.around("x", 0, 3));
        List<PriorSearch.Start> starts = PriorSearch.best(valleys, parameters, 50, 3, 7, 2, () -> false);
        Fit fit = LeastSquares.fit(valleys, parameters, starts, OPTIONS);
        Fit single = LeastSquares.fit(valleys, List.of(parameters.get(0).withStart(3)), OPTIONS);
        assertThat(fit.cost()).isLessThan(single.cost());
        assertThat(fit.parameters()[0]).isCloseTo(-1, within(0.1));
    }

    @Test
    void parametersAreCheckedByName() {
        assertThatThrownBy(() -> Parameter.around("heat level", 1, 0)).hasMessageContaining("heat level: prior sd");
        assertThatThrownBy(() -> Parameter.free("x", Double.NaN)).hasMessageContaining("x: start");
        assertThatThrownBy(() -> LeastSquares.fit(decay(5, 1, 1), List.of(), OPTIONS))
                .hasMessageContaining("at least one parameter");
    }
}
