package hotday.study.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hotday.core.unit.Display;
import hotday.core.unit.UnitSystem;
import hotday.physics.refrigerant.RangeException;
import hotday.physics.refrigerant.Refrigerant;
import org.junit.jupiter.api.Test;

class SaturationChartTest {
    @Test
    void rowsRunFromFirstToLast() {
        SaturationChart chart = SaturationChart.of(Refrigerant.R134A, 250, 300, 10, 0);
        assertThat(chart.rows()).hasSize(6);
        assertThat(chart.rows().get(5).temperature()).isEqualTo(300);
        assertThat(chart.rows().get(5).gauge()).isCloseTo(702820.65 - 101325, within(0.1));
    }

    /** Standard atmosphere: 12.228 psia at 5000 ft, so that gauges read 2.47 psi more. */
    @Test
    void gaugesReadMoreWhereTheAirIsThin() {
        double sea = SaturationChart.of(Refrigerant.R1234YF, 300, 300, 1, 0)
                .rows()
                .get(0)
                .gauge();
        double high = SaturationChart.of(Refrigerant.R1234YF, 300, 300, 1, 1524)
                .rows()
                .get(0)
                .gauge();
        assertThat((high - sea) / 6894.757).isCloseTo(2.47, within(0.005));
    }

    @Test
    void thePictureCarriesUnitsAndAltitude() {
        SaturationChart chart = SaturationChart.of(Refrigerant.R134A, 250, 300, 10, 1524);
        assertThat(chart.svg(new Display(UnitSystem.US))).contains("R-134a at 5000 ft", "degF", "psi", "</svg>");
        assertThat(chart.svg(new Display(UnitSystem.METRIC))).contains("1524 m", "degC", "bar");
    }

    @Test
    void pastTheCriticalPointThereIsNoChart() {
        assertThatThrownBy(() -> SaturationChart.of(Refrigerant.R134A, 350, 400, 10, 0))
                .isInstanceOf(RangeException.class);
    }
}
