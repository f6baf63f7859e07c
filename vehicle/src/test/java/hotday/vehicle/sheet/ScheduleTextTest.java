package hotday.vehicle.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hotday.core.finding.InputException;
import hotday.core.typed.Overlay;
import hotday.core.unit.Display;
import hotday.core.unit.UnitSystem;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.spec.FanSchedule;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A schedule typed in all its parts, and one that was written and is read again. */
class ScheduleTextTest {
    private static final String TYPED = """
            schedule:
              coolant: [[201.2 degF, 33.3 %], [98.7 degC, 71.25 %], [104 degC, 100 %]]
              on: 94.3 degC
              off: 88.1 degC
              gearbox: [[99.9 degC, 27 %], [111.1 degC, 100 %]]
              gearbox_hysteresis: 6.5 K
              head_pressure: [[181 psia, 25.5 %], [1777 kPa abs, 100 %]]
              head_hysteresis: 210 kPa
              allowance: [[33.3 km/h, 0 %], [55 mph, 44.44 %]]
              allowance_ends: 105.5 degC
              floor: {demand: 0 %, from: 91.7 degC, below: 4 km/h, above: 9 km/h}
              switching: {start_delay: 1.5 s, on: 22 %, off: 12 %, least: 28 %, least_on: 33 s, least_off: 7.7 s}
              slew: {up: 14.3 %/s, at_rest: 3.1 %/s, down: 6.6 %/s, drop_out: 16 %}
              after_run: {curve: [[96 degC, 33 %], [104 degC, 66 %]], from: 101 degC, until: 95 degC, longest: 4 min, battery: 11.95 V}
            """;

    private static final String CHARGED = TYPED + """
              charge_air: [[131 degF, 27.5 %], [66.6 degC, 100 %]]
              charge_air_hysteresis: 4.4 K
            """;

    private static FanSchedule read(String schedule) throws IOException {
        return read(schedule, "rated_power: 120 kW}");
    }

    private static FanSchedule charged(String schedule) throws IOException {
        return read(schedule, "rated_power: 120 kW, charging: turbo}");
    }

    private static FanSchedule read(String schedule, String engine) throws IOException {
        try (InputStream in = ScheduleTextTest.class.getResourceAsStream("least.yaml")) {
            String sheet = new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("rated_power: 120 kW}", engine)
                    + "air_conditioning: {}\n" + schedule;
            return BuildSheet.of(Path.of("build.yaml"), sheet, Overlay.none())
                    .vehicle()
                    .schedule();
        }
    }

    @Test
    void everyKeyArrives() throws IOException {
        Schedule s = Schedule.of(read(TYPED));
        assertThat(s.coolant().demand()).hasToString("[940, 3330], [987, 7125], [1040, 10000]");
        assertThat(s.coolant().on()).isEqualTo(943);
        assertThat(s.coolant().off()).isEqualTo(881);
        assertThat(s.gearbox().off()).isEqualTo(999 - 65);
        assertThat(s.airConditioning().on()).isEqualTo(1248); // 181 psi = 1247.95 kPa
        assertThat(s.airConditioning().off()).isEqualTo(1248 - 210);
        assertThat(s.allowance().demand()).hasToString("[333, 0], [885, 4444]");
        assertThat(s.allowance().hottest()).isEqualTo(1055);
        assertThat(s.floor()).isEqualTo(new Schedule.Floor(0, 917, 40, 90));
        assertThat(s.switching()).isEqualTo(new Schedule.Switching(15, 2200, 1200, 2800, 330, 77));
        assertThat(s.slew()).isEqualTo(new Schedule.Slew(143, 31, 40, 66, 1600));
        assertThat(s.afterRun().demand()).hasToString("[960, 3300], [1040, 6600]");
        assertThat(s.afterRun().begin()).isEqualTo(1010);
        assertThat(s.afterRun().end()).isEqualTo(950);
        assertThat(s.afterRun().longest()).isEqualTo(2400);
        assertThat(s.afterRun().battery()).isEqualTo(11_950);
    }

    @Test
    void aChargeAirCurveArrives() throws IOException {
        Schedule s = Schedule.of(charged(CHARGED));
        assertThat(s.chargeAir().demand()).hasToString("[550, 2750], [666, 10000]");
        assertThat(s.chargeAir().on()).isEqualTo(550);
        assertThat(s.chargeAir().off()).isEqualTo(550 - 44);
        assertThat(Schedule.of(charged("schedule: {charge_air: [[50 degC, 100 %]]}"))
                        .chargeAir()
                        .off())
                .isEqualTo(470);
        assertThat(Schedule.of(charged(TYPED)).chargeAir()).isEqualTo(Schedule.Curve.NONE);
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void whatIsWrittenIsReadAgainToTheLastDigit(UnitSystem units) throws IOException {
        FanSchedule typed = read(TYPED);
        String written = ScheduleText.of(typed, new Display(units));
        assertThat(Schedule.of(read(written))).as(written).isEqualTo(Schedule.of(typed));
        FanSchedule withChargeAir = charged(CHARGED);
        String all = ScheduleText.of(withChargeAir, new Display(units));
        assertThat(Schedule.of(charged(all))).as(all).isEqualTo(Schedule.of(withChargeAir));
        FanSchedule plain = read("");
        assertThat(Schedule.of(read(ScheduleText.of(plain, new Display(units)))))
                .isEqualTo(Schedule.of(plain));
    }

    @Test
    void aLimitOfChargeAirNeedsACooler() throws IOException {
        assertThatThrownBy(() -> read("limits: {charge_air: 70 degC}\n"))
                .isInstanceOfSatisfying(
                        InputException.class,
                        e -> assertThat(e.findings())
                                .singleElement()
                                .satisfies(f -> assertThat(f.toString()).contains("build.yaml:9:", "charging: turbo")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "floor: {below: 10 km/h, above: 5 km/h}",
                "switching: {on: 20 %, off: 21 %}",
                "switching: {least: 120 %}",
                "slew: {up: 10 %}",
                "after_run: {from: 95 degC, until: 95 degC}",
                "head_hysteresis: 20 kPa abs",
                "charge_air: [[50 degC, 100 %]]", // no charge-air cooler
                "charge_air_hysteresis: 3 K",
                "floor: {speed: 3 km/h}"
            })
    void whatCannotBeIsRefusedAtItsPlace(String wrong) {
        assertThatThrownBy(() -> read("schedule:\n  " + wrong + "\n"))
                .isInstanceOfSatisfying(
                        InputException.class,
                        e -> assertThat(e.findings())
                                .allSatisfy(
                                        f -> assertThat(f.place().orElseThrow().line())
                                                .isGreaterThan(8)));
    }
}
