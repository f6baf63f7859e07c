package hotday.vehicle.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import hotday.vehicle.InventedVehicle;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.spec.VehicleSpec;
import java.lang.management.ManagementFactory;
import java.util.function.DoubleConsumer;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** The whole vehicle in time: balances, allocation, and the step against an adaptive integration of the same rates. */
class WholeVehicleTest {
    private static final double BALANCE = 1e-6; // of what passed
    private static final double COOLANT = 0.05; // K
    private static final double PRESSURE = 5e3; // Pa

    private final VehicleSpec spec = InventedVehicle.diesel();
    private final Plant plant = Plant.compile(spec);
    private final Case climb = StandardCases.all().stream()
            .filter(c -> c.id().equals("loaded-climb"))
            .findFirst()
            .orElseThrow();

    private Trial started(double ambient) {
        Trial trial = new Trial(spec, plant, climb);
        trial.begin(ambient);
        trial.run().start(plant.soaked(ambient), 0.0);
        return trial;
    }

    @Test
    void everyLoopBalancesOverATransient() {
        Trial trial = started(308.15);
        Run run = trial.run();
        double[] first = run.state();
        for (int i = 0; i < 18_000; i++) {
            trial.tick(climb.first(), 0.1 * i);
        }
        double gas = run.total(Output.GAS_HEAT) + run.total(Output.FRICTION_HEAT) + run.total(Output.GEARBOX_TANK_HEAT);
        double away = run.total(Output.RADIATOR_HEAT) + run.total(Output.SURFACE_HEAT) + run.total(Output.HEATER_HEAT);
        assertThat(gas - away - engineHeld(run, first)).isCloseTo(0.0, within(BALANCE * gas));
        double gearbox = run.total(Output.GEARBOX_LOSS);
        double cooled = run.total(Output.GEARBOX_AIR_HEAT)
                + run.total(Output.GEARBOX_TANK_HEAT)
                + run.total(Output.GEARBOX_CASE_HEAT);
        assertThat(gearbox - cooled - spec.gearboxFluid().capacity() * rise(run, first, State.SUMP))
                .isCloseTo(0.0, within(BALANCE * gearbox));
        double taken = run.total(Output.EVAPORATOR_HEAT) + run.total(Output.COMPRESSOR_POWER);
        VehicleSpec.RefrigerantCircuit circuit =
                spec.airConditioning().orElseThrow().circuit();
        double sides = circuit.highCapacity() * rise(run, first, State.CONDENSING)
                + circuit.lowCapacity() * rise(run, first, State.EVAPORATING);
        assertThat(taken - run.total(Output.CONDENSER_HEAT) - sides).isCloseTo(0.0, within(BALANCE * taken));
        double bay = plant.coefficient(Coefficient.BAY_CAPACITY) * rise(run, first, State.BAY);
        assertThat(run.total(Output.BAY_HEAT) - run.total(Output.BAY_LOSS) - bay)
                .isCloseTo(0.0, within(BALANCE * run.total(Output.BAY_HEAT)));
        assertThat(run.total(Output.CABIN_GAIN) - run.total(Output.CABIN_STORED))
                .isCloseTo(0.0, within(BALANCE * Math.abs(run.total(Output.EVAPORATOR_HEAT))));
        assertThat(run.total(Output.BATTERY_CURRENT))
                .isCloseTo(rise(run, first, State.CHARGE_DRAWN), within(1e-9 + BALANCE * run.get(State.CHARGE_DRAWN)));
    }

    private static double rise(Run run, double[] first, State state) {
        return run.get(state) - first[state.index()];
    }

    private double engineHeld(Run run, double[] first) {
        return plant.coefficient(Coefficient.METAL_CAPACITY) * rise(run, first, State.METAL)
                + plant.coefficient(Coefficient.JACKET_CAPACITY) * rise(run, first, State.JACKET)
                + plant.coefficient(Coefficient.OIL_CAPACITY) * rise(run, first, State.OIL)
                + plant.coefficient(Coefficient.HEATER_CAPACITY) * rise(run, first, State.HEATER)
                + plant.coefficient(Coefficient.RADIATOR_CAPACITY)
                        / 3.0
                        * (rise(run, first, State.RADIATOR_INLET)
                                + rise(run, first, State.RADIATOR_MIDDLE)
                                + rise(run, first, State.RADIATOR_OUTLET));
    }

    /** Dormand and Prince 8(5,3) of Hipparchus, tolerance 1e-8, from tick to tick with the same controls. */
    @Test
    void theStepFollowsAnAdaptiveReference() {
        Trial fast = started(308.15);
        followsTheReference(1, t -> fast.tick(climb.first(), t), fast.run());
    }

    /** The same with the vehicle moved by strides of several ticks. */
    @Test
    void aStrideFollowsItAsWell() {
        Trial fast = started(308.15);
        followsTheReference((int) Math.round(Trial.STRIDE / 0.1), t -> fast.stride(climb.first(), t), fast.run());
    }

    private void followsTheReference(int ticks, DoubleConsumer step, Run run) {
        Trial slow = started(308.15);
        DormandPrince853Integrator reference = new DormandPrince853Integrator(1e-9, 0.1, 1e-8, 1e-8);
        double coolant = 0.0;
        double head = 0.0;
        double suction = 0.0;
        for (int i = 0; i < 9_000; i += ticks) {
            step.accept(0.1 * i);
            for (int k = 0; k < ticks; k++) {
                slow.control(climb.first(), 0.1 * (i + k));
                advance(slow.run(), reference);
                slow.run().look();
            }
            run.look();
            coolant = Math.max(
                    coolant, Math.abs(run.get(State.JACKET) - slow.run().get(State.JACKET)));
            head = Math.max(head, gap(run, slow.run(), Output.HEAD_PRESSURE));
            suction = Math.max(suction, gap(run, slow.run(), Output.SUCTION_PRESSURE));
        }
        System.out.printf("%d ticks: coolant %.4f K, head %.0f Pa, suction %.0f Pa%n", ticks, coolant, head, suction);
        assertThat(coolant).isLessThan(COOLANT);
        assertThat(head).isLessThan(PRESSURE);
        assertThat(suction).isLessThan(PRESSURE);
    }

    private static double gap(Run a, Run b, Output output) {
        return Math.abs(a.get(output) - b.get(output));
    }

    private static void advance(Run run, DormandPrince853Integrator reference) {
        OrdinaryDifferentialEquation rates = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return State.COUNT;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                double[] out = new double[State.COUNT];
                run.rates(y, out);
                return out;
            }
        };
        double[] end =
                reference.integrate(rates, new ODEState(0.0, run.state()), 0.1).getPrimaryState();
        run.put(end);
    }

    @Test
    void nothingIsAllocated() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        Trial trial = started(300.0);
        for (int i = 0; i < 20_000; i++) {
            trial.tick(climb.first(), 0.0);
        }
        long id = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(id);
        for (int i = 0; i < 100_000; i++) {
            trial.tick(climb.first(), 0.0);
        }
        assertThat(threads.getThreadAllocatedBytes(id) - before).isLessThan(100_000 / 10);
    }
}
