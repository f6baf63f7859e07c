package hotday.vehicle.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.vehicle.InventedVehicle;
import hotday.vehicle.airpath.Sealing;
import hotday.vehicle.drive.Drive;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.VehicleSpec;
import org.junit.jupiter.api.Test;

class AmbientCeilingTest {
    private static final double SETTLED = 1e-5; // K, what an hour of steps still moves

    private final VehicleSpec spec = InventedVehicle.diesel();
    private final Plant plant = Plant.compile(spec);

    @Test
    void steadyStateIsWhereTheTransientEndsUp() {
        for (Case kase : StandardCases.steady()) {
            SteadyState steady = new AmbientCeiling(spec).at(plant, kase, 310.0);
            Run run = new Run(plant);
            run.start(plant.soaked(steady.coolant() - 10.0), 0.0);
            run.set(Input.AMBIENT, 310.0);
            run.set(Input.PRESSURE, 101325.0);
            run.set(Input.COMPRESSOR, kase.airConditioning() ? 1.0 : 0.0);
            run.set(Input.FAN_DEMAND, 1.0);
            new Drive(spec).apply(run, kase.speed(), 0.0, kase.grade());
            for (int i = 0; i < 200_000; i++) {
                run.step(0.5);
            }
            // play of the thermostat: settle from below with the loop closed, as the steady state takes it
            assertThat(run.get(State.JACKET))
                    .as(kase.id())
                    .isBetween(steady.coolant() - SETTLED, steady.coolant() + 4.0);
            assertThat(run.get(Output.RADIATOR_HEAT)).as(kase.id()).isPositive();
        }
    }

    @Test
    void heatBalanceHoldsInTheSteadyState() {
        Run run = new Run(plant);
        run.set(Input.AMBIENT, 310.0);
        run.set(Input.PRESSURE, 101325.0);
        run.set(Input.FAN_DEMAND, 1.0);
        new Drive(spec).apply(run, 20.0, 0.0, 0.04);
        SteadyState steady = SteadyState.of(run);
        double in = run.get(Output.GAS_HEAT) + run.get(Output.FRICTION_HEAT);
        double out = run.get(Output.RADIATOR_HEAT) + run.get(Output.SURFACE_HEAT) + run.get(Output.HEATER_HEAT);
        assertThat(steady.found()).isTrue();
        assertThat(out).isCloseTo(in, within(1e-9 * in));
    }

    @Test
    void atTheCeilingTheBindingLimitIsJustReached() {
        AmbientCeiling ceiling = new AmbientCeiling(spec);
        for (Case kase : StandardCases.steady()) {
            Ceiling c = ceiling.find(plant, kase, 0.0);
            if (c.reach() == Ceiling.Reach.FOUND) {
                double margin = ceiling.margin(c.binding(), ceiling.at(plant, kase, c.ambient()), 0.0);
                assertThat(margin).as(kase.id()).isBetween(0.0, 0.01);
                assertThat(c.runnerUp()).isNotEqualTo(c.binding());
            }
        }
    }

    @Test
    void moreRadiatorBetterSealingAndAStrongerCapNeverLowerACeiling() {
        for (Case kase : StandardCases.steady()) {
            double plain = find(InventedVehicle.diesel(0.5, Sealing.FAIR, 103e3), kase);
            assertThat(find(InventedVehicle.diesel(0.55, Sealing.FAIR, 103e3), kase))
                    .as(kase.id())
                    .isGreaterThanOrEqualTo(plain);
            assertThat(find(InventedVehicle.diesel(0.5, Sealing.GOOD, 103e3), kase))
                    .as(kase.id())
                    .isGreaterThanOrEqualTo(plain);
            assertThat(find(InventedVehicle.diesel(0.5, Sealing.FAIR, 125e3), kase))
                    .as(kase.id())
                    .isGreaterThanOrEqualTo(plain);
        }
    }

    private static double find(VehicleSpec spec, Case kase) {
        return new AmbientCeiling(spec).find(Plant.compile(spec), kase, 0.0).ambient();
    }

    @Test
    void whatTheModelIsKnownToMissLowersTheCeiling() {
        AmbientCeiling ceiling = new AmbientCeiling(spec);
        Case climb = StandardCases.steady().get(3);
        assertThat(ceiling.find(plant, climb, 5.0).ambient())
                .isLessThan(ceiling.find(plant, climb, 0.0).ambient());
    }
}
