package hotday.study.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.Place;
import hotday.core.unit.Display;
import hotday.core.unit.UnitSystem;
import hotday.study.demo.DemoShop;
import hotday.study.demo.VirtualCar;
import hotday.study.prove.KnownVehicle;
import hotday.study.prove.ProveRequest;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.sheet.ScheduleFile;
import hotday.vehicle.sheet.ScheduleText;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A designed schedule holds, spares, does not hunt, and nothing found by chance is cheaper. */
@Tag("slow")
class ScheduleDesignTest {
    private static final Display METRIC = new Display(UnitSystem.METRIC);
    /** Schedules tried by chance; {@code -Dhotday.random} tries more or fewer. */
    private static final int RANDOM = Integer.getInteger("hotday.random", 2000);
    /** Of those that hold and are without fault, so many are judged to their end; {@code -Dhotday.feasible} asks for more or fewer. One in seven is such. */
    private static final int FEASIBLE = Integer.getInteger("hotday.feasible", 60);

    private static final int BATCH = 200;

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
        VehicleSpec spec = vehicle("oxbow");
        ScheduleReport report = designed(spec, 1);
        sparesAndHolds(report);
        nothingThatHoldsIsCheaper(spec, report);
    }

    /** Another beginning of the search and other vehicles to hold in change the cost by less than 1 %, one thread changes no digit, and what is written is what was judged. */
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
        nothingThatHoldsIsCheaper(spec, first);
    }

    /** The mild day alone is told to the design; the car itself then has to hold, on the hot day, what a fan at full speed holds in it. */
    @Test
    void whatAMildDayShowedHoldsInTheCarItself() {
        VehicleSpec spec = vehicle("heron");
        VirtualCar car = VirtualCar.drive("heron", spec, folder.resolve("driven"), 11);
        KnownVehicle known = KnownVehicle.ofRuns(new ProveRequest(
                spec,
                List.of(),
                List.of(car.recording()),
                List.of(),
                false,
                1,
                Runtime.getRuntime().availableProcessors(),
                (stage, share) -> {},
                () -> false));
        ScheduleReport report = new ScheduleDesign(spec, known, StandardCases.all(), Aim.BALANCED, METRIC)
                .designed(1, share -> {}, () -> false);
        sparesAndHolds(report);
        assertThat(report.runs()).isEqualTo(1);
        Judge truth = Judge.of(
                spec,
                car.plant(),
                Hardware.USUAL,
                Aim.BALANCED,
                Judge.withHolding(StandardDay.of(spec), StandardCases.all(), spec.designAmbient()));
        List<Passage> passages = truth.passages(report.schedule());
        for (int i = 0; i < passages.size(); i++) {
            assertThat(truth.parts().get(i).kept().violation(passages.get(i).headroom()))
                    .as(passages.get(i).kase().title())
                    .isZero();
        }
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

    /** Half of them anywhere, half near what was found; judged until they are done, or do not hold, or are dearer. */
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
        List<FanSchedule> schedules = Stream.concat(
                        IntStream.range(0, RANDOM / 2).mapToObj(i -> anywhere(knobs, random)),
                        IntStream.range(0, RANDOM - RANDOM / 2).mapToObj(i -> near(found.schedule(), 1.0, random)))
                .toList();
        Judge.Verdict bar = new Judge.Verdict(0.0, 0.99 * found.cost());
        ScheduleDesign design = new ScheduleDesign(spec, StandardCases.all(), Aim.BALANCED, METRIC);
        long cheaper = schedules.stream()
                .parallel()
                .filter(schedule -> judge.verdict(schedule, bar).compareTo(bar) <= 0)
                .filter(schedule ->
                        !design.judged(schedule, key -> Place.of("chance")).hasFaults())
                .count();
        assertThat(cheaper).isZero();
    }

    /** What would be cheaper has to hold on milder days too, as the design does. */
    private static void nothingThatHoldsIsCheaper(VehicleSpec spec, ScheduleReport found) {
        SpotCheck milder = new SpotCheck(
                MilderDays.of(spec, KnownVehicle.ofSheet(spec).likeliest(), StandardCases.all(), Hardware.USUAL));
        assertThat(milder.failing(found.schedule())).isEmpty();
        ScheduleDesign design = new ScheduleDesign(spec, StandardCases.all(), Aim.BALANCED, METRIC);
        Judge.Verdict whatever = new Judge.Verdict(0.0, Double.MAX_VALUE);
        Random random = new Random(20261127);
        List<Double> costs = new ArrayList<>();
        int tried = 0;
        while (costs.size() < FEASIBLE) {
            List<FanSchedule> batch = IntStream.range(0, BATCH)
                    .mapToObj(i -> near(found.schedule(), random.nextDouble(), random))
                    .toList();
            tried += batch.size();
            batch.stream()
                    .parallel()
                    .filter(schedule ->
                            design.judge().verdict(schedule, whatever).violation() == 0.0)
                    .map(schedule -> design.judged(schedule, key -> Place.of("chance")))
                    .filter(report -> report.holds() && !report.hasFaults())
                    .toList()
                    .stream()
                    .filter(report -> report.cost() >= found.cost()
                            || milder.failing(report.schedule()).isEmpty())
                    .forEach(report -> costs.add(report.cost()));
        }
        double least = costs.stream().mapToDouble(c -> c).min().orElseThrow();
        System.out.printf(
                Locale.ROOT,
                "%d of %d random schedules hold without fault; the cheapest costs %.4f of the designed one%n",
                costs.size(),
                tried,
                least / found.cost());
        assertThat(least).isGreaterThan(0.99 * found.cost());
    }

    private static FanSchedule anywhere(Knobs knobs, Random random) {
        return knobs.schedule(IntStream.range(0, Knobs.COUNT)
                .map(k -> random.nextInt(knobs.settings(k)))
                .toArray());
    }

    /**
     * Every point of the curves moved, off the steps of the search too, other hysteresis and least times.
     *
     * @param far 1: by 1.5 K and half a bar for a whole curve, 1 K and 0.2 bar for a point, 5 % for a demand, about
     */
    private static FanSchedule near(FanSchedule found, double far, Random random) {
        List<Double> coolant = moved(found.coolantTemperature(), 1.5 * far, far, random);
        List<Double> head = moved(found.headPressure(), 50e3 * far, 20e3 * far, random);
        FanSchedule.Details d = found.details();
        FanSchedule.Switching s = d.switching();
        double off = found.off() + coolant.get(0) - found.on() + 1.5 * far * random.nextGaussian();
        return new FanSchedule(
                coolant,
                toFull(demands(found.coolantDemand(), far, random)),
                coolant.get(0),
                Math.min(off, coolant.get(0) - 0.5),
                found.allowanceSpeed(),
                demands(found.allowance(), far, random),
                0.0,
                head,
                toFull(demands(found.headDemand(), far, random)),
                found.gearboxTemperature(),
                found.gearboxDemand(),
                found.chargeAir(),
                new FanSchedule.Details(
                        d.gearboxHysteresis(),
                        between(d.headHysteresis(), 100e3 + 300e3 * random.nextDouble(), far),
                        d.allowanceEnds(),
                        d.floor(),
                        new FanSchedule.Switching(
                                s.startDelay(),
                                s.on(),
                                s.off(),
                                s.least(),
                                between(s.leastOn(), 60 * random.nextDouble(), far),
                                between(s.leastOff(), 60 * random.nextDouble(), far)),
                        d.slew(),
                        d.afterRun()));
    }

    private static double between(double here, double there, double far) {
        return here + far * (there - here);
    }

    private static List<Double> moved(List<Double> x, double all, double each, Random random) {
        double shift = all * random.nextGaussian();
        List<Double> out = new ArrayList<>();
        for (double value : x) {
            double next = value + shift + each * random.nextGaussian();
            out.add(out.isEmpty() ? next : Math.max(next, out.get(out.size() - 1) + 0.5 * each));
        }
        return out;
    }

    private static List<Double> toFull(List<Double> demands) {
        List<Double> out = new ArrayList<>(demands);
        out.set(out.size() - 1, 1.0);
        return out;
    }

    private static List<Double> demands(List<Double> y, double far, Random random) {
        return y.stream()
                .map(v -> Math.max(0.0, Math.min(1.0, v + 0.05 * far * random.nextGaussian())))
                .toList();
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
