package hotday.physics.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class EffectivenessTest {
    /** The table is printed with five digits. */
    private static final double PRINTED = 1e-5;

    private static final double ROUNDING = 1e-12;
    private static final List<Double> RATIOS =
            List.of(1e-9, 1e-4, 0.01, 0.1, 0.25, 0.5, 0.75, 0.9, 0.999, 0.9999999, 1.0);

    /** Values of the printed formulas (Incropera ch. 11, exact cross-flow by the Bessel series), recomputed for this check. */
    @ParameterizedTest
    @CsvSource({
        "0.25, 1, 0.59829, 0.57080, 0.58801, 0.58720, 0.58470, 0.58720, 0.58405, 0.58411",
        "0.25, 2, 0.82277, 0.73433, 0.79742, 0.80330, 0.77759, 0.79276, 0.77406, 0.77478",
        "0.5, 1, 0.56473, 0.51791, 0.54749, 0.54476, 0.54197, 0.54476, 0.53975, 0.53994",
        "0.5, 2, 0.77460, 0.63348, 0.73241, 0.73876, 0.70201, 0.71755, 0.69084, 0.69309",
        "0.75, 2, 0.72183, 0.55417, 0.67108, 0.67521, 0.63623, 0.64507, 0.61655, 0.62043",
        "1.0, 1, 0.50000, 0.43233, 0.47622, 0.46854, 0.46854, 0.46854, 0.46212, 0.46267",
        "1.0, 3, 0.75000, 0.49876, 0.68129, 0.68421, 0.61334, 0.61334, 0.56451, 0.57880"
    })
    void spotValues(
            double cr,
            double ntu,
            double counter,
            double parallel,
            double exact,
            double approximate,
            double maxMixed,
            double minMixed,
            double bothMixed,
            double shell) {
        assertThat(Effectiveness.counterFlow(ntu, cr)).isCloseTo(counter, within(PRINTED));
        assertThat(Effectiveness.parallelFlow(ntu, cr)).isCloseTo(parallel, within(PRINTED));
        assertThat(Effectiveness.crossBothUnmixed(ntu, cr)).isCloseTo(exact, within(PRINTED));
        assertThat(Effectiveness.crossBothUnmixedApproximate(ntu, cr)).isCloseTo(approximate, within(PRINTED));
        assertThat(Effectiveness.crossMaxMixed(ntu, cr)).isCloseTo(maxMixed, within(PRINTED));
        assertThat(Effectiveness.crossMinMixed(ntu, cr)).isCloseTo(minMixed, within(PRINTED));
        assertThat(Effectiveness.crossBothMixed(ntu, cr)).isCloseTo(bothMixed, within(PRINTED));
        assertThat(Effectiveness.shellTubes(ntu, cr)).isCloseTo(shell, within(PRINTED));
    }

    /** The other published form: 1 - exp(-N(1+cr)) [I0 + sqrt(cr) I1 - (1-cr)/cr sum cr^(n/2) In], Baclic 1978. */
    @Test
    void exactCrossFlowEqualsTheBesselForm() {
        for (double cr : List.of(0.01, 0.1, 0.25, 0.5, 0.75, 0.9, 0.999, 1.0)) {
            for (double ntu : List.of(1e-3, 0.1, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0)) {
                assertThat(Effectiveness.crossBothUnmixed(ntu, cr))
                        .as("NTU %s, cr %s", ntu, cr)
                        .isCloseTo(bessel(ntu, cr), within(1e-11));
            }
        }
    }

    private static double bessel(double ntu, double cr) {
        double x = 2.0 * ntu * Math.sqrt(cr);
        double sum = scaledBessel(0, x) + Math.sqrt(cr) * scaledBessel(1, x);
        for (int n = 2; n < 500; n++) {
            sum -= (1.0 - cr) / cr * Math.pow(cr, n / 2.0) * scaledBessel(n, x);
        }
        return 1.0 - Math.exp(x - ntu * (1.0 + cr)) * sum;
    }

    private static double scaledBessel(int order, double x) {
        int points = 2000;
        double sum = 0.5 * (1.0 + Math.exp(-2.0 * x) * (order % 2 == 0 ? 1.0 : -1.0));
        for (int k = 1; k < points; k++) {
            double t = Math.PI * k / points;
            sum += Math.exp(x * (Math.cos(t) - 1.0)) * Math.cos(order * t);
        }
        return sum / points;
    }

    @Test
    void theApproximationIsAtMostElevenThousandthsAwayBelowFiveUnits() {
        double worst = 0;
        for (double cr = 0.05; cr <= 1.0; cr += 0.05) {
            for (double ntu = 0.1; ntu <= 5; ntu += 0.1) {
                double off =
                        Effectiveness.crossBothUnmixed(ntu, cr) - Effectiveness.crossBothUnmixedApproximate(ntu, cr);
                worst = Math.max(worst, Math.abs(off));
            }
        }
        assertThat(worst).isBetween(0.010, 0.0113);
    }

    @ParameterizedTest
    @EnumSource(Arrangement.class)
    void nothingWithoutSurfaceAndIsothermalWithoutCapacityRatio(Arrangement a) {
        for (double cr : RATIOS) {
            assertThat(a.effectiveness(0, cr)).isEqualTo(0);
            assertThat(a.effectiveness(-1, cr)).isEqualTo(0);
            assertThat(a.effectiveness(1e-7, cr))
                    .isCloseTo(1e-7, within(a == Arrangement.CROSS_BOTH_UNMIXED_APPROXIMATE ? 1e-9 : 1e-13));
        }
        for (double ntu : List.of(0.01, 0.5, 2.0, 8.0, 50.0)) {
            assertThat(a.effectiveness(ntu, 0))
                    .isCloseTo(
                            Effectiveness.isothermal(ntu),
                            within(a == Arrangement.CROSS_BOTH_UNMIXED_APPROXIMATE ? 0.011 : ROUNDING));
            assertThat(a.effectiveness(ntu, 1e-13)).isCloseTo(a.effectiveness(ntu, 1e-11), within(1e-9));
        }
    }

    @ParameterizedTest
    @EnumSource(Arrangement.class)
    void growsWithSurfaceFallsWithCapacityRatioNeverAboveCounterFlow(Arrangement a) {
        for (int i = 1; i < RATIOS.size(); i++) {
            double before = 0;
            for (double ntu = 0.01; ntu <= 50; ntu *= 1.1) {
                double e = a.effectiveness(ntu, RATIOS.get(i));
                assertThat(e).isBetween(0.0, 1.0);
                if (a != Arrangement.CROSS_BOTH_MIXED) {
                    assertThat(e).isGreaterThanOrEqualTo(before - ROUNDING);
                }
                assertThat(e).isLessThanOrEqualTo(a.effectiveness(ntu, RATIOS.get(i - 1)) + ROUNDING);
                if (a != Arrangement.CROSS_BOTH_UNMIXED_APPROXIMATE) {
                    assertThat(e).isLessThanOrEqualTo(Effectiveness.counterFlow(ntu, RATIOS.get(i)) + ROUNDING);
                }
                before = e;
            }
        }
    }

    @Test
    void bothMixedPeaksAndFallsBackToOneHalf() {
        assertThat(Effectiveness.crossBothMixed(3, 1)).isCloseTo(0.5645, within(5e-5));
        assertThat(Effectiveness.crossBothMixed(1e4, 1)).isCloseTo(0.5, within(1e-4));
    }

    @ParameterizedTest
    @EnumSource(Arrangement.class)
    void extremesGiveNumbersAndNotANumberStaysSo(Arrangement a) {
        for (double cr : RATIOS) {
            for (double ntu : List.of(Double.MIN_VALUE, 1e-300, 1e-20, 1e2, 745.0, 1e4, 1e9, Double.MAX_VALUE)) {
                assertThat(a.effectiveness(ntu, cr))
                        .as("%s, NTU %s, cr %s", a, ntu, cr)
                        .isBetween(0.0, 1.0);
            }
            assertThat(a.effectiveness(Double.NaN, cr)).isNaN();
        }
        assertThat(a.effectiveness(1, Double.NaN)).isNaN();
    }

    @ParameterizedTest
    @EnumSource(Arrangement.class)
    void wayBack(Arrangement a) {
        for (double cr : List.of(0.0, 0.2, 0.5, 0.9, 1.0)) {
            for (double ntu : List.of(1e-6, 0.1, 0.7, 1.5, 2.5)) {
                assertThat(a.ntu(a.effectiveness(ntu, cr), cr).orElseThrow())
                        .as("%s, NTU %s, cr %s", a, ntu, cr)
                        .isCloseTo(ntu, within(1e-7));
            }
            assertThat(a.ntu(0.0, cr)).hasValue(0.0);
        }
    }

    /** Nellis and Klein's relations, worked example: both unmixed NTU 1.341, both mixed 1.478. */
    @Test
    void publishedWayBack() {
        assertThat(Arrangement.CROSS_BOTH_UNMIXED_APPROXIMATE.ntu(0.61, 0.6).orElseThrow())
                .isCloseTo(1.341, within(5e-4));
        assertThat(Arrangement.CROSS_BOTH_MIXED.ntu(0.61, 0.6).orElseThrow()).isCloseTo(1.478, within(5e-4));
    }

    @Test
    void whatCannotBeReachedIsEmpty() {
        assertThat(Arrangement.PARALLEL_FLOW.ntu(0.51, 1.0)).isEmpty();
        assertThat(Arrangement.CROSS_BOTH_MIXED.ntu(0.6, 1.0)).isEmpty();
        assertThat(Arrangement.COUNTER_FLOW.ntu(1.0, 0.5)).isEmpty();
        assertThat(Arrangement.COUNTER_FLOW.ntu(Double.NaN, 0.5)).isEmpty();
        assertThat(Arrangement.COUNTER_FLOW.ntu(0.5, 1.5)).isEmpty();
        assertThat(Arrangement.COUNTER_FLOW.ntu(0.5, Double.NaN)).isEmpty();
    }

    /** A made-up radiator, recomputed for this check: 3000 W/K, 4320 and 2215.4 W/K, 65 K: 90.81 kW. */
    @Test
    void madeUpRadiator() {
        double e = Effectiveness.crossBothUnmixedApproximate(3000 / 2215.4, 2215.4 / 4320);
        assertThat(e).isCloseTo(0.63061, within(PRINTED));
        assertThat(e * 2215.4 * 65 / 1e3).isCloseTo(90.81, within(0.005));
    }
}
