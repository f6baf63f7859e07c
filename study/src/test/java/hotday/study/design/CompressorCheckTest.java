package hotday.study.design;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.typed.Overlay;
import hotday.core.unit.Display;
import hotday.core.unit.UnitSystem;
import hotday.study.demo.DemoShop;
import hotday.study.design.CompressorReport.CoolingDown;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.controller.CompressorLimits;
import hotday.vehicle.controller.CompressorLimits.Above;
import hotday.vehicle.controller.CompressorLimits.Below;
import hotday.vehicle.controller.CompressorLimits.Clutch;
import hotday.vehicle.controller.CompressorLimits.Engine;
import hotday.vehicle.controller.CompressorLimits.Freeze;
import hotday.vehicle.controller.CompressorLimits.Suction;
import hotday.vehicle.controller.CompressorLimits.Throttle;
import hotday.vehicle.controller.Hold;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Compressor rules with one fault each are told by its key; sound ones pass. Numbers: common practice, no source. */
@Tag("slow")
class CompressorCheckTest {
    /** Saturation of R-134a at 43 degC is 11.0 bar (published tables); air before a condenser at idle is a little warmer. */
    private static final double AT_REST = 11.5e5;

    private static final Display METRIC = new Display(UnitSystem.METRIC);

    @TempDir
    private static Path folder;

    @BeforeAll
    static void shop() {
        DemoShop.create(folder);
    }

    private static BuildSheet sheet(String build, String... changes) {
        return BuildSheet.read(
                folder.resolve("builds").resolve(build).resolve("build.yaml"), Overlay.of("test", List.of(changes)));
    }

    private static CompressorReport report(BuildSheet sheet, FanSchedule schedule) {
        return report(sheet, schedule, sheet::place).orElseThrow();
    }

    private static Optional<CompressorReport> report(
            BuildSheet sheet, FanSchedule schedule, Function<String, Optional<Place>> places) {
        ScheduleDesign design = new ScheduleDesign(sheet.vehicle(), StandardCases.all(), Aim.BALANCED, METRIC);
        return design.compressor(design.judged(schedule, key -> Place.of("test")), places);
    }

    /** Rules that a word makes wrong in one place. */
    private static CompressorLimits rules(String wrong) {
        Map<String, Integer> is = Map.of(wrong, 1);
        int out = is.containsKey("cut-out") ? 3500 : 3000;
        int in = is.containsKey("cut-in") ? 1100 : is.containsKey("band") ? 2900 : 2000;
        int low = is.containsKey("low-high") ? 320 : is.containsKey("low-low") ? 100 : 170;
        int freeze = is.containsKey("cold") ? -20 : is.containsKey("warm") ? 60 : 10;
        int coolant = is.containsKey("early") ? 1080 : is.containsKey("late") ? 1160 : 1095;
        return new CompressorLimits(
                10,
                new Engine(is.containsKey("start") ? 20 : 70, new Below(450, 550)),
                new Freeze(true, new Below(freeze, freeze + 30)),
                new Above(out, in),
                new Suction(new Below(low, low + 40), 50),
                new Throttle(new Above(9000, 8000), is.containsKey("throttle") ? 300 : 50),
                new Above(coolant, coolant - 60),
                new Clutch(30, is.containsKey("off") ? 10 : 50, 5, 5));
    }

