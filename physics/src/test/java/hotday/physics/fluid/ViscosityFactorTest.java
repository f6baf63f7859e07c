package hotday.physics.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class ViscosityFactorTest {
    @Test
    void quickViscosityIsTheExactOne() {
        for (Oil oil : new Oil[] {Oil.GEARBOX, Oil.GEARBOX_CONVENTIONAL, Oil.ENGINE}) {
            ViscosityFactor factor = new ViscosityFactor(oil, 353.15, 0.3);
            double unit = oil.kinematicViscosity(353.15);
            for (double t = 223.15; t <= 473.15; t += 0.37) {
                double exact = Math.pow(oil.kinematicViscosity(t) / unit, 0.3);
                assertThat(factor.at(t)).isCloseTo(exact, withinPercentage(5e-3));
            }
            assertThat(factor.at(150.0)).isEqualTo(factor.at(223.15));
            assertThat(factor.at(600.0)).isCloseTo(factor.at(473.15), withinPercentage(1e-9));
        }
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> new ViscosityFactor(Oil.GEARBOX, 353.15, -0.3)).hasMessageContaining("power -0.3");
        assertThatThrownBy(() -> new ViscosityFactor(Oil.GEARBOX, 200, 0.3)).hasMessageContaining("200.0 K");
    }
}
