package hotday.vehicle.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import hotday.vehicle.InventedVehicle;
import java.lang.management.ManagementFactory;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PlantTest {
    private static final double BALANCE = 1e-9; // relative: rounding of a linear solve, nothing physical

    private final Plant plant = Plant.compile(InventedVehicle.diesel());

    private static void shake(Run run, SplittableRandom random) {
        run.set(Input.SPEED, random.nextDouble(0.0, 45.0));
        run.set(Input.ENGINE_SPEED, random.nextInt(10) == 0 ? 0.0 : random.nextDouble(70.0, 450.0));
        run.set(Input.FUEL_POWER, random.nextInt(5) == 0 ? 0.0 : random.nextDouble(0.0, 250e3));
        run.set(Input.AMBIENT, random.nextDouble(243.15, 328.15));
        run.set(Input.PRESSURE, random.nextDouble(60e3, 103e3));
        run.set(Input.FAN_DEMAND, random.nextDouble());
        run.set(Input.HEATER, random.nextInt(2));
        run.set(Input.COMPRESSOR, random.nextInt(2));
        run.set(Input.CONDENSER_HEAT, random.nextDouble(0.0, 12e3));
        run.set(Input.GEARBOX_HEAT, random.nextDouble(0.0, 5e3));
        run.set(Input.GEARBOX_TANK_HEAT, random.nextDouble(-1e3, 5e3));
    }

    @Test
    void heatBalanceClosesInEveryStepWhateverTheInputs() {
        SplittableRandom random = new SplittableRandom(20260101);
        Run run = new Run(plant);
        run.start(plant.soaked(273.15 + 20.0), 0.0);
        for (int i = 0; i < 20_000; i++) {
            if (i % 7 == 0) {
                shake(run, random);
            }
            run.step(random.nextDouble(0.1, 2.0));
            assertThat(run.get(State.JACKET)).isFinite();
        }
        assertThat(run.worstBalance()).isLessThan(BALANCE);
        double passed = run.energyIn() + Math.abs(run.energyOut());
        assertThat(run.energyIn() - run.energyOut() - run.energyStored()).isCloseTo(0.0, within(BALANCE * passed));
    }

    @Test
    void whatTheNodesHoldIsCapacityTimesRise() {
        Run run = new Run(plant);
        double start = 273.15 + 20.0;
        run.start(plant.soaked(start), 0.0);
        idle(run, 293.15);
        for (int i = 0; i < 6000; i++) {
            run.step(0.1);
        }
        double held = plant.coefficient(Coefficient.METAL_CAPACITY) * (run.get(State.METAL) - start)
                + plant.coefficient(Coefficient.JACKET_CAPACITY) * (run.get(State.JACKET) - start)
                + plant.coefficient(Coefficient.OIL_CAPACITY) * (run.get(State.OIL) - start)
                + plant.coefficient(Coefficient.HEATER_CAPACITY) * (run.get(State.HEATER) - start)
                + plant.coefficient(Coefficient.RADIATOR_CAPACITY)
                        / 3.0
                        * (run.get(State.RADIATOR_INLET)
                                + run.get(State.RADIATOR_MIDDLE)
                                + run.get(State.RADIATOR_OUTLET)
                                - 3.0 * start);
        assertThat(run.energyStored()).isCloseTo(held, within(BALANCE * run.energyIn()));
    }

    private static void idle(Run run, double ambient) {
        run.set(Input.SPEED, 0.0);
        run.set(Input.ENGINE_SPEED, 84.0);
        run.set(Input.FUEL_POWER, 9e3);
        run.set(Input.AMBIENT, ambient);
        run.set(Input.PRESSURE, 101325.0);
        run.set(Input.FAN_DEMAND, 0.3);
        run.set(Input.HEATER, 0.0);
        run.set(Input.COMPRESSOR, 0.0);
    }

    @Test
    void halvingTheStepChangesAWarmUpByLessThanAGaugeCanShow() {
        double coarse = warmUp(0.5);
        double fine = warmUp(0.05);
        assertThat(coarse).isCloseTo(fine, within(0.15)); // K, a seventh of a one-degree gauge
    }

    private double warmUp(double step) {
        Run run = new Run(plant);
        run.start(plant.soaked(293.15), 0.0);
        idle(run, 293.15);
        run.set(Input.FUEL_POWER, 30e3);
        run.set(Input.ENGINE_SPEED, 200.0);
        for (int i = 0; i < Math.round(300.0 / step); i++) {
            run.step(step);
        }
        return run.get(State.JACKET);
    }

    @Test
    void anEngineThatStandsGivesNoHeatAndCoolsDown() {
        Run run = new Run(plant);
        run.start(plant.soaked(363.15), 0.0);
        idle(run, 293.15);
        run.set(Input.ENGINE_SPEED, 0.0);
        run.set(Input.FUEL_POWER, 0.0);
        run.step(1.0);
        assertThat(run.get(Output.GAS_HEAT)).isZero();
        assertThat(run.get(Output.FRICTION_HEAT)).isZero();
        for (int i = 0; i < 7200; i++) {
            run.step(1.0);
        }
        assertThat(run.get(State.JACKET)).isBetween(293.15, 340.0);
    }

    @Test
    void fanMovesAirAtRestAndRamDoesAtSpeed() {
        Run run = new Run(plant);
        run.start(plant.soaked(363.15), 0.0);
        idle(run, 293.15);
        run.set(Input.FAN_DEMAND, 0.0);
        run.step(0.1);
        double still = run.get(Output.FACE_SPEED);
        run.set(State.FAN, 1.0);
        run.set(Input.FAN_DEMAND, 1.0);
        run.step(0.1);
        double fan = run.get(Output.FACE_SPEED);
        run.set(Input.SPEED, 110.0 / 3.6);
        run.step(0.1);
        double both = run.get(Output.FACE_SPEED);
        assertThat(still).isBetween(0.05, 1.0);
        assertThat(fan).isBetween(1.5, 5.0);
        assertThat(both).isGreaterThan(fan);
    }

    @Test
    void thermostatOpensOnTheWayUpLaterThanItShutsOnTheWayDown() {
        Run run = new Run(plant);
        run.start(plant.soaked(350.0), 0.0);
        // opens 360.15 K, full 370.15 K, hysteresis 4 K: behind the play everything lies 4 K lower
        assertThat(EngineLoop.opening(plant.values(), 355.0)).isZero();
        assertThat(EngineLoop.opening(plant.values(), 361.15)).isCloseTo(0.5, within(1e-9));
        assertThat(EngineLoop.opening(plant.values(), 368.0)).isCloseTo(1.0, within(1e-12));
        idle(run, 293.15);
        run.set(State.WAX, 366.0);
        run.set(State.WAX_PLAY, 350.0);
        run.set(State.JACKET, 366.0);
        run.step(1e-6);
        assertThat(run.get(State.WAX_PLAY)).isCloseTo(362.0, within(0.01));
    }

    /** With the refrigerant at rest and the gearbox cold, the implicit step of a moment moves the engine side as the rates say. */
    @Test
    void aShortStepMovesTheEngineSideAsTheRatesSay() {
        double moment = 1e-5;
        Run run = new Run(plant);
        double[] state = plant.soaked(300.0);
        for (State s : new State[] {State.METAL, State.JACKET, State.OIL, State.WAX, State.RADIATOR_INLET}) {
            state[s.index()] = 365.0 + 3.0 * s.index();
        }
        state[State.FAN.index()] = 0.5;
        run.start(state, 0.0);
        idle(run, 300.0);
        run.set(Input.SPEED, 15.0);
        run.set(Input.FAN_DEMAND, 0.5);
        run.look();
        double[] rates = new double[State.COUNT];
        run.rates(state, rates);
        run.step(moment);
        for (State s : new State[] {
            State.METAL, State.JACKET, State.OIL, State.RADIATOR_INLET, State.RADIATOR_MIDDLE, State.HEATER
        }) {
            double moved = (run.get(s) - state[s.index()]) / moment;
            assertThat(moved)
                    .as(s.name())
                    .isCloseTo(rates[s.index()], within(1e-3 * Math.abs(rates[s.index()]) + 1e-5));
        }
    }

    @Test
    void aStepAllocatesNothing() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        Run run = new Run(plant);
        run.start(plant.soaked(353.15), 0.0);
        idle(run, 300.0);
        for (int i = 0; i < 20_000; i++) {
            run.step(0.1);
        }
        long id = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(id);
        for (int i = 0; i < 100_000; i++) {
            run.step(0.1);
        }
        assertThat(threads.getThreadAllocatedBytes(id) - before).isLessThan(100_000 / 10);
    }
}
