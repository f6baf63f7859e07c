package hotday.physics.exchanger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.WorkedProblem;
import hotday.physics.transfer.Effectiveness;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** A radiator marched over uneven air, calculated independently. */
class MarchingTest {
    /** Percent: ten printed digits. */
    private static final double WORKED = 1e-7;

    private static final int ROWS = 8;

    private final WorkedProblem p = WorkedProblem.read("radiator-marching");

    private LiquidMarch radiator(int columns, TileLaw law) {
        FaceGrid face = FaceGrid.even(ROWS, columns, 0.36, 12 * p.in("A_tile") / (0.36 / ROWS));
        return new LiquidMarch(Passes.crossFlow(face.whole(), Passes.Side.LEFT), law);
    }

    /** Sets conductances and flow for speeds (m/s, per tile); returns the air's capacity rates. */
    private double[] prepare(LiquidMarch march, double[] speeds, double coolantFlow) {
        double share = 12.0 * ROWS / speeds.length;
        FaceGrid face = march.passes().footprint().face();
        double[] logs = new double[speeds.length];
        AirSide.logarithms(speeds, logs);
        AirSide side = new AirSide(p.in("g0") / p.in("A_tile"), p.in("v_ref"), p.in("n"));
        side.fill(march.passes(), logs, march.airConductance());
        Arrays.fill(march.liquidConductance(), p.in("G_c") * share);
        double[] rates = new double[speeds.length];
        for (int t = 0; t < rates.length; t++) {
            rates[t] = p.in("rho") * speeds[t] * face.area(t) * p.in("cp_a");
        }
        march.flow(coolantFlow * p.in("cp_c"), p.in("T_c,in"));
        return rates;
    }

    private double[] ambient(int tiles) {
        double[] air = new double[tiles];
        Arrays.fill(air, p.in("T_air"));
        return air;
    }

    @ParameterizedTest
    @ValueSource(strings = {"idle-fan100", "110kmh-fan0", "110kmh-fan100"})
    void unevenAir(String name) {
        LiquidMarch march = radiator(12, TileLaw.BOTH_UNMIXED_APPROXIMATE);
        JsonNode matrix = p.input("v " + name);
        double[] speeds = new double[ROWS * 12];
        for (int t = 0; t < speeds.length; t++) {
            speeds[t] = matrix.get(t / 12).get(t % 12).asDouble();
        }
        double[] rates = prepare(march, speeds, p.in("m_c"));
        double[] air = ambient(speeds.length);
        march.march(rates, air);
        JsonNode out = p.output(name);
        assertThat(march.heat()).isCloseTo(out.required("Q").asDouble(), withinPercentage(WORKED));
        assertThat(march.outlet()).isCloseTo(out.required("T_c_out").asDouble(), withinPercentage(WORKED));
        double flow = 0;
        double mean = 0;
        for (int t = 0; t < air.length; t++) {
            double expected = out.required("T_air_out").get(t / 12).get(t % 12).asDouble();
            assertThat(air[t]).isCloseTo(expected, withinPercentage(WORKED));
            flow += Math.abs(rates[t]);
            mean += Math.abs(rates[t]) * air[t];
        }
        assertThat(mean / flow).isCloseTo(out.required("T_air_out_mean").asDouble(), withinPercentage(WORKED));
        for (int row = 0; row < ROWS; row++) {
            double given = 0;
            for (int c = 0; c < 12; c++) {
                given += march.heat(row * 12 + c);
            }
            double rowOutlet = p.in("T_c,in") - given * ROWS / (p.in("m_c") * p.in("cp_c"));
            assertThat(rowOutlet)
                    .isCloseTo(out.required("T_c_out_rows").get(row).asDouble(), withinPercentage(WORKED));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {2.0, 0.25})
    void moreAndMoreColumns(double coolantFlow) {
        for (JsonNode row : p.output("column refinement, m_c=" + coolantFlow + " kg/s")) {
            int columns = row.get(0).asInt();
            LiquidMarch march = radiator(columns, TileLaw.BOTH_UNMIXED_APPROXIMATE);
            double[] speeds = new double[ROWS * columns];
            Arrays.fill(speeds, p.in("v_ref"));
            double[] rates = prepare(march, speeds, coolantFlow);
            march.march(rates, ambient(speeds.length));
            assertThat(march.heat()).isCloseTo(row.get(1).asDouble(), withinPercentage(WORKED));
            assertThat(march.outlet()).isCloseTo(row.get(3).asDouble(), withinPercentage(WORKED));
            double least = Math.min(Arrays.stream(rates).sum(), coolantFlow * p.in("cp_c"));
            double effectiveness = march.heat() / least / (p.in("T_c,in") - p.in("T_air"));
            assertThat(effectiveness).isCloseTo(row.get(2).asDouble(), withinPercentage(WORKED));
        }
    }

    @Test
    void closedFormsOfTheWholeCore() {
        String name = "uniform closed forms";
        double ua = p.out(name, "UA");
        double air = p.out(name, "C_air");
        double ntu = ua / air;
        double cr = air / p.out(name, "C_coolant");
        assertThat(ntu).isCloseTo(p.out(name, "NTU"), withinPercentage(WORKED));
        assertThat(cr).isCloseTo(p.out(name, "Cr"), withinPercentage(WORKED));
        bothUnmixed(name, ntu, cr);
        assertThat(Effectiveness.crossMaxMixed(ntu, cr))
                .isCloseTo(p.out(name, "eps_coolant_mixed_air_unmixed"), withinPercentage(WORKED));
        assertThat(tubeMixed(2.0)).isCloseTo(p.out(name, "eps_coolant_mixed_air_unmixed"), withinPercentage(WORKED));
    }

    @Test
    void closedFormsWithLittleCoolant() {
        String name = "uniform closed forms m_c=0.25";
        double ntu = p.out(name, "NTU");
        double cr = p.out(name, "Cr");
        bothUnmixed(name, ntu, cr);
        assertThat(Effectiveness.crossMinMixed(ntu, cr))
                .isCloseTo(p.out(name, "eps_coolant_mixed_air_unmixed"), withinPercentage(WORKED));
        assertThat(tubeMixed(0.25)).isCloseTo(p.out(name, "eps_coolant_mixed_air_unmixed"), withinPercentage(WORKED));
    }

    private void bothUnmixed(String name, double ntu, double cr) {
        assertThat(Effectiveness.crossBothUnmixedApproximate(ntu, cr))
                .isCloseTo(p.out(name, "eps_both_unmixed_approx"), withinPercentage(WORKED));
        assertThat(Effectiveness.crossBothUnmixed(ntu, cr))
                .isCloseTo(p.out(name, "eps_both_unmixed_exact"), withinPercentage(WORKED));
    }

    /** The usual law with twelve columns is where the others only arrive with thousands. */
    private double tubeMixed(double coolantFlow) {
        LiquidMarch march = radiator(12, TileLaw.TUBE_MIXED);
        double[] speeds = new double[ROWS * 12];
        Arrays.fill(speeds, p.in("v_ref"));
        double[] rates = prepare(march, speeds, coolantFlow);
        march.march(rates, ambient(speeds.length));
        double least = Math.min(Arrays.stream(rates).sum(), coolantFlow * p.in("cp_c"));
        return march.heat() / least / (p.in("T_c,in") - p.in("T_air"));
    }
}
