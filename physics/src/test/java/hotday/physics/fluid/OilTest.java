package hotday.physics.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OilTest {
    /** ASTM D341 line through (40 degC, 30) and (100 degC, 6.0) mm2/s, recomputed for this check. */
    @ParameterizedTest
    @CsvSource({"0, 224.1", "20, 71.01", "40, 30", "60, 15.455", "80, 9.156", "100, 6", "120, 4.236"})
    void lowViscosityGearboxFluid(double celsius, double expected) {
        assertThat(1e6 * Oil.GEARBOX.kinematicViscosity(celsius + 273.15)).isCloseTo(expected, withinPercentage(0.02));
    }

    /** The same through (40, 35.0) and (100, 7.4). */
    @ParameterizedTest
    @CsvSource({"0, 227.3", "80, 11.189", "120, 5.249"})
    void conventionalGearboxFluid(double celsius, double expected) {
        assertThat(1e6 * Oil.GEARBOX_CONVENTIONAL.kinematicViscosity(celsius + 273.15))
                .isCloseTo(expected, withinPercentage(0.02));
    }

    /** Usual ranges, from memory: 0.84..0.86 kg/l at 15 degC, 1.95..2.25 kJ/(kg K), 0.13..0.14 W/(m K). */
    @Test
    void usualRanges() {
        assertThat(Oil.GEARBOX.density(288.15)).isBetween(840.0, 860.0);
        assertThat(Oil.GEARBOX.specificHeat(313.15)).isBetween(1950.0, 2250.0);
        assertThat(Oil.GEARBOX.specificHeat(393.15)).isBetween(1950.0, 2250.0);
        assertThat(Oil.GEARBOX.conductivity()).isBetween(0.13, 0.14);
    }

    @Test
    void thinsWhenWarmWithoutEnd() {
        for (Oil oil : new Oil[] {Oil.GEARBOX, Oil.GEARBOX_CONVENTIONAL, Oil.ENGINE}) {
            for (double t = 225; t < 460; t += 5) {
                assertThat(oil.viscosity(t + 5)).isPositive().isLessThan(oil.viscosity(t));
            }
            assertThat(oil.viscosity(100)).isFinite();
        }
    }

    @Test
    void refusesSwappedViscosities() {
        assertThatThrownBy(() -> new Oil(850, 1950, 3.5, 0.135, 6e-6, 30e-6))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("the first must be the larger");
        assertThatThrownBy(() -> new Oil(Double.NaN, 1950, 3.5, 0.135, 30e-6, 6e-6))
                .hasMessageContaining("density NaN");
    }
}
