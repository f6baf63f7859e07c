package hotday.study.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.study.demo.DemoShop;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a stand remembers is what would have come out, and where it says that fan and vehicle balance, a run does. */
class StandTest {
    @TempDir
    private static Path folder;

    private static VehicleSpec spec;
    private static Plant plant;
    private static Knobs knobs;

    @BeforeAll
    static void vehicle() {
        DemoShop.create(folder.resolve("shop"));
        spec = BuildSheet.read(folder.resolve("shop/builds/heron/build.yaml")).vehicle();
        plant = Plant.compile(spec);
        double boiling = new Trial(spec, plant, StandardCases.all().get(0)).boiling()
                - spec.limits().boilMargin();
        knobs = new Knobs(spec, boiling, spec.schedule().details().afterRun());
    }

    private static Stand stand(String kase, double celsius, Hardware hardware) {
        Case found = StandardCases.all().stream()
                .filter(c -> c.id().equals(kase))
                .findFirst()
                .orElseThrow();
        return new Stand(spec, plant, new DayPart(found, celsius + 273.15, 0.1), hardware);
    }

    private static List<FanSchedule> schedules(int count, Random random) {
        int[] at =
                IntStream.range(0, Knobs.COUNT).map(k -> knobs.settings(k) / 2).toArray();
        return IntStream.range(0, count)
                .mapToObj(i -> {
                    int knob = random.nextInt(Knobs.COUNT);
                    at[knob] = random.nextInt(knobs.settings(knob));
                    return knobs.schedule(at);
                })
                .toList();
    }

    /** To the last digit; and fewer runs were made than schedules asked for, else this would show nothing. */
    @Test
    void remembersWhatWouldHaveComeOut() {
        Random random = new Random(4);
        int runs = 0;
        for (String kase : List.of("hot-idle", "loaded-climb", "city-crawl", "city-trace")) {
            Stand old = stand(kase, 25, Hardware.USUAL);
            for (FanSchedule schedule : schedules(11, random)) {
                Passage before = old.passage(schedule);
                Passage fresh = stand(kase, 25, Hardware.USUAL).passage(schedule);
                assertThat(before).isEqualTo(fresh);
            }
            runs += old.remembered();
        }
        assertThat(runs).isBetween(4, 40);
    }

    /**
     * Sensors that miss nothing and a run of half an hour: mean fan and power are those of the balance. A tenth of a degree is the controller's
     * step, and curves are as steep as 19 % a kelvin.
     */
    @Test
    void balancesWhereARunSettles() {
        Random random = new Random(5);
        int seen = 0;
        for (String kase : List.of("hot-idle", "motorway", "loaded-climb", "low-range-crawl")) {
            Stand stand = stand(kase, 33, Hardware.EXACT);
            for (FanSchedule schedule : schedules(12, random)) {
                Optional<Calm> calm = stand.calm(Schedule.of(schedule));
                Passage run = new Rehearsal(
                                spec.with(schedule),
                                plant.with(schedule),
                                passageCase(kase),
                                33 + 273.15,
                                Hardware.EXACT)
                        .passage();
                if (calm.isPresent()
                        && run.fanSwing() < 0.02
                        && Math.abs(run.fan() - calm.get().fan()) < 0.2) {
                    assertThat(run.fan()).as(kase).isCloseTo(calm.get().fan(), within(0.02));
                    assertThat(run.coolant()).as(kase).isCloseTo(calm.get().coolant(), within(1.0));
                    seen++;
                }
            }
        }
        assertThat(seen).isGreaterThan(20);
    }

    private static Case passageCase(String kase) {
        return StandardCases.all().stream()
                .filter(c -> c.id().equals(kase))
                .findFirst()
                .orElseThrow();
    }
}
