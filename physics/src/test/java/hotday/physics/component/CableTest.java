package hotday.physics.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.ReferenceTable;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CableTest {
    private static final double ZERO_CELSIUS = 273.15;

    /** 6 mm2 of IEC 60228 class 5, 3.30 mOhm/m at 20 degC, is 3.819 mOhm/m at 60 degC (recomputed). */
    @Test
    void copperGetsWarm() {
        assertThat(new Cable(3.30e-3, 1).resistance(60 + ZERO_CELSIUS)).isCloseTo(3.819e-3, within(0.5e-6));
    }

    /** 45 A, 5 m loop (recomputed with IEC 60228): volts lost at 20, 60 and 80 degC; and 50 A in 6 mm2 at 60 degC. */
    @Test
    void voltsLost() {
        double[][] rows = {
            {10, 45, 20, 0.430}, {10, 45, 60, 0.497}, {10, 45, 80, 0.531},
            {16, 45, 20, 0.272}, {16, 45, 60, 0.315}, {16, 45, 80, 0.336},
            {6, 50, 60, 0.955}
        };
        for (double[] row : rows) {
            double drop = new Cable(listed(row[0]), 5).drop(row[1], row[2] + ZERO_CELSIUS);
            assertThat(drop).as("%s mm2", row[0]).isCloseTo(row[3], within(0.00051));
            assertThat(drop < 0.03 * 13.5).isEqualTo(row[0] == 16);
        }
    }

    private static double listed(double squareMillimetres) {
        for (Map<String, String> row : ReferenceTable.rows("trade/conductor-metric.csv")) {
            if (ReferenceTable.number(row, "mm2") == squareMillimetres) {
                return ReferenceTable.number(row, "IEC60228_class5_plain_max_mohm_per_m_20C") / 1000;
            }
        }
        throw new AssertionError("no cable of " + squareMillimetres + " mm2");
    }

    /** All of IEC 60228 class 5, plain; and the standard allows for the lay of the strands, never less than solid copper of 17.241 nOhm m. */
    @Test
    void listedSizes() {
        double before = Double.POSITIVE_INFINITY;
        for (Map<String, String> row : ReferenceTable.rows("trade/conductor-metric.csv")) {
            double square = ReferenceTable.number(row, "mm2");
            double ours = perMetre(square);
            assertThat(ours)
                    .as("%s mm2", square)
                    .isCloseTo(listed(square), withinPercentage(1e-9))
                    .isBetween(17.241e-3 / square, 1.17 * 17.241e-3 / square);
            assertThat(perMetre(0.9 * square)).isBetween(ours, before);
            before = ours;
        }
        assertThat(45 * 5 * perMetre(13.3) * 1.1572).as("6 AWG lies between").isCloseTo(0.377, within(0.0015));
        assertThat(perMetre(0.25)).isCloseTo(0.078, within(1e-12));
        assertThat(perMetre(240)).isCloseTo(0.161e-3 / 2, within(1e-12));
    }

    private static double perMetre(double squareMillimetres) {
        return Cable.ofCopper(squareMillimetres * 1e-6, 1).resistance(20 + ZERO_CELSIUS);
    }

    @Test
    void badValues() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Cable(-1e-3, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Cable(1e-3, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> Cable.ofCopper(0, 1));
    }
}
