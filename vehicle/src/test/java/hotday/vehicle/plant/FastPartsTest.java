package hotday.vehicle.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.vehicle.InventedVehicle;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.spec.VehicleSpec;
import org.junit.jupiter.api.Test;

/** What goes faster than a step may not be thrown about by it: coolant through a small radiator, a stroke that holds the suction pressure. */
class FastPartsTest {
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

    /** A light evaporator and a large compressor: the stroke holds the suction pressure faster than a stride lasts. */
    @Test
    void aStrokeThatHoldsTheSuctionPressureStaysStable() {
        VehicleSpec spec = InventedVehicle.dunlin(
                "air_conditioning.compressor=variable",
                "air_conditioning.displacement=0.21 l",
                "air_conditioning.low_capacity=1 kJ/K");
        Plant plant = Plant.compile(spec);
        Case idle = StandardCases.all().stream()
                .filter(c -> c.id().equals("hot-idle"))
                .findFirst()
                .orElseThrow();
        Trial trial = new Trial(spec, plant, idle);
        assertThat(trial.settle(278.15, 1.0)).isTrue();
        Run run = trial.run();
        run.set(Input.CYCLING_AVERAGED, 0.0);
        run.set(State.EVAPORATING, run.get(State.EVAPORATING) + 0.1);
        run.restart();
        double low = Double.POSITIVE_INFINITY;
        double high = 0.0;
        for (int i = 0; i < 300; i++) {
            run.advance(Trial.STRIDE);
            low = i < 150 ? low : Math.min(low, run.get(State.EVAPORATING));
            high = i < 150 ? high : Math.max(high, run.get(State.EVAPORATING));
        }
        assertThat(run.get(Output.DISPLACEMENT)).isStrictlyBetween(0.05, 0.95);
        assertThat(high - low).isLessThan(1e-3);
    }
}
