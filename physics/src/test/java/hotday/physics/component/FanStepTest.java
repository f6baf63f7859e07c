package hotday.physics.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.WorkedProblem;
import hotday.physics.transfer.Arrangement;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** The heat per kelvin of a core before and after a fan step, and the analytic two-node answer that follows from it. */
class FanStepTest {
    private final WorkedProblem p = WorkedProblem.read("fan-step-transient");
    private final double flow = p.in("W");

    private double heatPerKelvin(double ratio) {
        double air = Math.hypot(p.in("V_n"), p.in("V_f") * ratio);
        Core core = new Core(p.in("G_a0"), p.in("V_0") * p.in("rho_a"), 0.5, p.in("G_c"), 1, 0);
        return core.heatPerKelvin(
                Arrangement.CROSS_BOTH_UNMIXED_APPROXIMATE, air * p.in("rho_a"), p.in("cp_a"), flow / 3600, 3600);
    }

    @Test
    void heatPerKelvinAndSteadyEnds() {
        JsonNode k = p.output("K(0), K(0.6)");
        assertThat(heatPerKelvin(0)).isCloseTo(k.get(0).asDouble(), withinPercentage(1e-7));
        assertThat(heatPerKelvin(0.6)).isCloseTo(k.get(1).asDouble(), withinPercentage(1e-7));
        double engine = p.in("T_a") + p.in("Q") / heatPerKelvin(0.6);
        assertThat(engine).isCloseTo(p.output("end T1, T2").get(0).asDouble(), within(1e-6));
    }

    @Test
    void answerToTheStep() {
        double k = heatPerKelvin(0.6);
        double c1 = p.in("C1");
        double c2 = p.in("C2");
        double trace = -flow / c1 - flow / c2;
        double determinant = flow * k / (c1 * c2);
        double root = Math.sqrt(trace * trace / 4 - determinant);
        double fast = trace / 2 - root;
        double slow = trace / 2 + root;
        assertThat(fast).isCloseTo(p.output("eigenvalues (a)").get(0).asDouble(), withinPercentage(1e-7));
        assertThat(slow).isCloseTo(p.output("eigenvalues (a)").get(1).asDouble(), withinPercentage(1e-7));

        double drop1 = p.in("Q") / heatPerKelvin(0) - p.in("Q") / k;
        double fastPart = -slow * drop1 / (fast - slow); // the engine node does not move in the first instant
        for (JsonNode row : p.output("(a) [t, T1, T2]")) {
            double t = row.get(0).asDouble();
            double rise = fastPart * Math.exp(fast * t) + (drop1 - fastPart) * Math.exp(slow * t);
            double engine = p.in("T_a") + p.in("Q") / k + rise;
            assertThat(engine).isCloseTo(row.get(1).asDouble(), within(1e-6));
        }
    }
}
