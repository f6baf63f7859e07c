package hotday.physics.exchanger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.transfer.Effectiveness;
import java.util.List;
import org.junit.jupiter.api.Test;

class RescalingTest {
    private static final FaceGrid FACE = FaceGrid.even(8, 12, 0.4, 0.6);
    private final Rescaling radiator = new Rescaling(Passes.crossFlow(FACE.whole(), Passes.Side.LEFT));

    private static TestPoint point(double airRate, double liquidRate, double heat) {
        return new TestPoint(airRate, liquidRate, 60, heat, 1700 * Math.sqrt(airRate / 1200), 3800);
    }

    private double trueHeat(double airRate, double liquidRate, double factor) {
        return radiator.heat(point(airRate, liquidRate, 1.0), factor);
    }

    @Test
    void theMarchedCoreGivesTheTestedHeat() {
        TestPoint p = point(1200, 7200, 45e3);
        double factor = radiator.factor(p).orElseThrow();
        assertThat(radiator.heat(p, factor)).isCloseTo(45e3, withinPercentage(1e-9));
        double ua = factor / (1.0 / 1700 + 1.0 / 3800);
        assertThat(1200 * 60 * Effectiveness.crossMaxMixed(ua / 1200, 1200.0 / 7200))
                .isCloseTo(45e3, withinPercentage(1e-9));
        assertThat(radiator.scale(List.of(p)).misfits().get(0)).isCloseTo(0, within(1e-9));
    }

    @Test
    void whatTheFlowsCannotExchangeIsRefused() {
        TestPoint p = point(1200, 7200, 71e3);
        assertThat(radiator.factor(p)).isEmpty();
        assertThat(radiator.most(p)).isCloseTo(7200 * 60 * -Math.expm1(-1.0 / 6), withinPercentage(1e-9));
        assertThatThrownBy(() -> radiator.scale(List.of(p)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("71000.0 W")
                .hasMessageContaining("66319");
        assertThatThrownBy(() -> point(1200, 7200, -1)).hasMessageContaining("-1.0 W");
        assertThatThrownBy(() -> point(0, 7200, 1)).hasMessageContaining("0.0");
        assertThatThrownBy(() -> new TestPoint(1, 1, 60, 1, 0, 5)).hasMessageContaining("5.0 W/K");
    }

    @Test
    void severalPointsOfOneCoreGiveItsFactor() {
        List<TestPoint> points = List.of(
                point(800, 5000, trueHeat(800, 5000, 0.85)),
                point(1200, 7200, trueHeat(1200, 7200, 0.85)),
                point(2000, 9000, trueHeat(2000, 9000, 0.85)));
        Rescaling.Scale scale = radiator.scale(points);
        assertThat(scale.factor()).isCloseTo(0.85, within(1e-8));
        assertThat(scale.misfits()).allSatisfy(m -> assertThat(m).isCloseTo(0, within(1e-8)));
    }

    @Test
    void pointsThatContradictEachOtherLeaveTheirMisfit() {
        List<TestPoint> points = List.of(
                point(800, 5000, 1.03 * trueHeat(800, 5000, 1.0)),
                point(1200, 7200, 0.97 * trueHeat(1200, 7200, 1.0)),
                point(2000, 9000, 1.02 * trueHeat(2000, 9000, 1.0)));
        Rescaling.Scale scale = radiator.scale(points);
        double best = squares(scale.misfits());
        assertThat(scale.misfits().get(0)).isNegative();
        assertThat(scale.misfits().get(1)).isPositive();
        for (double other : List.of(0.999, 1.001, 0.97, 1.03)) {
            List<Double> misfits = points.stream()
                    .map(p -> radiator.heat(p, other * scale.factor()) / p.heat() - 1)
                    .toList();
            assertThat(squares(misfits)).isGreaterThan(best);
        }
    }

    private static double squares(List<Double> values) {
        return values.stream().mapToDouble(v -> v * v).sum();
    }
}
