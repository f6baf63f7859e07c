package hotday.core.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DisplayTest {
    /** Hand computed. */
    @ParameterizedTest(name = "{0} {1} {2} -> {3}")
    @CsvSource({
        "METRIC, TEMPERATURE, 369.26, 96.1 degC",
        "US, TEMPERATURE, 369.26, 205.0 degF",
        "MIXED, TEMPERATURE, 369.26, 205.0 degF",
        "METRIC, TEMPERATURE_DIFFERENCE, 5, 5.0 K",
        "US, TEMPERATURE_DIFFERENCE, 5, 9.0 degF",
        "METRIC, PRESSURE_GAUGE, 110316, 1.10 bar",
        "MIXED, PRESSURE_GAUGE, 110316, 16.0 psi",
        "US, PRESSURE_ABSOLUTE, 101325, 14.7 psia",
        "METRIC, SPEED, 27.7778, 100 km/h",
        "US, SPEED, 15.6464, 35 mph",
        "MIXED, SPEED, 27.7778, 100 km/h",
        "METRIC, LENGTH, 0.026, 26 mm",
        "US, LENGTH, 0.03175, 1.25 in",
        "US, LENGTH, 0.7112, 28 in",
        "METRIC, LENGTH, 0.00005, 0.05 mm",
        "METRIC, VOLUME, 0.0048, 4.8 l",
        "METRIC, RATIO, 0.3, 30 %",
        "METRIC, RATIO, 0, 0 %",
        "METRIC, NUMBER, 3.42, 3.42",
        "METRIC, POWER, 0, 0.0 kW",
        "METRIC, POWER, 12, 0.012 kW",
        "US, POWER, 111855, 150.0 hp",
        "METRIC, PRESSURE_DIFFERENCE, 101325, 101325 Pa",
        "METRIC, ENERGY, 3.6e9, 3.600e+09 J",
        "METRIC, NUMBER, 123456.789, 123457",
        "METRIC, TEMPERATURE_DIFFERENCE, 0.01, 0.0 K",
        "METRIC, TEMPERATURE, NaN, - degC"
    })
    void shown(UnitSystem system, Quantity quantity, double si, String text) {
        assertThat(new Display(system).format(quantity, si)).isEqualTo(text);
    }

    /** What the program shows can be typed back, within the digits shown; seeded. */
    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void whatIsShownCanBeTyped(UnitSystem system) {
        Display display = new Display(system);
        Random random = new Random(4);
        for (Quantity quantity : Quantity.values()) {
            for (int i = 0; i < 50; i++) {
                double si = 200 + 1800 * random.nextDouble();
                Amount back = Units.amount(quantity, display.format(quantity, si));
                double step = Math.max(1e-3 * Math.abs(back.value()), 0.51)
                        * back.unit().factor();
                assertThat(back.si()).as(quantity.title()).isCloseTo(si, within(step));
            }
        }
    }

    /** Hand computed; what is in a system's units already stays as it was typed. */
    @ParameterizedTest(name = "{0} {1} {2} -> {3}")
    @CsvSource({
        "METRIC, LENGTH, 31.5 in, 800.1 mm",
        "US, LENGTH, 31.5 in, 31.5 in",
        "MIXED, LENGTH, 31.5 in, 800.1 mm",
        "US, LENGTH, 80 cm, 31.5 in",
        "METRIC, LENGTH, 80 cm, 80 cm",
        "METRIC, TEMPERATURE, 212 degF, 100 degC",
        "MIXED, TEMPERATURE, 100 degC, 212 degF",
        "MIXED, PRESSURE_GAUGE, 16 psi, 16 psi",
        "METRIC, PRESSURE_GAUGE, 16 psi, 1.103 bar",
        "US, MASS_FLOW, 10 lb/min, 10 lb/min",
        "METRIC, MASS_FLOW, 60 lb/min, 0.4536 kg/s",
        "US, VOLUME_FLOW, 120 l/min, 31.7 gal/min",
        "METRIC, RATIO, 40 %, 40 %",
        "US, TIME, 10 min, 10 min",
        "METRIC, LENGTH, wide, wide"
    })
    void aTypedValueIsTurnedOver(UnitSystem system, Quantity quantity, String typed, String shown) {
        assertThat(new Display(system).typed(quantity, typed)).isEqualTo(shown);
    }

    /** Textbook pairs: Levenshtein 1966 (kitten, sitting: 3); a swap of neighbours counts one (Damerau 1964). */
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "ab, ba, 1", "abc, abc, 0", "'', abc, 3", "flaw, lawn, 2"})
    void editDistance(String a, String b, int distance) {
        assertThat(Nearest.distance(a, b)).isEqualTo(distance);
        assertThat(Nearest.distance(b, a)).isEqualTo(distance);
    }

    @Test
    void nothingNearIsNotSuggested() {
        assertThat(Nearest.to("radiator", java.util.List.of("fan", "limits"))).isEmpty();
        assertThat(Nearest.to("x", java.util.List.of("K", "s"))).isEmpty();
        assertThat(Nearest.to("radator", java.util.List.of("fan", "radiator"))).contains("radiator");
        assertThat(Nearest.to("anything", java.util.List.of())).isEmpty();
    }
}
