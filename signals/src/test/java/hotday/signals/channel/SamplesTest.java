package hotday.signals.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What becomes of samples: units, lag, floor, engine off, forward filling, spikes, sampling on a grid. */
class SamplesTest {
    private static final double NOTHING = 1e-9;

    @TempDir
    private Path folder;

    private static String log(int n, double step, java.util.function.IntToDoubleFunction value) {
        StringBuilder log = new StringBuilder("t [s],x\n");
        for (int i = 0; i < n; i++) {
            log.append(String.format(Locale.ROOT, "%.3f,%.4f%n", i * step, value.applyAsDouble(i)));
        }
        return log.toString();
    }

    private Recording read(String channel, String log) {
        return Logged.read(folder, "time: {column: \"t [s]\"}\nchannels:\n  " + channel + "\n", log);
    }

    private double first(String channel, String cell) {
        Recording run = read(channel, "t [s],x\n0," + cell + "\n1,1\n");
        return run.channels().get(0).values()[0];
    }

    @Test
    void unitsComeToSi() {
        assertThat(first("vehicle_speed: {column: x, unit: mph}", "60")).isCloseTo(26.8224, within(NOTHING));
        assertThat(first("oil_temperature: {column: x, unit: degF}", "212")).isCloseTo(373.15, within(NOTHING));
        assertThat(first("engine_speed: {column: x, unit: rpm}", "3000")).isCloseTo(100 * Math.PI, within(NOTHING));
        assertThat(first("throttle: {column: x, unit: \"%\"}", "50")).isEqualTo(0.5);
        assertThat(first("fan_demand: {column: x, unit: \"1\"}", "0.5")).isEqualTo(0.5);
        assertThat(first("fuel_flow: {column: x, unit: kg/h}", "3.6")).isCloseTo(0.001, within(NOTHING));
        assertThat(first("manifold_pressure: {column: x, unit: kPa}", "101")).isEqualTo(101_000);
    }

    @Test
    void switchesMayBeWords() {
        assertThat(first("compressor: {column: x, unit: \"%\"}", "On")).isEqualTo(1.0);
        assertThat(first("heater: {column: x, unit: \"1\"}", "false")).isEqualTo(0.0);
    }

    /** 16 psi on the gauge over a barometer of 83 kPa; 1 psi = 6894.757 Pa (NIST SP 811). */
    @Test
    void gaugePressureStandsOnTheBarometer() {
        Recording run = Logged.read(folder, """
                time: {column: t, unit: s}
                channels:
                  head_pressure: {column: p, unit: psig}
                  barometer: {column: b, unit: kPa}
                """, "t,p,b\n0,16,83\n1,16,\n2,20,84\n");
        assertThat(Logged.values(run, ModelChannel.HEAD_PRESSURE))
                .containsExactly(new double[] {193_316.1, 193_316.1, 221_895.1}, within(0.5));
        Recording alone = read("head_pressure: {column: x, unit: bar gauge}", "t [s],x\n0,1\n1,2\n");
        assertThat(Logged.values(alone, ModelChannel.HEAD_PRESSURE)[0]).isCloseTo(201_325, within(NOTHING));
        assertThat(Logged.keys(alone)).contains("gauge-on-standard-air");
    }

    @Test
    void lagIsUndoneOnTheGridAndSamplesStay() {
        Recording run = read("fuel_flow: {column: x, unit: g/s, lag: 1.5 s}", log(100, 0.1, i -> 0.01 * i));
        assertThat(Logged.values(run, ModelChannel.FUEL_FLOW)[10]).isCloseTo(1e-4, within(NOTHING));
        double[] grid = {-3, 0, 1, 5, 9, 9.5};
        for (Sampling sampling : Sampling.values()) {
            double[] out = run.sampled(ModelChannel.FUEL_FLOW, grid, sampling);
            assertThat(out[0]).isEqualTo(0.0);
            assertThat(out[5]).as("held after the end").isGreaterThan(9.4e-4);
        }
        assertThat(run.sampled(ModelChannel.FUEL_FLOW, grid, Sampling.LINEAR)[2])
                .isCloseTo(2.5e-4, within(NOTHING));
        assertThat(run.sampled(ModelChannel.FUEL_FLOW, grid, Sampling.HOLD)[2]).isCloseTo(2.5e-4, within(NOTHING));
    }

    @Test
    void samplingModes() {
        Recording run = read("throttle: {column: x, unit: \"1\"}", "t [s],x\n0,0.0\n1,0.4\n2,\n4,0.8\n5,0.2\n");
        double[] grid = {-1, 0, 1, 2, 3, 4, 6};
        assertThat(run.sampled(ModelChannel.THROTTLE, grid, Sampling.HOLD))
                .containsExactly(0, 0, 0.4, 0.4, 0.4, 0.8, 0.2);
        assertThat(run.sampled(ModelChannel.THROTTLE, grid, Sampling.LINEAR))
                .containsExactly(new double[] {0, 0, 0.4, 0.4 + 0.4 / 3, 0.4 + 0.8 / 3, 0.8, 0.2}, within(NOTHING));
        assertThat(run.sampled(ModelChannel.THROTTLE, new double[] {1.5, 5.5}, Sampling.MEAN))
                .containsExactly(new double[] {0.2, 0.5}, within(NOTHING));
    }

