package hotday.physics.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.ReferenceTable;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirTest {
    /** US Standard Atmosphere 1976, troposphere, from memory, recomputed for this check; last digit printed. */
    @ParameterizedTest
    @CsvSource({
        "0, 288.15, 101325, 1.2250, 1.1344",
        "500, 284.90, 95461, 1.1673, 1.0688",
        "1000, 281.65, 89875, 1.1116, 1.0062",
        "1500, 278.40, 84556, 1.0581, 0.9467",
        "2000, 275.15, 79495, 1.0065, 0.8900",
        "3000, 268.65, 70109, 0.9091, 0.7849"
    })
    void standardAtmosphere(double altitude, double kelvin, double pressure, double density, double at38) {
        double p = Air.isaPressure(altitude);
        assertThat(Air.isaTemperature(altitude)).isCloseTo(kelvin, within(0.005));
        assertThat(p).isCloseTo(pressure, within(1.0));
        assertThat(Air.density(p, kelvin)).isCloseTo(density, within(6e-5));
        assertThat(Air.density(p, 311.15)).isCloseTo(at38, within(6e-5));
    }

    @Test
    void standardAtmosphereTable() {
        for (Map<String, String> row : ReferenceTable.rows("trade/isa-air.csv")) {
            double p = Air.isaPressure(ReferenceTable.number(row, "h_m"));
            assertThat(p).isCloseTo(1e3 * ReferenceTable.number(row, "p_kPa"), within(1.0));
            assertThat(Air.density(p, 318.15)).isCloseTo(ReferenceTable.number(row, "rho_at_45C"), within(6e-5));
        }
    }

    /** Dry air at one atmosphere (reference equations, recomputed for this check). */
    @ParameterizedTest
    @CsvSource({
        "20, 1.2046, 1006.1, 1.821e-5, 0.02587, 0.7080",
        "40, 1.1274, 1006.9, 1.917e-5, 0.02735, 0.7055",
        "60, 1.0596, 1008.0, 2.010e-5, 0.02880, 0.7034",
        "100, 0.9459, 1011.2, 2.190e-5, 0.03162, 0.7003"
    })
    void dryAir(double celsius, double density, double heat, double viscosity, double conductivity, double prandtl) {
        double t = celsius + 273.15;
        assertThat(Air.density(101325, t)).isCloseTo(density, withinPercentage(0.06));
        assertThat(Air.specificHeat(t)).isCloseTo(heat, withinPercentage(0.05));
        assertThat(Air.viscosity(t)).isCloseTo(viscosity, withinPercentage(0.8));
        assertThat(Air.conductivity(t)).isCloseTo(conductivity, withinPercentage(1.0));
        assertThat(Air.prandtl(t)).isCloseTo(prandtl, withinPercentage(1.0));
    }
}
