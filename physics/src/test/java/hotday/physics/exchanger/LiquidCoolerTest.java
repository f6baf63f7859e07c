package hotday.physics.exchanger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.transfer.Arrangement;
import java.util.List;
import org.junit.jupiter.api.Test;

class LiquidCoolerTest {
    /** Percent: answers printed with four digits. */
    private static final double PRINTED = 0.1;

    /** Holman, Heat Transfer, example 10.10: tested at 68 kg/min of water, asked at 40. */
    @Test
    void counterFlowOilCoolerOffDesign() {
        double water = 4180;
        double heat = 68.0 / 60.0 * water * 40;
        double oilFlow = heat / 35 / 1900;
        LiquidCooler.Test test = new LiquidCooler.Test(oilFlow, 1900, 68.0 / 60.0, water, 75, heat);
        LiquidCooler cooler =
                LiquidCooler.tested(Arrangement.COUNTER_FLOW, test, 0.5, 0, 0).orElseThrow();
        assertThat(cooler.conductance()).isCloseTo(320 * 15.8146, withinPercentage(PRINTED));
        double off = cooler.heatPerKelvin(oilFlow, 1900, 40.0 / 60.0, water) * 75;
        assertThat(off).isCloseTo(155.5e3, withinPercentage(PRINTED));
        assertThat(35 + off / (40.0 / 60.0 * water)).isCloseTo(90.8, within(0.1));
    }

    /** Holman, example 10.13: oil and air, one shell pass: NTU 1.9907, 20.09 m2 at 200 W/(m2 K). */
    @Test
    void shellAndTubes() {
        LiquidCooler.Test test = new LiquidCooler.Test(3, 2100, 2, 1009, 80, 2 * 1009 * 60);
        LiquidCooler cooler = LiquidCooler.tested(Arrangement.SHELL_TUBES, test, 0.5, 0.3, 0.8)
                .orElseThrow();
        assertThat(cooler.conductance()).isCloseTo(20.09 * 200, withinPercentage(PRINTED));
        double perKelvin = cooler.heatPerKelvin(3, 2100, 2, 1009);
        assertThat(100 - perKelvin * 80 / 6300).isCloseTo(80.78, within(0.005));
    }

    /** Holman, example 10.14: condensing at 50 degC, water in at 20, effectiveness 0.6 as printed; half the water: 0.84 and 126 kW. */
    @Test
    void oneSideAtOneTemperatureAndHalfTheFlow() {
        double water = 10e3 / 4180;
        LiquidCooler.Test test = new LiquidCooler.Test(1, 1e18, water, 4180, 30, 0.6 * 10e3 * 30);
        LiquidCooler cooler =
                LiquidCooler.tested(Arrangement.COUNTER_FLOW, test, 0.5, 0, 0).orElseThrow();
        assertThat(cooler.conductance()).isCloseTo(9163, withinPercentage(PRINTED));
        assertThat(cooler.heatPerKelvin(1, 1e18, water / 2, 4180) * 30).isCloseTo(126e3, withinPercentage(1e-6));
    }

    @Test
    void conductanceFollowsBothFlows() {
        LiquidCooler cooler = new LiquidCooler(Arrangement.COUNTER_FLOW, 300, 0.1, 1.0, 0.8, 0.5, 0.8);
        assertThat(cooler.conductance(0.1, 1.0)).isCloseTo(300, within(1e-9));
        assertThat(cooler.conductance(0.4, 1.0)).isCloseTo(300 / (0.4 + 0.2), within(1e-9));
        assertThat(cooler.conductance(0.1, 1e9)).isCloseTo(375, within(0.1));
        assertThat(cooler.heatPerKelvin(0, 2000, 1, 3600)).isZero();
        assertThat(cooler.heatPerKelvin(0.1, 2000, 0, 3600)).isZero();
        assertThat(cooler.heatPerKelvin(1e-9, 2000, 1, 3600)).isCloseTo(2e-6, within(1e-12));
    }

    @Test
    void whatTheFlowsCannotExchangeIsRefused() {
        LiquidCooler.Test tooMuch = new LiquidCooler.Test(0.1, 2000, 1, 3600, 50, 10_100);
        LiquidCooler.Test parallel = new LiquidCooler.Test(1, 3600, 1, 3600, 50, 100e3);
        assertThat(LiquidCooler.tested(Arrangement.COUNTER_FLOW, tooMuch, 0.8, 0.5, 0.8))
                .isEmpty();
        assertThat(LiquidCooler.tested(Arrangement.PARALLEL_FLOW, parallel, 0.8, 0.5, 0.8))
                .isEmpty();
        assertThat(LiquidCooler.tested(Arrangement.COUNTER_FLOW, parallel, 0.8, 0.5, 0.8))
                .isPresent();
        for (double nothing : List.of(0.0, -5.0, Double.NaN)) {
            LiquidCooler.Test idle = new LiquidCooler.Test(0.1, 2000, 1, 3600, 50, nothing);
            assertThat(LiquidCooler.tested(Arrangement.COUNTER_FLOW, idle, 0.8, 0.5, 0.8))
                    .isEmpty();
        }
        assertThatThrownBy(() -> new LiquidCooler(Arrangement.COUNTER_FLOW, 300, 0.1, -1.0, 0.8, 0.5, 0.8))
                .hasMessageContaining("-1.0");
        assertThatThrownBy(() -> new LiquidCooler(Arrangement.COUNTER_FLOW, 300, 0.1, 1.0, 1.8, 0.5, 0.8))
                .hasMessageContaining("1.8");
    }
}
