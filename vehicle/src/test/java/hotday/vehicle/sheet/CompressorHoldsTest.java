package hotday.vehicle.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hotday.core.finding.InputException;
import hotday.core.typed.Overlay;
import hotday.vehicle.controller.CompressorLimits;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The compressor's rules as a sheet types them, and what the controller makes of them. */
class CompressorHoldsTest {
    private static CompressorLimits limits(String conditioning) {
        return limits(conditioning, "112 degC");
    }

    private static CompressorLimits limits(String conditioning, String hottest) {
        try (InputStream in = CompressorHoldsTest.class.getResourceAsStream("least.yaml")) {
            String sheet = new String(in.readAllBytes(), StandardCharsets.UTF_8) + "air_conditioning: {" + conditioning
                    + "}\nlimits: {coolant: " + hottest + "}\n";
            return CompressorLimits.of(
                    BuildSheet.of(Path.of("build.yaml"), sheet, Overlay.none()).vehicle());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void everyKeyArrives() {
        CompressorLimits typed = limits("start_delay: 9.5 s, least_on: 4 s, least_off: 0.1 min,"
                + " throttle: {wide_open: 85 %, released: 70 %, longest: 6 s},"
                + " hot_coolant: {cut_out: 228.2 degF, cut_in: 103 degC}");
        assertThat(typed.engine().startDelay()).isEqualTo(95);
        assertThat(typed.clutch()).isEqualTo(new CompressorLimits.Clutch(40, 60, 5, 5));
        assertThat(typed.throttle())
                .isEqualTo(new CompressorLimits.Throttle(new CompressorLimits.Above(8500, 7000), 60));
        assertThat(typed.coolant()).isEqualTo(new CompressorLimits.Above(1090, 1030));
    }

    /** docs/controller.md, but hot coolant, which is cut at the limit where that lies lower. */
    @Test
    void whatIsNotTypedIsTheStandard() {
        CompressorLimits standard = CompressorLimits.standard();
        CompressorLimits hot = limits("", "118 degC");
        assertThat(hot.engine()).isEqualTo(standard.engine());
        assertThat(hot.throttle()).isEqualTo(standard.throttle());
        assertThat(hot.clutch()).isEqualTo(standard.clutch());
        assertThat(hot.suction().blanking()).isEqualTo(standard.suction().blanking());
        assertThat(hot.coolant()).isEqualTo(standard.coolant());
        assertThat(limits("").coolant()).isEqualTo(new CompressorLimits.Above(1120, 1060));
        assertThat(limits("hot_coolant: {cut_out: 110 degC}").coolant())
                .isEqualTo(new CompressorLimits.Above(1100, 1040));
        assertThat(limits("throttle: {wide_open: 60 %}").throttle())
                .isEqualTo(new CompressorLimits.Throttle(new CompressorLimits.Above(6000, 5000), 50));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            start_delay: 7                                                 | start_delay
            start_delay: 200 s                                             | 120 s
            least_on: -1 s                                                 | least_on
            throttle: {wide_open: 80 %, released: 85 %}                    | released' must lie below
            throttle: {from: 80 %}                                         | from
            hot_coolant: {cut_in: 100 degC}                                | cut_out
            hot_coolant: {cut_out: 108 degC, cut_in: 108 degC}             | else the compressor chatters
            hot_coolant: {cut_out: 108}                                    | unit
            """)
    void whatCannotBeIsRefusedAtItsPlace(String typed, String said) {
        assertThatThrownBy(() -> limits(typed))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("build.yaml:")
                .hasMessageContaining(said);
    }
}
