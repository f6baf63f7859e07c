package hotday.core.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsTest {
    /** Printed to seven significant digits in the source: half a unit of the last one, relative to 1.000000. */
    private static final double PRINTED_DIGITS = 5e-7;

    /**
     * What one unit is in SI. Source: NIST Special Publication 811 (2008), appendix B.8, values as printed there, from
     * memory; the exact ones follow from inch = 25.4 mm, pound = 0.45359237 kg, g_n = 9.80665 m/s2 and the BTU of the
     * International Table.
     */
    @ParameterizedTest(name = "1 {1} = {2} SI")
    @CsvSource(
            quoteCharacter = '\'',
            value = {
                "LENGTH, in, 2.54e-2",
                "LENGTH, ft, 3.048e-1",
                "LENGTH, mi, 1.609344e3",
                "AREA, in2, 6.4516e-4",
                "AREA, ft2, 9.290304e-2",
                "VOLUME, ci, 1.638706e-5",
                "VOLUME, gal, 3.785412e-3",
                "VOLUME, qt, 9.463529e-4",
                "MASS, lb, 4.535924e-1",
                "DENSITY, lb/ft3, 1.601846e1",
                "DENSITY, lb/gal, 1.198264e2",
                "FORCE, lbf, 4.448222",
                "PRESSURE_GAUGE, psi, 6.894757e3",
                "PRESSURE_ABSOLUTE, psia, 6.894757e3",
                "PRESSURE_ABSOLUTE, inHg, 3.386389e3",
                "PRESSURE_ABSOLUTE, mmHg, 1.333224e2",
                "PRESSURE_ABSOLUTE, atm, 1.01325e5",
                "PRESSURE_DIFFERENCE, inH2O, 2.490889e2",
                "SPEED, mph, 4.4704e-1",
                "SPEED, km/h, 2.777778e-1",
                "SPEED, ft/s, 3.048e-1",
                "ACCELERATION, g, 9.80665",
                "ACCELERATION, ft/s2, 3.048e-1",
                "POWER, hp, 7.456999e2",
                "POWER, PS, 7.354988e2",
                "POWER, BTU/h, 2.930711e-1",
                "ENERGY, BTU, 1.055056e3",
                "ENERGY, kWh, 3.6e6",
                "TORQUE, lb ft, 1.355818",
                "ANGULAR_SPEED, rpm, 1.047198e-1",
                "ANGLE, deg, 1.745329e-2",
                "IRRADIANCE, BTU/(h ft2), 3.154591",
                "MASS_FLOW, lb/h, 1.259979e-4",
                "MASS_FLOW, lb/min, 7.559873e-3",
                "VOLUME_FLOW, cfm, 4.719474e-4",
                "VOLUME_FLOW, gpm, 6.309020e-5",
                "HEATING_VALUE, BTU/lb, 2.326e3",
                "SPECIFIC_ENTHALPY, BTU/lb, 2.326e3",
                "SPECIFIC_HEAT, BTU/(lb degF), 4.1868e3",
                "HEAT_CAPACITY, BTU/degF, 1.899101e3",
                "TEMPERATURE_DIFFERENCE, degF, 5.555556e-1"
            })
    void factorsArePublished(Quantity quantity, String symbol, double si) {
        assertThat(Units.parse(quantity, "1 " + symbol)).isCloseTo(si, within(PRINTED_DIGITS * si));
    }

    /** Fixed points of the temperature scales: definition (NIST SP 811, section B.8 and 4.2.1.1). */
    @ParameterizedTest
    @CsvSource({
        "0 degC, 273.15",
        "32 degF, 273.15",
        "212 °F, 373.15",
        "-40 F, 233.15",
        "-40 C, 233.15",
        "0 K, 0",
        "-459.67 degF, 0",
        "100 deg C, 373.15",
        "205 degrees F, 369.26111111"
    })
    void temperaturesHaveAZero(String typed, double kelvin) {
        assertThat(Units.parse(Quantity.TEMPERATURE, typed)).isCloseTo(kelvin, within(1e-8));
    }

    /** Hand computed from the factors above. */
    @ParameterizedTest(name = "{1}")
    @CsvSource({
        "TEMPERATURE, 205 degF, 369.2611",
        "TEMPERATURE, 205F, 369.2611",
        "TEMPERATURE, '  205   °F ', 369.2611",
        "TEMPERATURE_DIFFERENCE, 9 degF, 5",
        "TEMPERATURE_DIFFERENCE, 5 degC, 5",
        "PRESSURE_GAUGE, 16 psi, 110316.1",
        "PRESSURE_GAUGE, 1.6 bar, 160000",
        "PRESSURE_GAUGE, 16 psig, 110316.1",
        "PRESSURE_ABSOLUTE, 14.69595 psia, 101325",
        "PRESSURE_ABSOLUTE, 29.92 inHg, 101320.8",
        "PRESSURE_ABSOLUTE, 1 bar abs, 100000",
        "SPEED, 35 mph, 15.6464",
        "SPEED, 35 MPH, 15.6464",
        "SPEED, 20 km/h, 5.555556",
        "SPEED, 20 kph, 5.555556",
        "VOLUME, 4.2 l, 0.0042",
        "VOLUME, 4.2 L, 0.0042",
        "LENGTH, 22 in, 0.5588",
        "LENGTH, '22\"', 0.5588",
        "MASS, 3808 lb, 1727.280",
        "FORCE, 22.636 lbf, 100.6900",
        "FORCE_PER_SPEED, 1.23944 lbf/mph, 12.332909",
        "FORCE_PER_SPEED_SQUARED, 0.001929 lbf/mph2, 0.042936424",
        "HEATING_VALUE, 18399 BTU/lb, 42796074",
        "PER_LENGTH, 12 fpi, 472.4409",
        "PER_LENGTH, 12 /in, 472.4409",
        "ANGULAR_SPEED, 650 rpm, 68.06784",
        "VOLUME_FLOW, 120 l/min, 0.002",
        "VOLUME_FLOW, 3.6 gal/min, 2.271247e-4",
        "VOLUME_FLOW, 300 cfm, 0.1415842",
        "POWER, 150 hp, 111854.98",
        "POWER, 5 kW, 5000",
        "RATIO, 70 %, 0.7",
        "RATIO, 70%, 0.7",
        "RATIO, 0.7, 0.7",
        "NUMBER, -.5, -0.5",
        "NUMBER, 1e3, 1000",
        "TORQUE, 300 N·m, 300",
        "TORQUE, 300 Nm, 300",
        "AREA, 0.75 m², 0.75",
        "DENSITY, 0.851 g/ml, 851",
        "AREA, 16 mm2, 1.6e-5",
        "KINEMATIC_VISCOSITY, 30 mm2/s, 3e-5",
        "KINEMATIC_VISCOSITY, 6 cSt, 6e-6",
        "RESISTANCE, 8 mOhm, 0.008",
        "CHARGE, 80 Ah, 288000",
        "CONDUCTANCE_PER_SPEED, 0.9 W/K/(m/s), 0.9",
        "CONDUCTANCE_PER_SPEED, 1 W/K/mph, 2.236936",
        "MASS_FLOW_PER_SPEED, 0.36 g/s/(km/h), 1.296e-3",
        "SHARE_PER_KELVIN, 0.25 %/K, 0.0025",
        "SHARE_PER_KELVIN, 1 %/degF, 0.018",
        "CONVERTER_CAPACITY, 150 rpm/sqrt(N m), 15.70796",
        "CONVERTER_CAPACITY, 137.46 rpm/sqrt(lb ft), 12.36244"
    })
    void whatPeopleType(Quantity quantity, String typed, double si) {
        assertThat(Units.parse(quantity, typed)).isCloseTo(si, within(1e-6 * Math.abs(si)));
    }

    @ParameterizedTest(name = "{1}: {2}")
    @CsvSource({
        "PRESSURE_GAUGE, 16, unit-missing",
        "TEMPERATURE, 90, unit-missing",
        "SPEED, '1,5 mph', number-wrong",
        "MASS, '3,808 lb', number-wrong",
        "MASS, NaN kg, number-wrong",
        "MASS, inf kg, number-wrong",
        "MASS, -Infinity kg, number-wrong",
        "MASS, 1e400 kg, number-wrong",
        "MASS, 1.2.3 kg, number-wrong",
        "MASS, heavy, number-wrong",
        "MASS, '', number-wrong",
        "MASS, '   ', number-wrong",
        "MASS, 1_000 kg, unit-wrong",
        "TEMPERATURE, -1 K, number-wrong",
        "TEMPERATURE, -500 degF, number-wrong",
        "PRESSURE_GAUGE, 35 mph, unit-wrong",
        "PRESSURE_GAUGE, 16 psia, unit-wrong",
        "PRESSURE_ABSOLUTE, 16 psig, unit-wrong",
        "PRESSURE_ABSOLUTE, 16 psi, pressure-ambiguous",
        "PRESSURE_ABSOLUTE, 1.6 BAR, pressure-ambiguous",
        "FORCE, 22.636 lb, unit-wrong",
        "NUMBER, 3.2 %, unit-wrong",
        "NUMBER, 3.2 kg, unit-wrong",
        "RATIO, 3 kg, unit-wrong",
        "LENGTH, 3 0 mm, unit-wrong"
    })
    void refused(Quantity quantity, String typed, String key) {
        UnitException wrong = catchThrowableOfType(UnitException.class, () -> Units.parse(quantity, typed));
        assertThat(wrong.key()).isEqualTo(key);
        assertThat(wrong.getMessage()).contains(quantity == Quantity.MASS && typed.isBlank() ? "mass" : typed.strip());
    }

    @Test
    void aMissingUnitIsNamedWithExamples() {
        assertThatThrownBy(() -> Units.parse(Quantity.PRESSURE_GAUGE, "16"))
                .hasMessageContainingAll("'16' has no unit", "gauge pressure", "psi", "bar", "16 psi");
    }

    @Test
    void anotherQuantityIsSaid() {
        assertThatThrownBy(() -> Units.parse(Quantity.PRESSURE_GAUGE, "35 mph"))
                .hasMessageContainingAll("mph is a unit of speed", "gauge pressure is needed", "kPa");
    }

    @Test
    void theAmbiguousPressureSaysHowToWriteIt() {
        assertThatThrownBy(() -> Units.parse(Quantity.PRESSURE_ABSOLUTE, "1.6 bar"))
                .hasMessageContaining("gauge or absolute")
                .hasMessageContaining("'bar abs'");
        assertThat(Units.parse(Quantity.PRESSURE_ABSOLUTE, "1.6 bar abs")).isEqualTo(160_000);
    }

    @ParameterizedTest
    @CsvSource({
        "PRESSURE_GAUGE, 16 pis, psi",
        "SPEED, 35 mhp, mph",
        "ANGULAR_SPEED, 650 rmp, rpm",
        "TEMPERATURE, 205 degG, degC",
        "VOLUME_FLOW, 120 l/mim, l/min",
        "HEATING_VALUE, 18399 BTU/ib, BTU/lb"
    })
    void aMisspeltUnitIsAnsweredWithTheNearest(Quantity quantity, String typed, String meant) {
        assertThatThrownBy(() -> Units.parse(quantity, typed)).hasMessageContaining("did you mean '" + meant + "'?");
    }

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void everyExampleCanBeTyped(Quantity quantity) {
        assertThat(Units.parse(quantity, quantity.example())).isFinite();
        assertThat(quantity.units().get(0).factor()).as("the first unit is SI").isEqualTo(1);
        assertThat(quantity.title()).isNotBlank();
    }

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void everySymbolLeadsToItsOwnUnit(Quantity quantity) {
        for (int i = 0; i < quantity.units().size(); i++) {
            for (String symbol : quantity.aliases().get(i)) {
                assertThat(Units.find(quantity, symbol))
                        .as(symbol)
                        .contains(quantity.units().get(i));
            }
        }
    }

    /** There and back within the rounding of two operations, for every unit; seeded. */
    @ParameterizedTest
    @EnumSource(Quantity.class)
    void roundTrip(Quantity quantity) {
        Random random = new Random(20_240_117);
        for (Unit unit : quantity.units()) {
            for (int i = 0; i < 500; i++) {
                double value = Math.exp(random.nextGaussian() * 8) * (random.nextBoolean() ? 1 : -1);
                double scale = Math.abs(value) + Math.abs(unit.offset() / unit.factor());
                assertThat(unit.fromSi(unit.toSi(value))).isCloseTo(value, within(4e-16 * 4 * scale));
            }
        }
    }

    /** What is typed with all digits is read as exactly that double; seeded. */
    @ParameterizedTest
    @EnumSource(Quantity.class)
    void typedDigitsAreKept(Quantity quantity) {
        Random random = new Random(7);
        for (Unit unit : quantity.units()) {
            for (int i = 0; i < 100; i++) {
                double value = Math.exp(random.nextGaussian() * 6);
                Amount amount = Units.amount(quantity, value + " " + unit.symbol());
                assertThat(amount.value()).isEqualTo(value);
                assertThat(amount.unit()).isEqualTo(unit);
            }
        }
    }

    /** Whatever is typed: a number or our own exception, never anything else; seeded. */
    @Test
    void noiseIsRefusedInWords() {
        Random random = new Random(99);
        String alphabet = "0123456789.,+-eE %/°²degCFpsibarmhkWKJN\"'()_\u00A0\t\u0661xX";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder typed = new StringBuilder();
            int length = random.nextInt(12);
            for (int c = 0; c < length; c++) {
                typed.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            Quantity quantity = Quantity.values()[random.nextInt(Quantity.values().length)];
            try {
                assertThat(Units.parse(quantity, typed.toString())).isFinite();
            } catch (UnitException e) {
                assertThat(e.getMessage()).isNotBlank();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG"})
    void theLocaleOfTheMachineChangesNothing(String tag) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(Units.parse(Quantity.LENGTH, "1.5 MI")).isCloseTo(2414.016, within(1e-9));
            assertThat(new Display(UnitSystem.US).format(Quantity.TEMPERATURE, 369.2611))
                    .isEqualTo("205.0 degF");
        } finally {
            Locale.setDefault(before);
        }
    }
}
