package hotday.physics.exchanger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.WorkedProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

class StackTest {
    private static final double BALANCE = 1e-9; // relative: rounding only, nothing physical
    /** Percent: ten printed digits. */
    private static final double WORKED = 1e-7;

    private static final FaceGrid FACE = FaceGrid.even(8, 12, 0.36, 0.96);

    /** A core whose heat is known tile by tile. */
    private record GivenHeat(double[] perTile) implements TiledCore {
        @Override
        public void march(double[] airRate, double[] air) {
            for (int t = 0; t < air.length; t++) {
                air[t] += perTile[t] == 0 ? 0 : perTile[t] / Math.abs(airRate[t]);
            }
        }

        @Override
        public double heat() {
            return Arrays.stream(perTile).sum();
        }
    }

    private static final class Worked {
        final WorkedProblem p = WorkedProblem.read("stack-interaction");
        final LiquidMarch cooler = new LiquidMarch(
                Passes.crossFlow(new Footprint(FACE, 5, 7, 0, 3), Passes.Side.RIGHT), TileLaw.BOTH_UNMIXED_APPROXIMATE);
        final LiquidMarch radiator =
                new LiquidMarch(Passes.crossFlow(FACE.whole(), Passes.Side.LEFT), TileLaw.BOTH_UNMIXED_APPROXIMATE);
        final double[] heat = new double[96];
        final double[] rates = new double[96];
        final double[] ambient = new double[96];

        Worked(String name) {
            JsonNode matrix = p.input("v " + name);
            double[] speeds = new double[96];
            double[] logs = new double[96];
            for (int t = 0; t < 96; t++) {
                speeds[t] = matrix.get(t / 12).get(t % 12).asDouble();
                rates[t] = p.in("rho") * Math.abs(speeds[t]) * p.in("A_tile") * p.in("cp_a");
                heat[t] = t / 12 == 7 ? 0 : p.in("Q_cond") / 84 * (1.6 - 1.2 * (t % 12) / 11.0);
            }
            AirSide.logarithms(speeds, logs);
            prepare(cooler, logs, "go", "no", "G_o");
            prepare(radiator, logs, "g0", "n", "G_c");
            cooler.flow(p.in("m_o") * p.in("cp_o"), p.in("T_o,in"));
            radiator.flow(p.in("m_c") * p.in("cp_c"), p.in("T_c,in"));
            Arrays.fill(ambient, p.in("T_air"));
        }

        private void prepare(LiquidMarch march, double[] logs, String outside, String power, String inside) {
            new AirSide(p.in(outside) / p.in("A_tile"), p.in("v_ref"), p.in(power))
                    .fill(march.passes(), logs, march.airConductance());
            Arrays.fill(march.liquidConductance(), p.in(inside));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"idle-fan100", "110kmh-fan0"})
    void gearboxCoolerAndCondenserHeatTheRadiatorsAir(String name) {
        Worked w = new Worked(name);
        Stack stack = new Stack(FACE, List.of(w.cooler, new GivenHeat(w.heat), w.radiator));
        assertThat(stack.pass(w.rates, w.ambient, 400.0)).isTrue();
        assertThat(stack.sweeps()).isEqualTo(1);
        JsonNode out = w.p.output(name);
        assertThat(w.cooler.heat()).isCloseTo(out.required("Q_gearbox").asDouble(), withinPercentage(WORKED));
        assertThat(w.cooler.outlet()).isCloseTo(out.required("T_oil_out").asDouble(), withinPercentage(WORKED));
        assertThat(w.radiator.heat()).isCloseTo(out.required("Q_radiator").asDouble(), withinPercentage(WORKED));
        assertThat(w.radiator.outlet()).isCloseTo(out.required("T_c_out").asDouble(), withinPercentage(WORKED));
        matches(out.required("T_air_into_radiator"), stack, 2);
        matches(out.required("T_air_out"), stack, 3);
        for (int row = 0; row < 3; row++) {
            double given = 0;
            for (int c = 0; c < 4; c++) {
                given += w.cooler.heat(FACE.tile(5 + row, c));
            }
            double rowOutlet = w.p.in("T_o,in") - given * 3 / (w.p.in("m_o") * w.p.in("cp_o"));
            assertThat(rowOutlet)
                    .isCloseTo(out.required("T_oil_out_rows").get(row).asDouble(), withinPercentage(WORKED));
        }
    }

    private static void matches(JsonNode matrix, Stack stack, int plane) {
        for (int t = 0; t < 96; t++) {
            assertThat(stack.air(plane, t))
                    .isCloseTo(matrix.get(t / 12).get(t % 12).asDouble(), withinPercentage(WORKED));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"idle-fan100", "110kmh-fan0"})
    void whatTheTileMatrixAdds(String name) {
        Worked w = new Worked(name);
        JsonNode out = w.p.output(name);
        Stack clean = new Stack(FACE, List.of(w.radiator));
        clean.pass(w.rates, w.ambient, 400.0);
        assertThat(w.radiator.heat())
                .isCloseTo(out.required("Q_radiator_clean_inlet").asDouble(), withinPercentage(WORKED));
        Stack full = new Stack(FACE, List.of(w.cooler, new GivenHeat(w.heat)));
        full.pass(w.rates, w.ambient, 400.0);
        double mean = 0;
        for (int t = 0; t < 96; t++) {
            mean += w.rates[t] * full.air(2, t) / Arrays.stream(w.rates).sum();
        }
        double[] even = new double[96];
        Arrays.fill(even, mean);
        clean.pass(w.rates, even, 400.0);
        assertThat(w.radiator.heat())
                .isCloseTo(out.required("Q_radiator_uniform_mean_inlet").asDouble(), withinPercentage(WORKED));
    }

