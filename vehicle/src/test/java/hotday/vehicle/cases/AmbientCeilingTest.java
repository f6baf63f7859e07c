package hotday.vehicle.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.vehicle.InventedVehicle;
import hotday.vehicle.airpath.Sealing;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.VehicleSpec;
import org.junit.jupiter.api.Test;

class AmbientCeilingTest {
    private static final double SETTLED = 1e-4; // K, what the last hour of eight still moves
    private static final double SEARCHED = 1e-3; // K, tolerance of the search
    private static final double LEFT = 0.1; // K a limit may still creep when a try ends early
    private static final double BALANCE = 1e-7; // of the engine's heat: the rest is left within 1e-9 K of its scale

    private final VehicleSpec spec = InventedVehicle.diesel();
    private final Plant plant = Plant.compile(spec);

    @Test
    void steadyStateIsWhereTheTransientEndsUp() {
        for (Case kase : StandardCases.steady()) {
            Trial trial = new Trial(spec, plant, kase);
            assertThat(trial.settle(305.0, 1.0)).as(kase.id()).isTrue();
            Run run = trial.run();
            double[] rest = run.state();
            double[] start = rest.clone();
            for (State s : new State[] {State.METAL, State.JACKET, State.OIL, State.SUMP, State.BAY, State.WAX}) {
                start[s.index()] += 8.0;
            }
            start[State.CONDENSING.index()] -= 6.0;
            run.start(start, 0.0);
            for (int i = 0; i < 300_000; i++) {
                run.advance(0.1);
                run.set(State.WAX_PLAY, run.get(State.WAX)); // the steady state has no play
            }
            for (State s : State.values()) {
                if (s != State.CHARGE_DRAWN) {
                    assertThat(run.get(s)).as(kase.id() + " " + s).isCloseTo(rest[s.index()], within(SETTLED));
                }
            }
        }
    }

    @Test
    void everyLoopBalancesInTheSteadyState() {
        for (Case kase : StandardCases.steady()) {
            Trial trial = new Trial(spec, plant, kase);
            assertThat(trial.settle(305.0, 1.0)).isTrue();
            Run run = trial.run();
            double in = run.get(Output.GAS_HEAT) + run.get(Output.FRICTION_HEAT) + run.get(Output.GEARBOX_TANK_HEAT);
            double out = run.get(Output.RADIATOR_HEAT) + run.get(Output.SURFACE_HEAT) + run.get(Output.HEATER_HEAT);
            assertThat(out).as(kase.id()).isCloseTo(in, within(BALANCE * in));
            assertThat(run.get(Output.CONDENSER_HEAT))
                    .as(kase.id())
                    .isCloseTo(
                            run.get(Output.EVAPORATOR_HEAT) + run.get(Output.COMPRESSOR_POWER), within(BALANCE * in));
            assertThat(run.get(Output.GEARBOX_AIR_HEAT)
                            + run.get(Output.GEARBOX_TANK_HEAT)
                            + run.get(Output.GEARBOX_CASE_HEAT))
                    .as(kase.id())
                    .isCloseTo(run.get(Output.GEARBOX_LOSS), within(BALANCE * in));
            assertThat(run.get(Output.BAY_HEAT))
                    .as(kase.id())
                    .isCloseTo(run.get(Output.BAY_LOSS), within(BALANCE * in));
            assertThat(run.get(Output.CABIN_GAIN)).as(kase.id()).isCloseTo(0.0, within(BALANCE * in));
        }
    }

    @Test
    void atTheCeilingTheBindingLimitIsJustReached() {
        AmbientCeiling ceiling = new AmbientCeiling(spec);
        for (Case kase : StandardCases.steady()) {
            Ceiling c = ceiling.find(plant, kase, 0.0);
            if (c.reach() == Ceiling.Reach.FOUND) {
                Trial trial = new Trial(spec, plant, kase);
                trial.settle(c.ambient(), 1.0);
                assertThat(trial.headroom(c.binding()) / c.binding().perKelvin())
                        .as(kase.id())
                        .isBetween(0.0, 0.02);
                assertThat(c.runnerUp()).isNotEqualTo(c.binding());
                assertThat(c.crossings()).extracting(Ceiling.Crossing::limit).startsWith(c.binding(), c.runnerUp());
            }
        }
    }

