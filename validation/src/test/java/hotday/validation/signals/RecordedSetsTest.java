package hotday.validation.signals;

import static hotday.validation.signals.RecordedSet.celsius;
import static hotday.validation.signals.RecordedSet.finding;
import static hotday.validation.signals.RecordedSet.good;
import static hotday.validation.signals.RecordedSet.greatest;
import static hotday.validation.signals.RecordedSet.last;
import static hotday.validation.signals.RecordedSet.least;
import static hotday.validation.signals.RecordedSet.timeRises;
import static hotday.validation.signals.RecordedSet.topSpeedKmh;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.Severity;
import hotday.signals.channel.Channel;
import hotday.signals.channel.Fact;
import hotday.signals.channel.ModelChannel;
import hotday.signals.channel.Recording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The four delimited sets. Expected numbers are those of the tables in the description (README) of each set; tolerances are
 * the digits printed there.
 */
class RecordedSetsTest {
    private static final double WHOLE = 0.501; // printed without decimals
    private static final double CELL_RANGE = 0.55; // K, as WHOLE; the file of 61410015 shows 21.48 where 22 is printed
    private static final double TIME_TOLERANCE = 1.0; // s, printed without decimals, some rounded up

    private static final RecordedSet SEDAN = new RecordedSet("d3-diesel-sedan");
    private static final RecordedSet IDLING = new RecordedSet("carobd-idle-and-trips");
    private static final RecordedSet ROAD = new RecordedSet("kit-road-trips");
    private static final RecordedSet ALTITUDE = new RecordedSet("altitude-drives");

    @ParameterizedTest
    @CsvSource({
        // file, length s, cell mean, cell range, coolant start end max, oil start end max, km/h, fuel g
        "61410012, 1377, 22.5, 21, 26, 24, 88, 93, 25, 95, 96, 92, 783",
        "61410013, 1377, 22.6, 21, 26, 91, 93, 94, 95, 99, 100, 91, 709",
        "61410015, 1548, 25.4, 22, 27, 97, 90, 98, 100, 103, 104, 97, 1258",
        "61410016, 1293, 24.8, 20, 27, 96, 99, 105, 102, 114, 114, 130, 1452",
        "61410017, 805, 26.2, 22, 28, 101, 99, 109, 95, 123, 130, 132, 1426",
        "61410008, 993, 24.1, 20, 28, 98, 89, 98, 106, 96, 106, 129, 753",
        "61410007, 272, 23.2, 21, 27, 92, 89, 105, 96, 104, 113, 135, 0",
        "61410004, 1803, 24.0, 22, 28, 91, 92, 97, 98, 105, 109, 131, 1125",
        "61410005, 1183, 21.9, 20, 29, 96, 87, 97, 101, 98, 103, 120, 592",
        "61410028, 1377, -6.6, -8, -2, -4, 88, 88, -2, 91, 91, 91, 975",
        "61410029, 1377, -6.4, -8, -2, 84, 86, 91, 88, 92, 94, 91, 741",
        "61410030, 1377, -6.7, -9, -2, 86, 86, 89, 91, 93, 95, 91, 728",
        "61410031, 1377, -6.6, -9, -2, 87, 86, 89, 91, 94, 95, 92, 731",
        "61410032, 1548, -5.0, -9, -2, 88, 85, 88, 90, 95, 97, 97, 1333",
        "61410033, 1293, -3.4, -9, 2, 84, 87, 92, 91, 99, 103, 130, 1517",
    })
    void dieselSedan(
            String file,
            double length,
            double cellMean,
            double cellLow,
            double cellHigh,
            double coolantStart,
            double coolantEnd,
            double coolantMost,
            double oilStart,
            double oilEnd,
            double oilMost,
            double kmh,
            double fuel) {
        Recording run = SEDAN.run(file);
        timeRises(run);
        assertThat(run.name()).isEqualTo(file);
        assertThat(run.time()[0]).isEqualTo(-10.0);
        assertThat(last(run.time())).isCloseTo(length, within(TIME_TOLERANCE));
        assertThat(run.time()).hasSize((int) (10 * (length + 10)) + 1);
        double[] cell = celsius(run, ModelChannel.AMBIENT_TEMPERATURE);
        assertThat(java.util.Arrays.stream(cell).average().orElseThrow()).isCloseTo(cellMean, within(0.11));
        assertThat(least(cell)).isCloseTo(cellLow, within(CELL_RANGE));
        assertThat(greatest(cell)).isCloseTo(cellHigh, within(CELL_RANGE));
        temperature(celsius(run, ModelChannel.COOLANT_TEMPERATURE), coolantStart, coolantEnd, coolantMost);
        temperature(celsius(run, ModelChannel.OIL_TEMPERATURE), oilStart, oilEnd, oilMost);
        assertThat(topSpeedKmh(run)).isCloseTo(kmh, within(WHOLE));
        double grams = 1000 * 0.1 * good(run, ModelChannel.FUEL_FLOW).sum();
        // negatives are cut off and the smear after the engine stops is taken away: up to 2 g
        assertThat(grams).isCloseTo(fuel, within(2.0));
        assertThat(run.channel(ModelChannel.COOLANT_TEMPERATURE).orElseThrow().resolution())
                .isEqualTo(1.0);
        boolean mild = Integer.parseInt(file) <= 61410017;
        assertThat(run.facts().get("heater")).isEqualTo(mild ? Fact.OFF : Fact.UNKNOWN);
        assertThat(run.facts().get("air_conditioning")).isEqualTo(mild ? Fact.OFF : Fact.UNKNOWN);
        assertThat(run.facts().get("fan")).isEqualTo(Fact.UNKNOWN);
    }

