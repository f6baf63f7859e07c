package hotday.physics.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompressorTest {
    @Test
    void lawsFallAndStayPositive() {
        EfficiencyLaw piston = EfficiencyLaw.clearance(0.05, 1.12);
        assertThat(piston.at(1.0, 100.0)).isEqualTo(1.0);
        assertThat(piston.at(4.0, 100.0)).isCloseTo(1.0 - 0.05 * (Math.pow(4.0, 1.0 / 1.12) - 1.0), within(1e-15));
        assertThat(Compressor.USUAL_VOLUMETRIC.at(4.0, 100.0)).isCloseTo(0.75, within(1e-15));
        assertThat(Compressor.USUAL_ISENTROPIC.at(4.0, 100.0)).isCloseTo(0.64, within(1e-15));
        assertThat(Compressor.USUAL_VOLUMETRIC.withSpeed(1e-4).at(4.0, 100.0)).isCloseTo(0.74, within(1e-15));
        for (EfficiencyLaw law :
                new EfficiencyLaw[] {piston, Compressor.USUAL_VOLUMETRIC, Compressor.USUAL_ISENTROPIC}) {
            double before = law.at(0.5, 0.0);
            assertThat(before).isEqualTo(law.at(1.0, 0.0));
            for (double ratio = 1.0; ratio < 1000.0; ratio *= 1.01) {
                assertThat(law.at(ratio, 0.0)).isBetween(EfficiencyLaw.LEAST, before);
                before = law.at(ratio, 0.0);
            }
        }
    }

    @Test
    void drive() {
        Compressor variable = Compressor.variable(180e-6, 1.3);
        assertThat(variable.speed(100.0)).isEqualTo(130.0);
        assertThat(variable.share(0.0)).isEqualTo(0.05);
        assertThat(variable.share(2.0)).isEqualTo(1.0);
        assertThat(Compressor.fixed(180e-6, 1.3).share(0.2)).isEqualTo(1.0);
        assertThat(Compressor.electric(30e-6).speed(500.0)).isEqualTo(500.0);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 1, 0.5, displacement 0.0 m3",
        "1e-4, 0, 0.5, pulley ratio 0.0",
        "1e-4, 1, 1.5, share 1.5",
        "NaN, 1, 1, displacement NaN"
    })
    void wrongValuesAreNamed(double displacement, double ratio, double share, String message) {
        assertThatThrownBy(() -> new Compressor(
                        displacement, ratio, Compressor.USUAL_VOLUMETRIC, Compressor.USUAL_ISENTROPIC, share))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }

    @Test
    void wrongPartsAreNamed() {
        assertThatThrownBy(() -> EfficiencyLaw.clearance(-0.1, 1.1)).hasMessageContaining("clearance -0.1");
        assertThatThrownBy(() -> EfficiencyLaw.falling(Double.NaN, 0.0)).hasMessageContaining("base NaN");
        assertThatThrownBy(() -> new ThermostaticValve(-1.0, 0.1)).hasMessageContaining("superheat -1.0 K");
        assertThatThrownBy(() -> new ThermostaticValve(6.0, 0.9)).hasMessageContaining("0.9");
        assertThatThrownBy(() -> new Orifice(0.0, 0.02)).hasMessageContaining("area 0.0 m2");
        assertThatThrownBy(() -> new Orifice(1e-6, 0.0)).hasMessageContaining("0.0 1/K");
    }
}
