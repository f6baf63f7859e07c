package hotday.vehicle.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.InputException;
import hotday.core.typed.Overlay;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import hotday.vehicle.plant.Unrest;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What must hold for any sheet, tried on sheets drawn at random; the seed of a failure gives its sheet back. */
class RandomSheetsTest {
    private static final double BALANCE = 1e-7; // of the engine's heat, as for the one vehicle of AmbientCeilingTest
    private static final double SEARCHED = 1e-3; // K, tolerance of the search of a ceiling
    private static final double BRACKET = 1e-6; // K; a rest is found within 1e-9 of its scale
    private static final double BEYOND = 900.0; // K, hottest state that is searched
    private static final double REFUSED = 0.2; // share of sheets
    private static final double OVERHEATED = 0.06; // share of tries
    private static final double RESTLESS = 0.002; // share of tries
    private static final int CHECKED = 20; // tries that run away, followed in time
    private static final int HALF_A_DAY = 12 * 36_000; // ticks
    private static final double LITTLE = 0.3; // K, to either side of a moving ceiling
    private static final double CLOSED = 0.9; // share of moving ceilings
    private static final double CREEP = 1e-8; // per second, K or share; a rest proper is stiller than this

    private static final List<Case> CASES = StandardCases.steady();

    @TempDir
    private Path folder;

    /** A sheet that was accepted. */
    private record Drawn(long seed, Path path, double freeFlow, double cap, VehicleSpec spec) {
        VehicleSpec with(String change) {
            return BuildSheet.read(path, Overlay.of("test", List.of(change))).vehicle();
        }
    }

    private Optional<Drawn> draw(long seed) throws IOException {
        RandomSheet sheet = RandomSheet.of(seed);
        Path path = Files.writeString(folder.resolve("build-" + seed + ".yaml"), sheet.text());
        try {
            VehicleSpec spec = BuildSheet.read(path).vehicle();
            return Optional.of(new Drawn(seed, path, sheet.freeFlow(), sheet.cap(), spec));
        } catch (InputException refused) {
            return Optional.empty();
        }
    }

    /** What is asked of each sheet. */
    private interface Asked {
        void of(Drawn drawn);
    }

    private void each(int count, Asked asked) throws IOException {
        int drawn = 0;
        long seed = 0;
        while (drawn < count) {
            Optional<Drawn> next = draw(++seed);
            next.ifPresent(asked::of);
            drawn += next.isPresent() ? 1 : 0;
        }
        assertThat((seed - count) / (double) seed).as("refused").isLessThan(REFUSED);
    }

    @Test
    void fortySheetsComeToRest() throws IOException {
        comeToRest(40);
    }

    @Test
    @Tag("slow")
    void aThousandSheetsComeToRest() throws IOException {
        comeToRest(1000);
    }

    private void comeToRest(int count) throws IOException {
        int[] ends = new int[End.values().length];
        each(count, drawn -> {
            Plant plant = Plant.compile(drawn.spec());
            SplittableRandom random = new SplittableRandom(~drawn.seed());
            for (int i = 0; i < 3; i++) {
                Case kase = kase(drawn.seed() + i);
                Trial trial = new Trial(drawn.spec(), plant, kase);
                String what = "seed " + drawn.seed() + ", " + kase.id();
                ends[end(what, trial, random.nextDouble(263, 333), 1.0).ordinal()]++;
                ends[
                        end(what, trial, random.nextDouble(263, 333), random.nextDouble())
                                .ordinal()]++;
            }
        });
        double tries = Arrays.stream(ends).sum();
        assertThat(ends[End.OVERHEATED.ordinal()] / tries).as("overheated").isLessThan(OVERHEATED);
        assertThat(ends[End.HUNTING.ordinal()] / tries).as("hunting").isLessThan(RESTLESS);
    }

    /**
     * A little below a moving ceiling the case holds, a little above it does not. Not where a headroom jumps, as when the gearbox
     * shifts or the fan comes on a little earlier: there may then be several crossings.
     */
    @Test
    @Tag("slow")
    void movingCeilingsAreClosed() throws IOException {
        int[] closed = new int[2];
        each(40, drawn -> {
            Plant plant = Plant.compile(drawn.spec());
            for (Case kase : StandardCases.all()) {
                if (!kase.steady() && !kase.forCold()) {
                    Ceiling c = new AmbientCeiling(drawn.spec()).find(plant, kase, 0.0);
                    if (c.reach() == Ceiling.Reach.FOUND) {
                        closed[1]++;
                        boolean below = holds(drawn, plant, kase, c.ambient() - LITTLE);
                        boolean above = holds(drawn, plant, kase, c.ambient() + LITTLE);
                        closed[0] += below && !above ? 1 : 0;
                    }
                }
            }
        });
        assertThat(closed[0] / (double) closed[1]).isGreaterThan(CLOSED);
    }

