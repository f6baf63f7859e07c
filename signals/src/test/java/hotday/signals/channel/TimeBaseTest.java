package hotday.signals.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeBaseTest {
    private static final double NOTHING = 1e-9; // s, rounding of sums

    private final List<Finding> findings = new ArrayList<>();

    private double[] unify(boolean clock, double... time) {
        int[] lines = new int[time.length];
        for (int i = 0; i < lines.length; i++) {
            lines[i] = i + 2;
        }
        TimeBase.unify("log.csv", 1, time, lines, clock, findings);
        for (int i = 1; i < time.length; i++) {
            assertThat(time[i]).isGreaterThan(time[i - 1]);
        }
        return time;
    }

    private List<String> found() {
        return findings.stream().map(Logged::at).toList();
    }

    @Test
    void aGoodColumnStaysAsItIs() {
        assertThat(unify(false, -10, -9.9, -9.8, -9.7)).containsExactly(-10, -9.9, -9.8, -9.7);
        assertThat(found()).isEmpty();
    }

    /** Two, three or four rows a whole second, as loggers of engine run time write them. */
    @Test
    void equalStampsAreSpreadUpToTheNext() {
        assertThat(unify(false, 0, 0, 1, 1, 1, 3, 3, 3, 3, 5))
                .containsExactly(
                        new double[] {0, 0.5, 1, 1 + 2 / 3.0, 1 + 4 / 3.0, 3, 3.5, 4, 4.5, 5}, within(NOTHING));
        assertThat(findings.get(0).values()).containsEntry("rows", 6);
    }

    @Test
    void equalStampsBeforeAPauseStayTogether() {
        double[] time = unify(false, 0, 1, 2, 3, 4, 4, 604, 605, 606);
        assertThat(time[5]).isBetween(4.0, 9.0);
        assertThat(found()).containsExactly("time-stamps-equal@0:0", "recording-gaps@8:1");
        assertThat(findings.get(1).values()).containsEntry("gaps", 1).containsKey("longest_s");
    }

    @Test
    void equalStampsAtTheEnd() {
        assertThat(unify(false, 0, 1, 2, 2)).containsExactly(0, 1, 2, 2.5);
        assertThat(unify(false, 7, 7, 7)[2]).isLessThan(8);
    }

    /** A clock set right by 0.4 s in the run, as two of the open road trips have it. */
    @Test
    void aSmallSlipBackIsSpread() {
        double[] time = unify(false, 10.0, 10.1, 10.2, 9.8, 9.9, 10.0, 10.1, 10.2, 10.3, 10.4);
        assertThat(time[2]).isEqualTo(10.2);
        assertThat(time[8]).isEqualTo(10.3);
        assertThat(found()).contains("time-slips@5:1");
        assertThat(findings.get(findings.size() - 1).values()).containsEntry("largest_s", 0.4);
    }

    @Test
    void aJumpBackIsAFault() {
        InputException wrong =
                catchThrowableOfType(InputException.class, () -> unify(false, 0, 1, 199, 20, 21, 22, 5, 6));
        Finding fault = wrong.findings().get(0);
        assertThat(Logged.at(fault)).isEqualTo("time-backwards@5:1");
        assertThat(fault.values()).containsEntry("back_s", 179.0).containsEntry("jumps", 2);
        assertThat(fault.message()).contains("199.0 s", "20.0 s", "179.0 s");
    }

    @Test
    void midnightIsNoJumpOnAClockOnly() {
        assertThat(unify(true, 86398, 86399, 0, 1)).containsExactly(0, 1, 2, 3);
        assertThat(catchThrowableOfType(InputException.class, () -> unify(false, 86398, 86399, 0, 1)))
                .isNotNull();
        assertThat(catchThrowableOfType(InputException.class, () -> unify(true, 40000, 40001, 39000)))
                .isNotNull();
    }

    @Test
    void stampsThatCountFromAnEpochBeginAtZero() {
        assertThat(unify(false, 1.7e9, 1.7e9 + 1, 1.7e9 + 2.5)).containsExactly(0, 1, 2.5);
    }

    @ParameterizedTest
    @CsvSource({
        "00:00:00, 0",
        "07:03:59.524, 25439.524",
        "23:59:59, 86399",
        "7:03:59, 25439",
        "'07:03:59,5', 25439.5",
        "12:00:00 AM, 0",
        "1:00:00 pm, 46800",
        "1970-01-02 00:00:01, 86401",
        "1970-01-02T00:00:01.5Z, 86401.5",
        "1970/01/02 01:00:00 AM, 90000",
        "24:00:00, NaN",
        "12:60:00, NaN",
        "12:30, NaN",
        "13:00:00 PM, NaN",
        "2023-13-01 00:00:00, NaN",
        "noon, NaN",
        "'', NaN",
    })
    void clocks(String cell, double seconds) {
        assertThat(Clock.seconds(cell)).isCloseTo(Double.valueOf(seconds), within(NOTHING));
    }

    @Test
    void whateverIsNotRefusedRises() {
        Random random = new Random(11);
        for (int run = 0; run < 300; run++) {
            double[] time = new double[2 + random.nextInt(200)];
            for (int i = 1; i < time.length; i++) {
                double step = random.nextInt(3) == 0 ? 0.0 : random.nextDouble();
                time[i] = time[i - 1] + (random.nextInt(20) == 0 ? -0.9 * random.nextDouble() : step);
            }
            double first = time[0];
            assertThat(unify(false, time)[0]).isEqualTo(first);
        }
    }
}
