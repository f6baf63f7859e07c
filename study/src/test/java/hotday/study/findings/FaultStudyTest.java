package hotday.study.findings;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FaultStudyTest {
    @TempDir
    private Path folder;

    private FaultStudy study(long seed) {
        DemoShop shop = DemoShop.create(folder.resolve("shop"));
        List<VehicleSpec> sheets = DemoShop.BUILDS.stream()
                .map(build -> BuildSheet.read(shop.build(build)).vehicle())
                .toList();
        return FaultStudy.withCare(sheets, folder.resolve("runs"), seed);
    }

    /** Clear ones: the full study is a command. */
    @Test
    @Tag("slow")
    void clearFaultsAreNamedFirst() {
        for (FaultKind kind : List.of(
                FaultKind.THERMOSTAT_STUCK_OPEN, FaultKind.FAN_DEAD, FaultKind.CHARGE_LOW, FaultKind.SUPPLY_SAGS)) {
            FaultReport report = study(21).of(kind, 2, 2);
            assertThat(report.cars()).hasSize(2);
            assertThat(report.named(kind.key(), 1)).as(kind.key()).isEqualTo(1.0);
        }
    }

    @Test
    @Tag("slow")
    void soundCarsAreLeftAloneAndANumberOfThreadsChangesNothing() {
        FaultReport two = study(22).of(0, 4, 2, share -> {});
        assertThat(two.falseAlarms()).isZero();
        assertThat(two.named(2)).isNaN();
        assertThat(study(22).of(0, 4, 1, share -> {})).isEqualTo(two);
    }

    @Test
    void aReportCountsWhatWasNamed() {
        FaultReport report = new FaultReport(List.of(
                outcome("fan-dead", List.of("fan-dead")),
                outcome("fan-dead", List.of("flaps-closed", "fan-dead")),
                outcome("air-pocket", List.of("fan-dead", "flaps-closed", "air-pocket")),
                outcome("none", List.of()),
                outcome("none", List.of("air-pocket"))));
        assertThat(report.faults()).isEqualTo(3);
        assertThat(report.named(1)).isEqualTo(1.0 / 3.0);
        assertThat(report.named(2)).isEqualTo(2.0 / 3.0);
        assertThat(report.named("fan-dead", 1)).isEqualTo(0.5);
        assertThat(report.named("air-pocket", 2)).isZero();
        assertThat(report.falseAlarms()).isEqualTo(0.5);
    }

    private static FaultOutcome outcome(String fault, List<String> named) {
        return new FaultOutcome("build", fault, 0.5, 295.0, 1, 2400.0, 1, named);
    }
}