    private static void temperature(double[] celsius, double start, double end, double most) {
        assertThat(celsius[0]).isCloseTo(start, within(WHOLE));
        assertThat(last(celsius)).isCloseTo(end, within(WHOLE));
        assertThat(greatest(celsius)).isCloseTo(most, within(WHOLE));
    }

    /** "ALL ZERO in 61410007": the model must not take this for a run without fuel. */
    @Test
    void deadFuelSignalIsFound() {
        Recording run = SEDAN.run("61410007");
        assertThat(finding(run, "channel-dead").values())
                .containsEntry("channel", "fuel_flow")
                .containsEntry("value", "0.0 g/s")
                .containsEntry("samples", 2821);
        assertThat(finding(run, "channel-dead").severity()).isEqualTo(Severity.WARNING);
        assertThat(SEDAN.run("61410012").findings()).noneMatch(f -> f.key().equals("channel-dead"));
    }

    /** The first header of this file is misspelt. */
    @Test
    void misspeltTimeColumnIsTakenByPosition() {
        assertThat(finding(SEDAN.run("61410004"), "column-by-position").values())
                .containsEntry("column", "fpTime[sec]");
    }

    /** One sample of -16 g/s, seen in the file; the description speaks of small negatives only. */
    @Test
    void aGlitchFarBelowTheFloorIsLeftOutNotClipped() {
        Recording run = SEDAN.run("61410032");
        assertThat(finding(run, "samples-out-of-range").values())
                .containsEntry("channel", "fuel_flow")
                .containsEntry("samples", 1);
    }

    /** Measured warm-up of the cold starts: 60 and 80 degC reached after so many seconds. */
    @ParameterizedTest
    @CsvSource({"61410012, 203, 300", "61410028, 472, 873"})
    void coldStarts(String file, double sixty, double eighty) {
        Recording run = SEDAN.run(file);
        assertThat(reached(run, 60)).isCloseTo(sixty, within(TIME_TOLERANCE));
        assertThat(reached(run, 80)).isCloseTo(eighty, within(TIME_TOLERANCE));
    }

    private static double reached(Recording run, double celsius) {
        Channel coolant = run.channel(ModelChannel.COOLANT_TEMPERATURE).orElseThrow();
        for (int i = 0; i < coolant.values().length; i++) {
            if (coolant.values()[i] >= celsius + 273.149) {
                return run.time()[i];
            }
        }
        return Double.NaN;
    }

