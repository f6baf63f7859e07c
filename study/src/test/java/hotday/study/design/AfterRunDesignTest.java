package hotday.study.design;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.typed.Overlay;
import hotday.core.unit.Display;
import hotday.core.unit.UnitSystem;
import hotday.study.demo.DemoShop;
import hotday.study.design.ScheduleReport.KeyOff;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.FanSchedule.AfterRun;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The after-run of a demo build. Heron's soak leaves 8 K to boiling more than the sheet asks for, so margins are made that lie just
 * within or beyond what a fan can do.
 */
@Tag("slow")
class AfterRunDesignTest {
    private static final Case SOAK = StandardCases.all().stream()
            .filter(c -> c.id().equals("key-off-soak"))
            .findFirst()
            .orElseThrow();

    @TempDir
    private static Path folder;

    private static Path heron;

    @BeforeAll
    static void shop() {
        DemoShop.create(folder);
        heron = folder.resolve("builds/heron/build.yaml");
    }

    private static VehicleSpec heron(String... changes) {
        return BuildSheet.read(heron, Overlay.of("test", List.of(changes))).vehicle();
    }

    private static AfterRunDesign design(VehicleSpec spec) {
        return new AfterRunDesign(spec, Plant.compile(spec), StandardCases.all(), new Display(UnitSystem.METRIC));
    }

    private static double room(VehicleSpec spec, AfterRun rule) {
        FanSchedule schedule = AfterRunDesign.with(spec.schedule(), rule);
        return Soak.of(spec, Plant.compile(spec), schedule, SOAK, Hardware.USUAL)
                .rooms()
                .get(Limit.BOILING);
    }

    private static AfterRun other(AfterRun rule, double demand, double longest) {
        return new AfterRun(rule.temperature(), List.of(demand), rule.from(), rule.until(), longest, rule.battery());
    }

    @Test
    void noneWhereNoneIsNeeded() {
        VehicleSpec spec = heron();
        AfterRunDesign.Designed found = design(spec).designed(spec.schedule());
        assertThat(found.schedule().details().afterRun().longest()).isZero();
        assertThat(found.reasons())
                .singleElement()
                .satisfies(r -> assertThat(r.why()).startsWith("none needed"));
        KeyOff keyOff = design(spec).keyOff(found.schedule()).orElseThrow();
        assertThat(keyOff.seconds()).isZero();
        assertThat(keyOff.room()).isPositive().isEqualTo(keyOff.without());
    }

    @Test
    void theLeastThatHoldsWhereOneIsNeeded() {
        VehicleSpec spec = heron("limits.boil_margin=11.6 K");
        AfterRunDesign.Designed found = design(spec).designed(spec.schedule());
        AfterRun rule = found.schedule().details().afterRun();
        KeyOff keyOff = design(spec).keyOff(found.schedule()).orElseThrow();
        assertThat(keyOff.without()).isNegative();
        assertThat(keyOff.room()).isPositive();
        assertThat(keyOff.charge()).isLessThan(keyOff.allowed());
        assertThat(keyOff.voltage()).isGreaterThan(rule.battery());
        assertThat(keyOff.seconds()).isPositive().isLessThanOrEqualTo(rule.longest());
        double demand = rule.demand().get(0);
        assertThat(demand).isLessThan(1.0);
        assertThat(room(spec, other(rule, demand - 0.2, 600.0))).isNegative();
        assertThat(room(spec, other(rule, demand, rule.longest() / 2))).isNegative();
        assertThat(rule.until())
                .isLessThan(rule.from())
                .isGreaterThan(spec.thermostat().opens());
    }

    /** A climb on a milder day that ends just below where the after-run begins holds without it. */
    @Test
    void whatIsShutOffCoolerNeedsNone() {
        VehicleSpec hot = heron("limits.boil_margin=11.6 K");
        AfterRun rule =
                design(hot).designed(hot.schedule()).schedule().details().afterRun();
        VehicleSpec milder = heron("limits.boil_margin=11.6 K", "design_day.ambient=30 degC");
        Soak soak = Soak.of(
                milder, Plant.compile(milder), AfterRunDesign.with(milder.schedule(), rule), SOAK, Hardware.USUAL);
        assertThat(soak.seconds()).isZero();
        assertThat(soak.rooms().get(Limit.BOILING)).isPositive();
    }

    @Test
    void theBatteryGivesNoMoreThanItMay() {
        VehicleSpec spec = heron("limits.boil_margin=11.69 K", "limits.after_run_charge=1 %");
        AfterRunDesign.Designed found = design(spec).designed(spec.schedule());
        KeyOff keyOff = design(spec).keyOff(found.schedule()).orElseThrow();
        assertThat(keyOff.allowed()).isEqualTo(0.01 * spec.electrical().batteryCapacity());
        assertThat(keyOff.charge()).isLessThanOrEqualTo(keyOff.allowed());
        assertThat(keyOff.room()).isNegative().isGreaterThan(keyOff.without());
        assertThat(found.reasons().get(0).why()).contains("limits.after_run_charge");
    }

    @Test
    void noneWhereNotEvenTheWholeFanHelps() {
        VehicleSpec spec = heron("limits.boil_margin=13 K");
        AfterRunDesign.Designed found = design(spec).designed(spec.schedule());
        assertThat(found.schedule().details().afterRun().longest()).isZero();
        assertThat(found.reasons().get(0).why()).contains("not even the whole fan");
    }

    @ParameterizedTest
    @CsvSource({"1", "3"})
    void isTheSameOnAnyNumberOfThreads(int threads) throws Exception {
        VehicleSpec spec = heron("limits.boil_margin=11.4 K");
        ForkJoinPool pool = new ForkJoinPool(threads);
        FanSchedule found = pool.submit(
                        () -> design(spec).designed(spec.schedule()).schedule())
                .get();
        pool.shutdown();
        assertThat(found).isEqualTo(design(spec).designed(spec.schedule()).schedule());
    }
}
