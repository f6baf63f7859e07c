package hotday.physics.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FinTest {
    /** Half a louvered fin: tanh(0.51640)/0.51640, recomputed for this check. */
    @Test
    void louveredFin() {
        assertThat(Fin.straight(120, 180, 0.08e-3, 4e-3)).isCloseTo(0.91967, within(5e-6));
    }

    @Test
    void shortFinsAreWhollyActiveLongOnesFadeAway() {
        assertThat(Fin.straight(120, 180, 1e-4, 0)).isEqualTo(1);
        assertThat(Fin.straight(120, 180, 1e-4, 1e-7)).isCloseTo(1, within(1e-8));
        assertThat(Fin.straight(120, 180, 1e-4, 10)).isBetween(0.0, 0.01);
        assertThat(Fin.surface(0, 0.5)).isEqualTo(1);
        assertThat(Fin.surface(1, 0.5)).isEqualTo(0.5);
    }

    /** Abramowitz and Stegun, Handbook of Mathematical Functions, table 9.8: exp(-x) I and exp(x) K. */
    @ParameterizedTest
    @CsvSource({
        "0.1, 0.9071009258, 0.0452984468, 2.6823261023, 10.8901826830",
        "1.0, 0.4657596077, 0.2079104154, 1.1444630797, 1.6361534863",
        "5.0, 0.1835408126, 0.1639722669, 0.5478075643, 0.6002738587"
    })
    void besselFunctions(double x, double i0, double i1, double k0, double k1) {
        assertThat(ScaledBessel.i(0, x)).isCloseTo(i0, withinPercentage(2e-7));
        assertThat(ScaledBessel.i(1, x)).isCloseTo(i1, withinPercentage(2e-7));
        assertThat(ScaledBessel.k(0, x)).isCloseTo(k0, withinPercentage(2e-7));
        assertThat(ScaledBessel.k(1, x)).isCloseTo(k1, withinPercentage(2e-7));
    }

    /** I0 K1 + I1 K0 = 1/x (Wronskian, Abramowitz and Stegun 9.6.15). */
    @Test
    void besselFunctionsFitTogether() {
        for (double x = 1e-3; x < 700; x *= 1.3) {
            double product = ScaledBessel.i(0, x) * ScaledBessel.k(1, x) + ScaledBessel.i(1, x) * ScaledBessel.k(0, x);
            assertThat(product * x).isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void annularFinOfLargeRadiusIsAStraightOne() {
        double straight = Fin.straight(120, 180, 1e-4, 8e-3);
        assertThat(Fin.annular(120, 180, 1e-4, 5, 5.008)).isCloseTo(straight, withinPercentage(0.1));
        assertThat(Fin.annular(120, 180, 1e-4, 5e-3, 13e-3)).isLessThan(straight);
        assertThat(Fin.annular(120, 180, 1e-4, 0.01, 0.01)).isEqualTo(1);
        assertThat(Fin.annular(500, 20, 1e-5, 0.01, 0.3)).isBetween(0.0, 0.01);
    }
}
