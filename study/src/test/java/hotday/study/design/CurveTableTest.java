package hotday.study.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.core.unit.Units;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Tables against the curve they stand for, and against what a search by chance finds. */
class CurveTableTest {
    private static final Unit CELSIUS = Units.unit(Quantity.TEMPERATURE, "degC");
    private static final Unit FAHRENHEIT = Units.unit(Quantity.TEMPERATURE, "degF");
    private static final List<Double> X = List.of(273.15 + 94, 273.15 + 97, 273.15 + 103, 273.15 + 108);
    private static final List<Double> Y = List.of(0.25, 0.3, 0.62, 1.0);

    @Test
    void asManyPointsAsTheCurveHasAreExact() {
        CurveTable table = CurveTable.of(X, Y, CELSIUS, 4, 1.0);
        assertThat(table.x()).containsExactly(94.0, 97.0, 103.0, 108.0);
        assertThat(table.demand()).containsExactly(25, 30, 62, 100);
        assertThat(table.error()).isCloseTo(0.0, within(1e-12));
    }

    /** Demands are whole percent: half a percent is what more points may miss. */
    @Test
    void morePointsMissHalfAPercentAtMost() {
        CurveTable table = CurveTable.of(X, Y, CELSIUS, 6, 0.5);
        assertThat(table.x()).hasSize(6).isSorted();
        assertThat(table.error()).isLessThanOrEqualTo(0.005);
    }

    @Test
    void theStatedErrorIsTheLargestOnTheAxis() {
        CurveTable table = CurveTable.of(X, Y, FAHRENHEIT, 3, 1.0);
        double worst = IntStream.rangeClosed(
                        0, (int) (table.x().get(2) - table.x().get(0)))
                .mapToDouble(i -> {
                    double si = FAHRENHEIT.toSi(table.x().get(0) + i);
                    return Math.abs(CurveTable.at(table.si(), table.shares(), si) - CurveTable.at(X, Y, si));
                })
                .max()
                .orElseThrow();
        assertThat(table.error()).isCloseTo(worst, within(1e-9)).isBetween(0.01, 0.2);
    }

    @Test
    void noTableByChanceIsBetter() {
        Random random = new Random(5);
        CurveTable best = CurveTable.of(X, Y, CELSIUS, 3, 0.5);
        for (int i = 0; i < 2000; i++) {
            double middle = 94 + 0.5 * (1 + random.nextInt(27));
            List<Double> x = List.of(273.15 + 94, 273.15 + middle, 273.15 + 108);
            List<Double> y = x.stream()
                    .map(v -> Math.round(100 * CurveTable.at(X, Y, v)) / 100.0)
                    .toList();
            double worst = IntStream.rangeClosed(0, 28)
                    .mapToDouble(k -> 273.15 + 94 + 0.5 * k)
                    .map(v -> Math.abs(CurveTable.at(x, y, v) - CurveTable.at(X, Y, v)))
                    .max()
                    .orElseThrow();
            assertThat(worst).isGreaterThanOrEqualTo(best.error() - 1e-9);
        }
    }

    @Test
    void anAxisWithTooFewStepsIsRefused() {
        assertThatThrownBy(() -> CurveTable.of(X, Y, CELSIUS, 6, 5.0))
                .hasMessageContaining("6 break points do not fit on an axis of 5 steps of 5.0 degC");
    }

    @Test
    void dutyAndBack() {
        DutyMap duty = new DutyMap(0.1, 0.9, true, 0.005, 100);
        assertThat(duty.sent(0.0)).isCloseTo(0.95, within(1e-12));
        assertThat(duty.sent(1.0)).isCloseTo(0.1, within(1e-12));
        assertThat(duty.of(0.0)).isZero();
        assertThat(duty.of(1.0)).isCloseTo(1.0, within(1e-12));
        for (double output = 0.2; output <= 1.0; output += 0.003) {
            assertThat(duty.of(output)).isCloseTo(output, within(duty.error() + 1e-12));
        }
    }

    @Test
    void relaysWithHysteresis() {
        Relays relays = new Relays(List.of(0.5, 1.0), List.of(0.2, 0.6), List.of(0.1, 0.4));
        var drive = relays.drive();
        double[] outputs = {0.1, 0.2, 0.15, 0.59, 0.6, 0.41, 0.39, 0.1, 0.09, 1.0, 0.0};
        double[] speeds = {0.0, 0.5, 0.5, 0.5, 1.0, 1.0, 0.5, 0.5, 0.0, 1.0, 0.0};
        for (int i = 0; i < outputs.length; i++) {
            assertThat(drive.of(outputs[i])).as("after %s", outputs[i]).isEqualTo(speeds[i]);
        }
        assertThat(relays.error()).isCloseTo(0.2, within(1e-12));
    }
}
