package hotday.physics.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class AlternatorTest {
    private static final double RPM = Math.PI / 30.0;

    private static Alternator withEfficiency(double efficiency) {
        return new Alternator(new double[] {1300 * RPM, 6000 * RPM}, new double[] {30, 120}, 0.0025, 2.5, efficiency);
    }

    /** I V / (eta omega): 60 A, 13.5 V, 0.55, 700 rpm is 20.1 N m at the crank (recomputed). */
    @Test
    void torqueOfAStep() {
        assertThat(withEfficiency(0.55).crankTorque(13.5, 60, 700 * RPM)).isCloseTo(20.1, within(0.05));
        assertThat(withEfficiency(0.55).shaftPower(13.5, 60)).isCloseTo(1473, within(1.0));
    }

    @Test
    void capacityFollowsSpeedAndTemperature() {
        Alternator alternator = withEfficiency(0.6);
        assertThat(alternator.capacity(2400 * RPM, 298.15)).isCloseTo(120, within(1e-12));
        assertThat(alternator.capacity(9000 * RPM, 298.15)).isCloseTo(120, within(1e-12));
        assertThat(alternator.capacity(520 * RPM, 298.15)).isCloseTo(30, within(1e-12));
        assertThat(alternator.capacity(494 * RPM, 298.15)).isZero();
        assertThat(alternator.capacity(0, 298.15)).isZero();
        assertThat(alternator.capacity(2400 * RPM, 338.15)).isCloseTo(108, within(1e-9));
        assertThat(alternator.capacity(2400 * RPM, 5000)).isZero();
        assertThat(alternator.crankTorque(13, 10, 0)).isFinite();
    }

    @Test
    void badValues() {
        double[] speed = {100, 200};
        double[] current = {10, 20};
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Alternator(speed, current, 0.0025, 2.5, 1.1))
                .withMessage("alternator efficiency 1.1 - must be above 0 to 1.0");
        assertThatIllegalArgumentException().isThrownBy(() -> new Alternator(speed, current, 0.02, 2.5, 0.6));
        assertThatIllegalArgumentException().isThrownBy(() -> new Alternator(speed, current, 0.0025, 0, 0.6));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Alternator(speed, new double[] {-1, 2}, 0.0025, 2.5, 0.6));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Alternator(new double[] {0, 2}, current, 0.0025, 2.5, 0.6));
    }
}
