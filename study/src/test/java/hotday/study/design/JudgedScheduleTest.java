package hotday.study.design;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.Finding;
import hotday.core.finding.Severity;
import hotday.core.typed.Overlay;
import hotday.core.unit.Display;
import hotday.core.unit.UnitSystem;
import hotday.study.demo.DemoShop;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.sheet.ScheduleFile;
import hotday.vehicle.spec.VehicleSpec;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Schedules with one known fault each are told by its key at its line; sound ones pass. */
@Tag("slow")
class JudgedScheduleTest {
    /** A line a part, so that a test can say which line is wrong. */
    private static final List<String> SOUND = List.of(
            "schedule:",
            "  coolant: [[98 degC, 26 %], [102 degC, 45 %], [106 degC, 100 %]]",
            "  on: 98 degC",
            "  off: 93 degC",
            "  gearbox: [[106 degC, 26 %], [118 degC, 100 %]]",
            "  gearbox_hysteresis: 5 K",
            "  head_pressure: [[1400 kPa abs, 26 %], [1900 kPa abs, 50 %], [2400 kPa abs, 100 %]]",
            "  head_hysteresis: 350 kPa",
            "  allowance: [[30 km/h, 0 %], [80 km/h, 12 %]]",
            "  allowance_ends: 105 degC",
            "  floor: {demand: 0 %}",
            "  switching: {start_delay: 3 s, on: 20 %, off: 15 %, least: 25 %, least_on: 30 s, least_off: 20 s}",
            "  slew: {up: 10 %/s, at_rest: 5 %/s, down: 5 %/s, drop_out: 15 %}",
            "  after_run: {curve: [[97 degC, 30 %], [105 degC, 70 %]], from: 100 degC, until: 97 degC, longest: 180 s, battery: 11.8 V}");

    private static final Display METRIC = new Display(UnitSystem.METRIC);

    @TempDir
    private static Path folder;

    private static VehicleSpec spec;
    private static ScheduleDesign design;

    @BeforeAll
    static void heron() {
        Path shop = folder.resolve("shop");
        DemoShop.create(shop);
        spec = BuildSheet.read(shop.resolve("builds/heron/build.yaml")).vehicle();
        design = new ScheduleDesign(spec, StandardCases.all(), Aim.BALANCED, METRIC);
    }

    /** Lines of {@link #SOUND} that begin like one of these give way to it. */
    private static ScheduleReport judged(String changes) throws IOException {
        return judged(changes, spec, design);
    }