    /** The first interval is as long as the second: rows far before a late grid do not count into it. */
    @Test
    void meanDoesNotReachBackToTheStart() {
        Recording run = read("throttle: {column: x, unit: \"1\"}", log(100, 1, i -> i < 50 ? 0.0 : 1.0));
        assertThat(run.sampled(ModelChannel.THROTTLE, new double[] {60, 62}, Sampling.MEAN)[0])
                .isEqualTo(1.0);
    }

    @Test
    void constants() {
        Recording run = read(
                "throttle: {column: x, unit: \"1\"}\n  ambient_temperature: {constant: 22 degC}",
                log(20, 1, i -> 0.01 * i));
        Channel ambient = run.channel(ModelChannel.AMBIENT_TEMPERATURE).orElseThrow();
        assertThat(ambient.column()).isEqualTo(Channel.CONSTANT);
        assertThat(run.sampled(ModelChannel.AMBIENT_TEMPERATURE, new double[] {0, 7}, Sampling.LINEAR))
                .containsExactly(295.15, 295.15);
        assertThat(Logged.keys(run)).doesNotContain("channel-constant");
        assertThatThrownBy(() -> run.sampled(ModelChannel.GRADE, new double[] {0}, Sampling.HOLD))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("grade");
    }

    @Test
    void floorMovesAndCounts() {
        Recording run = read(
                "fuel_flow: {column: x, unit: g/s, floor: 0 g/s}", "t [s],x\n0,-0.03\n1,0.5\n2,-0.01\n3,-16\n4,0.6\n");
        Channel fuel = run.channel(ModelChannel.FUEL_FLOW).orElseThrow();
        assertThat(fuel.values()).containsExactly(0.0, 5e-4, 0.0, Double.NaN, 6e-4);
        assertThat(Logged.finding(run, "samples-clipped").values()).containsEntry("samples", 2);
        assertThat(Logged.finding(run, "samples-out-of-range").values()).containsEntry("samples", 1);
    }

    /** The engine stops at 5 s; the fuel signal is 2 s late, so that its samples from 7 s on tell of a standing engine. */
    @Test
    void fuelEndsWithTheEngine() {
        StringBuilder log = new StringBuilder("t,n,f\n");
        for (int i = 0; i < 12; i++) {
            log.append(i).append(i < 5 ? ",800," : ",0,").append(i < 10 ? "0.4\n" : "0.1\n");
        }
        Recording run = Logged.read(folder, """
                time: {column: t, unit: s}
                channels:
                  engine_speed: {column: n, unit: rpm}
                  fuel_flow: {column: f, unit: g/s, lag: 2 s, engine_off: 0 g/s}
                """, log.toString());
        Channel fuel = run.channel(ModelChannel.FUEL_FLOW).orElseThrow();
        assertThat(fuel.values()[6]).isCloseTo(4e-4, within(NOTHING));
        assertThat(fuel.values()[7]).isEqualTo(0.0);
        assertThat(fuel.count(Channel.ENGINE_OFF)).isEqualTo(5);
        assertThat(run.sampled(ModelChannel.FUEL_FLOW, new double[] {4, 5}, Sampling.HOLD)[1])
                .isEqualTo(0.0);
    }

    /** Four columns asked for in turn; the file repeats the other three. */
    @Test
    void filledForwardFilesKeepTheirRealSamples() {
        int rows = 400;
        Random random = new Random(5);
        double[][] truth = new double[4][rows];
        StringBuilder log = new StringBuilder("t,a,b,c,d\n");
        double[] last = {800, 20, 30, 40};
        for (int i = 0; i < rows; i++) {
            int asked = i % 4;
            last[asked] += random.nextInt(3) - 1;
            log.append(String.format(Locale.ROOT, "%.1f", 0.1 * i));
            for (int c = 0; c < 4; c++) {
                truth[c][i] = last[c];
                log.append(',').append(c <= i ? String.valueOf(last[c]) : "");
            }
            log.append('\n');
        }
        Recording run = Logged.read(folder, """
                time: {column: t, unit: s}
                channels:
                  engine_speed: {column: a, unit: rpm}
                  coolant_temperature: {column: b, unit: degC}
                  oil_temperature: {column: c, unit: degC}
                  intake_temperature: {column: d, unit: degC}
                """, log.toString());
        assertThat(Logged.keys(run)).contains("filled-forward");
        Channel oil = run.channel(ModelChannel.OIL_TEMPERATURE).orElseThrow();
        for (int i = 4; i < rows; i++) {
            assertThat(oil.good(i)).as("row %d", i).isEqualTo(i % 4 == 2);
            assertThat(oil.values()[i]).isCloseTo(truth[2][i] + 273.15, within(NOTHING));
        }
    }

