package hotday.physics.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.WorkedProblem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

class TubeFlowTest {
    /** Percent: five printed digits. */
    private static final double PRINTED = 0.0025;

    private static final double WORKED = 1e-7;

    /** The printed equations (Incropera; Holman), recomputed for this check. */
    @ParameterizedTest
    @CsvSource({
        "3000, 6, 0.045559, 21.315, 31.289, 28.490, 23.816",
        "5000, 6, 0.038619, 38.222, 46.699, 42.871, 35.838",
        "10000, 6, 0.031480, 74.982, 81.305, 74.643, 62.398",
        "10000, 3, 0.031480, 57.106, 61.151, 56.569, 50.683",
        "50000, 0.7, 0.020958, 104.188, 98.333, 114.536, 118.695",
        "100000, 5, 0.017992, 515.684, 504.533, 437.840, 372.751"
    })
    void printedEquations(
            double re, double pr, double f, double gnielinski, double petukhov, double heated, double cooled) {
        assertThat(TubeFlow.petukhov(re)).isCloseTo(f, withinPercentage(PRINTED));
        assertThat(TubeFlow.gnielinski(re, pr)).isCloseTo(gnielinski, withinPercentage(PRINTED));
        assertThat(TubeFlow.petukhovKirillov(re, pr)).isCloseTo(petukhov, withinPercentage(PRINTED));
        assertThat(TubeFlow.dittusBoelter(re, pr, 0.4)).isCloseTo(heated, withinPercentage(PRINTED));
        assertThat(TubeFlow.dittusBoelter(re, pr, 0.3)).isCloseTo(cooled, withinPercentage(PRINTED));
    }

    /** Shah and London 1978: parallel plates 7.541 and 96, square 2.976 and 56.91; the polynomial is good to 0.1 %. */
    @Test
    void laminarEnds() {
        assertThat(TubeFlow.laminarNusselt(0)).isCloseTo(7.541, within(1e-9));
        assertThat(TubeFlow.laminarNusselt(1)).isCloseTo(2.976, withinPercentage(0.2));
        assertThat(TubeFlow.laminarFriction(0)).isCloseTo(96, within(1e-9));
        assertThat(TubeFlow.laminarFriction(1)).isCloseTo(56.91, withinPercentage(0.1));
    }

    @Test
    void joinsWithoutSteps() {
        for (double re : new double[] {2300, 4000}) {
            double below = re - 1e-6;
            double above = re + 1e-6;
            assertThat(TubeFlow.nusselt(above, 8, 0.06))
                    .isCloseTo(TubeFlow.nusselt(below, 8, 0.06), withinPercentage(1e-6));
            assertThat(TubeFlow.friction(above, 0.06))
                    .isCloseTo(TubeFlow.friction(below, 0.06), withinPercentage(1e-6));
        }
    }

    @Test
    void heatNeverFallsWithFlowAndStaysWhileLaminar() {
        assertThat(TubeFlow.nusselt(200, 8, 0.06)).isEqualTo(TubeFlow.nusselt(2300, 8, 0.06));
        for (double re = 100; re < 2e5; re *= 1.02) {
            assertThat(TubeFlow.nusselt(re * 1.02, 8, 0.06)).isGreaterThanOrEqualTo(TubeFlow.nusselt(re, 8, 0.06));
        }
    }

    /** Coolant side of flat tubes over flow at three temperatures, calculated independently. */
    @ParameterizedTest
    @ValueSource(strings = {"60", "90", "110"})
    void flatTubesOverFlow(String celsius) {
        WorkedProblem p = WorkedProblem.read("tube-side");
        double a = p.in("a_i");
        double b = p.in("b_i");
        double diameter = 2.0 * a * b / (a + b);
        JsonNode fluid = p.input("rho, cp, mu, k at " + celsius + " degC");
        double density = fluid.get(0).asDouble();
        double viscosity = fluid.get(2).asDouble();
        double conductivity = fluid.get(3).asDouble();
        double pr = viscosity * fluid.get(1).asDouble() / conductivity;
        for (JsonNode row : p.output(celsius + " degC")) {
            double speed = row.get(0).asDouble() / 60e3 / (p.in("N_t") * a * b);
            double re = density * speed * diameter / viscosity;
            double friction = TubeFlow.friction(re, b / a);
            double nusselt = TubeFlow.nusselt(re, pr, b / a);
            assertThat(re).isCloseTo(row.get(1).asDouble(), withinPercentage(WORKED));
            assertThat(nusselt).isCloseTo(row.get(2).asDouble(), withinPercentage(WORKED));
            assertThat(friction).isCloseTo(row.get(3).asDouble(), withinPercentage(WORKED));
            double drop = friction * p.in("L") / diameter * density * speed * speed / 2.0;
            assertThat(drop).isCloseTo(row.get(5).asDouble(), withinPercentage(WORKED));
        }
    }
}
