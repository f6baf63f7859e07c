package hotday.vehicle.cases;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.vehicle.InventedVehicle;
import hotday.vehicle.plant.Coefficient;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import org.junit.jupiter.api.Test;

class WarmUpTest {
    private final VehicleSpec spec = InventedVehicle.diesel();
    private final Plant plant = Plant.compile(spec);
    private final Case cold =
            StandardCases.all().stream().filter(Case::forCold).findFirst().orElseThrow();

    private Plant with(Coefficient coefficient, double value) {
        double[] k = plant.coefficients();
        k[coefficient.index()] = value;
        return plant.with(k);
    }

    @Test
    void marksAreReachedInTheirOrder() {
        WarmUp run = WarmUp.of(spec, with(Coefficient.HEATER_CONDUCTANCE, 0.0), cold);
        assertThat(run.ambient()).isEqualTo(263.15);
        assertThat(run.reached()).hasSize(3);
        assertThat(run.reached().get(0).time().orElseThrow())
                .isPositive()
                .isLessThan(run.reached().get(1).time().orElseThrow());
    }

    /** A heater takes from the engine what it gives to the cabin. */
    @Test
    void aHeaterWarmsTheCabinAndDelaysTheEngine() {
        WarmUp without = WarmUp.of(spec, with(Coefficient.HEATER_CONDUCTANCE, 0.0), cold);
        WarmUp with = WarmUp.of(spec, plant, cold);
        assertThat(with.cabin()).isGreaterThan(without.cabin() + 10.0);
        assertThat(with.reached().get(0).time().orElseThrow())
                .isGreaterThan(without.reached().get(0).time().orElseThrow());
    }

    /** Common practice, no source: a thermostat that stands open keeps an engine cold in winter. */
    @Test
    void aThermostatThatStandsOpenNeverLetsItWarm() {
        WarmUp run = WarmUp.of(spec, with(Coefficient.THERMOSTAT_LEAK, 1.0), cold);
        assertThat(run.verdict()).isEqualTo(WarmUp.Verdict.STAYS_COLD);
        assertThat(run.coldest()).isNaN();
    }
}
