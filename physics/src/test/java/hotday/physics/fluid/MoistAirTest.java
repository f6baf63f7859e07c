package hotday.physics.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.ReferenceTable;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoistAirTest {
    /** An independent program with the same relations never goes below this humidity ratio. */
    private static final double DRIEST = 1e-7;

    private static final double IDEAL_PERCENT = 0.01;

    /** Against an independent program of the same ideal-gas relations. */
    @Test
    void everyRowOfTheIdealTable() {
        for (Map<String, String> row : ReferenceTable.rows("moist_air.csv")) {
            double t = number(row, "T_degC") + 273.15;
            double p = number(row, "p_Pa");
            double w = MoistAir.humidityRatio(t, number(row, "RH"), p);
            near(row, "pws_ashrae_Pa", MoistAir.saturationPressure(t), 0);
            near(row, "W_ashrae_kg_kgda", w, 0);
            near(row, "h_ashrae_J_kgda", MoistAir.enthalpy(t, w), DRIEST * 2.6e6);
            near(row, "v_ashrae_m3_kgda", MoistAir.specificVolume(t, w, p), 0);
            near(row, "rho_ashrae_kg_m3", MoistAir.density(t, w, p), 0);
            apart(row, "Twb_ashrae_degC", MoistAir.wetBulb(t, w, p) - 273.15, 0.01);
            apart(row, "Tdp_ashrae_degC", MoistAir.dewPoint(w, p) - 273.15, 0.01);
        }
    }

    /** Against real-gas moist air (ASHRAE RP-1485 virial model): the difference between the two models, no more. */
    @Test
    void everyRowOfTheRealGasTableWithinTheKnownSpread() {
        for (Map<String, String> row : ReferenceTable.rows("moist_air.csv")) {
            double t = number(row, "T_degC") + 273.15;
            double p = number(row, "p_Pa");
            double w = MoistAir.humidityRatio(t, number(row, "RH"), p);
            assertThat(w).as("W %s", row).isCloseTo(number(row, "W_kg_kgda"), withinPercentage(0.63));
            apart(row, "h_J_kgda", MoistAir.enthalpy(t, w), 1570);
            assertThat(MoistAir.density(t, w, p))
                    .as("rho %s", row)
                    .isCloseTo(number(row, "rho_kg_m3"), withinPercentage(0.0615));
            assertThat(MoistAir.specificHeat(w))
                    .as("cp %s", row)
                    .isCloseTo(number(row, "cp_J_kgda_K"), withinPercentage(1.0));
            apart(row, "Tdp_degC", MoistAir.dewPoint(w, p) - 273.15, 0.0175);
            boolean twoBulbs = number(row, "T_degC") == 10 && number(row, "RH") == 0 && p == 101325;
            apart(row, "Twb_degC", MoistAir.wetBulb(t, w, p) - 273.15, twoBulbs ? 0.74 : 0.0325);
        }
    }

    private static double number(Map<String, String> row, String column) {
        return ReferenceTable.number(row, column);
    }

    private static void near(Map<String, String> row, String column, double ours, double absolute) {
        double expected = number(row, column);
        double allowed = IDEAL_PERCENT / 100 * Math.abs(expected) + absolute;
        assertThat(ours).as("%s %s", column, row).isCloseTo(expected, within(allowed));
    }

    /** An empty cell has no value to compare with (dew point of dry air). */
    private static void apart(Map<String, String> row, String column, double ours, double allowed) {
        if (!row.get(column).isEmpty()) {
            assertThat(ours).as("%s %s", column, row).isCloseTo(number(row, column), within(allowed));
        }
    }

    /** ASHRAE Handbook - Fundamentals, table of saturated water and ice, from memory: 103.24 Pa at -20, 611.2 at 0, 2339.2 at 20, 12351 at 50 degC. */
    @ParameterizedTest
    @CsvSource({"-20, 103.24", "0, 611.15", "20, 2339.2", "50, 12351"})
    void saturation(double celsius, double expected) {
        assertThat(MoistAir.saturationPressure(celsius + 273.15)).isCloseTo(expected, withinPercentage(0.02));
    }

    @Test
    void inversesComeBack() {
        for (double p : new double[] {60000, 101325}) {
            for (double t = 233.15; t <= 343.15; t += 5) {
                for (double rh : new double[] {0.001, 0.2, 0.5, 0.99, 1}) {
                    double w = MoistAir.humidityRatio(t, rh, p);
                    assertThat(MoistAir.relativeHumidity(t, w, p)).isCloseTo(rh, withinPercentage(1e-9));
                    double dew = MoistAir.dewPoint(w, p);
                    assertThat(MoistAir.humidityRatio(dew, 1, p)).isCloseTo(w, withinPercentage(1e-6));
                    assertThat(MoistAir.wetBulb(t, w, p)).isBetween(dew - 1e-6, t + 1e-6);
                }
            }
        }
    }

    @Test
    void saturatedAirIsItsOwnWetBulbAndDewPoint() {
        for (double t : new double[] {253.15, 263.15, 278.15, 303.15, 323.15}) {
            double w = MoistAir.humidityRatio(t, 1, 101325);
            assertThat(MoistAir.wetBulb(t, w, 101325)).isCloseTo(t, within(1e-6));
            assertThat(MoistAir.dewPoint(w, 101325)).isCloseTo(t, within(1e-6));
        }
    }

    @Test
    void boneDryAirHasTheColdestDewPointAndNoWater() {
        assertThat(MoistAir.humidityRatio(300, 0, 101325)).isZero();
        assertThat(MoistAir.dewPoint(0, 101325)).isCloseTo(173.15, within(1e-6));
        assertThat(MoistAir.density(300, 0, 101325)).isCloseTo(Air.density(101325, 300), withinPercentage(0.01));
    }
}
