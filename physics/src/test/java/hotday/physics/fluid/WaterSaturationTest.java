package hotday.physics.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.ReferenceTable;
import java.util.Map;
import org.junit.jupiter.api.Test;

class WaterSaturationTest {
    @Test
    void itsOriginEverywhere() {
        for (double t = 173.15; t < 473; t += 0.01) {
            assertThat(WaterSaturation.pressure(t))
                    .as("%s K", t)
                    .isCloseTo(MoistAir.saturationPressure(t), withinPercentage(2e-5));
        }
    }

    /** Against an independent program of the same relation. */
    @Test
    void everyRowOfTheTable() {
        for (Map<String, String> row : ReferenceTable.rows("moist_air.csv")) {
            double expected = ReferenceTable.number(row, "pws_ashrae_Pa");
            assertThat(WaterSaturation.pressure(ReferenceTable.number(row, "T_degC") + 273.15))
                    .isCloseTo(expected, withinPercentage(0.01));
        }
    }

    @Test
    void slopeIsThatOfTheCurveAndAlwaysUp() {
        for (double t = 183.155; t < 423; t += 0.37) {
            double apart = MoistAir.saturationPressure(t + 1e-3) - MoistAir.saturationPressure(t - 1e-3);
            assertThat(WaterSaturation.slope(t))
                    .as("%s K", t)
                    .isPositive()
                    .isCloseTo(apart / 2e-3, withinPercentage(0.01));
        }
    }

    @Test
    void noStepAtTheSeams() {
        for (double seam : new double[] {213.16, 240.16, 273.16, 300.16, 373.16}) {
            double below = WaterSaturation.pressure(Math.nextDown(seam));
            assertThat(WaterSaturation.pressure(Math.nextUp(seam))).isCloseTo(below, within(3e-5 * below));
        }
    }
}