    private static ScheduleReport judged(String changes, VehicleSpec spec, ScheduleDesign design) throws IOException {
        List<String> lines = new ArrayList<>(SOUND);
        for (String change : changes.isBlank() ? new String[0] : changes.split("\\|")) {
            String key = change.strip().substring(0, change.strip().indexOf(':') + 1);
            lines.replaceAll(line -> line.strip().startsWith(key) ? "  " + change.strip() : line);
        }
        Path file = folder.resolve("schedule.yaml");
        Files.write(file, lines);
        ScheduleFile read = ScheduleFile.read(file, spec);
        return design.judged(read.schedule(), read::place);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "on: 89 degC | off: 86 degC; fan-before-thermostat; 3",
                "off: 89 degC; off-point-not-reached; 4",
                "off: 97 degC; hysteresis-too-small; 4",
                "coolant: [[98 degC, 26 %], [106 degC, 60 %]]; never-full; 2",
                "coolant: [[98 degC, 26 %], [108 degC, 60 %], [112 degC, 100 %]]; full-too-late; 2",
                "coolant: [[98 degC, 26 %], [106 degC, 60 %], [109.5 degC, 100 %]]; full-too-late; 2",
                "allowance_ends: 112 degC; allowance-too-hot; 10",
                "head_pressure: [[1400 kPa abs, 26 %], [2400 kPa abs, 60 %]]; head-curve-too-late; 7",
                "head_pressure: [[2500 kPa abs, 26 %], [3000 kPa abs, 100 %]]; head-curve-too-late; 7",
                "gearbox: [[118 degC, 26 %], [126 degC, 100 %]]; gearbox-curve-too-late; 5",
                "switching: {on: 80 %, off: 15 %}; start-demand-too-high; 12",
                "switching: {least_on: 0 s, least_off: 0 s}; least-time-too-short; 12",
                "slew: {up: 1 %/s, at_rest: 0.5 %/s}; slew-too-slow; 13",
                "after_run: {curve: [[80 degC, 50 %]], from: 85 degC, until: 80 degC, longest: 10 min}; after-run-without-end; 14",
                "after_run: {from: 100 degC, until: 97 degC, longest: 10 min, battery: 9 V}; after-run-empties-battery; 14",
                "after_run: {curve: [[97 degC, 100 %]], from: 98 degC, until: 97 degC, longest: 30 min}; after-run-over-budget; 14",
                "after_run: {curve: [[97 degC, 100 %]], from: 98 degC, until: 97 degC, battery: 12.4 V}; after-run-stops-early; 14",
                "head_hysteresis: 5 kPa; hysteresis-too-small; 8",
                "coolant: [[98 degC, 26 %], [105 degC, 30 %], [106 degC, 100 %]]; hunts; 2",
                "head_pressure: [[1400 kPa abs, 100 %]] | head_hysteresis: 30 kPa | switching: {least_on: 3 s, least_off: 1 s}; starts-too-often; 4",
                "coolant: [[92 degC, 40 %], [102 degC, 45 %], [106 degC, 100 %]] | on: 92 degC | off: 91 degC | allowance: [[30 km/h, 0 %], [80 km/h, 0 %]]; never-rests; 9"
            })
    void oneFaultIsToldAtItsLine(String change, String key, int line) throws IOException {
        assertThat(judged(change).findings()).anySatisfy(f -> {
            assertThat(f.key()).isEqualTo(key);
            assertThat(f.place().orElseThrow().line()).isEqualTo(line);
        });
    }

    /** The demo's alternators carry any floor; one of 60 A does not at idle. */
    @Test
    void aLimitThatGivesWayIsToldOnceWhereItDoesSoMost() {
        Path build = folder.resolve("shop/builds/oxbow/build.yaml");
        VehicleSpec oxbow = BuildSheet.read(build).vehicle();
        ScheduleFile own = ScheduleFile.ofSheet(build, oxbow);
        ScheduleReport report =
                new ScheduleDesign(oxbow, StandardCases.all(), Aim.BALANCED, METRIC).judged(own.schedule(), own::place);
        List<Passage> failing = report.lines().stream()
                .filter(line -> line.must().contains(Limit.HEAD_PRESSURE))
                .map(ScheduleReport.Line::passage)
                .filter(p -> p.headroom().get(Limit.HEAD_PRESSURE) < 0.0)
                .sorted(Comparator.comparing(p -> p.headroom().get(Limit.HEAD_PRESSURE)))
                .toList();
        assertThat(failing).hasSizeGreaterThan(1);
        assertThat(report.findings())
                .filteredOn(f -> f.key().equals("limit-not-held"))
                .extracting(Finding::message)
                .filteredOn(message -> message.contains(Limit.HEAD_PRESSURE.title()))
                .singleElement()
                .asString()
                .startsWith(failing.get(0).kase().title())
                .endsWith("with it: " + failing.size());
    }

    @Test
    void aFloorThatASmallAlternatorDoesNotCarryAtIdle() throws IOException {
        VehicleSpec weak = BuildSheet.read(
                        folder.resolve("shop/builds/heron/build.yaml"),
                        Overlay.of("test", List.of("electrical.alternator.rating=60 A")))
                .vehicle();
        ScheduleDesign there = new ScheduleDesign(weak, StandardCases.all(), Aim.BALANCED, METRIC);
        assertThat(judged("floor: {demand: 90 %, from: 60 degC}", weak, there).findings())
                .filteredOn(f -> f.key().equals("floor-too-high"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.severity()).isEqualTo(Severity.WARNING);
                    assertThat(f.place().orElseThrow().line()).isEqualTo(11);
                });
        assertThat(judged("floor: {demand: 20 %, from: 60 degC}", weak, there).findings())
                .extracting(Finding::key)
                .doesNotContain("floor-too-high");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "''",
                "coolant: [[96 degC, 26 %], [107 degC, 100 %]] | on: 96 degC | off: 92 degC",
                "coolant: [[96 degC, 30 %], [106.5 degC, 100 %]]",
                "gearbox: [[104 degC, 26 %], [117 degC, 100 %]]",
                "head_pressure: [[1300 kPa abs, 26 %], [2300 kPa abs, 100 %]]",
                "head_pressure: [[1350 kPa abs, 28 %], [1800 kPa abs, 55 %], [2200 kPa abs, 100 %]]",
                "allowance: [[40 km/h, 0 %], [90 km/h, 20 %]]",
                "floor: {demand: 20 %, from: 95 degC}",
                "switching: {least_on: 45 s, least_off: 30 s}",
                "slew: {up: 20 %/s, at_rest: 4 %/s, down: 8 %/s}"
            })
    void soundOnesPass(String change) throws IOException {
        ScheduleReport report = judged(change);
        assertThat(report.findings())
                .filteredOn(f -> f.severity() != Severity.NOTE)
                .extracting(Finding::toString)
                .isEmpty();
        assertThat(report.holds()).isTrue();
    }

    /** The day keeps the shipped case, and both must hold. */
    @Test
    void aCaseOfTheShopInPlaceOfAShippedOneMustHoldToo() {
        Case shipped = StandardCases.all().get(0);
        Case own = new Case(shipped.id(), "ours", shipped.start(), shipped.day(), shipped.phases(), shipped.limits());
        assertThat(Judge.withHolding(StandardDay.of(spec), List.of(own), spec.designAmbient()))
                .filteredOn(part -> part.kase().id().equals(shipped.id()) && part.ambient() == spec.designAmbient())
                .extracting(DayPart::kase)
                .containsExactlyInAnyOrder(shipped, own);
    }
}