    private static LiquidMarch uniform(Passes passes, double outside, double inside) {
        LiquidMarch march = new LiquidMarch(passes, TileLaw.TUBE_MIXED);
        passes.spread(outside, march.airConductance());
        passes.spread(inside, march.liquidConductance());
        return march;
    }

    @Test
    void aGearboxCoolerInFrontOfTheLowerLeftThirdHeatsOnlyTheTilesBehindIt() {
        Footprint corner = new Footprint(FACE, 5, 7, 0, 3);
        LiquidMarch cooler = uniform(Passes.crossFlow(corner, Passes.Side.LEFT), 150, 120);
        LiquidMarch radiator = uniform(Passes.crossFlow(FACE.whole(), Passes.Side.LEFT), 1700, 3800);
        cooler.flow(220, 390);
        radiator.flow(7000, 375);
        double[] rates = new double[96];
        double[] front = new double[96];
        Arrays.fill(rates, 12.0);
        Arrays.fill(front, 310.0);
        Stack stack = new Stack(FACE, List.of(cooler, radiator));
        stack.pass(rates, front, 350.0);
        for (int t = 0; t < 96; t++) {
            boolean behind = t / 12 >= 5 && t % 12 < 4;
            if (behind) {
                assertThat(stack.air(1, t)).isGreaterThan(315.0);
            } else {
                assertThat(stack.air(1, t)).isEqualTo(310.0);
            }
        }
    }

    @Test
    void airThatBlowsBackwardMeetsTheCoresInReverseOrder() {
        LiquidMarch cooler = uniform(Passes.crossFlow(FACE.whole(), Passes.Side.LEFT), 1500, 900);
        LiquidMarch radiator = uniform(Passes.crossFlow(FACE.whole(), Passes.Side.LEFT), 1700, 3800);
        cooler.flow(1e4, 330);
        radiator.flow(7000, 375);
        double[] backward = new double[96];
        double[] forward = new double[96];
        double[] front = new double[96];
        Arrays.fill(backward, -8.0);
        Arrays.fill(forward, 8.0);
        Arrays.fill(front, 300.0);
        Stack stack = new Stack(FACE, List.of(cooler, radiator));
        assertThat(stack.pass(backward, front, 345.0)).isTrue();
        assertThat(stack.sweeps()).isGreaterThan(1);
        double heat = radiator.heat();
        double leaving = stack.air(0, 17);
        Arrays.fill(front, 345.0);
        Stack turned = new Stack(FACE, List.of(radiator, cooler));
        turned.pass(forward, front, 300.0);
        assertThat(radiator.heat()).isCloseTo(heat, within(BALANCE * heat));
        assertThat(turned.air(2, 17)).isCloseTo(leaving, within(1e-9));
    }

    @Test
    void heatBalancesInAnyStack() {
        SplittableRandom random = new SplittableRandom(20260402);
        int most = 0;
        for (int i = 0; i < 500; i++) {
            FaceGrid face = RandomCores.face(random);
            List<TiledCore> cores = new ArrayList<>();
            for (int c = random.nextInt(1, 5); c > 0; c--) {
                cores.add(random.nextInt(3) == 0 ? condenser(random, face) : cooler(random, face));
            }
            double[] rates = RandomCores.rates(random, face);
            double[] front = new double[face.tiles()];
            for (int t = 0; t < front.length; t++) {
                front[t] = random.nextDouble(250, 330);
            }
            double rear = random.nextDouble(300, 360);
            Stack stack = new Stack(face, cores);
            assertThat(stack.pass(rates, front, rear)).as("case %s", i).isTrue();
            most = Math.max(most, stack.sweeps());
            double gained = 0;
            double moved = 1.0;
            for (int t = 0; t < front.length; t++) {
                double warmer = rates[t] * (stack.air(cores.size(), t) - stack.air(0, t));
                gained += warmer;
                moved += Math.abs(warmer);
            }
            assertThat(gained)
                    .isCloseTo(cores.stream().mapToDouble(TiledCore::heat).sum(), within(BALANCE * moved));
        }
        assertThat(most).isBetween(3, 100);
    }

    private static LiquidMarch cooler(SplittableRandom random, FaceGrid face) {
        Passes passes = RandomCores.passes(random, face);
        LiquidMarch march = uniform(passes, random.nextDouble(5, 2000), random.nextDouble(5, 4000));
        march.flow(random.nextInt(9) == 0 ? 0.0 : random.nextDouble(1, 8000), random.nextDouble(300, 400));
        return march;
    }

    private static RefrigerantMarch condenser(SplittableRandom random, FaceGrid face) {
        RefrigerantMarch march = new RefrigerantMarch(RandomCores.passes(random, face), RandomCores.stream(random));
        march.passes().spread(random.nextDouble(5, 2000), march.airConductance());
        return march;
    }
}
