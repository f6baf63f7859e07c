package hotday.core.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class PseudoTransientTest {
    private static double[] filled(int n, double value) {
        double[] a = new double[n];
        Arrays.fill(a, value);
        return a;
    }

    private static PseudoTransient solver(int n) {
        return new PseudoTransient(filled(n, -1e6), filled(n, 1e6), filled(n, 1.0), 200);
    }

    /**
     * Robertson's chemical kinetics (Robertson 1966, as in Hairer and Wanner, Solving Ordinary Differential Equations II,
     * IV.1), fed and drained so that it rests where Newton finds it from afar: y3 takes everything. Here with a constant feed
     * the rest is known in closed form.
     */
    @Test
    void stiffKineticsWithFeedComeToTheirKnownRest() {
        double feed = 0.01;
        double[] y = {1.0, 0.0, 0.0};
        boolean found = solver(3)
                .solve(
                        (s, out) -> {
                            out[0] = -0.04 * s[0] + 1e4 * s[1] * s[2] + feed;
                            out[1] = 0.04 * s[0] - 1e4 * s[1] * s[2] - 3e7 * s[1] * s[1];
                            out[2] = 3e7 * s[1] * s[1] - feed * s[2];
                        },
                        y,
                        1.0);
        assertThat(found).isTrue();
        // at rest: feed = 3e7 y2^2 = feed y3, so y3 = 1
        double second = Math.sqrt(feed / 3e7);
        assertThat(y[2]).isCloseTo(1.0, within(1e-8));
        assertThat(y[1]).isCloseTo(second, within(1e-8));
        assertThat(y[0]).isCloseTo((1e4 * second + feed) / 0.04, within(1e-6));
    }

    @Test
    void kinksDoNotStopIt() {
        double[] y = {300.0};
        boolean found = solver(1)
                .solve(
                        (s, out) ->
                                out[0] = (30.0 - (s[0] - 20.0) * (1.0 + (s[0] > 90.0 ? (s[0] - 90.0) : 0.0))) / 50.0,
                        y,
                        10.0);
        assertThat(found).isTrue();
        assertThat(y[0]).isCloseTo(50.0, within(1e-8));
    }

    /** Steep between -1 and 1, flat outside: from 2 a full step lands as far on the other side, and so back. */
    @Test
    void kinksAreNotJumpedToAndFro() {
        double[] y = {2.0};
        PseudoTransient solver = solver(1);
        boolean found = solver.solve(
                (s, out) -> {
                    double inside = Math.max(-1.0, Math.min(1.0, s[0]));
                    out[0] = -5.0 * inside - 0.1 * (s[0] - inside);
                },
                y,
                20.0);
        assertThat(found).isTrue();
        assertThat(y[0]).isCloseTo(0.0, within(1e-8));
        assertThat(solver.evaluations()).isLessThan(40);
    }

    /** From 2 the slope leads ever further out (Newton on the arc tangent). */
    @Test
    void newtonsWayGivesUpSoonAndShorterStepsGetThere() {
        PseudoTransient solver = solver(1);
        PseudoTransient.Rates away = (s, out) -> out[0] = -Math.atan(s[0]) - 1e-3 * s[0];
        double[] y = {200.0};
        solver.solve(away, y, Double.POSITIVE_INFINITY);
        assertThat(solver.evaluations()).isLessThan(30);
        assertThat(solver.solve(away, y, 1.0)).isTrue();
        assertThat(y[0]).isCloseTo(0.0, within(1e-8));
    }

    @Test
    void aCloseStartIsNewton() {
        double[] y = {2.0, 3.0};
        PseudoTransient solver = solver(2);
        boolean found = solver.solve(
                (s, out) -> {
                    out[0] = 4.0 - s[0] * s[0];
                    out[1] = s[0] - s[1];
                },
                y,
                Double.POSITIVE_INFINITY);
        assertThat(found).isTrue();
        assertThat(y[1]).isCloseTo(2.0, within(1e-9));
        assertThat(solver.evaluations()).isLessThan(20);
    }

    @Test
    void noRestIsSaid() {
        double[] y = {0.0};
        assertThat(solver(1).solve((s, out) -> out[0] = 1.0, y, 10.0)).isFalse();
    }
}
