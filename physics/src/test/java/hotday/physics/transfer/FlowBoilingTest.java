package hotday.physics.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class FlowBoilingTest {
    @Test
    void developedFlowHasTheLaminarLimitAndShortTubesMore() {
        assertThat(FlowBoiling.developing(1e-3, 1e6, 800, 3.5)).isCloseTo(3.66, within(1e-6));
        assertThat(FlowBoiling.developing(1e-3, 0.01, 800, 3.5)).isGreaterThan(4.5);
    }

    /** Hausen's relation at Graetz 100, arithmetic by hand: 3.66 + 6.68 / (1 + 0.04 x 21.544) = 7.2480. */
    @Test
    void developingAtGraetzOneHundred() {
        assertThat(FlowBoiling.developing(1.0, 1.0, 25, 4)).isCloseTo(7.2480, within(5e-4));
    }

    @Test
    void endsAreLiquidWithBubblesAndDryVapour() {
        assertThat(FlowBoiling.gain(0, 0.5)).isEqualTo(1.0);
        assertThat(FlowBoiling.gain(1, 0.5)).isEqualTo(1.0);
        assertThat(FlowBoiling.coefficient(0, 3000, 300, 80, 0.5)).isEqualTo(3300.0);
        assertThat(FlowBoiling.coefficient(1, 3000, 300, 80, 0.5)).isEqualTo(80.0);
    }

    /** x^2 - x^6 is largest at x = 3^-1/4, where it is 2/3 x 3^-1/2. */
    @Test
    void convectionGainsMostNearThreeQuartersOfQuality() {
        double x = Math.pow(3, -0.25);
        double most = FlowBoiling.gain(x, 0);
        assertThat(most).isCloseTo(1 + 80 * 2.0 / 3.0 / Math.sqrt(3), withinPercentage(1e-10));
        assertThat(FlowBoiling.gain(x - 0.01, 0)).isLessThan(most);
        assertThat(FlowBoiling.gain(x + 0.01, 0)).isLessThan(most);
        assertThat(FlowBoiling.gain(x, 2)).isLessThan(FlowBoiling.gain(x, 1));
    }

    /** R-134a near 5 degC: sigma 10.9 mN/m, 1278 and 17.1 kg/m3; the capillary length is 0.94 mm (from memory). */
    @Test
    void confinementIsOneWhereTheChannelIsACapillaryLengthWide() {
        assertThat(FlowBoiling.confinement(0.0109, 1278, 17.1, 0.94e-3)).isCloseTo(1.0, within(0.01));
    }

    /** Cooper for smooth copper, R-134a, pr 0.1, 10 kW/m2: 55 x 0.1^0.12 x 102^-0.5 x 10000^0.67, by hand 1976. */
    @Test
    void poolBoiling() {
        assertThat(FlowBoiling.pool(0.1, 1, 102.03, 1e4)).isCloseTo(1976, withinPercentage(0.3));
        assertThat(FlowBoiling.pool(0.1, 1, 102.03, 2e4) / FlowBoiling.pool(0.1, 1, 102.03, 1e4))
                .isCloseTo(Math.pow(2, 0.67), withinPercentage(1e-10));
        assertThat(FlowBoiling.pool(0.1, 2, 102.03, 1e4)).isGreaterThan(FlowBoiling.pool(0.1, 1, 102.03, 1e4));
    }
}
