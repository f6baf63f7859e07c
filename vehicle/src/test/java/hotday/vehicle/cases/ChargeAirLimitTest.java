package hotday.vehicle.cases;

import static hotday.vehicle.InventedVehicle.dunlin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.vehicle.controller.Source;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A limit of charge air counts where a sheet states one, and nothing else changes. */
class ChargeAirLimitTest {
    private static Case named(String id) {
        return StandardCases.all().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Ceiling ceiling(VehicleSpec spec, String id) {
        return new AmbientCeiling(spec).find(Plant.compile(spec), named(id), 0.0);
    }

    @Test
    void aLimitThatIsNeverReachedChangesNothing() {
        VehicleSpec without = dunlin();
        VehicleSpec high = dunlin("limits.charge_air=150 degC");
        assertThat(new Trial(without, Plant.compile(without), named("loaded-climb")).judges(Limit.CHARGE_AIR))
                .isFalse();
        for (String id : List.of("loaded-climb", "city-trace")) {
            Ceiling before = ceiling(without, id);
            Ceiling after = ceiling(high, id);
            assertThat(after.ambient()).as(id).isEqualTo(before.ambient());
            assertThat(after.binding()).as(id).isEqualTo(before.binding());
            assertThat(before.headrooms()).extracting(Ceiling.Headroom::limit).doesNotContain(Limit.CHARGE_AIR);
            assertThat(after.headrooms()).extracting(Ceiling.Headroom::limit).contains(Limit.CHARGE_AIR);
        }
    }

    @Test
    void aLowLimitBindsWhereChargeAirIsThatHot() {
        VehicleSpec low = dunlin("limits.charge_air=50 degC");
        Ceiling c = ceiling(low, "loaded-climb");
        assertThat(c.binding()).isEqualTo(Limit.CHARGE_AIR);
        Trial trial = new Trial(low, Plant.compile(low), named("loaded-climb"));
        trial.settle(c.ambient(), 1.0);
        assertThat(trial.worst(Limit.CHARGE_AIR)).isCloseTo(273.15 + 50, within(0.02));
        assertThat(trial.run().get(Output.CHARGE_TEMPERATURE)).isEqualTo(trial.worst(Limit.CHARGE_AIR));
    }

    /** In five minutes of this idle nothing else would start the fan. */
    @Test
    void chargeAirStartsTheFanByItsCurve() {
        Case idle = named("hot-idle");
        VehicleSpec curve =
                dunlin("schedule.charge_air=[[0 degC, 70 %], [120 degC, 100 %]]", "schedule.floor.demand=0 %");
        VehicleSpec without = dunlin("schedule.floor.demand=0 %");
        assertThat(fan(without, idle)).isLessThan(1e-6);
        Trial trial = new Trial(curve, Plant.compile(curve), idle, Hardware.USUAL);
        live(trial, idle);
        assertThat(trial.source()).isEqualTo(Source.CHARGE_AIR);
        double degrees = trial.run().get(Output.CHARGE_TEMPERATURE) - 273.15;
        assertThat(trial.run().get(State.FAN)).isCloseTo(0.7 + 0.3 * degrees / 120, within(0.005));
    }

    private static double fan(VehicleSpec spec, Case kase) {
        Trial trial = new Trial(spec, Plant.compile(spec), kase, Hardware.USUAL);
        live(trial, kase);
        return trial.run().get(State.FAN);
    }

    private static void live(Trial trial, Case kase) {
        trial.begin(273.15 + 5);
        for (double t = 0.0; t < 300.0; t += Trial.STRIDE) {
            trial.stride(kase.first(), 0.0);
        }
    }
}
