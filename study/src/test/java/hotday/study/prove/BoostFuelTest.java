package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fuel of a turbo-diesel between the two points of its sheet. */
class BoostFuelTest {
    private static final double OUTSIDE = 97.0e3;

    @TempDir
    private static Path folder;

    private VehicleSpec diesel;

    @BeforeEach
    void sheet() {
        diesel = MadeRun.diesel(folder);
    }

    @Test
    void ratedBoostAtRatedSpeedBurnsRatedFuelAndIdleCarriesItself() {
        VehicleSpec.Engine engine = diesel.engine();
        double boost = diesel.chargeAir().orElseThrow().boostAtRated();
        BoostFuel fuel = BoostFuel.of(diesel, OUTSIDE, OUTSIDE);
        double rated = engine.fuelLine().fuelPower(engine.ratedPower(), engine.ratedSpeed());
        assertThat(fuel.power(boost * OUTSIDE, engine.ratedSpeed())).isCloseTo(rated, within(1e-6 * rated));
        double own = engine.fuelLine().fuelPower(Preparation.ACCESSORY_POWER, engine.idleSpeed());
        assertThat(fuel.power(OUTSIDE, engine.idleSpeed())).isCloseTo(own, within(1e-6 * own));
        assertThat(fuel.power(0.4 * OUTSIDE, engine.idleSpeed())).isCloseTo(own, within(1e-6 * own));
    }

    @Test
    void idlePressureIsTheMedianOfTheStandingVehicleWithItsEngineTurning() {
        double[] manifold = new double[100];
        double[] engine = new double[100];
        double[] speed = new double[100];
        Arrays.fill(manifold, 0, 30, 100e3);
        manifold[3] = 40e3;
        Arrays.fill(engine, 0, 30, 84.0);
        Arrays.fill(manifold, 30, 60, 96e3);
        Arrays.fill(manifold, 60, 100, 180e3);
        Arrays.fill(engine, 60, 100, 200.0);
        Arrays.fill(speed, 60, 100, 25.0);
        assertThat(BoostFuel.idlePressure(manifold, engine, speed)).isCloseTo(100e3, within(1.0));
        Arrays.fill(engine, 0.0);
        assertThat(BoostFuel.idlePressure(manifold, engine, speed)).isNaN();
    }

    @Test
    void aPetrolEngineIsNotOneOfThese() {
        assertThat(BoostFuel.suits(diesel)).isTrue();
        assertThat(BoostFuel.suits(MadeRun.petrol(folder))).isFalse();
        assertThat(BoostFuel.breathesFreely(0.97 * OUTSIDE, OUTSIDE)).isTrue();
        assertThat(BoostFuel.breathesFreely(0.35 * OUTSIDE, OUTSIDE)).isFalse();
        assertThat(BoostFuel.breathesFreely(Double.NaN, OUTSIDE)).isFalse();
    }
}
