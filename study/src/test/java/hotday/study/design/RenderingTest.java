package hotday.study.design;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.unit.Display;
import hotday.core.unit.UnitSystem;
import hotday.study.demo.DemoShop;
import hotday.study.design.Rendering.Controller;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is rendered is run through the vehicle: no ceiling falls by more than what is stated. */
@Tag("slow")
class RenderingTest {
    private static final Display METRIC = new Display(UnitSystem.METRIC);
    private static final Optional<DutyMap> INVERTED = Optional.of(new DutyMap(0.1, 0.9, true, 0.005, 100));

    @TempDir
    private static Path folder;

    private static BuildSheet sheet(String build) {
        Path shop = folder.resolve("shop");
        if (!shop.toFile().exists()) {
            DemoShop.create(shop);
        }
        return BuildSheet.read(shop.resolve("builds").resolve(build).resolve("build.yaml"));
    }

    private static Rendering rendered(
            VehicleSpec spec, UnitSystem units, Optional<DutyMap> duty, Optional<List<Double>> relays) {
        Controller six = Controller.of(units, 6, duty, relays);
        return Rendering.of(spec, Plant.compile(spec), StandardCases.all(), Aim.BALANCED, six, share -> {});
    }

    private static void changesLessThanStated(Rendering r) {
        for (int i = 0; i < r.cases().size(); i++) {
            assertThat(r.lost(i))
                    .as(
                            "%s: designed %.2f, bound %.2f, rendered %.2f K, error %.3f",
                            r.cases().get(i).id(), r.designed()[i], r.bound()[i], r.rendered()[i], r.error())
                    .isLessThanOrEqualTo(r.stated(i));
        }
    }

    private static void everyWay(VehicleSpec spec, UnitSystem units) {
        Rendering points = rendered(spec, units, Optional.empty(), Optional.empty());
        assertThat(points.error()).isLessThan(0.05);
        changesLessThanStated(points);
        changesLessThanStated(rendered(spec, units, INVERTED, Optional.empty()));
        Rendering relays = rendered(spec, units, Optional.empty(), Optional.of(List.of(0.5, 1.0)));
        assertThat(relays.relays()).isPresent();
        changesLessThanStated(relays);
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "oxbow"})
    void theScheduleOfTheSheet(String build) {
        BuildSheet sheet = sheet(build);
        everyWay(sheet.vehicle(), sheet.units());
    }

    /** A designed schedule lies nearer to what does not hold than one that somebody wrote. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "oxbow"})
    void aDesignedSchedule(String build) {
        BuildSheet sheet = sheet(build);
        VehicleSpec spec = sheet.vehicle();
        ScheduleDesign design = new ScheduleDesign(spec, StandardCases.all(), Aim.BALANCED, new Display(sheet.units()));
        everyWay(spec.with(design.designed(1, share -> {}, () -> false).schedule()), sheet.units());
    }

    @Test
    void whatFallsByMoreThanIsStatedIsAFault() {
        Case kase = StandardCases.all().get(0);
        Rendering r = costing(List.of(kase, StandardCases.all().get(1)), 0.2, true);
        assertThat(RenderedFindings.of(r, METRIC, Place.of("tables/schedule.csv")))
                .singleElement()
                .satisfies(f -> assertThat(f.key()).isEqualTo("rendered-gives-way"))
                .satisfies(f -> assertThat(f.toString())
                        .startsWith("tables/schedule.csv: " + kase.title() + " gives way at 39.7 degC, 0.3 K below"));
        assertThat(RenderedFindings.of(costing(List.of(kase), 0.31, true), METRIC, Place.of("x")))
                .isEmpty();
        assertThat(RenderedFindings.of(costing(List.of(kase), 0.31, false), METRIC, Place.of("x")))
                .extracting(Finding::key)
                .containsExactly("relays-do-not-hold");
    }

    /** The first case loses 0.3 K, a second one nothing. */
    private static Rendering costing(List<Case> cases, double stated, boolean relaysHold) {
        double[] designed = {313.15, 313.15};
        return new Rendering(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                5.0,
                100e3,
                relaysHold,
                0.01,
                cases,
                designed,
                new double[] {313.15 - stated + 2 * ScheduledCeilings.CLOSE, 313.15},
                new double[] {312.85, 313.15});
    }
}
