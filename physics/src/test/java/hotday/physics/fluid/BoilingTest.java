package hotday.physics.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.physics.ReferenceTable;
import hotday.physics.WorkedProblem;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BoilingTest {
    private static final double PSI = 6894.757293168;

    /** Every altitude and cap of the table, water and half and half; printed with one digit. */
    @Test
    void capAndAltitude() {
        for (Map<String, String> row : ReferenceTable.rows("trade/coolant-boiling-cap-altitude.csv")) {
            double ambient = Air.isaPressure(ReferenceTable.number(row, "altitude_ft") * 0.3048);
            double p = ambient + PSI * ReferenceTable.number(row, "cap_psig");
            assertThat(Boiling.temperature(p, 0))
                    .as("water %s", row)
                    .isCloseTo(ReferenceTable.number(row, "water_C") + 273.15, within(0.06));
            assertThat(Boiling.temperature(p, 0.5))
                    .as("half and half %s", row)
                    .isCloseTo(ReferenceTable.number(row, "EG50vol_C") + 273.15, within(0.11));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "2000", "3000"})
    void workedAltitudes(String altitude) {
        WorkedProblem p = WorkedProblem.read("coolant-steady");
        double pressure = Air.isaPressure(Double.parseDouble(altitude)) + p.in("cap") * PSI;
        assertThat(Boiling.ofMoleFraction(pressure, 0.7555))
                .isCloseTo(
                        p.output("boiling temperature h=" + altitude + " cap 16 psi")
                                .asDouble(),
                        within(1e-6));
    }

    @Test
    void workedOpen() {
        WorkedProblem p = WorkedProblem.read("coolant-steady");
        assertThat(Boiling.ofMoleFraction(Air.isaPressure(0), 0.7555))
                .isCloseTo(p.output("boiling temperature 0 m open").asDouble(), within(1e-6));
    }

    /** IAPWS-95 release, table of saturation check values: 0.698451 kPa at 275 K, 932.203 kPa at 450 K; steam tables: 373.124 K. */
    @Test
    void water() {
        assertThat(Boiling.waterPressure(275)).isCloseTo(698.451, within(0.02));
        assertThat(Boiling.waterPressure(450)).isCloseTo(932203.0, within(30.0));
        assertThat(Boiling.temperature(101325, 0)).isCloseTo(373.124, within(0.002));
    }

    /** A mole fraction of 0.755 for half and half by volume; 0.7555 in the boiling table. */
    @Test
    void moleFraction() {
        assertThat(Boiling.waterMoleFraction(0.5)).isCloseTo(0.7555, within(5e-4));
        assertThat(Boiling.waterMoleFraction(0)).isEqualTo(1);
        assertThat(Boiling.waterMoleFraction(1)).isEqualTo(0);
    }

    @Test
    void risesWithPressureAndGlycolAndInvertsThePressure() {
        for (double share : List.of(0.0, 0.3, 0.5, 0.6)) {
            for (double p = 2e4; p < 6e5; p *= 1.1) {
                double t = Boiling.temperature(p, share);
                assertThat(Boiling.pressure(t, Boiling.waterMoleFraction(share)))
                        .isCloseTo(p, within(1e-6 * p));
                assertThat(Boiling.temperature(p * 1.1, share)).isGreaterThan(t);
                assertThat(Boiling.temperature(p, share + 0.05)).isGreaterThan(t);
            }
        }
    }

    /** Outside the range: several service pages print 276 degF for 70 % at 15 psi; the ideal mixture is 3.2 K above it. */
    @Test
    void strongMixturesComeOutHigh() {
        double published = (276 - 32) / 1.8 + 273.15;
        assertThat(Boiling.temperature(101325 + 15 * PSI, 0.7)).isCloseTo(published, within(3.5));
        assertThat(Boiling.temperature(101325 + 15 * PSI, 0.7)).isGreaterThan(published);
    }

    /** "3 degF per psi", recomputed: 3.6 at 0, 2.8 at 5, 2.3 at 10, 2.0 at 15 psi; 2.6 on the average. */
    @ParameterizedTest
    @CsvSource({"0, 3.6", "5, 2.8", "10, 2.3", "15, 2.0"})
    void degreesPerPsi(double cap, double expected) {
        double low = Boiling.temperature(101325 + (cap - 0.05) * PSI, 0.5);
        double high = Boiling.temperature(101325 + (cap + 0.05) * PSI, 0.5);
        assertThat((high - low) * 1.8 / 0.1).isCloseTo(expected, within(0.06));
    }

    @Test
    void outsideTheRangeStaysFinite() {
        for (double p : List.of(-1e5, 0.0, 1.0, 1e9, 1e300)) {
            assertThat(Boiling.temperature(p, 0.5)).as("%s Pa", p).isBetween(299.0, 481.0);
        }
    }
}