    /** What the search promises of a moving case: a try a little below holds, a try a little above does not. */
    @Test
    void aMovingCeilingLiesBetweenATryThatHoldsAndOneThatDoesNot() {
        double little = 0.1; // K; fan and clutch scatter by less
        for (Case kase : StandardCases.all()) {
            if (!kase.steady() && !kase.forCold()) {
                Ceiling c = new AmbientCeiling(spec).find(plant, kase, 0.0);
                assertThat(c.reach()).as(kase.id()).isEqualTo(Ceiling.Reach.FOUND);
                Trial trial = new Trial(spec, plant, kase);
                trial.at(c.ambient() - little);
                assertThat(trial.headroom(c.binding())).as(kase.id()).isPositive();
                trial.at(c.ambient() + little);
                assertThat(trial.headroom(c.binding())).as(kase.id()).isNegative();
                assertThat(c.crossings()).extracting(Ceiling.Crossing::limit).startsWith(c.binding());
            }
        }
    }

    /** A soak may end as soon as nothing is hotter than the coolant has been; ticked to its end it finds no worse. */
    @Test
    void aSoakThatEndsEarlyMissesNothing() {
        Case soak = StandardCases.all().stream()
                .filter(c -> c.id().equals("key-off-soak"))
                .findFirst()
                .orElseThrow();
        Trial trial = new Trial(spec, plant, soak);
        for (double ambient = 293.15; ambient < 340.0; ambient += 10.0) {
            trial.at(ambient);
            double worst = trial.worst(Limit.BOILING);
            Trial whole = new Trial(spec, plant, soak);
            whole.begin(ambient);
            double peak = whole.run().get(State.JACKET);
            Case.Phase off = soak.phases().get(1);
            for (int i = 0; 0.1 * i < off.duration(); i++) {
                whole.tick(off, 0.1 * i);
                peak = Math.max(peak, whole.run().get(State.JACKET));
            }
            assertThat(worst).as("%.2f K", ambient).isCloseTo(peak, within(SEARCHED));
        }
    }

    /** A drop to idle goes on as long as a judged limit comes closer; ticked to its end it finds no worse. */
    @Test
    void aDropToIdleThatEndsEarlyMissesNothing() {
        Case drop = StandardCases.all().stream()
                .filter(c -> c.id().equals("drop-to-idle"))
                .findFirst()
                .orElseThrow();
        Trial trial = new Trial(spec, plant, drop);
        for (double ambient = 295.15; ambient < 320.0; ambient += 8.0) {
            trial.at(ambient);
            Trial whole = new Trial(spec, plant, drop);
            whole.begin(ambient);
            double peak = whole.run().get(State.JACKET);
            double sump = whole.run().get(State.SUMP);
            Case.Phase idle = drop.phases().get(1);
            for (int i = 0; 0.1 * i < idle.duration(); i++) {
                whole.tick(idle, 0.1 * i);
                peak = Math.max(peak, whole.run().get(State.JACKET));
                sump = Math.max(sump, whole.run().get(State.SUMP));
            }
            assertThat(trial.worst(Limit.COOLANT)).as("%.2f K", ambient).isCloseTo(peak, within(LEFT));
            assertThat(trial.worst(Limit.GEARBOX)).as("%.2f K", ambient).isCloseTo(sump, within(LEFT));
        }
    }

    @Test
    void moreRadiatorBetterSealingAndAStrongerCapNeverLowerACeiling() {
        for (Case kase : StandardCases.steady()) {
            double plain = find(InventedVehicle.diesel(0.5, Sealing.FAIR, 103e3), kase);
            assertThat(find(InventedVehicle.diesel(0.55, Sealing.FAIR, 103e3), kase))
                    .as(kase.id())
                    .isGreaterThan(plain - SEARCHED);
            assertThat(find(InventedVehicle.diesel(0.5, Sealing.GOOD, 103e3), kase))
                    .as(kase.id())
                    .isGreaterThan(plain - SEARCHED);
            assertThat(find(InventedVehicle.diesel(0.5, Sealing.FAIR, 125e3), kase))
                    .as(kase.id())
                    .isGreaterThan(plain - SEARCHED);
        }
    }

    private static double find(VehicleSpec spec, Case kase) {
        return new AmbientCeiling(spec).find(Plant.compile(spec), kase, 0.0).ambient();
    }

    @Test
    void whatTheModelIsKnownToMissLowersTheCeiling() {
        AmbientCeiling ceiling = new AmbientCeiling(spec);
        Case climb = StandardCases.all().get(3);
        assertThat(ceiling.find(plant, climb, 5.0).ambient())
                .isLessThan(ceiling.find(plant, climb, 0.0).ambient());
    }
}
