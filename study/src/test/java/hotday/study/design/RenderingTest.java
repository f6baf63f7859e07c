package hotday.study.design;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.core.unit.UnitSystem;
import hotday.core.unit.Units;
import hotday.study.demo.DemoShop;
import hotday.study.design.Rendering.Controller;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is rendered is run through the vehicle: no ceiling falls by more than what is stated. */
@Tag("slow")
class RenderingTest {
    @TempDir
    private static Path folder;

    private static Rendering rendered(String build, Optional<DutyMap> duty, Optional<List<Double>> relays) {
        return rendered(vehicle(build), duty, relays);
    }

    private static VehicleSpec vehicle(String build) {
        Path shop = folder.resolve("shop");
        if (!shop.toFile().exists()) {
            DemoShop.create(shop);
        }
        return BuildSheet.read(shop.resolve("builds").resolve(build).resolve("build.yaml"))
                .vehicle();
    }

    private static Rendering rendered(VehicleSpec spec, Optional<DutyMap> duty, Optional<List<Double>> relays) {
        Controller six = new Controller(
                6,
                Units.unit(Quantity.TEMPERATURE, "degF"),
                1.0,
                Units.unit(Quantity.PRESSURE_ABSOLUTE, "psia"),
                5.0,
                Units.unit(Quantity.SPEED, "mph"),
                1.0,
                duty,
                relays);
        return Rendering.of(spec, Plant.compile(spec), StandardCases.all(), Aim.BALANCED, six, share -> {});
    }

    private static void changesLessThanStated(Rendering r) {
        for (int i = 0; i < r.cases().size(); i++) {
            double stated = RenderedText.stated(r, i);
            assertThat(r.designed()[i] - r.rendered()[i])
                    .as(
                            "%s: designed %.2f, bound %.2f, rendered %.2f K, error %.3f",
                            r.cases().get(i).id(), r.designed()[i], r.bound()[i], r.rendered()[i], r.error())
                    .isLessThanOrEqualTo(stated);
        }
    }

    /** A designed schedule lies nearer to what does not hold than one that somebody wrote. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "oxbow"})
    void aDesignedSchedule(String build) {
        VehicleSpec sheet = vehicle(build);
        VehicleSpec spec =
                sheet.with(new ScheduleDesign(sheet, StandardCases.all(), Aim.BALANCED, new Display(UnitSystem.METRIC))
                        .designed(1, share -> {}, () -> false)
                        .schedule());
        changesLessThanStated(rendered(spec, Optional.empty(), Optional.empty()));
        changesLessThanStated(rendered(spec, Optional.of(new DutyMap(0.1, 0.9, true, 0.005, 100)), Optional.empty()));
        changesLessThanStated(rendered(spec, Optional.empty(), Optional.of(List.of(0.5, 1.0))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "oxbow"})
    void sixBreakPoints(String build) {
        Rendering r = rendered(build, Optional.empty(), Optional.empty());
        assertThat(r.error()).isLessThan(0.05);
        changesLessThanStated(r);
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "oxbow"})
    void dutyOfTenToNinetyPercentInverted(String build) {
        changesLessThanStated(rendered(build, Optional.of(new DutyMap(0.1, 0.9, true, 0.005, 100)), Optional.empty()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "oxbow"})
    void twoRelays(String build) {
        Rendering r = rendered(build, Optional.empty(), Optional.of(List.of(0.5, 1.0)));
        assertThat(r.relays()).isPresent();
        changesLessThanStated(r);
    }
}