    private static boolean holds(Drawn drawn, Plant plant, Case kase, double ambient) {
        Tries tries = new Tries(drawn.spec(), plant, kase, 0.0);
        return tries.at(ambient).least() >= 0.0;
    }

    /** How a try ends. */
    private enum End {
        RESTS,
        /** No rest is cooler than what is searched: an uncooled gearbox at a crawl, a fan that hardly turns. */
        OVERHEATED,
        /** Swings to and fro: a fan at its current limit on a bus without reserve. */
        HUNTING
    }

    private static Case kase(long number) {
        return CASES.get((int) (number % CASES.size()));
    }

    private static End end(String which, Trial trial, double ambient, double fan) {
        String what = String.format("%s, %.3f K, fan %.3f", which, ambient, fan);
        boolean settled = trial.settle(ambient, fan);
        Run run = trial.run();
        for (State state : State.values()) {
            assertThat(run.get(state)).as(what + " " + state).isFinite();
        }
        for (Output output : Output.values()) {
            assertThat(run.get(output)).as(what + " " + output).isFinite();
        }
        if (settled) {
            assertThat(trial.unrest()).isEmpty();
            assertThat(fastest(run)).as(what).isLessThan(CREEP);
            balances(what, run);
            return End.RESTS;
        }
        Unrest unrest = trial.unrest().orElseThrow();
        assertThat(unrest.reason()).as(what).isNotEqualTo(Unrest.Reason.NOT_FOUND);
        if (unrest.reason() == Unrest.Reason.RUNS_AWAY) {
            assertThat(hottest(run)).as(what).isGreaterThan(BEYOND);
            return End.OVERHEATED;
        }
        assertThat(swing(run, unrest.state())).as(what).isGreaterThan(0.5 * unrest.amount());
        return End.HUNTING;
    }

