package hotday.core.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.core.solve.PriorSearch.Start;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

class PriorSearchTest {
    private static final List<Parameter> PARAMETERS =
            List.of(Parameter.around("a", 1, 2), Parameter.free("fixed", 5), Parameter.around("b", -3, 0.5));

    private static final class Bowl implements Residuals {
        @Override
        public int size() {
            return 1;
        }

        @Override
        public void residuals(double[] p, double[] out) {
            out[0] = p[0] > 4 ? Double.NaN : 3 * (p[0] - 2) + p[2];
        }
    }

    private static List<Start> search(int draws, int keep, long seed, int threads) {
        return PriorSearch.best(Bowl::new, PARAMETERS, draws, keep, seed, threads, () -> false);
    }

    @Test
    void sameSeedSameStartsForAnyNumberOfThreads() {
        List<Start> one = search(200, 5, 42, 1);
        for (int threads : new int[] {2, 7}) {
            List<Start> more = search(200, 5, 42, threads);
            for (int i = 0; i < one.size(); i++) {
                assertThat(more.get(i).parameters()).containsExactly(one.get(i).parameters());
                assertThat(more.get(i).cost()).isEqualTo(one.get(i).cost());
                assertThat(more.get(i).draw()).isEqualTo(one.get(i).draw());
            }
        }
        assertThat(search(200, 1, 43, 1).get(0).cost()).isNotEqualTo(one.get(0).cost());
    }

    @Test
    void bestFirstAndNeverWorseThanTheStart() {
        List<Start> found = search(200, 200, 1, 2);
        assertThat(found).isSortedAccordingTo((a, b) -> Double.compare(a.cost(), b.cost()));
        assertThat(found).anyMatch(s -> s.draw() == 0);
        assertThat(found).allMatch(s -> s.parameters()[1] == 5 && s.parameters()[0] <= 4);
        assertThat(search(1, 3, 1, 4)).singleElement().satisfies(s -> {
            assertThat(s.parameters()).containsExactly(1, 5, -3);
            assertThat(s.cost()).isEqualTo(36);
        });
    }

    @Test
    void drawsFollowThePrior() {
        int n = 4000;
        double sum = 0;
        double squares = 0;
        for (int i = 1; i <= n; i++) {
            double v = PriorSearch.draw(PARAMETERS, 9, i)[0];
            sum += v;
            squares += (v - 1) * (v - 1);
        }
        // four standard errors
        assertThat(sum / n).isCloseTo(1, within(4 * 2 / Math.sqrt(n)));
        assertThat(Math.sqrt(squares / n)).isCloseTo(2, within(4 * 2 / Math.sqrt(2.0 * n)));
    }

    @Test
    void aModelThatNeverAnswersGivesNoStart() {
        Supplier<Residuals> dead = () -> new Residuals() {
            @Override
            public int size() {
                return 1;
            }

            @Override
            public void residuals(double[] p, double[] out) {
                out[0] = Double.NaN;
            }
        };
        assertThat(PriorSearch.best(dead, PARAMETERS, 20, 3, 1, 2, () -> false)).isEmpty();
    }

    @Test
    void stopsWhenAsked() {
        AtomicInteger asked = new AtomicInteger();
        List<Start> found =
                PriorSearch.best(Bowl::new, PARAMETERS, 1000, 1000, 1, 1, () -> asked.incrementAndGet() > 10);
        assertThat(found.size()).isBetween(1, 10);
    }
}
