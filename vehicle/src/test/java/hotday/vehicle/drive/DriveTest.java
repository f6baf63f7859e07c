package hotday.vehicle.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.vehicle.InventedVehicle;
import hotday.vehicle.spec.VehicleSpec;
import org.junit.jupiter.api.Test;

class DriveTest {
    /**
     * Grade force of a 6000 kg combination on 5 % against the recomputed value of a public account of the towing-grade
     * practice: 2938 N.
     */
    @Test
    void gradeForceFollowsTheSlopeAngle() {
        VehicleSpec s = InventedVehicle.diesel();
        double level = new Drive(s).force(17.88, 0.0, 0.0, 1.06);
        double slope = new Drive(s).force(17.88, 0.0, 0.05, 1.06) - level;
        assertThat(slope / s.roadLoad().mass() * 6000.0).isCloseTo(2938.0, within(1.0));
    }

    /**
     * Willans line, recomputed from the form in Guzzella and Onder: 2.0 l four-stroke at 2000 rpm and 5 bar, slope 0.40,
     * loss 1.6 bar: brake 16.67 kW, fuel 55.0 kW.
     */
    @Test
    void willansLineGivesFuelPower() {
        Drive drive = new Drive(InventedVehicle.dieselWithLosses(1.6e5, 0.40));
        assertThat(drive.fuelPower(16.667e3, 2000.0 * Math.PI / 30.0)).isCloseTo(55.0e3, within(20.0));
    }

    @Test
    void pushedHardEnoughTheEngineGetsNoFuel() {
        Drive drive = new Drive(InventedVehicle.diesel());
        assertThat(drive.fuelPower(-50e3, 200.0)).isZero();
    }

    @Test
    void aHeavierPullTakesALowerGear() {
        Drive drive = new Drive(InventedVehicle.diesel());
        double light = drive.engineSpeed(20.0, 8e3);
        double heavy = drive.engineSpeed(20.0, 60e3);
        assertThat(heavy).isGreaterThan(light);
        assertThat(drive.engineSpeed(0.0, 2e3)).isEqualTo(84.0);
    }
}
