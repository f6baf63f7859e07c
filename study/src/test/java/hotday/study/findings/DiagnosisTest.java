package hotday.study.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;

/** On made clouds: three features, two of which go together in sound cars. */
class DiagnosisTest {
    private static final List<Feature> FEATURES = List.of(
            new Feature(Signal.COOLANT, Stat.MEAN, Window.ROAD, 0.0, 0.1),
            new Feature(Signal.COOLANT, Stat.MEAN, Window.CLIMB, 0.0, 0.1),
            new Feature(Signal.CURRENT, Stat.MEAN, Window.IDLE_FULL, 0.0, 0.1));

    private static double[][] sound() {
        Well19937c random = new Well19937c(7);
        double[][] cars = new double[60][];
        for (int i = 0; i < cars.length; i++) {
            double both = 3.0 * random.nextGaussian();
            cars[i] = new double[] {
                360.0 + both + 0.2 * random.nextGaussian(),
                370.0 + both + 0.2 * random.nextGaussian(),
                40.0 + random.nextGaussian()
            };
        }
        return cars;
    }

    /** One fault raises the second temperature by 3 K, the other stops the current. */
    private static Map<FaultKind, double[][]> faulty(double[][] sound) {
        double[][] warm = new double[Ensemble.WITH_FAULT][];
        double[][] dead = new double[Ensemble.WITH_FAULT][];
        for (int i = 0; i < warm.length; i++) {
            double[] sibling = sound[Ensemble.sibling(i)];
            warm[i] = new double[] {sibling[0], sibling[1] + 2.0 + 0.5 * i, sibling[2]};
            dead[i] = new double[] {sibling[0], sibling[1], 0.0};
        }
        Map<FaultKind, double[][]> all = new EnumMap<>(FaultKind.class);
        all.put(FaultKind.FLAPS_CLOSED, warm);
        all.put(FaultKind.FAN_DEAD, dead);
        return all;
    }

    private static Diagnosis of(double... run) {
        double[][] sound = sound();
        return new Diagnosis(FEATURES, run, sound, faulty(sound));
    }

    @Test
    void whatGoesTogetherCountsTogether() {
        assertThat(of(363.0, 373.0, 40.0).verdicts()).allMatch(v -> v.logOdds() < 0.0);
        Diagnosis apart = of(360.0, 373.0, 40.0);
        assertThat(apart.verdicts().get(0).kind()).isEqualTo(FaultKind.FLAPS_CLOSED);
        assertThat(apart.verdicts().get(0).logOdds()).isGreaterThan(2.0);
        assertThat(apart.evidence(FaultKind.FLAPS_CLOSED, 1)).containsExactly(1);
        assertThat(apart.nearest()).isLessThan(3.0);
    }

    @Test
    void aFaultFarAwayIsNamedAndWhatIsLikeNothingIsSaid() {
        Diagnosis dead = of(360.0, 370.0, 0.1);
        assertThat(dead.verdicts().get(0).kind()).isEqualTo(FaultKind.FAN_DEAD);
        assertThat(dead.verdicts().get(0).share()).isGreaterThan(0.95);
        assertThat(dead.distance(FaultKind.FAN_DEAD)).isGreaterThan(dead.distance(FaultKind.FLAPS_CLOSED));
        assertThat(of(340.0, 390.0, 90.0).nearest()).isGreaterThan(3.0);
    }

    @Test
    void whatWasNotMeasuredIsLeftOut() {
        Diagnosis without = of(360.0, 373.0, Double.NaN);
        assertThat(without.size()).isEqualTo(2);
        assertThat(without.verdicts().get(0).kind()).isEqualTo(FaultKind.FLAPS_CLOSED);
        assertThat(without.distance(FaultKind.FAN_DEAD)).isCloseTo(0.0, within(1e-9));
    }

    @Test
    void sharesAddUpToLessThanOne() {
        double sum = of(361.0, 372.0, 30.0).verdicts().stream()
                .mapToDouble(Diagnosis.Verdict::share)
                .sum();
        assertThat(sum).isBetween(0.0, 1.0);
    }
}
