package hotday.core.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hotday.core.solve.Bracket.Root;
import hotday.core.solve.Bracket.Status;
import org.junit.jupiter.api.Test;

class BracketTest {
    private static final double TOLERANCE = 1e-12;

    @Test
    void findsClosedFormRoots() {
        assertThat(Bracket.root(x -> x * x - 2, 0, 2, TOLERANCE, 100).value())
                .isCloseTo(Math.sqrt(2), within(2 * TOLERANCE));
        assertThat(Bracket.root(x -> Math.exp(-x) - 0.5, 0, 50, TOLERANCE, 100).value())
                .isCloseTo(Math.log(2), within(2 * TOLERANCE));
        // flat on one side, steep on the other: plain secants crawl here
        Root ninth = Bracket.root(x -> Math.pow(x, 9), -1, 1.5, TOLERANCE, 200);
        assertThat(ninth.status()).isEqualTo(Status.FOUND);
        assertThat(Math.abs(ninth.value())).isLessThan(0.05);
    }

    @Test
    void findsTheJump() {
        Root jump = Bracket.root(x -> x < 0.3 ? -1 : 1, 0, 1, 1e-9, 200);
        assertThat(jump.found()).isTrue();
        assertThat(jump.value()).isCloseTo(0.3, within(2e-9));
    }

    @Test
    void endsCount() {
        assertThat(Bracket.root(x -> x, 0, 1, TOLERANCE, 10)).isEqualTo(new Root(0, 0, 2, Status.FOUND));
        assertThat(Bracket.root(x -> x - 1, 0, 1, TOLERANCE, 10)).isEqualTo(new Root(1, 0, 2, Status.FOUND));
    }

    @Test
    void noSignChangeIsAStatus() {
        assertThat(Bracket.root(x -> x + 1, 0, 1, TOLERANCE, 10)).isEqualTo(new Root(0, 1, 2, Status.ABOVE));
        assertThat(Bracket.root(x -> x - 5, 0, 1, TOLERANCE, 10)).isEqualTo(new Root(1, -4, 2, Status.BELOW));
    }

    @Test
    void notFiniteIsAStatus() {
        assertThat(Bracket.root(x -> Double.NaN, 0, 1, TOLERANCE, 10).status()).isEqualTo(Status.NOT_FINITE);
        Root inside = Bracket.root(x -> x == 0 ? -1 : x == 1 ? 1 : Double.NaN, 0, 1, TOLERANCE, 10);
        assertThat(inside.status()).isEqualTo(Status.NOT_FINITE);
        assertThat(inside.value()).isZero();
    }

    @Test
    void runningOutIsAStatus() {
        Root root = Bracket.root(x -> Math.cbrt(x - 0.123), -10, 1, 1e-15, 4);
        assertThat(root.status()).isEqualTo(Status.SPENT);
        assertThat(root.value()).isEqualTo(1);
    }

    @Test
    void aBracketHasTwoEnds() {
        assertThatThrownBy(() -> Bracket.root(x -> x, 1, 0, TOLERANCE, 10)).hasMessageContaining("1.0..0.0");
    }
}
