package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** What the sensors of a vehicle say of the air outside. */
class OutsideTemperatureTest {
    private static final double STEP = 10.0;

    @Test
    void aFallingSensorIsTakenAtWhatItFallsTo() {
        double[] ambient = new double[200];
        for (int i = 0; i < ambient.length; i++) {
            ambient[i] = 280.0 + Math.max(0.0, 9.0 - 0.3 * i);
        }
        assertThat(OutsideTemperature.unsoak(ambient, STEP)).isCloseTo(9.0, within(1e-9));
        assertThat(ambient[0]).isCloseTo(280.0, within(1e-9));
        assertThat(ambient[199]).isCloseTo(280.0, within(1e-9));
    }

    @Test
    void aRisingOrSteadySensorIsLeftAlone() {
        double[] rising = new double[200];
        Arrays.setAll(rising, i -> 280.0 + 0.01 * i);
        double[] before = rising.clone();
        assertThat(OutsideTemperature.unsoak(rising, STEP)).isZero();
        assertThat(rising).containsExactly(before);
        double[] flickers = new double[200];
        Arrays.setAll(flickers, i -> 280.0 + i % 2);
        assertThat(OutsideTemperature.unsoak(flickers, STEP)).isZero();
    }

    /** A test cell whose air warms up and is cooled again. */
    @Test
    void aFallThatDoesNotBeginAtTheStartIsNoSoak() {
        double[] cell = new double[200];
        Arrays.setAll(cell, i -> 293.0 + 4.0 * Math.sin(0.05 * i) * (i < 60 ? 1 : 0));
        assertThat(OutsideTemperature.unsoak(cell, STEP)).isZero();
    }

    @Test
    void aFallLaterThanTheSoakIsWeather() {
        double[] ambient = new double[400];
        Arrays.setAll(ambient, i -> i < 300 ? 290.0 : 280.0);
        assertThat(OutsideTemperature.unsoak(ambient, STEP)).isZero();
    }

    @Test
    void intakeAirCountsOnlyWhereTheEngineIsAsColdAndTheSensorIsSteady() {
        double[] intake = new double[40];
        double[] coolant = new double[40];
        Arrays.fill(intake, 281.0);
        intake[2] = 360.0;
        Arrays.fill(coolant, 283.0);
        assertThat(OutsideTemperature.fromIntake(intake, coolant, 2.0)).isCloseTo(281.0, within(1e-9));
        Arrays.fill(coolant, 330.0);
        assertThat(OutsideTemperature.fromIntake(intake, coolant, 2.0)).isNaN();
        Arrays.fill(coolant, 283.0);
        Arrays.setAll(intake, i -> 275.0 + 3.0 * i);
        assertThat(OutsideTemperature.fromIntake(intake, coolant, 2.0)).isNaN();
    }
}