    private static List<String> told(String wrong) {
        BuildSheet heron = sheet("heron");
        return new CompressorFindings(heron.vehicle(), METRIC, heron::place)
                .ofRules(rules(wrong), AT_REST).stream().map(Finding::key).toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cut-out ac-cut-out-too-high",
                "cut-in ac-cut-in-not-reached",
                "band ac-cut-band-narrow",
                "low-high ac-low-cut-out-too-high",
                "low-low ac-low-cut-out-too-low",
                "cold ac-freeze-limit-too-cold",
                "warm ac-freeze-limit-too-warm",
                "early ac-hot-coolant-too-early",
                "late ac-hot-coolant-too-late",
                "start ac-start-delay-short",
                "throttle ac-throttle-cut-long",
                "off ac-least-off-short"
            })
    void oneWrongRuleIsTold(String wrongAndKey) {
        String[] words = wrongAndKey.split(" ");
        assertThat(told(words[0])).containsExactly(words[1]);
    }

    @Test
    void soundRulesPass() {
        assertThat(told("nothing")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "hot_coolant.cut_out=118 degC ac-hot-coolant-too-late",
                "hot_coolant.cut_out=100 degC ac-hot-coolant-too-early",
                "start_delay=2 s ac-start-delay-short",
                "throttle.longest=30 s ac-throttle-cut-long",
                "least_off=1 s ac-least-off-short"
            })
    void aRuleOfTheSheetIsToldWhereItStands(String typedAndKey) {
        int last = typedAndKey.lastIndexOf(' ');
        String typed = "air_conditioning." + typedAndKey.substring(0, last);
        BuildSheet heron = sheet("heron", typed);
        List<Finding> rules = report(heron, heron.vehicle().schedule()).findings();
        assertThat(rules)
                .filteredOn(f -> f.key().equals(typedAndKey.substring(last + 1)))
                .singleElement()
                .satisfies(f -> assertThat(f.place().orElseThrow().toString())
                        .contains(typed.substring(0, typed.indexOf('='))));
    }

    @Test
    void aCutInThatIsNeverReachedIsToldAtItsLine() {
        BuildSheet heron = sheet("heron", "air_conditioning.cut_in=9 bar abs");
        List<Finding> findings = report(heron, heron.vehicle().schedule()).findings();
        assertThat(findings)
                .filteredOn(f -> f.key().equals("ac-cut-in-not-reached"))
                .singleElement()
                .satisfies(f -> assertThat(f.place().orElseThrow().toString()).contains("air_conditioning.cut_in"));
    }

    /** The sheet's own schedule looks at head pressure; a plain switch waits for coolant and lets the compressor be cut out. */
    @Test
    void aScheduleThatLetsTheCompressorBeCutOut() {
        BuildSheet heron = sheet("heron");
        CompressorReport sound = report(heron, heron.vehicle().schedule());
        assertThat(sound.hasFaults()).isFalse();
        assertThat(sound.findings()).isEmpty();
        assertThat(sound.lines())
                .hasSize(6)
                .allSatisfy(l -> assertThat(l.held()).isEmpty());
        CompressorReport plain = report(heron, Schedules.plain());
        assertThat(plain.findings()).extracting(Finding::key).contains("ac-held-off");
        assertThat(plain.lines()).anySatisfy(l -> {
            assertThat(l.held().get(Hold.HIGH_PRESSURE)).isGreaterThan(0.01);
            assertThat(l.fullFan()).doesNotContainKey(Hold.HIGH_PRESSURE);
            assertThat(l.clutchPerMinute()).isPositive();
        });
    }

    /** A clutch that cycles on the freeze limit does so with any fan: no fault of a schedule. */
    @Test
    void aFixedCompressorCyclesOnItsFreezeLimit() {
        BuildSheet fixed = sheet("heron", "air_conditioning.compressor=fixed");
        CompressorReport report = report(fixed, fixed.vehicle().schedule());
        assertThat(report.lines())
                .filteredOn(l -> l.kase().id().equals("motorway"))
                .singleElement()
                .satisfies(l -> {
                    assertThat(l.held()).containsKeys(Hold.FREEZE, Hold.LEAST_OFF);
                    assertThat(l.clutchPerMinute()).isBetween(2.0, 60 / 5.5); // 5.5 s from opening to closing at least
                });
        assertThat(report.hasFaults()).isFalse();
    }

    @Test
    void aSoakedCabinCoolsDown() {
        BuildSheet heron = sheet("heron");
        CompressorReport report = report(heron, heron.vehicle().schedule());
        CoolingDown cooling = report.cooling();
        VehicleSpec spec = heron.vehicle();
        assertThat(cooling.seconds().orElseThrow()).isBetween(10.0, 1200.0);
        assertThat(cooling.cabin()).isLessThan(spec.designAmbient() - CoolingDown.COOLER);
        assertThat(cooling.vent()).isBetween(273.15, cooling.cabin());
        assertThat(report.fullFan().seconds().orElseThrow())
                .isLessThanOrEqualTo(cooling.seconds().orElseThrow() + 1.0);
    }

    @Test
    void aCabinThatCoolsSlowlyIsTold() {
        BuildSheet heron = sheet("heron");
        CompressorFindings judge = new CompressorFindings(heron.vehicle(), METRIC, heron::place);
        CoolingDown full = new CoolingDown(306.0, OptionalDouble.of(400), 283.0, 302.0);
        assertThat(judge.ofCooling(new CoolingDown(306.0, OptionalDouble.of(440), 284.0, 302.0), full))
                .isEmpty();
        assertThat(judge.ofCooling(new CoolingDown(306.0, OptionalDouble.of(480), 284.0, 302.0), full))
                .extracting(Finding::key)
                .containsExactly("ac-cools-down-slowly");
        assertThat(judge.ofCooling(new CoolingDown(306.0, OptionalDouble.of(400), 286.0, 302.0), full))
                .hasSize(1);
        assertThat(judge.ofCooling(new CoolingDown(306.0, OptionalDouble.empty(), 284.0, 308.0), full))
                .hasSize(1);
    }

    @Test
    void nothingWithoutAirConditioning() {
        BuildSheet bare = BuildSheet.of(Path.of("build.yaml"), """
                build: {name: Plover}
                design_day: {ambient: 43 degC}
                vehicle: {mass: 1600 kg}
                engine: {fuel: petrol, displacement: 2.5 l, rated_power: 120 kW}
                radiator: {width: 600 mm, height: 450 mm}
                fan: {free_flow: 2500 m3/h, stall_pressure: 250 Pa}
                """, Overlay.none());
        assertThat(report(bare, bare.vehicle().schedule(), key -> Optional.empty()))
                .isEmpty();
    }
}
