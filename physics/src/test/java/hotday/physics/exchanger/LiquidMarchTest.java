package hotday.physics.exchanger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.transfer.Effectiveness;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LiquidMarchTest {
    private static final double BALANCE = 1e-9; // relative: rounding only, nothing physical
    private static final double ROUNDING = 1e-12;

    private static LiquidMarch uniform(Passes passes, TileLaw law, double outside, double inside) {
        LiquidMarch march = new LiquidMarch(passes, law);
        passes.spread(outside, march.airConductance());
        passes.spread(inside, march.liquidConductance());
        return march;
    }

    private static double effectiveness(LiquidMarch march, double airRate, double liquidRate) {
        FaceGrid face = march.passes().footprint().face();
        double[] rates = new double[face.tiles()];
        march.passes().spread(airRate, rates);
        double[] air = new double[face.tiles()];
        Arrays.fill(air, 300.0);
        march.flow(liquidRate, 360.0);
        march.march(rates, air);
        return march.heat() / (Math.min(airRate, liquidRate) * 60.0);
    }

    @Test
    void underUniformAirItIsTheClosedFormWhateverTheColumns() {
        for (int columns : List.of(1, 2, 12, 96)) {
            for (double cr : List.of(0.01, 0.2, 0.5, 0.9, 1.0)) {
                for (double ntu : List.of(0.05, 0.5, 1.0, 2.5, 6.0)) {
                    Passes passes =
                            Passes.crossFlow(FaceGrid.even(8, columns, 0.4, 0.6).whole(), Passes.Side.LEFT);
                    double air = 1200.0;
                    LiquidMarch coolantLarger = uniform(passes, TileLaw.TUBE_MIXED, 2 * ntu * air, 2 * ntu * air);
                    assertThat(effectiveness(coolantLarger, air, air / cr))
                            .isCloseTo(Effectiveness.crossMaxMixed(ntu, cr), within(ROUNDING));
                    double liquid = cr * air;
                    LiquidMarch coolantLess = uniform(passes, TileLaw.TUBE_MIXED, 2 * ntu * liquid, 2 * ntu * liquid);
                    assertThat(effectiveness(coolantLess, air, liquid))
                            .isCloseTo(Effectiveness.crossMinMixed(ntu, cr), within(ROUNDING));
                }
            }
        }
    }

    @Test
    void downFlowUnderUniformAirIsTheSameCore() {
        FaceGrid face = FaceGrid.even(8, 12, 0.4, 0.6);
        Passes across = Passes.crossFlow(face.whole(), Passes.Side.RIGHT);
        Passes down = Passes.downFlow(face.whole());
        assertThat(effectiveness(uniform(across, TileLaw.TUBE_MIXED, 2000, 3000), 1000, 3000))
                .isCloseTo(effectiveness(uniform(down, TileLaw.TUBE_MIXED, 2000, 3000), 1000, 3000), within(ROUNDING));
    }

    @Test
    void aSingleTileFollowsItsLaw() {
        Passes one = Passes.crossFlow(FaceGrid.even(1, 1, 0.4, 0.6).whole(), Passes.Side.LEFT);
        assertThat(effectiveness(uniform(one, TileLaw.BOTH_UNMIXED, 3000, 3000), 1000, 2000))
                .isCloseTo(Effectiveness.crossBothUnmixed(1.5, 0.5), within(ROUNDING));
        assertThat(effectiveness(uniform(one, TileLaw.BOTH_UNMIXED_APPROXIMATE, 3000, 3000), 1000, 2000))
                .isCloseTo(Effectiveness.crossBothUnmixedApproximate(1.5, 0.5), within(ROUNDING));
    }

    /** A pass gives the same whether it stands alone or is one of several: two passes are two cores in series, mixed between. */
    @Test
    void passesAreCoresInSeriesWithATankBetween() {
        FaceGrid face = FaceGrid.even(8, 12, 0.4, 0.6);
        LiquidMarch two =
                uniform(Passes.multiPass(face.whole(), Passes.Side.LEFT, 0.5, 0.5), TileLaw.TUBE_MIXED, 2000, 3000);
        double whole = effectiveness(two, 1000, 3000) * 1000;
        double half = 500 * Effectiveness.crossMaxMixed(1200.0 / 1000.0, 500.0 / 3000.0);
        double first = half * 60;
        double second = half * (60 - first / 3000);
        assertThat(whole * 60).isCloseTo(first + second, within(1e-8));
        assertThat(two.outlet()).isCloseTo(360 - (first + second) / 3000, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(TileLaw.class)
    void nothingFlowsNothingIsExchanged(TileLaw law) {
        FaceGrid face = FaceGrid.even(2, 3, 0.4, 0.6);
        LiquidMarch march = uniform(Passes.serpentine(face.whole(), Passes.Side.LEFT), law, 500, 500);
        double[] air = {300, 301, 302, 303, 304, 305};
        double[] before = air.clone();
        march.flow(800, 360);
        march.march(new double[6], air);
        assertThat(air).containsExactly(before);
        assertThat(march.heat()).isZero();
        assertThat(march.outlet()).isEqualTo(360);
        march.flow(0, 360);
        march.march(new double[] {10, 10, -10, 10, 10, 10}, air);
        assertThat(air).containsExactly(before);
        assertThat(march.heat()).isZero();
        assertThat(march.outlet()).isEqualTo(360);
        march.flow(800, 360);
        Arrays.fill(march.airConductance(), 0.0);
        Arrays.fill(march.liquidConductance(), 0.0);
        march.march(new double[] {10, 10, -10, 10, 10, 10}, air);
        assertThat(march.heat()).isZero();
        assertThat(march.outlet()).isEqualTo(360);
    }

    @Test
    void heatBalancesOnBothSidesWhateverComes() {
        SplittableRandom random = new SplittableRandom(20260401);
        for (int i = 0; i < 500; i++) {
            FaceGrid face = RandomCores.face(random);
            LiquidMarch march = new LiquidMarch(
                    RandomCores.passes(random, face), TileLaw.values()[random.nextInt(TileLaw.values().length)]);
            double rate = random.nextInt(8) == 0 ? 0.0 : Math.exp(random.nextDouble(-3, 9));
            double[] airRate = RandomCores.rates(random, face);
            double[] air = new double[face.tiles()];
            for (int t = 0; t < air.length; t++) {
                air[t] = random.nextDouble(250, 350);
                march.airConductance()[t] = random.nextDouble(0, 40);
                march.liquidConductance()[t] = random.nextInt(9) == 0 ? 0.0 : random.nextDouble(0, 80);
            }
            double[] before = air.clone();
            double inlet = random.nextDouble(250, 400);
            march.flow(rate, inlet);
            march.march(airRate, air);
            double gained = 0;
            double passed = 1e-6;
            double tiles = 0;
            for (int t = 0; t < air.length; t++) {
                double own = Math.abs(airRate[t]) * (air[t] - before[t]);
                assertThat(own).isCloseTo(march.heat(t), within(1e-11 * (1 + Math.abs(airRate[t]) * 400)));
                gained += own;
                tiles += march.heat(t);
                passed += Math.abs(march.heat(t));
            }
            assertThat(rate * (inlet - march.outlet()))
                    .isCloseTo(march.heat(), within(BALANCE * passed + 1e-12 * rate * inlet));
            assertThat(gained).isCloseTo(march.heat(), within(BALANCE * passed + 1e-9));
            assertThat(tiles).isCloseTo(march.heat(), within(BALANCE * passed));
        }
    }

    @Test
    void conductanceGrowsWithAPowerOfTheFlux() {
        FaceGrid face = FaceGrid.even(1, 3, 0.1, 0.6);
        Passes passes = Passes.crossFlow(face.whole(), Passes.Side.LEFT);
        double[] logs = new double[3];
        double[] perTile = new double[3];
        AirSide.logarithms(new double[] {3.0, -1.5, 0.0}, logs);
        new AirSide(5000, 3.0, 0.5).fill(passes, logs, perTile);
        assertThat(perTile[0]).isCloseTo(5000 * 0.02, withinPercentage(1e-10));
        assertThat(perTile[1]).isCloseTo(5000 * 0.02 * Math.sqrt(0.5), withinPercentage(1e-10));
        assertThat(perTile[2]).isBetween(0.0, 0.01);
        new AirSide(5000, 3.0, 0.0).fill(passes, logs, perTile);
        assertThat(perTile[2]).isCloseTo(100, withinPercentage(1e-10));
    }

    @Test
    void decayIsOneMinusTheExponential() {
        for (double x = 1e-12; x < 800; x *= 1.01) {
            assertThat(Decay.gone(x)).isCloseTo(-Math.expm1(-x), withinPercentage(2e-12));
        }
        assertThat(Decay.gone(0)).isZero();
        assertThat(Decay.gone(Double.POSITIVE_INFINITY)).isEqualTo(1.0);
    }
}
