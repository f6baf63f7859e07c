package hotday.validation.fit;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.solve.Fit;
import hotday.core.solve.FitOptions;
import hotday.core.solve.LeastSquares;
import hotday.core.solve.Parameter;
import hotday.core.solve.Residuals;
import java.util.List;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Over many seeded noise runs the true value must lie within two standard deviations of the fitted one as often as a
 * Gaussian says, 95.4 %: not rarer (widths too narrow) and not always (too wide).
 */
class WidthTest {
    private static final int RUNS = 400;
    /** 0.954 less and plus about three standard errors of a share in 400 runs. */
    private static final double LEAST = 0.92;

    private static final double MOST = 0.985;

    /** Laws met in this trade; truth, priors and noise invented. */
    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private enum Law {
        /** Conductance of a core against face velocity, W/K: UA = c v^n, 2 % noise, 1..8 m/s; unknown ln c and n. */
        CONDUCTANCE(24, 0.02, Parameter.free("ln c", 5), Parameter.free("n", 0.8)) {
            @Override
            double model(double[] p, int i) {
                return p[0] + p[1] * Math.log(1 + 7.0 * i / 23);
            }
        },
        /** Warm-up after a step, K: first-order with unknown end, height and time constant; 1 Hz, 0.5 K noise. */
        STEP(
                120,
                0.5,
                Parameter.free("end", 80),
                Parameter.free("height", 50),
                Parameter.free("ln tau", Math.log(10))) {
            @Override
            double model(double[] p, int i) {
                return p[0] - p[1] * Math.exp(-i / Math.exp(p[2]));
            }
        },
        /** Thermistor: ln R = ln R25 + B (1/T - 1/298.15), 1 % noise, 0..110 degC. */
        THERMISTOR(12, 0.01, Parameter.free("ln R25", 7), Parameter.free("B/1000", 3)) {
            @Override
            double model(double[] p, int i) {
                return p[0] + 1000 * p[1] * (1 / (273.15 + 10 * i) - 1 / 298.15);
            }
        },
        /** The step seen for too short to tell its end, with priors: their widths must carry the answer. */
        SHORT_STEP(
                15,
                0.5,
                Parameter.around("end", 90, 5),
                Parameter.around("height", 60, 5),
                Parameter.around("ln tau", Math.log(20), 0.3)) {
            @Override
            double model(double[] p, int i) {
                return STEP.model(p, i);
            }
        };

        private final int size;
        private final double sigma;
        private final List<Parameter> parameters;

        Law(int size, double sigma, Parameter... parameters) {
            this.size = size;
            this.sigma = sigma;
            this.parameters = List.of(parameters);
        }

        abstract double model(double[] p, int i);

        /** Drawn from the prior where there is one, else 20 % and 0.2 off the start. */
        double[] truth(Well19937c random) {
            return parameters.stream()
                    .mapToDouble(p ->
                            p.hasPrior() ? p.priorMean() + p.priorSd() * random.nextGaussian() : p.start() * 1.2 - 0.2)
                    .toArray();
        }

        Residuals residuals(double[] measured) {
            return new Residuals() {
                @Override
                public int size() {
                    return size;
                }

                @Override
                public void residuals(double[] p, double[] out) {
                    for (int i = 0; i < size; i++) {
                        out[i] = (model(p, i) - measured[i]) / sigma;
                    }
                }
            };
        }
    }

    @ParameterizedTest
    @EnumSource(Law.class)
    void twoStandardDeviationsHoldTheTruth(Law law) {
        int[] held = new int[law.parameters.size()];
        for (int run = 0; run < RUNS; run++) {
            Well19937c random = new Well19937c(new int[] {law.name().hashCode(), run});
            double[] truth = law.truth(random);
            double[] measured = new double[law.size];
            for (int i = 0; i < law.size; i++) {
                measured[i] = law.model(truth, i) + law.sigma * random.nextGaussian();
            }
            Fit fit = LeastSquares.fit(() -> law.residuals(measured), law.parameters, FitOptions.standard());
            assertThat(fit.converged()).as(fit.message()).isTrue();
            for (int j = 0; j < held.length; j++) {
                held[j] += Math.abs(fit.parameters()[j] - truth[j]) <= 2 * fit.posteriorSd()[j] ? 1 : 0;
            }
        }
        for (int j = 0; j < held.length; j++) {
            assertThat(held[j] / (double) RUNS)
                    .as("%s %s", law, law.parameters.get(j).name())
                    .isBetween(LEAST, MOST);
        }
    }
}
