package hotday.study.findings;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.Finding;
import hotday.core.finding.Severity;
import hotday.signals.channel.ChannelMap;
import hotday.signals.channel.Recording;
import hotday.study.demo.DemoShop;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run given up after five minutes shows little, and that quickly; whole runs are driven by {@link FaultStudyTest}. */
class CommissioningTest {
    private static final double MILD = 273.15 + 22.0;
    private static final double FIVE_MINUTES = 300.0;

    @TempDir
    private Path folder;

    private VehicleSpec heron;

    @BeforeEach
    void read() {
        heron = BuildSheet.read(DemoShop.create(folder.resolve("shop")).build("heron"))
                .vehicle();
    }

    private Recording drive(FaultKind kind, String channels) throws IOException {
        Car car = Car.draw(heron, kind, 0.8, FaultStudy.WITH_CARE, 4711);
        Path file = folder.resolve("run.csv");
        Files.writeString(file, new Commission(car, MILD, 5).record(Step.first(Step.commissioning(6), FIVE_MINUTES)));
        Path map = folder.resolve("map.yaml");
        Files.writeString(map, channels);
        return ChannelMap.read(map).recording(file);
    }

    private static String all() throws IOException {
        try (var in = CommissioningTest.class.getResourceAsStream("channels.yaml")) {
            return new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        }
    }

    @Test
    void aWrongSensorIsSeenInTheColdSoak() throws IOException {
        Examination seen = Commissioning.of(heron, drive(FaultKind.COOLANT_SENSOR_HIGH, all()), 1, 2);
        Finding first = seen.findings().get(0);
        assertThat(first.key()).isEqualTo("coolant-sensor-high");
        assertThat(first.severity()).isEqualTo(Severity.WARNING);
        assertThat(first.message())
                .contains("coolant before the engine started")
                .contains("To be sure");
        assertThat((Double) first.values().get("measured_degC")).isGreaterThan(30.0);
        assertThat((Double) first.values().get("expected_degC")).isBetween(23.0, 27.0);
        assertThat((Double) first.values().get("from_s")).isBetween(0.0, 5.0);
        assertThat((Double) first.values().get("to_s")).isBetween(15.0, 25.0);
        assertThat((Double) first.values().get("confidence")).isBetween(0.5, 1.0);
        assertThat(first.values()).containsKeys("odds", "next", "expected_spread_K");
    }

    @Test
    void aShortRunOfASoundCarSaysThatItIsTooShort() throws IOException {
        Examination seen = Commissioning.of(heron, drive(FaultKind.NONE, all()), 1, 2);
        assertThat(seen.findings())
                .singleElement()
                .satisfies(f -> assertThat(f.key()).isEqualTo(Commissioning.TOO_SHORT));
        assertThat(seen.untold())
                .contains(FaultKind.FAN_DEAD, FaultKind.CHARGE_HIGH, FaultKind.GEARBOX_BYPASS)
                .doesNotContain(FaultKind.COOLANT_SENSOR_HIGH);
    }

    @Test
    void aMissingChannelMakesItsFaultsUntoldAndNothingElse() throws IOException {
        String few = all().lines()
                .filter(l -> !l.contains("gearbox") && !l.contains("fan_current") && !l.contains("supply"))
                .reduce("", (a, b) -> a + b + "\n");
        Examination seen = Commissioning.of(heron, drive(FaultKind.COOLANT_SENSOR_HIGH, few), 1, 2);
        assertThat(seen.findings().get(0).key()).isEqualTo("coolant-sensor-high");
        assertThat(seen.untold()).contains(FaultKind.GEARBOX_BYPASS, FaultKind.SUPPLY_SAGS);
    }

    @Test
    void theNumberOfThreadsChangesNothing() throws IOException {
        Recording run = drive(FaultKind.NONE, all());
        assertThat(Commissioning.of(heron, run, 3, 1)).isEqualTo(Commissioning.of(heron, run, 3, 2));
    }

    @Test
    void everyKindHasWordsForATechnician() {
        assertThat(FaultKind.faults()).hasSizeGreaterThanOrEqualTo(14).allSatisfy(kind -> {
            assertThat(kind.title()).isNotBlank();
            assertThat(kind.advice()).isNotBlank();
            assertThat(kind.next()).isNotBlank();
            assertThat(FaultKind.of(kind.key())).isEqualTo(kind);
            assertThat(kind.severity()).isIn(List.of(Severity.WARNING, Severity.FAULT));
        });
    }
}