    @Test
    void filesThatFillWholeRowsAreNotTakenForFilledForward() {
        Random random = new Random(6);
        StringBuilder log = new StringBuilder(Logged.HEADER);
        for (int i = 0; i < 400; i++) {
            log.append(i).append(',').append(random.nextInt(3)).append(',');
            log.append(800 + random.nextInt(3))
                    .append(',')
                    .append(80 + random.nextInt(2))
                    .append('\n');
        }
        Recording run = Logged.read(folder, Logged.MAP, log.toString());
        assertThat(run.channels()).allMatch(c -> c.count(Channel.HELD) == 0);
    }

    @Test
    void spikesGoAndStepsStay() {
        String spike = "intake_temperature: {column: x, unit: degC}";
        Recording run = read(spike, log(60, 1, i -> i == 20 || i == 21 ? 75 : i == 40 ? -20 : i < 30 ? 20 : 45));
        Channel intake = run.channel(ModelChannel.INTAKE_TEMPERATURE).orElseThrow();
        assertThat(intake.count(Channel.SPIKE)).isEqualTo(3);
        assertThat(new boolean[] {intake.good(20), intake.good(21), intake.good(40), intake.good(30)})
                .containsExactly(false, false, false, true);
        assertThat(Logged.finding(run, "samples-spike").values()).containsEntry("samples", 3);
    }

    /** Where samples are rare nothing tells a glitch from a change. */
    @Test
    void rareSamplesAreNotJudged() {
        Recording run = read("intake_temperature: {column: x, unit: degC}", log(60, 6, i -> i == 20 ? 60 : 20));
        assertThat(run.channels().get(0).count(Channel.SPIKE)).isZero();
    }

    /** A slug of cold coolant reads 20 K lower for some seconds at 10 Hz: that is no spike. */
    @Test
    void aColdSlugIsNoSpike() {
        Recording run =
                read("coolant_temperature: {column: x, unit: degC}", log(300, 0.1, i -> i > 50 && i < 100 ? 70 : 90));
        assertThat(run.channels().get(0).count(Channel.SPIKE)).isZero();
    }

    @Test
    void resolutionIsFoundWhereItShows() {
        assertThat(read("oil_temperature: {column: x, unit: degF}", log(99, 1, i -> 200 + 9 * (i % 5)))
                        .channels()
                        .get(0)
                        .resolution())
                .isCloseTo(5.0, within(1e-6));
        assertThat(read("oil_temperature: {column: x, unit: degC}", log(99, 1, i -> 90 + Math.sin(i)))
                        .channels()
                        .get(0)
                        .resolution())
                .isLessThan(1e-3);
        assertThat(read("oil_temperature: {column: x, unit: degC, resolution: 0.5 K}", log(99, 1, i -> 90 + i % 3))
                        .channels()
                        .get(0)
                        .resolution())
                .isEqualTo(0.5);
    }

    @Test
    void degreeSignsInEveryStateOfRepair() {
        for (String degree : new String[] {"°", "\u00C2°", "º", "\uFFFD", "\u00C2\u00C2°"}) {
            String log = "t [s],coolant [" + degree + "C]\n0,20\n1,21\n";
            String map = "time: {column: \"t [s]\"}\nchannels:\n  coolant_temperature: {column: \"Coolant [°C]\"}\n";
            assertThat(Logged.values(Logged.read(folder, map, log), ModelChannel.COOLANT_TEMPERATURE))
                    .as(degree)
                    .containsExactly(293.15, 294.15);
        }
    }

    /** Whatever a file holds: every sample is either a value or says why it is none, and counts add up. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void everySampleIsAccountedFor(long seed) {
        Random random = new Random(seed);
        String[] cells = {"", "-", "ERR", "999", "-300", "20", "21.5", "88", "90", " 91 "};
        for (int run = 0; run < 25; run++) {
            StringBuilder log = new StringBuilder(Logged.HEADER + "0,1,800,20\n1,2,810,21\n2,3,820,22\n");
            int rows = 3 + random.nextInt(60);
            for (int i = 3; i < rows; i++) {
                log.append(i);
                for (int c = 0; c < 3; c++) {
                    log.append(',').append(random.nextInt(3) == 0 ? cells[random.nextInt(cells.length)] : "2" + c);
                }
                log.append('\n');
            }
            Recording read = Logged.read(folder, Logged.MAP + "reader: {text: skip}\n", log.toString());
            int bad = Channel.BLANK | Channel.OUT_OF_RANGE | Channel.NOT_A_NUMBER | Channel.SPIKE;
            for (Channel c : read.channels()) {
                assertThat(c.values()).hasSize(rows);
                for (int i = 0; i < rows; i++) {
                    assertThat(Double.isNaN(c.values()[i])).isEqualTo((c.flags()[i] & bad) != 0);
                }
                assertThat(c.good() + c.count(bad)).isEqualTo(rows);
            }
        }
    }
}
