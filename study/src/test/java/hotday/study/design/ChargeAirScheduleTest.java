package hotday.study.design;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.finding.Severity;
import hotday.core.typed.Overlay;
import hotday.core.unit.Display;
import hotday.core.unit.UnitSystem;
import hotday.study.demo.DemoShop;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.sheet.ScheduleFile;
import hotday.vehicle.sheet.ScheduleText;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.FanSchedule.ChargeAirCurve;
import hotday.vehicle.spec.VehicleSpec;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The turbo diesel of the demo with a limit for its charge air: designed, written, judged, rendered. */
@Tag("slow")
class ChargeAirScheduleTest {
    private static final Display METRIC = new Display(UnitSystem.METRIC);
    private static final double LIMIT = 273.15 + 75;

    @TempDir
    private static Path folder;

    private static VehicleSpec spec;
    private static ScheduleDesign design;
    private static ScheduleReport designed;

    @BeforeAll
    static void oxbow() {
        Path shop = folder.resolve("shop");
        DemoShop.create(shop);
        spec = BuildSheet.read(
                        shop.resolve("builds/oxbow/build.yaml"),
                        Overlay.of("test", List.of("limits.charge_air=75 degC")))
                .vehicle();
        design = new ScheduleDesign(spec, StandardCases.all(), Aim.BALANCED, METRIC);
        designed = design.designed(1, share -> {}, () -> false);
    }

    private static ScheduleReport judged(Optional<ChargeAirCurve> curve) {
        return design.judged(designed.schedule().with(curve), key -> Place.of(key));
    }

    private static ChargeAirCurve curve(double from, double full, double most, double hysteresis) {
        return new ChargeAirCurve(List.of(273.15 + from, 273.15 + full), List.of(0.25, most), hysteresis);
    }

    @Test
    void theDesignedOneHasACurveAndHolds() throws IOException {
        assertThat(designed.holds()).isTrue();
        assertThat(designed.findings()).isEmpty();
        assertThat(designed.lines()).anySatisfy(l -> assertThat(l.must()).contains(Limit.CHARGE_AIR));
        ChargeAirCurve curve = designed.schedule().chargeAir().orElseThrow();
        assertThat(curve.temperature().get(1)).isLessThan(LIMIT);
        assertThat(curve.demand().get(1)).isEqualTo(1.0);
        Path file = Files.writeString(folder.resolve("designed.yaml"), ScheduleText.of(designed.schedule(), METRIC));
        FanSchedule read = ScheduleFile.read(file, spec).schedule();
        assertThat(Schedule.of(read)).isEqualTo(Schedule.of(designed.schedule()));
        assertThat(DesignJson.of(designed).at("/schedule/charge_air/1/percent").asDouble())
                .isEqualTo(100);
    }

    private static void told(Optional<ChargeAirCurve> curve, String key, String where) {
        assertThat(judged(curve).findings())
                .filteredOn(f -> f.severity() == Severity.FAULT)
                .extracting(f -> f.key() + " " + f.place().orElseThrow().file())
                .contains(key + " " + where);
    }

    @Test
    void faultsOfTheCurveAreTold() {
        told(Optional.empty(), "charge-air-curve-missing", "charge_air");
        told(Optional.of(curve(65, 75, 1.0, 3)), "charge-air-curve-too-late", "charge_air");
        told(Optional.of(curve(60, 70, 0.8, 3)), "charge-air-curve-too-late", "charge_air");
        told(Optional.of(curve(60, 70, 1.0, 1)), "hysteresis-too-small", "charge_air_hysteresis");
    }

    @Test
    void anotherSoundCurvePasses() {
        assertThat(judged(Optional.of(curve(60, 72, 1.0, 4))).findings())
                .extracting(Finding::key)
                .doesNotContain("charge-air-curve-missing", "charge-air-curve-too-late", "hysteresis-too-small");
    }

    @Test
    void theCurveIsRenderedWithTheOthers() {
        Rendering r = Rendering.of(
                spec.with(designed.schedule()),
                Plant.compile(spec),
                StandardCases.steady(),
                Aim.BALANCED,
                Rendering.Controller.of(UnitSystem.US, 6, Optional.empty(), Optional.empty()),
                share -> {});
        assertThat(RenderedText.csv(r)).contains("charge_air,degF,").containsPattern("charge_air,degF,16[0-9],100");
        assertThat(RenderedText.markdown("Oxbow", r, METRIC)).contains("## charge_air");
    }
}