    @ParameterizedTest
    @CsvSource({
        // file, rows with the engine running, length s, coolant start end max, intake air range, km/h
        "idle1, 1199, 590, 28, 87, 87, 25, 41, 0",
        "idle12, 1272, 624, 90, 89, 95, 50, 64, 0",
        "idle22, 1858, 915, 26, 88, 88, 25, 50, 0",
        "idle25, 1291, 636, 89, 91, 96, 48, 63, 0",
        "idle27, 2108, 1035, 62, 95, 95, 37, 59, 0",
        "idle28, 2313, 1137, 51, 89, 89, 33, 58, 0",
        "idle29, 2809, 1381, 83, 91, 95, 53, 68, 0",
        "idle36, 1872, 921, 80, 91, 95, 51, 66, 0",
        "idle43, 2201, 1081, 28, 95, 95, 28, 54, 0",
        "idle46, 2468, 1215, 28, 93, 95, 28, 52, 0",
        "live1., 3847, 1893, 25, 88, 95, 24, 55, 60",
        "live8, 2405, 1275, 26, 91, 91, 28, 50, 67",
        "live17, 3778, 1859, 24, 89, 90, 24, 53, 76",
        "long4, 5856, 2882, 44, 89, 96, 29, 61, 67",
        "long10, 5029, 2474, 73, 90, 90, 38, 50, 127",
        "drive4, 4383, 2157, 41, 89, 95, 33, 55, 74",
        "drive10, 5449, 2681, 53, 88, 90, 41, 56, 69",
        "ufpe8, 2667, 1312, 37, 88, 89, 31, 46, 44",
    })
    void idleAndTrips(
            String file,
            int running,
            double length,
            double coolantStart,
            double coolantEnd,
            double coolantMost,
            double airLow,
            double airHigh,
            double kmh) {
        Recording run = IDLING.run(file.equals("idle1") ? "idle1." : file);
        timeRises(run);
        assertThat(good(run, ModelChannel.ENGINE_SPEED).filter(v -> v > 0).count())
                .isEqualTo(running);
        // the last stamp stands for up to two seconds of rows
        assertThat(last(run.time())).isBetween(length - 0.01, length + 2.01);
        temperature(celsius(run, ModelChannel.COOLANT_TEMPERATURE), coolantStart, coolantEnd, coolantMost);
        double[] air = celsius(run, ModelChannel.INTAKE_TEMPERATURE);
        assertThat(least(air)).isCloseTo(airLow, within(WHOLE));
        assertThat(greatest(air)).isCloseTo(airHigh, within(WHOLE));
        assertThat(topSpeedKmh(run)).isCloseTo(kmh, within(WHOLE));
        // a trailing comma on every row must not shift columns: the barometer shows it
        assertThat(good(run, ModelChannel.BAROMETER).allMatch(p -> p >= 97e3 && p <= 104e3))
                .isTrue();
        assertThat(run.channels()).allMatch(c -> c.count(Channel.HELD) == 0);
    }

    /** About two rows a second, several on each stamp. */
    @Test
    void rowsOnOneStampAreSpread() {
        Recording run = IDLING.run("idle25");
        double[] time = run.time();
        double longest = 0.0;
        for (int i = 8; i < time.length; i++) {
            longest = Math.max(longest, time[i] - time[i - 1]);
        }
        assertThat(longest).isLessThanOrEqualTo(0.7);
        assertThat(finding(run, "time-stamps-equal").values()).containsEntry("rows", 946);
    }

    /** Seen in the file: the last row ends in the middle. */
    @Test
    void rowCutShortIsFound() {
        assertThat(finding(IDLING.run("idle1."), "last-row-cut")
                        .place()
                        .orElseThrow()
                        .line())
                .isEqualTo(1214);
    }

    @ParameterizedTest
    @CsvSource({
        // file, length s, ambient range, coolant start end max, time to 80 degC, km/h
        "2018-02-28, 3401, -14, -2, 9, 84, 95, 854, 126",
        "2018-02-27, 1490, -10, -4, -1, 64, 64, NaN, 103",
        "2018-03-01, 2720, -9, 0, 8, 85, 95, 760, 128",
        "2018-02-14, 2631, -7, 3, 13, 88, 94, 854, 131",
        "2018-02-18, 5139, -1, 4, 8, 89, 95, 760, 194",
        "2018-03-26, 2858, 1, 7, 9, 89, 95, 756, 128",
        "2018-03-07, 3101, 2, 7, 15, 89, 94, 813, 129",
        "2018-03-23, 3738, 4, 9, 16, 90, 94, 742, 125",
        "2018-03-06, 4335, 4, 10, 17, 89, 94, 865, 199",
        "2017-07-26, 4032, 13, 19, 30, 91, 100, 474, 126",
        "2017-08-10, 2316, 13, 17, 51, 90, 95, 266, 126",
        "2017-07-24, 4664, 14, 19, 42, 91, 96, 376, 191",
        "2017-08-09, 3292, 14, 21, 29, 90, 94, 493, 126",
        "2018-04-23, 1127, 15, 17, 24, 91, 95, 669, 86",
        "2017-07-14, 731, 16, 18, 22, 79, 79, NaN, 100",
        "2017-07-11, 2217, 16, 21, 24, 91, 94, 1143, 102",
    })
    void roadTrips(
            String file,
            double length,
            double ambientLow,
            double ambientHigh,
            double coolantStart,
            double coolantEnd,
            double coolantMost,
            double eighty,
            double kmh) {
        Recording run = ROAD.run(file);
        timeRises(run);
        assertThat(run.time()[0]).isZero();
        assertThat(last(run.time())).isCloseTo(length, within(TIME_TOLERANCE));
        double[] ambient = celsius(run, ModelChannel.AMBIENT_TEMPERATURE);
        assertThat(least(ambient)).isCloseTo(ambientLow, within(WHOLE));
        assertThat(greatest(ambient)).isCloseTo(ambientHigh, within(WHOLE));
        temperature(celsius(run, ModelChannel.COOLANT_TEMPERATURE), coolantStart, coolantEnd, coolantMost);
        if (Double.isNaN(eighty)) {
            assertThat(reached(run, 80)).isNaN();
        } else {
            assertThat(reached(run, 80)).isCloseTo(eighty, within(TIME_TOLERANCE));
        }
        assertThat(topSpeedKmh(run)).isCloseTo(kmh, within(WHOLE));
    }