    /** Highest less lowest of a state over another five minutes. */
    private static double swing(Run run, State state) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < 3_000; i++) {
            tick(run);
            low = Math.min(low, run.get(state));
            high = Math.max(high, run.get(state));
        }
        return high - low;
    }

    private static void tick(Run run) {
        run.advance(0.1);
        run.set(State.WAX_PLAY, run.get(State.WAX));
    }

    /** What is said to run away does so from a vehicle warmed through, ticked with the same inputs. */
    @Test
    @Tag("slow")
    void whatRunsAwayDoesSoInTime() throws IOException {
        int[] checked = new int[1];
        for (long seed = 1; checked[0] < CHECKED; seed++) {
            draw(seed).ifPresent(drawn -> {
                Trial trial = new Trial(drawn.spec(), Plant.compile(drawn.spec()), kase(drawn.seed()));
                if (!trial.settle(323.15, 1.0) && trial.unrest().orElseThrow().reason() == Unrest.Reason.RUNS_AWAY) {
                    checked[0]++;
                    passes(drawn, trial.run());
                }
            });
        }
    }

    private static void passes(Drawn drawn, Run run) {
        double ambient = run.get(Input.AMBIENT);
        double[] state = run.plant().soaked(ambient);
        for (State s : new State[] {State.METAL, State.JACKET, State.OIL, State.WAX, State.WAX_PLAY, State.SUMP}) {
            state[s.index()] = ambient + 60.0;
        }
        state[State.FAN.index()] = run.get(Input.FAN_DEMAND);
        state[State.CABIN_HUMIDITY.index()] = run.get(Input.HUMIDITY);
        run.start(state, 0.0);
        for (int i = 0; i < HALF_A_DAY && hottest(run) < BEYOND; i++) {
            tick(run);
        }
        assertThat(hottest(run)).as("seed %d", drawn.seed()).isGreaterThanOrEqualTo(BEYOND);
    }

    private static double fastest(Run run) {
        return Arrays.stream(State.values())
                .filter(s -> s != State.WAX_PLAY && s != State.CHARGE_DRAWN)
                .mapToDouble(s -> Math.abs(run.rate(s)))
                .max()
                .orElseThrow();
    }

    private static double hottest(Run run) {
        return Arrays.stream(State.values())
                .filter(s -> "K".equals(s.unit()))
                .mapToDouble(run::get)
                .max()
                .orElseThrow();
    }

    private static void balances(String what, Run run) {
        double engine = run.get(Output.GAS_HEAT) + run.get(Output.FRICTION_HEAT) + run.get(Output.GEARBOX_TANK_HEAT);
        double scale = Math.abs(run.get(Output.GAS_HEAT))
                + run.get(Output.FRICTION_HEAT)
                + Math.abs(run.get(Output.GEARBOX_TANK_HEAT));
        double leaves = run.get(Output.RADIATOR_HEAT) + run.get(Output.SURFACE_HEAT) + run.get(Output.HEATER_HEAT);
        assertThat(leaves).as(what + " engine").isCloseTo(engine, within(BALANCE * scale));
        double gearbox = run.get(Output.GEARBOX_AIR_HEAT)
                + run.get(Output.GEARBOX_TANK_HEAT)
                + run.get(Output.GEARBOX_CASE_HEAT);
        assertThat(gearbox).as(what + " gearbox").isCloseTo(run.get(Output.GEARBOX_LOSS), within(BALANCE * scale));
        assertThat(run.get(Output.BAY_HEAT))
                .as(what + " bay")
                .isCloseTo(run.get(Output.BAY_LOSS), within(BALANCE * scale));
        if (run.plant().conditioned()) {
            double into = run.get(Output.EVAPORATOR_HEAT) + run.get(Output.COMPRESSOR_POWER);
            assertThat(run.get(Output.CONDENSER_HEAT))
                    .as(what + " refrigerant")
                    .isCloseTo(into, within(BALANCE * scale));
            assertThat(run.get(Output.CABIN_GAIN)).as(what + " cabin").isCloseTo(0.0, within(BALANCE * scale));
        }
    }

    @Test
    void aStrongerCapNeverLowersTheRoomToBoiling() throws IOException {
        each(40, drawn -> {
            VehicleSpec strong = drawn.with("coolant.cap=" + (drawn.cap() + 0.2) + " bar");
            Case kase = kase(drawn.seed());
            Trial plain = new Trial(drawn.spec(), Plant.compile(drawn.spec()), kase);
            Trial capped = new Trial(strong, Plant.compile(strong), kase);
            for (double ambient : new double[] {283.15, 303.15, 323.15}) {
                if (plain.settle(ambient, 1.0) & capped.settle(ambient, 1.0)) {
                    assertThat(capped.headroom(Limit.BOILING))
                            .as("seed %d, %s, %.2f K", drawn.seed(), kase.id(), ambient)
                            .isGreaterThan(plain.headroom(Limit.BOILING));
                }
            }
        });
    }

    /** Both searches end below the ceiling by their tolerance at most, so the difference may be wrong by one of them. */
    @Test
    @Tag("slow")
    void moreAirFromTheFanNeverLowersACeiling() throws IOException {
        each(150, drawn -> {
            VehicleSpec more = drawn.with("fan.free_flow=" + 1.15 * drawn.freeFlow() + " m3/s");
            Plant plant = Plant.compile(drawn.spec());
            Plant stronger = Plant.compile(more);
            for (Case kase : CASES) {
                double before = new AmbientCeiling(drawn.spec()).ambient(plant, kase, 0.0, 315.0);
                assertThat(new AmbientCeiling(more).ambient(stronger, kase, 0.0, before))
                        .as("seed %d, %s", drawn.seed(), kase.id())
                        .isGreaterThanOrEqualTo(before - SEARCHED);
            }
        });
    }

    @Test
    @Tag("slow")
    void hotterAirNeverRaisesARoom() throws IOException {
        each(150, drawn -> {
            Plant plant = Plant.compile(drawn.spec());
            CASES.forEach(kase -> roomsFall(drawn, new Trial(drawn.spec(), plant, kase), kase));
        });
    }

    private static void roomsFall(Drawn drawn, Trial trial, Case kase) {
        double[] before = new double[Limit.values().length];
        Arrays.fill(before, Double.POSITIVE_INFINITY);
        for (int i = 0; i <= 12; i++) {
            double ambient = 273.15 + 5.0 * i;
            if (!trial.settle(ambient, 1.0)) {
                return;
            }
            for (Limit limit : Limit.values()) {
                if (trial.judges(limit)) {
                    double room = trial.headroom(limit) / limit.perKelvin();
                    boolean starved = limit == Limit.GEARBOX && starved(drawn, trial.run());
                    assertThat(room)
                            .as("seed %d, %s, %s, %.2f K", drawn.seed(), kase.id(), limit, ambient)
                            .isLessThan(before[limit.ordinal()] + BRACKET);
                    before[limit.ordinal()] = starved ? Double.POSITIVE_INFINITY : room;
                }
            }
        }
    }

    /** A thermostat that is not wide open leaves a cooler in the tank little coolant: a hotter day then helps it. */
    private static boolean starved(Drawn drawn, Run run) {
        return drawn.spec().gearboxFluid().tankConductance() > 0.0 && run.get(Output.OPENING) < 1.0;
    }
}
