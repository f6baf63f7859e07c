package hotday.vehicle.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.vehicle.InventedVehicle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Charge air by hand: T2 = T1 + T1 (p^(0.4/1.4) - 1) / efficiency, as any textbook of thermodynamics has it (ideal gas, isentropic
 * efficiency of a compressor; from memory), then the cooler takes its effectiveness off what lies above the air in front.
 */
class ChargeAirTest {
    private static final double OUTSIDE = 310.15; // K
    private static final double RATED_FUEL = 110e3 / 0.33; // W
    /** K; a little of the bay comes back to the face even at speed, and the exponent is rounded to four digits. */
    private static final double NEARLY = 0.1;

    private final Run run = new Run(Plant.compile(InventedVehicle.diesel()));

    private void drive(double fuelPower, double engineSpeed) {
        run.start(run.plant().soaked(OUTSIDE), 0.0);
        run.set(Input.AMBIENT, OUTSIDE);
        run.set(Input.PRESSURE, 101_325);
        run.set(Input.SPEED, 40.0);
        run.set(Input.ENGINE_SPEED, engineSpeed);
        run.set(Input.FUEL_POWER, fuelPower);
        run.set(Input.AIR_FLOW, 0.11);
        run.step(0.1);
    }

    /** Boost 2.2 at rated power, efficiency 70 %, effectiveness 75 %: 2.2^(0.4/1.4) = 1.25267, 1.6^(0.4/1.4) = 1.14372. */
    @ParameterizedTest
    @CsvSource({"1.0, 422.10, 338.14", "0.5, 373.83, 326.07", "0.0, 310.15, 310.15"})
    void behindCompressorAndCooler(double load, double compressed, double cooled) {
        drive(load * RATED_FUEL, 400.0);
        double behind = run.get(Output.CHARGE_TEMPERATURE);
        assertThat(behind).isCloseTo(cooled, within(NEARLY));
        assertThat(behind + run.get(Output.CHARGE_HEAT) / (0.11 * 1007.0)).isCloseTo(compressed, within(0.01));
    }

    @Test
    void isOutsideAirWithTheEngineAtRest() {
        drive(0.0, 0.0);
        assertThat(run.get(Output.CHARGE_TEMPERATURE)).isEqualTo(OUTSIDE);
        assertThat(run.get(Output.CHARGE_HEAT)).isZero();
    }
}
