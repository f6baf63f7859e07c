package hotday.physics.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FluidLifeTest {
    private static double kelvin(double fahrenheit) {
        return (fahrenheit + 459.67) / 1.8;
    }

    /** The table as several trade pages print it; 12 %, because it was rounded by hand (its 212 degF row belongs to 215). */
    @ParameterizedTest
    @CsvSource({
        "175, 100000",
        "195, 50000",
        "212, 25000",
        "235, 12000",
        "255, 6250",
        "275, 3000",
        "295, 1500",
        "315, 750"
    })
    void printedTable(double fahrenheit, double miles) {
        assertThat(FluidLife.miles(kelvin(fahrenheit))).isCloseTo(miles, withinPercentage(12.0));
    }

    /** The formula behind it, recomputed. */
    @ParameterizedTest
    @CsvSource({"195, 50000", "212, 27739", "215, 25000", "235, 12500", "255, 6250", "275, 3125", "295, 1562.5"})
    void formula(double fahrenheit, double miles) {
        assertThat(FluidLife.miles(kelvin(fahrenheit))).isCloseTo(miles, withinPercentage(2e-3));
    }
}
