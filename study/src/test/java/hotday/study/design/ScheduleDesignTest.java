package hotday.study.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.Place;
import hotday.core.unit.Display;
import hotday.core.unit.UnitSystem;
import hotday.study.demo.DemoShop;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.sheet.ScheduleFile;
import hotday.vehicle.sheet.ScheduleText;
import hotday.vehicle.spec.VehicleSpec;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A designed schedule holds, spares, does not hunt, and nothing found by chance is cheaper. */
@Tag("slow")
class ScheduleDesignTest {
    private static final Display METRIC = new Display(UnitSystem.METRIC);
    /** Schedules tried by chance; {@code -Dhotday.random=2000} tries more. */
    private static final int RANDOM = Integer.getInteger("hotday.random", 200);

    @TempDir
    private static Path folder;

    private static VehicleSpec vehicle(String build) {
        Path shop = folder.resolve("shop");
        if (!Files.exists(shop)) {
            DemoShop.create(shop);
        }
        return BuildSheet.read(shop.resolve("builds").resolve(build).resolve("build.yaml"))
                .vehicle();
    }

    private static ScheduleReport designed(VehicleSpec spec, long seed) {
        return new ScheduleDesign(spec, StandardCases.all(), Aim.BALANCED, METRIC)
                .designed(seed, share -> {}, () -> false);
    }

    private static void sparesAndHolds(ScheduleReport report) {
        assertThat(report.holds()).isTrue();
        assertThat(report.energy()).isLessThan(0.6 * report.plain().energy());
        assertThat(report.starts()).isLessThan(report.plain().starts());
        assertThat(report.lines()).noneMatch(line -> Hunting.excess(line.passage()) > 0.0);
        assertThat(report.doubt().orElseThrow().held()).isGreaterThanOrEqualTo(0.95);
        assertThat(report.findings()).isEmpty();
        assertThat(report.reasons()).isNotEmpty();
    }

    @Test
    void oxbow() {
        sparesAndHolds(designed(vehicle("oxbow"), 1));
    }

    /** Other vehicles to hold in change the cost by less than 1 %, one thread changes no digit, and what is written is what was judged. */
    @Test
    void heronWithAnySeedAndAnyNumberOfThreads() throws Exception {
        VehicleSpec spec = vehicle("heron");
        ScheduleReport first = designed(spec, 1);
        sparesAndHolds(first);
        assertThat(designed(spec, 2).cost()).isCloseTo(first.cost(), within(0.01 * first.cost()));
        ForkJoinPool one = new ForkJoinPool(1);
        ScheduleReport alone = one.submit(() -> designed(spec, 1)).get();
        one.shutdown();
        assertThat(alone.schedule()).isEqualTo(first.schedule());
        assertThat(alone.cost()).isEqualTo(first.cost());
        writtenIsJudged(spec, first);
        nothingByChanceIsCheaper(spec, first);
    }

    private static void writtenIsJudged(VehicleSpec spec, ScheduleReport first) throws IOException {
        Path file = Files.writeString(folder.resolve("designed.yaml"), ScheduleText.of(first.schedule(), METRIC));
        ScheduleFile read = ScheduleFile.read(file, spec);
        assertThat(Schedule.of(read.schedule())).isEqualTo(Schedule.of(first.schedule()));
        ScheduleReport again = new ScheduleDesign(spec, StandardCases.all(), Aim.BALANCED, METRIC)
                .judged(read.schedule(), read::place);
        assertThat(again.holds()).isTrue();
        assertThat(again.cost()).isCloseTo(first.cost(), within(1e-3 * first.cost()));
        assertThat(again.findings()).isEmpty();
    }

    /** Half of them anywhere, half near what was found; judged until they hold and are done, or are dearer. */
    private static void nothingByChanceIsCheaper(VehicleSpec spec, ScheduleReport found) {
        Plant plant = Plant.compile(spec);
        Judge judge = Judge.of(
                spec,
                plant,
                Hardware.USUAL,
                Aim.BALANCED,
                Judge.withHolding(StandardDay.of(spec), StandardCases.all(), spec.designAmbient()));
        double boiling = new Trial(spec, plant, StandardCases.all().get(0)).boiling()
                - spec.limits().boilMargin();
        Knobs knobs = new Knobs(spec, boiling, spec.schedule().details().afterRun());
        Random random = new Random(20261126);
        List<double[]> settings = IntStream.range(0, RANDOM)
                .mapToObj(i -> random.doubles(Knobs.COUNT).toArray())
                .toList();
        Judge.Verdict bar = new Judge.Verdict(0.0, 0.99 * found.cost());
        long cheaper = settings.stream()
                .parallel()
                .map(at -> judge.verdict(knobs.schedule(at), bar))
                .filter(v -> v.compareTo(bar) <= 0)
                .count();
        assertThat(cheaper).isZero();
    }

    /** The reports of a design say where nothing was typed. */
    @Test
    void aJudgedScheduleIsQuick() {
        VehicleSpec spec = vehicle("heron");
        ScheduleReport report = new ScheduleDesign(spec, StandardCases.all(), Aim.QUIET, METRIC)
                .judged(spec.schedule(), key -> Place.of("sheet"));
        assertThat(report.lines()).hasSizeGreaterThan(15);
        assertThat(report.doubt()).isEmpty();
    }
}
