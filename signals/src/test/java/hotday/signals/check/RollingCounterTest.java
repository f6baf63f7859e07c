package hotday.signals.check;

import static hotday.signals.check.CounterStep.FIRST;
import static hotday.signals.check.CounterStep.IMPOSSIBLE;
import static hotday.signals.check.CounterStep.NEXT;
import static hotday.signals.check.CounterStep.REPEATED;
import static hotday.signals.check.CounterStep.SKIPPED;
import static hotday.signals.check.CounterStep.STUCK;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class RollingCounterTest {
    @ParameterizedTest
    @ValueSource(ints = {RollingCounter.TO_14, RollingCounter.TO_15})
    void turnsOverAtItsHighestValue(int highest) {
        RollingCounter counter = new RollingCounter(highest, 3);
        assertThat(counter.take(highest - 1)).isEqualTo(FIRST);
        assertThat(counter.take(highest)).isEqualTo(NEXT);
        assertThat(counter.take(0)).isEqualTo(NEXT);
        assertThat(counter.lost()).isZero();
    }

    @Test
    void fifteenIsImpossibleWhereTheCounterStopsAtFourteen() {
        RollingCounter counter = new RollingCounter(RollingCounter.TO_14, 3);
        assertThat(steps(counter, 13, 15, -1, 14, 0)).containsExactly(FIRST, IMPOSSIBLE, IMPOSSIBLE, NEXT, NEXT);
        assertThat(steps(new RollingCounter(RollingCounter.TO_15, 3), 14, 15, 0))
                .containsExactly(FIRST, NEXT, NEXT);
    }

    @Test
    void countsWhatIsMissing() {
        RollingCounter counter = new RollingCounter(RollingCounter.TO_14, 3);
        assertThat(steps(counter, 12, 14, 2)).containsExactly(FIRST, SKIPPED, SKIPPED);
        assertThat(counter.lost()).isEqualTo(1 + 2);
    }

    @Test
    void stuckAfterSoManyRepetitionsInARow() {
        RollingCounter counter = new RollingCounter(RollingCounter.TO_15, 3);
        assertThat(steps(counter, 4, 4, 4, 4, 4, 5, 5))
                .containsExactly(FIRST, REPEATED, REPEATED, STUCK, STUCK, NEXT, REPEATED);
        assertThat(counter.lost()).isZero();
    }

    @Test
    void startsAnew() {
        RollingCounter counter = new RollingCounter(RollingCounter.TO_15, 1);
        counter.take(3);
        counter.take(9);
        counter.restart();
        assertThat(counter.lost()).isZero();
        assertThat(counter.take(9)).isEqualTo(FIRST);
    }

    @Test
    void impossibleCountersAreRefused() {
        assertThatThrownBy(() -> new RollingCounter(0, 1)).hasMessageContaining("must be 1 to 65535");
        assertThatThrownBy(() -> new RollingCounter(15, 0)).hasMessageContaining("must be at least 1");
    }

    private static List<CounterStep> steps(RollingCounter counter, int... values) {
        return IntStream.of(values).mapToObj(counter::take).toList();
    }
}
