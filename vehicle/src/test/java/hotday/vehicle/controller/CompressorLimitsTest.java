package hotday.vehicle.controller;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class CompressorLimitsTest {
    @Test
    void theStandardIsTheTableOfThePage() {
        CompressorLimits s = CompressorLimits.standard();
        assertThat(s.freeze()).isEqualTo(new CompressorLimits.Freeze(true, new CompressorLimits.Below(10, 40)));
        assertThat(s.headPressure()).isEqualTo(new CompressorLimits.Above(3100, 2000));
        assertThat(s.suction().pressure()).isEqualTo(new CompressorLimits.Below(170, 210));
        assertThat(s.coolant()).isEqualTo(new CompressorLimits.Above(1160, 1100));
        assertThat(CompressorLimits.of(3100e3, 2000e3, 170e3, 274.15, false)).isEqualTo(s);
    }

    @Test
    void aCircuitInPlainNumbers() {
        CompressorLimits made = CompressorLimits.of(2_999_600, 1_800_400, 195_500, 275.15, true);
        assertThat(made.headPressure()).isEqualTo(new CompressorLimits.Above(3000, 1800));
        assertThat(made.suction().pressure()).isEqualTo(new CompressorLimits.Below(196, 236));
        assertThat(made.freeze()).isEqualTo(new CompressorLimits.Freeze(false, new CompressorLimits.Below(20, 50)));
        assertThat(made.clutch()).isEqualTo(CompressorLimits.standard().clutch());
    }

    @Test
    void wrongNumbersAreRefusedWithNameAndLimits() {
        assertThatThrownBy(() -> CompressorLimits.of(2000e3, 2000e3, 170e3, 274.15, false))
                .hasMessageContaining("cut-in is 2000000.0 Pa, must lie below the cut-out of 2000000.0 Pa");
        assertThatThrownBy(() -> CompressorLimits.of(Double.NaN, 2000e3, 170e3, 274.15, false))
                .hasMessageContaining("cut-out of NaN Pa");
        assertThatThrownBy(() -> CompressorLimits.of(3100e3, 2000e3, Double.NaN, 274.15, false))
                .hasMessageContaining("low cut-out, kPa, is 0, must be 1..10000");
        assertThatThrownBy(() -> CompressorLimits.of(3100e3, 2000e3, 170e3, Double.NaN, false))
                .hasMessageContaining("freeze limit, 0.1 degC, is -9999, must be -1000..2000");
        assertThatThrownBy(() -> new CompressorLimits.Below(40, 40))
                .hasMessageContaining("value that releases is 40, must be 41..32000");
        assertThatThrownBy(() -> new CompressorLimits.Above(40, 40))
                .hasMessageContaining("value that releases is 40, must be -32000..39");
        assertThatThrownBy(() -> new CompressorLimits.Clutch(-1, 0, 0, 0))
                .hasMessageContaining("compressor least time on is -1, must be 0..36000");
    }

    @Test
    void inputsRoundSiAndWhatIsUnknownKeepsTheCompressorOff() {
        CompressorInputs in = new CompressorInputs();
        in.engineSpeed(78.54); // 750.0 rpm
        in.evaporatorTemperature(273.15 + 3.96);
        in.headPressure(1_399_600);
        in.suctionPressure(299_500);
        in.load(0.12345);
        in.coolantTemperature(273.15 + 95.04);
        assertThat(in.engineSpeed).isEqualTo(750);
        assertThat(in.evaporator).isEqualTo(40);
        assertThat(in.headPressure).isEqualTo(1400);
        assertThat(in.suctionPressure).isEqualTo(300);
        assertThat(in.load).isEqualTo(1235);
        assertThat(in.coolant).isEqualTo(950);
        in.engineSpeed(Double.NaN);
        in.evaporatorTemperature(Double.NaN);
        in.headPressure(Double.NaN);
        in.suctionPressure(Double.NaN);
        in.coolantTemperature(Double.NaN);
        assertThat(in.engineSpeed).isZero();
        assertThat(in.evaporator).isEqualTo(Inputs.INVALID);
        assertThat(in.headPressure).isEqualTo(32_000);
        assertThat(in.suctionPressure).isZero();
        assertThat(in.coolant).isEqualTo(Inputs.INVALID);
    }

    @Test
    void inputsNobodyFillsKeepTheCompressorOff() {
        CompressorRules rules = new CompressorRules(CompressorLimits.standard());
        CompressorInputs in = new CompressorInputs();
        for (int i = 0; i < 1000; i++) {
            assertThat(rules.step(in)).isFalse();
        }
        assertThat(rules.hold()).isEqualTo(Hold.TIME_OUT);
        in.request(true, 0);
        in.running(true);
        rules.step(in);
        assertThat(rules.hold()).isEqualTo(Hold.START_DELAY);
    }
}
