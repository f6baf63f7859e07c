package hotday.physics.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.WorkedProblem;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class EngineHeatTest {
    private static final double RPM = Math.PI / 30.0;

    /** Idle, cruise and climb of an invented six-cylinder, calculated independently. */
    @Test
    void heatAtThreeOperatingPoints() {
        WorkedProblem p = WorkedProblem.read("coolant-steady");
        for (JsonNode mode : p.input("modes [name, n rpm, m_t kg/s, V_air m3/s]")) {
            String name = "engine heat " + mode.get(0).asString() + " at T_e=370 K";
            double speed = mode.get(1).asDouble() * RPM;
            double flow = mode.get(2).asDouble();
            int cylinders = p.input("n_cyl").asInt();
            double friction = EngineHeat.power(
                    EngineHeat.frictionMeanPressure(p.in("f0"), p.in("f1"), p.in("f2"), speed), p.in("V_d"), speed);
            double conductance = EngineHeat.conductance(flow, p.in("B"), cylinders, p.in("k_g"), p.in("mu_g"));
            double heat = conductance * (p.in("T_g") - 370.0) + p.in("share") * friction;
            assertThat(EngineHeat.reynolds(flow, p.in("B"), cylinders, p.in("mu_g")))
                    .isCloseTo(p.out(name, "Re"), withinPercentage(1e-6));
            assertThat(friction).isCloseTo(p.out(name, "P_f"), withinPercentage(1e-6));
            assertThat(heat).isCloseTo(p.out(name, "Q"), withinPercentage(1e-6));
        }
    }

    @Test
    void gasTemperatureRisesWithTheMixtureUpToTheStoichiometricOne() {
        double petrol = EngineHeat.PETROL_GAS_TEMPERATURE;
        assertThat(EngineHeat.gasTemperature(1.0, petrol)).isCloseTo(petrol, within(1e-9));
        assertThat(EngineHeat.gasTemperature(1.2, petrol)).isCloseTo(petrol, within(1e-9));
        for (double phi = 0; phi < 0.95; phi += 0.05) {
            assertThat(EngineHeat.gasTemperature(phi + 0.05, petrol))
                    .isGreaterThan(EngineHeat.gasTemperature(phi, petrol));
        }
    }

    /** Heywood 1988, fig. 6.19, from memory: about 25 % burnt gas in a throttled idle, some 7 % at full load. */
    @Test
    void aThrottledEngineKeepsMoreBurntGas() {
        assertThat(EngineHeat.burntGas(0.18, 101_325.0)).isCloseTo(0.25, within(0.04));
        assertThat(EngineHeat.burntGas(1.05, 101_325.0)).isCloseTo(0.07, within(0.02));
        assertThat(EngineHeat.burntGas(0.0, 101_325.0)).isEqualTo(1.0);
        assertThat(EngineHeat.burntGas(-0.1, 101_325.0)).isEqualTo(1.0);
        assertThat(EngineHeat.burntGas(0.5, 0.0)).isZero();
    }

    @Test
    void standingAndReversedFlowGiveNoHeat() {
        assertThat(EngineHeat.conductance(0, 0.09, 4, 0.06, 4.3e-5)).isEqualTo(0);
        assertThat(EngineHeat.conductance(-0.01, 0.09, 4, 0.06, 4.3e-5)).isEqualTo(0);
        assertThat(EngineHeat.fuelPower(-5e5, 1.6e5, 0.4, 2e-3, 200)).isEqualTo(0);
    }

    /** Willans line, recomputed for this check: 2 l at 2000 rpm and 5 bar, inner efficiency 0.40, loss 1.6 bar. */
    @Test
    void willansLine() {
        double fuel = EngineHeat.fuelPower(5e5, 1.6e5, 0.40, 2e-3, 2000 * RPM);
        double brake = EngineHeat.power(5e5, 2e-3, 2000 * RPM);
        assertThat(fuel).isCloseTo(55.0e3, withinPercentage(0.01));
        assertThat(brake).isCloseTo(16.67e3, withinPercentage(0.03));
        assertThat(brake / fuel).isCloseTo(0.3030, within(5e-5));
    }
}
