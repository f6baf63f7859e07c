package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.signals.channel.Fact;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One heater habit for all runs whose heater nobody recorded. */
class HeaterHabitTest {
    private static RunData run(double degC, Fact heater) {
        return MadeRun.run(new double[] {300, 310, 320}, 273.15 + degC, Fact.OFF, heater, Fact.OFF);
    }

    @Test
    void onInTheColdOffInTheWarmWithoutAStep() {
        assertThat(HeaterHabit.setting(273.15 - 10.0)).isEqualTo(1.0);
        assertThat(HeaterHabit.setting(273.15 + 14.0)).isCloseTo(0.5, within(1e-9));
        assertThat(HeaterHabit.setting(273.15 + 25.0)).isZero();
    }

    @Test
    void onlyAnUnknownHeaterInColdWeatherShowsWhatAHeaterTakes() {
        assertThat(HeaterHabit.shownBy(List.of(run(23, Fact.UNKNOWN), run(2, Fact.OFF))))
                .isFalse();
        assertThat(HeaterHabit.shownBy(List.of(run(23, Fact.OFF), run(2, Fact.UNKNOWN))))
                .isTrue();
        assertThat(HeaterHabit.rules(run(2, Fact.OFF), true)).isFalse();
        assertThat(HeaterHabit.rules(run(2, Fact.UNKNOWN), false)).isFalse();
    }

    @Test
    void aSettingIsNeverQuiteSure() {
        assertThat(HeaterHabit.doubted(1.0, 0.0)).isCloseTo(0.97, within(1e-9));
        assertThat(HeaterHabit.doubted(0.5, 0.0)).isCloseTo(0.5, within(1e-9));
        assertThat(HeaterHabit.doubted(0.0, 2.0)).isBetween(0.1, 0.25);
    }
}
