package hotday.physics.exchanger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RefrigerantMarchTest {
    private static final double BALANCE = 1e-9; // relative: rounding only, nothing physical
    private static final double LIQUID = 270e3;
    private static final double VAPOUR = 420e3;
    private static final double SATURATION = 325.0;

    /** Near R-134a at 13.5 bar, conductance constant over quality unless changed. */
    private static RefrigerantStream stream(double massFlow, double enthalpy) {
        RefrigerantStream s = new RefrigerantStream(11);
        s.massFlow = massFlow;
        s.enthalpy = enthalpy;
        s.saturationTemperature = SATURATION;
        s.liquidEnthalpy = LIQUID;
        s.vapourEnthalpy = VAPOUR;
        s.liquidHeat = 1500;
        s.vapourHeat = 1100;
        s.liquidConductance = 3000;
        s.vapourConductance = 3000;
        Arrays.fill(s.twoPhaseConductance, 8000);
        return s;
    }

    private static RefrigerantMarch core(Passes passes, RefrigerantStream stream, double outside) {
        RefrigerantMarch march = new RefrigerantMarch(passes, stream);
        passes.spread(outside, march.airConductance());
        return march;
    }

    private static Passes row(int columns) {
        return Passes.crossFlow(FaceGrid.even(1, columns, 0.4, 0.6).whole(), Passes.Side.LEFT);
    }

    /** Marches under even air. */
    private static void blow(RefrigerantMarch march, double airRate, double temperature) {
        double[] rates = new double[march.passes().size()];
        double[] air = new double[rates.length];
        march.passes().spread(airRate, rates);
        Arrays.fill(air, temperature);
        march.march(rates, air);
    }

    /**
     * Area that each zone needs, by hand: vapour and liquid ln(T1 - Ta)/(T2 - Ta), mixture heat over rate; the march must use
     * just these shares, whatever the grid.
     */
    @Test
    void zonesUseTheAreaOfTheirClosedForms() {
        double air = 1000.0;
        double outside = 1500.0;
        double ambient = 310.0;
        double area = 0.24;
        double flow = 0.045;
        double single = air * (1 - Math.exp(-1 / (1 / outside + 1 / (3000 * area)) / air));
        double mixed = air * (1 - Math.exp(-1 / (1 / outside + 1 / (8000 * area)) / air));
        double superheat = 25.0;
        double vapour = flow * 1100 / single * Math.log((SATURATION + superheat - ambient) / (SATURATION - ambient));
        double both = flow * (VAPOUR - LIQUID) / (mixed * (SATURATION - ambient));
        double liquid = 1 - vapour - both;
        assertThat(liquid).isBetween(0.05, 0.3);
        double outlet = ambient + (SATURATION - ambient) * Math.exp(-liquid * single / (flow * 1500));
        for (int columns : new int[] {1, 2, 7, 40}) {
            RefrigerantMarch march = core(row(columns), stream(flow, VAPOUR + 1100 * superheat), outside);
            blow(march, air, ambient);
            assertThat(march.vapourShare()).isCloseTo(vapour, within(1e-12));
            assertThat(march.twoPhaseShare()).isCloseTo(both, within(1e-12));
            assertThat(march.liquidShare()).isCloseTo(liquid, within(1e-12));
            assertThat(march.outletTemperature()).isCloseTo(outlet, within(1e-10));
            assertThat(march.heat())
                    .isCloseTo(flow * (VAPOUR + 1100 * superheat - march.outletEnthalpy()), withinPercentage(1e-10));
        }
    }

    @Test
    void evaporatingIsCondensingTurnedRound() {
        double flow = 0.03;
        RefrigerantMarch condenser = core(row(12), stream(flow, VAPOUR + 20e3), 1200);
        blow(condenser, 900, SATURATION - 15);
        RefrigerantStream cold = stream(flow, LIQUID - 20e3);
        cold.liquidHeat = 1100;
        cold.vapourHeat = 1500;
        RefrigerantMarch evaporator = core(row(12), cold, 1200);
        blow(evaporator, 900, SATURATION + 15);
        assertThat(evaporator.heat()).isCloseTo(-condenser.heat(), withinPercentage(1e-10));
        assertThat(evaporator.outletEnthalpy() - VAPOUR).isCloseTo(LIQUID - condenser.outletEnthalpy(), within(1e-6));
        assertThat(evaporator.liquidShare()).isCloseTo(condenser.vapourShare(), within(1e-12));
        assertThat(evaporator.vapourShare()).isCloseTo(condenser.liquidShare(), within(1e-12));
        assertThat(evaporator.outletTemperature()).isBetween(SATURATION, SATURATION + 15);
    }

    /** Taken at the quality at which a tile begins, the conductance would be hundreds of J/kg off. */
    @Test
    void twelveTilesFollowAConductanceThatFallsSteeplyWithQuality() {
        assertThat(outletWithSteepTable(12)).isCloseTo(outletWithSteepTable(1536), within(1e-5 * (VAPOUR - LIQUID)));
    }

    private static double outletWithSteepTable(int columns) {
        RefrigerantStream s = stream(0.06, VAPOUR);
        for (int i = 0; i < 11; i++) {
            s.twoPhaseConductance[i] = 1500 + 9000 * s.quality(i);
        }
        RefrigerantMarch march = core(row(columns), s, 1500);
        blow(march, 700, 308);
        assertThat(march.outletEnthalpy()).isBetween(LIQUID, VAPOUR);
        return march.outletEnthalpy();
    }

    @Test
    void nothingFlowsNothingIsExchanged() {
        for (double enthalpy : new double[] {LIQUID - 1e4, LIQUID, 3e5, VAPOUR, VAPOUR + 1e4}) {
            RefrigerantMarch still = core(row(4), stream(0.0, enthalpy), 900);
            blow(still, 500, 300);
            assertThat(still.heat()).isZero();
            assertThat(still.outletEnthalpy()).isEqualTo(enthalpy);
            RefrigerantMarch calm = core(row(4), stream(0.03, enthalpy), 900);
            blow(calm, 0, 300);
            assertThat(calm.heat()).isZero();
            assertThat(calm.outletEnthalpy()).isEqualTo(enthalpy);
            assertThat(calm.vapourShare() + calm.twoPhaseShare() + calm.liquidShare())
                    .isCloseTo(1, within(1e-12));
            RefrigerantMarch level = core(row(4), stream(0.03, enthalpy), 900);
            blow(level, 500, level.stream().temperature(enthalpy));
            assertThat(level.outletEnthalpy()).isCloseTo(enthalpy, within(1e-6));
        }
    }

    @Test
    void heatBalancesOnBothSidesWhateverComes() {
        SplittableRandom random = new SplittableRandom(20260403);
        for (int i = 0; i < 500; i++) {
            FaceGrid face = RandomCores.face(random);
            RefrigerantMarch march = new RefrigerantMarch(RandomCores.passes(random, face), RandomCores.stream(random));
            double[] rates = RandomCores.rates(random, face);
            double[] air = new double[face.tiles()];
            for (int t = 0; t < air.length; t++) {
                air[t] = random.nextDouble(255, 340);
                march.airConductance()[t] = random.nextInt(9) == 0 ? 0.0 : random.nextDouble(0, 40);
            }
            double[] before = air.clone();
            march.march(rates, air);
            double gained = 0;
            double passed = 1e-6;
            for (int t = 0; t < air.length; t++) {
                gained += Math.abs(rates[t]) * (air[t] - before[t]);
                passed += Math.abs(march.heat(t));
            }
            RefrigerantStream s = march.stream();
            assertThat(gained).isCloseTo(march.heat(), within(BALANCE * passed + 1e-9));
            assertThat(s.massFlow * (s.enthalpy - march.outletEnthalpy()))
                    .isCloseTo(march.heat(), within(BALANCE * passed + 1e-9));
            assertThat(march.vapourShare() + march.twoPhaseShare() + march.liquidShare())
                    .isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void aTableNeedsTwoEnds() {
        assertThatThrownBy(() -> new RefrigerantStream(1)).hasMessageContaining("1");
    }
}
