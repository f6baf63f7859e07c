package hotday.signals.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Severity;
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
        TimeBase.unify("log.csv", 1, time, lines, clock, clock ? Clock::shown : Shown::stamp, findings);
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
        assertThat(fault.message()).contains("from 199.0 to 20.0, by 179.0 s", "2 times", "Cut the file at this line");
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
        "05:12.5, 312.5",
        "'120:00,25', 7200.25",
        "05:60.5, NaN",
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

    @ParameterizedTest
    @CsvSource({
        "2024-03-05T10:00:00+01:00, 2024-03-05 09:00:00",
        "2024-03-05T10:00:00.5-0530, 2024-03-05 15:30:00.5",
        "2024-03-05 10:00:00 UTC, 2024-03-05 10:00:00",
        "5.3.2024 10:00:00, 2024-03-05 10:00:00",
        "05.03.2024 10:00:00 PM, 2024-03-05 22:00:00",
    })
    void clocksWithDateAndZone(String cell, String inGreenwich) {
        assertThat(Clock.shown(Clock.seconds(cell))).isEqualTo(inGreenwich);
    }

    /** 03/05 is a day of March or of May: what is left is the time of day. */
    @Test
    void aDateThatCouldBeTwoIsNotBelieved() {
        assertThat(Clock.seconds("03/05/2024 23:59:59")).isEqualTo(86399);
        assertThat(unify(true, Clock.seconds("03/05/2024 23:59:59"), Clock.seconds("03/06/2024 00:00:01")))
                .containsExactly(0, 2);
    }

    /** Of two recordings pasted in the wrong order none is a day later. */
    @Test
    void aDateThatStepsBackADayIsNoMidnight() {
        double noon = Clock.seconds("2024-01-11 18:00:00");
        InputException wrong = catchThrowableOfType(
                InputException.class, () -> unify(true, noon, noon + 1, noon - Clock.DAY + 5, noon - Clock.DAY + 6));
        assertThat(wrong.findings().get(0).message())
                .contains("from 2024-01-11 18:00:01 to 2024-01-10 18:00:05, by 86396.0 s");
    }

    @Test
    void aClockThatNeverMovesIsNoTime() {
        InputException wrong = catchThrowableOfType(InputException.class, () -> unify(false, new double[11]));
        assertThat(Logged.at(wrong.findings().get(0))).isEqualTo("time-stands@2:1");
        assertThat(unify(false, new double[10])).isSorted();
    }

    @Test
    void aClockThatRunsBackwardsSecondBySecondIsAFault() {
        InputException wrong =
                catchThrowableOfType(InputException.class, () -> unify(true, 36003, 36002, 36001, 36000, 35999));
        Finding fault = wrong.findings().get(0);
        assertThat(Logged.at(fault)).isEqualTo("time-backwards@3:1");
        assertThat(fault.message())
                .contains(
                        "from 10:00:03 over 10:00:02 down to 09:59:59 in line 6, by 4.0 s", "newest row stands first");
    }

    @Test
    void aClockThatFallsLittleByLittleIsAFault() {
        InputException wrong = catchThrowableOfType(
                InputException.class, () -> unify(false, 0, 1, 2, 3, 4, 3.99, 3.98, 3.97, 3.96, 3.97, 4.5, 5));
        assertThat(Logged.at(wrong.findings().get(0))).isEqualTo("time-backwards@7:1");
        assertThat(wrong.findings().get(0).values())
                .containsEntry("back_s", 0.04)
                .containsEntry("rows", 4)
                .containsEntry("before", "4.0")
                .containsEntry("after", "3.99");
    }

    /** Each step back is small and none is caught up. */
    @Test
    void slipsThatAddUpAreAFault() {
        InputException wrong =
                catchThrowableOfType(InputException.class, () -> unify(false, 0, 5, 4.4, 4.5, 3.9, 4.0, 6, 7));
        assertThat(Logged.at(wrong.findings().get(0))).isEqualTo("time-backwards@4:1");
        assertThat(wrong.findings().get(0).values()).containsEntry("back_s", 1.1);
    }

    @Test
    void manyRowsOutOfOrderAreAWarning() {
        double[] time = new double[100];
        for (int i = 0; i < time.length; i++) {
            time[i] = i - (i % 10 == 9 ? 1.5 : 0.0);
        }
        unify(false, time);
        assertThat(found()).containsExactly("time-slips@11:1");
        assertThat(findings.get(0).severity()).isEqualTo(Severity.WARNING);
    }

    /** Rates, lengths and starts at random; slips are a second at most, and at most three rows fall one after the other. */
    @Test
    void recordingsWithSmallSlipsAreReadAndRise() {
        Random random = new Random(11);
        for (int run = 0; run < 500; run++) {
            double[] time = rising(random);
            int at = 5;
            while (at < time.length) {
                at = slip(random, time, at) + 2 + random.nextInt(40);
            }
            double first = time[0];
            assertThat(unify(false, time)[0]).as("run %d", run).isEqualTo(first);
        }
    }

    /** In the same recordings one stretch runs backwards, from a row that the fault must name. */
    @Test
    void aStretchBackwardsIsRefusedWhereItBegins() {
        Random random = new Random(12);
        for (int run = 0; run < 500; run++) {
            double[] time = rising(random);
            int from = 1 + random.nextInt(time.length - 10);
            int rows = 4 + random.nextInt(time.length - from - 4);
            double step = random.nextBoolean() ? time[from] - time[from - 1] : 0.001 + random.nextDouble();
            for (int i = from; i < time.length; i++) {
                time[i] = time[i - 1] + (i < from + rows ? -step : step);
            }
            double[] before = time.clone();
            InputException wrong = catchThrowableOfType(InputException.class, () -> unify(false, time));
            assertThat(wrong).as("run %d", run).isNotNull();
            Finding fault = wrong.findings().get(0);
            assertThat(Logged.at(fault)).as("run %d", run).isEqualTo("time-backwards@" + (from + 2) + ":1");
            assertThat(fault.values())
                    .containsEntry("rows", rows)
                    .containsEntry("before", Shown.stamp(before[from - 1]))
                    .containsEntry("after", Shown.stamp(before[from]));
        }
    }

    private static double[] rising(Random random) {
        double[] time = new double[20 + random.nextInt(200)];
        double step = Math.pow(10.0, -2.0 + 2.0 * random.nextDouble());
        time[0] = random.nextInt(1000);
        for (int i = 1; i < time.length; i++) {
            time[i] = time[i - 1] + step * (0.8 + 0.4 * random.nextDouble());
        }
        return time;
    }

    /** A clock set right, two rows out of order, or two with one stamp; the answer is the last row that it moved. */
    private static int slip(Random random, double[] time, int at) {
        double earlier = time[at - 1];
        switch (random.nextInt(3)) {
            case 0 -> {
                double shift = time[at] - earlier + random.nextDouble();
                int i = at;
                for (; i < time.length && time[i] - shift < earlier; i++) {
                    time[i] -= shift;
                }
                return i;
            }
            case 1 -> {
                boolean near = time[at] - earlier <= 1.0;
                time[at - 1] = near ? time[at] : earlier;
                time[at] = near ? earlier : time[at];
            }
            default -> time[at] = earlier;
        }
        return at;
    }
}
