package hotday.physics.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.physics.WorkedProblem;
import hotday.physics.refrigerant.Refrigerant;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Worked problem ac-cycle-steady: 18 points, by the equation of state and by the tables. */
class CycleSteadyTest {
    /** The problem's own, for the equation of state. */
    private static final double EXACT = 1e-6;

    /** Of the tables, which are far better than the 1e-3 asked of them. */
    private static final double TABLES = 1e-5;

    @ParameterizedTest
    @EnumSource
    void byTheEquationOfState(Refrigerant r) {
        compare(r, Fluid.exact(r), EXACT);
    }

    @ParameterizedTest
    @EnumSource
    void byTheTables(Refrigerant r) {
        compare(r, Fluid.tables(r), TABLES);
    }

    private static void compare(Refrigerant r, Fluid fluid, double tolerance) {
        WorkedProblem problem = WorkedProblem.read("ac-cycle-steady");
        for (int i = 0; i < 3; i++) {
            double load = problem.input("Q_e for T_air 20, 35, 45 degC").get(i).asDouble();
            double air = problem.input("T_air").get(i).asDouble();
            for (int k = 0; k < 3; k++) {
                double airFlow = problem.input("m_a").get(k).asDouble();
                String name = String.format(
                        Locale.ROOT, "%s T_air=%.0fC m_a=%s", r.label().replace("-", ""), air - 273.15, airFlow);
                Map<String, Double> ours =
                        new UnmixedZones(problem, fluid, r.criticalPressure(), load, air, airFlow).solve();
                ours.forEach((quantity, value) -> {
                    double expected = problem.out(name, quantity);
                    assertThat(value).as(name + " " + quantity).isCloseTo(expected, within(tolerance * expected));
                });
            }
        }
    }
}
