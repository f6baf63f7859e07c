package hotday.vehicle.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.vehicle.InventedVehicle;
import org.junit.jupiter.api.Test;

/**
 * A frozen run: cold start, idle, a pull, idle with the fan. The numbers are this program's own; the tolerance is tiny on
 * purpose, so that whoever changes the physics looks at them, validates again and freezes anew.
 */
class GoldenRunTest {
    private static final double FROZEN = 1e-7; // K, W: rounding of another JVM, nothing else

    // after each leg: coolant K, oil K, radiator W
    private static final double JACKET_1 = 319.52496008229934;
    private static final double OIL_1 = 322.79107420737495;
    private static final double RADIATOR_1 = -18.18180349478664;
    private static final double JACKET_2 = 365.3167724633335;
    private static final double OIL_2 = 398.78750793875315;
    private static final double RADIATOR_2 = 30235.731343530584;
    private static final double JACKET_3 = 359.0877159275788;
    private static final double OIL_3 = 376.53849089503325;
    private static final double RADIATOR_3 = 7693.10491997634;

    @Test
    void warmUpPullAndIdle() {
        Run run = new Run(Plant.compile(InventedVehicle.diesel()));
        run.start(run.plant().soaked(288.15), 0.0);
        run.set(Input.AMBIENT, 288.15);
        run.set(Input.PRESSURE, 99e3);
        leg(run, 300, 0.0, 90.0, 12e3, 0.0);
        check(run, JACKET_1, OIL_1, RADIATOR_1);
        leg(run, 600, 25.0, 260.0, 120e3, 0.0);
        check(run, JACKET_2, OIL_2, RADIATOR_2);
        leg(run, 300, 0.0, 84.0, 9e3, 0.5);
        check(run, JACKET_3, OIL_3, RADIATOR_3);
    }

    private static void leg(Run run, double seconds, double speed, double engineSpeed, double fuelPower, double fan) {
        run.set(Input.SPEED, speed);
        run.set(Input.ENGINE_SPEED, engineSpeed);
        run.set(Input.FUEL_POWER, fuelPower);
        run.set(Input.FAN_DEMAND, fan);
        for (int i = 0; i < Math.round(seconds / 0.1); i++) {
            run.step(0.1);
        }
    }

    private static void check(Run run, double jacket, double oil, double radiatorHeat) {
        assertThat(run.get(State.JACKET)).isCloseTo(jacket, within(FROZEN));
        assertThat(run.get(State.OIL)).isCloseTo(oil, within(FROZEN));
        assertThat(run.get(Output.RADIATOR_HEAT)).isCloseTo(radiatorHeat, within(1e3 * FROZEN));
    }
}
