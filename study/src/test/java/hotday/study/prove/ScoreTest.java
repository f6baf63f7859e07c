package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.signals.channel.Fact;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Scores and the null model against sums done by hand. Rows lie 10 s apart, so the first (10 s) is not scored. */
class ScoreTest {
    private static final double NOT_MEASURED = Double.NaN;

    private static RunData measured(double... coolant) {
        return MadeRun.run(coolant, MadeRun.MILD, Fact.OFF, Fact.OFF, Fact.OFF);
    }

    @Test
    void isModelLessMeasuredFromTwentySecondsOn() {
        RunData run = measured(360, 360, 361, 362, 363);
        Score score = Score.of(run, new double[] {999, 361, 359, 362, 366});
        // 1, -2, 0, 3
        assertThat(score.samples()).isEqualTo(4);
        assertThat(score.bias()).isCloseTo(0.5, within(1e-12));
        assertThat(score.rmse()).isCloseTo(Math.sqrt(14.0 / 4.0), within(1e-12));
        assertThat(score.maxError()).isEqualTo(3.0);
    }

    @Test
    void leavesOutWhatWasNotMeasured() {
        RunData run = measured(360, NOT_MEASURED, 360, NOT_MEASURED, 360);
        Score score = Score.of(run, new double[] {360, 0, 362, 0, 362});
        assertThat(score.samples()).isEqualTo(2);
        assertThat(score.rmse()).isEqualTo(2.0);
    }

    @Test
    void ofNothingIsNotANumberRatherThanZero() {
        RunData run = measured(NOT_MEASURED, NOT_MEASURED);
        Score score = Score.of(run, new double[] {360, 360});
        assertThat(score.samples()).isZero();
        assertThat(score.rmse()).isNaN();
        assertThat(Score.pooled(List.of(score)).rmse()).isNaN();
        assertThat(Score.pooled(List.of()).samples()).isZero();
    }

    @Test
    void pooledCountsSamplesNotRuns() {
        RunData longer = measured(0, 360, 360, 360);
        RunData shorter = measured(0, 360);
        Score pooled = Score.pooled(
                List.of(Score.of(longer, new double[] {0, 361, 361, 361}), Score.of(shorter, new double[] {0, 355})));
        assertThat(pooled.samples()).isEqualTo(4);
        assertThat(pooled.bias()).isCloseTo(-0.5, within(1e-12)); // (3 - 5) / 4
        assertThat(pooled.rmse()).isCloseTo(Math.sqrt(28.0 / 4.0), within(1e-12));
        assertThat(pooled.maxError()).isEqualTo(5.0);
    }

    @Test
    void pooledOverPiecesIsTheScoreOfTheWhole() {
        SplittableRandom random = new SplittableRandom(3);
        for (int trial = 0; trial < 50; trial++) {
            double[] coolant = random.doubles(40, 340, 380).toArray();
            double[] trace = random.doubles(40, 340, 380).toArray();
            Score whole = Score.of(measured(coolant), trace);
            double[] first = coolant.clone();
            double[] second = coolant.clone();
            int cut = random.nextInt(2, 39);
            Arrays.fill(first, cut, 40, NOT_MEASURED);
            Arrays.fill(second, 0, cut, NOT_MEASURED);
            Score pooled = Score.pooled(List.of(Score.of(measured(first), trace), Score.of(measured(second), trace)));
            assertThat(pooled.rmse()).isCloseTo(whole.rmse(), within(1e-9));
            assertThat(pooled.bias()).isCloseTo(whole.bias(), within(1e-9));
            assertThat(pooled.maxError()).isEqualTo(whole.maxError());
            assertThat(whole.rmse()).isGreaterThanOrEqualTo(Math.abs(whole.bias()));
        }
    }

    @Test
    void nullModelIsTheMeanOnceWarmOverAllFitRuns() {
        RunData first = measured(370, 300, 360, 364); // 10 s not scored, 300 K not warm
        RunData second = measured(300, 359);
        NullModel warm = NullModel.of(List.of(first, second));
        assertThat(warm.level()).isCloseTo((360.0 + 364.0 + 359.0) / 3.0, within(1e-12));
        assertThat(warm.score(measured(300, 361, 361)).rmse()).isCloseTo(0.0, within(1e-9));
        assertThat(warm.score(measured(300, 357, 365)).rmse()).isCloseTo(4.0, within(1e-9));
    }

    @Test
    void nullModelOfRunsThatNeverWarmedHasNothingToSay() {
        NullModel warm = NullModel.of(List.of(measured(300, 310, 320)));
        assertThat(warm.level()).isNaN();
        assertThat(warm.score(measured(300, 360)).rmse()).isNaN();
    }
}
