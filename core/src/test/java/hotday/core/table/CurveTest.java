package hotday.core.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CurveTest {
    private final Curve curve = Curve.of(new double[] {1, 2, 4, 5}, new double[] {10, 20, 0, 7});

    @ParameterizedTest
    @CsvSource({
        "0, 10, 0",
        "1, 10, 10",
        "1.25, 12.5, 10",
        "2, 20, -10",
        "3, 10, -10",
        "4, 0, 7",
        "4.5, 3.5, 7",
        "5, 7, 0",
        "99, 7, 0"
    })
    void linesBetweenPointsAndHeldEnds(double x, double y, double slope) {
        assertThat(curve.value(x)).isCloseTo(y, within(1e-14));
        assertThat(curve.slope(x)).isCloseTo(slope, within(1e-14));
    }

    @Test
    void infinitiesTakeTheEndsAndNanStaysNan() {
        assertThat(curve.value(Double.NEGATIVE_INFINITY)).isEqualTo(10);
        assertThat(curve.value(Double.POSITIVE_INFINITY)).isEqualTo(7);
        assertThat(curve.value(Double.NaN)).isNaN();
    }

    @Test
    void onePointIsAConstant() {
        Curve constant = Curve.of(new double[] {3}, new double[] {8});
        assertThat(constant.value(-1)).isEqualTo(8);
        assertThat(constant.value(9)).isEqualTo(8);
        assertThat(constant.slope(3)).isZero();
    }

    @Test
    void aPointIsHitExactlyFromBothSides() {
        for (int i = 0; i < curve.size(); i++) {
            assertThat(curve.value(curve.x(i))).isEqualTo(curve.y(i));
            assertThat(curve.value(Math.nextDown(curve.x(i)))).isCloseTo(curve.y(i), within(1e-13));
        }
    }

    @Test
    void refusesPointsThatDoNotRiseOrAreNotNumbers() {
        assertThatThrownBy(() -> Curve.of(new double[] {1, 1}, new double[] {0, 1}))
                .hasMessageContaining("point 2 is at 1.0 after 1.0");
        assertThatThrownBy(() -> Curve.of(new double[] {1, Double.NaN}, new double[] {0, 1}))
                .hasMessageContaining("point 2");
        assertThatThrownBy(() -> Curve.of(new double[] {1}, new double[] {0, 1}))
                .hasMessageContaining("1 x and 2 y");
        assertThatThrownBy(() -> Curve.of(new double[0], new double[0])).hasMessageContaining("at least one");
    }

    @Test
    void laterChangesOfTheArraysChangeNothing() {
        double[] x = {0, 1};
        double[] y = {0, 1};
        Curve kept = Curve.of(x, y);
        x[1] = 0.5;
        y[1] = 100;
        assertThat(kept.value(0.5)).isEqualTo(0.5);
        assertThat(kept).isEqualTo(Curve.of(new double[] {0, 1}, new double[] {0, 1}));
    }
}
