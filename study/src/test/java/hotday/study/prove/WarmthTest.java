package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.study.prove.MadeRun.Column;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs that never get warm are refused, those that get warm at another level than the sheet's are not. */
class WarmthTest {
    @TempDir
    private Path folder;

    private VehicleSpec spec;

    @BeforeEach
    void sheet() {
        spec = MadeRun.diesel(folder); // thermostat at 86 degC
    }

    private RunData run(String name, int seconds, DoubleUnaryOperator coolant) {
        return Preparation.of(
                MadeRun.recording(
                        folder.resolve(name),
                        seconds,
                        List.of(
                                Column.of("ambient_temperature", "degC", 21.0),
                                new Column("coolant_temperature", "degC", coolant),
                                Column.of("vehicle_speed", "km/h", 60.0),
                                Column.of("engine_speed", "rpm", 1600.0),
                                Column.of("fuel_flow", "g/s", 1.5))),
                spec);
    }

    /** 21 degC and 0.1 K/s: the thermostat opens in 47/0.1 = 470 s, 8 min; with ten minutes beyond 21 min in all. */
    @Test
    void threeMinutesOfWarmUpAreRefusedAndTheReasonSaysHowLongWouldDo() {
        InputException e = catchThrowableOfType(
                InputException.class, () -> new Warmth(spec).refuse(List.of(run("short", 180, t -> 21.0 + 0.1 * t))));
        Finding f = e.findings().get(0);
        assertThat(f.key()).isEqualTo("run-never-warm");
        assertThat(f.values()).containsEntry("at_thermostat_s", 0.0).containsEntry("length_s", 180.0);
        assertThat(f.message()).contains("lasts 3.0 min", "opens in 8 min", "21 min in all", "nothing was learned");
    }

    @Test
    void coolantThatNoLongerRisesIsToldToBeLoaded() {
        InputException e = catchThrowableOfType(
                InputException.class,
                () -> new Warmth(spec).refuse(List.of(run("idle", 180, t -> 55.0 + 2.0 * (t < 90 ? t / 90.0 : 1.0)))));
        assertThat(e.findings().get(0).message()).contains("drive under load");
    }

    @Test
    void aWarmRunCarriesAShortOne() {
        RunData warm = run("warm", 300, t -> Math.min(88.0, 60.0 + 0.4 * t));
        assertThatCode(() -> new Warmth(spec).refuse(List.of(run("short", 180, t -> 21.0 + 0.1 * t), warm)))
                .doesNotThrowAnyException();
    }

    /** A thermostat that opens far below what the sheet says still regulates. */
    @Test
    void aLevelThatIsHeldIsWarm() {
        RunData cool = run("cool", 900, t -> Math.min(72.0, 30.0 + 0.2 * t));
        assertThat(new Warmth(spec).atThermostat(cool)).isBetween(300.0, 450.0);
        assertThatCode(() -> new Warmth(spec).refuse(List.of(cool))).doesNotThrowAnyException();
    }
}