    /** Ten values asked for in turn, each really sampled every 0.8 to 1 s, the rest filled forward. */
    @ParameterizedTest
    @ValueSource(strings = {"2018-02-28", "2018-03-06", "2017-07-24"})
    void filledForwardTripsKeepTheirRealSamples(String file) {
        Recording run = ROAD.run(file);
        finding(run, "filled-forward");
        int rows = run.time().length;
        double length = last(run.time());
        for (Channel c : run.channels()) {
            int received = rows - c.count(Channel.HELD);
            assertThat(received).as(c.kind().key()).isBetween(rows / 10 - 2, rows / 10 + rows / 100);
            assertThat(length / received).isBetween(0.8, 1.05);
        }
    }

    /** "Outliers to 100..150 C and -25 C": none is left, and what is left out is counted. */
    @Test
    void intakeAirOutliersAreLeftOut() {
        Recording run = ROAD.run("2018-04-23");
        double[] air = celsius(run, ModelChannel.INTAKE_TEMPERATURE);
        assertThat(greatest(air)).isLessThanOrEqualTo(60.0);
        assertThat(finding(run, "samples-out-of-range").values()).containsEntry("channel", "intake_temperature");
    }

    /** Seen in the files: pauses of ten and nine minutes, and a clock set back by 0.4 s. */
    @Test
    void pausesAndSlipsAreFound() {
        assertThat(finding(ROAD.run("2017-07-11"), "recording-gaps").values()).containsEntry("longest_s", 603.87);
        assertThat((double) finding(ROAD.run("2018-02-18"), "recording-gaps")
                        .values()
                        .get("longest_s"))
                .isCloseTo(524.1, within(0.1));
        assertThat(finding(ROAD.run("2017-07-24"), "time-slips").values()).containsEntry("largest_s", 0.396);
    }

    @ParameterizedTest
    @CsvSource({
        // file, rows, length s, coolant range and samples, weather range, altitude range, km/h
        "veh1_20231123, 8411, 8444, 87, 94, 6020, 11, 18, 2452, 2924, 79",
        "veh2_20231226, 6043, 6164, 85, 96, 5050, 12, 20, 2478, 3196, 108",
        "veh2_20240111, 4960, 5108, 84, 94, 4821, 10, 20, 2467, 3189, 103",
        "veh4_20231229, 5910, 6590, 78, 109, 1766, 12, 24, 2474, 3194, 116",
    })
    void altitudeDrives(
            String file,
            int rows,
            double length,
            double coolantLow,
            double coolantHigh,
            int samples,
            double weatherLow,
            double weatherHigh,
            double lowest,
            double highest,
            double kmh) {
        Recording run = ALTITUDE.run(file);
        timeRises(run);
        assertThat(run.time()).hasSize(rows);
        assertThat(last(run.time())).isEqualTo(length);
        double[] coolant = celsius(run, ModelChannel.COOLANT_TEMPERATURE);
        assertThat(coolant).hasSize(samples);
        assertThat(least(coolant)).isCloseTo(coolantLow, within(WHOLE));
        assertThat(greatest(coolant)).isCloseTo(coolantHigh, within(WHOLE));
        double[] weather = celsius(run, ModelChannel.AMBIENT_TEMPERATURE);
        assertThat(least(weather)).isCloseTo(weatherLow, within(WHOLE));
        assertThat(greatest(weather)).isCloseTo(weatherHigh, within(WHOLE));
        double[] height = good(run, ModelChannel.ALTITUDE).toArray();
        assertThat(least(height)).isCloseTo(lowest, within(WHOLE));
        assertThat(greatest(height)).isCloseTo(highest, within(WHOLE));
        assertThat(topSpeedKmh(run)).isCloseTo(kmh, within(WHOLE));
        assertThat(run.has(ModelChannel.BAROMETER))
                .as("its pressure is reduced to sea level")
                .isFalse();
    }
}
