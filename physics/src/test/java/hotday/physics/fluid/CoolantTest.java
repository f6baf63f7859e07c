package hotday.physics.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.ReferenceTable;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoolantTest {
    /** Half and half by volume: Melinder 2010 secondary-fluid fit, recomputed for this check. */
    @ParameterizedTest
    @CsvSource({
        "20, 1068, 3255, 0.380, 3.98e-3, 34.1",
        "60, 1043, 3456, 0.403, 1.47e-3, 12.6",
        "90, 1022, 3573, 0.420, 0.868e-3, 7.39",
        "100, 1014, 3604, 0.425, 0.724e-3, 6.14"
    })
    void halfAndHalf(
            double celsius, double density, double heat, double conductivity, double viscosity, double prandtl) {
        double t = celsius + 273.15;
        assertThat(Coolant.density(t, 0.5)).isCloseTo(density, withinPercentage(0.05));
        assertThat(Coolant.specificHeat(t, 0.5)).isCloseTo(heat, withinPercentage(0.05));
        assertThat(Coolant.conductivity(t, 0.5)).isCloseTo(conductivity, withinPercentage(0.2));
        assertThat(Coolant.viscosity(t, 0.5)).isCloseTo(viscosity, withinPercentage(0.3));
        assertThat(Coolant.viscosity(t, 0.5) * Coolant.specificHeat(t, 0.5) / Coolant.conductivity(t, 0.5))
                .isCloseTo(prandtl, withinPercentage(0.3));
    }

    @Test
    void waterAndHalfAndHalfOverTheWholeTable() {
        for (Map<String, String> row : ReferenceTable.rows("trade/coolant-properties.csv")) {
            near(row, row.get("fluid").equals("water") ? 0 : 0.5, "T_C", "density_kg_m3", 0.13, 0.13, 0.13, 0.13);
        }
    }

    /** Other shares are straight lines between the two: the error stated in the class holds. */
    @Test
    void mixturesOfThePublishedFit() {
        for (Map<String, String> row : ReferenceTable.rows("coolant.csv")) {
            if (row.get("source").equals("MEG_Melinder2010")
                    && row.get("in_range").equals("1")
                    && ReferenceTable.number(row, "x_mass") > 0) {
                double share = ReferenceTable.number(row, "vol_frac_ideal_20C");
                near(row, share, "T_degC", "rho_kg_m3", 0.2, 1.4, 3.0, 4.5);
            }
        }
    }

    @Test
    void inhibitedCoolantDiffersAsStated() {
        for (Map<String, String> row : ReferenceTable.rows("coolant.csv")) {
            if (row.get("source").equals("AEG_ASHRAE2001")
                    && row.get("in_range").equals("1")) {
                double share = ReferenceTable.number(row, "vol_frac_ideal_20C");
                near(row, share, "T_degC", "rho_kg_m3", 1.0, 2.1, 4.3, 14);
            }
        }
    }

    private static void near(
            Map<String, String> row,
            double share,
            String temperature,
            String density,
            double densityPercent,
            double heatPercent,
            double conductivityPercent,
            double viscosityPercent) {
        double t = ReferenceTable.number(row, temperature) + 273.15;
        assertThat(Coolant.density(t, share))
                .as("density %s", row)
                .isCloseTo(ReferenceTable.number(row, density), withinPercentage(densityPercent));
        assertThat(Coolant.specificHeat(t, share))
                .as("specific heat %s", row)
                .isCloseTo(ReferenceTable.number(row, "cp_J_kgK"), withinPercentage(heatPercent));
        assertThat(Coolant.conductivity(t, share))
                .as("conductivity %s", row)
                .isCloseTo(ReferenceTable.number(row, "k_W_mK"), withinPercentage(conductivityPercent));
        assertThat(Coolant.viscosity(t, share))
                .as("viscosity %s", row)
                .isCloseTo(ReferenceTable.number(row, "mu_Pa_s"), withinPercentage(viscosityPercent));
    }

    @Test
    void thinsWhenWarmAndCarriesLessWithGlycol() {
        for (double share = 0; share <= 0.6; share += 0.1) {
            for (double t = 273.15; t < 395; t += 2) {
                assertThat(Coolant.viscosity(t + 2, share)).isLessThan(Coolant.viscosity(t, share));
                assertThat(Coolant.density(t, share + 0.05)).isGreaterThan(Coolant.density(t, share));
                assertThat(Coolant.specificHeat(t, share + 0.05)).isLessThan(Coolant.specificHeat(t, share));
                assertThat(Coolant.conductivity(t, share + 0.05)).isLessThan(Coolant.conductivity(t, share));
            }
        }
    }

    /** Beyond the published fits, -40..130 degC: nothing turns around that should not, nothing leaves what a coolant can be. */
    @Test
    void staysPhysicalAtBothEnds() {
        for (double share = 0; share < 0.65; share += 0.1) {
            for (double celsius = -40; celsius < 130; celsius += 1) {
                double t = celsius + 273.15;
                assertThat(Coolant.viscosity(t + 1, share)).isBetween(2.0e-4, Coolant.viscosity(t, share));
                assertThat(Coolant.density(t, share)).isBetween(930.0, 1120.0);
                assertThat(Coolant.specificHeat(t, share)).isBetween(2500.0, 4400.0);
                assertThat(Coolant.conductivity(t, share)).isBetween(0.32, 0.69);
            }
        }
    }

    /** Water is densest at 4 degC, so weak mixtures may turn around in the cold; from half and half on all go one way. */
    @Test
    void strongMixturesGoOneWay() {
        for (double share : new double[] {0.5, 0.6}) {
            for (double t = 233.15; t < 403; t += 1) {
                assertThat(Coolant.density(t + 1, share)).isLessThan(Coolant.density(t, share));
                assertThat(Coolant.specificHeat(t + 1, share)).isGreaterThan(Coolant.specificHeat(t, share));
            }
        }
    }

    /** To 120 degC against the extrapolated published fit: no further than the two published glycols stand apart inside their range. */
    @Test
    void extrapolatesNearThePublishedFit() {
        for (Map<String, String> row : ReferenceTable.rows("coolant.csv")) {
            double celsius = ReferenceTable.number(row, "T_degC");
            if (row.get("source").equals("MEG_Melinder2010")
                    && celsius > 100
                    && celsius <= 120
                    && ReferenceTable.number(row, "x_mass") > 0) {
                double share = ReferenceTable.number(row, "vol_frac_ideal_20C");
                near(row, share, "T_degC", "rho_kg_m3", 1.1, 2.5, 3.2, 14);
            }
        }
    }
}
