package hotday.physics.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WillansLineTest {
    private static final double RPM = Math.PI / 30.0;

    /** Recomputed from the stated formula: 2.0 l, 2000 rpm, 5 bar, e 0.40, loss 1.6 bar gives 55.0 kW of fuel for 16.67 kW. */
    @Test
    void oneLoadPoint() {
        WillansLine line = new WillansLine(2.0e-3, 1.6e5, 0.0, 0.0, 0.0, 0.40);
        double brake = 5e5 * 2.0e-3 * 2000.0 / 120.0;
        assertThat(brake).isCloseTo(16_667.0, within(1.0));
        assertThat(line.fuelPower(brake, 2000 * RPM)).isCloseTo(55_000.0, within(1.0));
    }

    /** Heywood 1988 eq. 13.6 (from memory): 0.97 + 0.15 n + 0.05 n^2 bar is 1.87 bar at 3000 rpm. */
    @Test
    void frictionPolynomialAtRest() {
        WillansLine line = new WillansLine(2.0e-3, 0.97e5, 0.15e5, 0.05e5, 0.0, 1.0);
        assertThat(line.fuelPower(0.0, 3000 * RPM)).isCloseTo(1.87e5 * 2.0e-3 * 25.0, within(1e-6));
    }

    /** Read both ways: light, loaded past where pumping is gone, pushed. */
    @Test
    void fuelGivesBackTheBrakePowerItCameFrom() {
        WillansLine line = new WillansLine(4.8e-3, 0.97e5, 0.15e5, 0.05e5, 5e4, 0.4);
        for (double brake = -5e3; brake < 250e3; brake += 2.5e3) {
            double fuel = line.fuelPower(brake, 3000 * RPM);
            assertThat(line.brakePower(fuel, 3000 * RPM)).isCloseTo(brake, within(1e-6));
        }
        assertThat(line.brakePower(0.0, 3000 * RPM)).isNegative();
        assertThat(line.brakePower(5e3, 0.0)).isZero();
    }

    @Test
    void pumpingFadesAndFuelIsCut() {
        WillansLine line = new WillansLine(4.8e-3, 1e5, 0.0, 0.0, 5e4, 0.4);
        double swept = 4.8e-3 * 25.0;
        assertThat(line.fuelPower(9e5 * swept, 3000 * RPM)).isCloseTo(10e5 * swept / 0.4, within(1e-6));
        assertThat(line.fuelPower(-1e6, 3000 * RPM)).isZero();
        assertThat(line.fuelPower(5e3, 0.0)).isZero();
        assertThatIllegalArgumentException().isThrownBy(() -> new WillansLine(1e-3, 0, 0, 0, 0, 1.2));
    }
}
