package hotday.vehicle.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.vehicle.InventedVehicle;
import org.junit.jupiter.api.Test;

/** Coolant that runs through a small radiator in a hundredth of a second: no step of a tenth may throw it about. */
class FastCoolantTest {
    @Test
    void aFastPumpAndASmallRadiatorStayStable() {
        Plant plant = Plant.compile(InventedVehicle.diesel());
        double[] k = plant.coefficients();
        k[Coefficient.PUMP_FLOW.index()] *= 3.0;
        k[Coefficient.RADIATOR_CAPACITY.index()] *= 0.2;
        k[Coefficient.JACKET_CAPACITY.index()] *= 0.4;
        k[Coefficient.THERMOSTAT_OPENS.index()] = 200.0;
        Run run = new Run(plant.with(k));
        run.start(run.plant().soaked(293.15), 0.0);
        run.set(Input.AMBIENT, 293.15);
        run.set(Input.PRESSURE, 101_325.0);
        run.set(Input.SPEED, 25.0);
        run.set(Input.ENGINE_SPEED, 400.0);
        run.set(Input.FUEL_POWER, 150e3);
        for (int i = 0; i < 6000; i++) {
            run.advance(i < 3000 ? 0.1 : 0.2);
            assertThat(run.get(State.JACKET)).isBetween(293.0, 400.0);
        }
        run.look();
        double entering =
                run.total(Output.GAS_HEAT) + run.total(Output.FRICTION_HEAT) + run.total(Output.GEARBOX_TANK_HEAT);
        double leaving =
                run.total(Output.RADIATOR_HEAT) + run.total(Output.HEATER_HEAT) + run.total(Output.SURFACE_HEAT);
        assertThat(run.total(Output.STORED)).isCloseTo(entering - leaving, within(1e-6 * entering));
    }
}
