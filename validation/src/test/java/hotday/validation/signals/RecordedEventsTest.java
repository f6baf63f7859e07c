package hotday.validation.signals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.study.events.Event;
import hotday.study.events.Events;
import hotday.study.events.Inferred;
import hotday.study.events.Kind;
import hotday.study.events.Summary;
import hotday.study.events.Trace;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What switched unseen in the open recordings. Expected counts and temperatures are those in the description (README) of each
 * set; it says itself that its compressor counts are those of a simple detector, so two more or less are no fault.
 */
class RecordedEventsTest {
    private static final double KELVIN = 273.15;
    private static final double GAUGE = 1.0; // K, one step of the gauge
    private static final int SWITCHINGS = 2;

    private static final RecordedSet SEDAN = new RecordedSet("d3-diesel-sedan");
    private static final RecordedSet IDLING = new RecordedSet("carobd-idle-and-trips");
    private static final RecordedSet ROAD = new RecordedSet("kit-road-trips");
    private static final RecordedSet ALTITUDE = new RecordedSet("altitude-drives");

    private static Inferred seen(RecordedSet set, String... files) {
        return Events.of(Arrays.stream(files).map(f -> Trace.of(set.run(f))).toList());
    }

    @ParameterizedTest
    @CsvSource({
        // file, fan cycles, compressor switch-ons at idle (-1: not given)
        "idle1., 0, 3",
        "idle12, 1, 7",
        "idle22, 0, 18",
        "idle25, 5, 0",
        "idle27, 2, 0",
        "idle28, 0, 15",
        "idle29, 6, 11",
        "idle36, 1, 23",
        "idle43, 0, 4",
        "idle46, 0, 0",
        "live1., 1, -1",
        "live8, 0, -1",
        "live17, 0, -1",
        "long4, 2, -1",
        "long10, 0, -1",
        "drive4, 2, -1",
        "drive10, 0, -1",
        "ufpe8, 0, -1",
    })
    void idleAndTrips(String file, int cycles, int switchOns) {
        Inferred seen = seen(IDLING, file);
        Summary summary = seen.summary();
        assertThat(summary.fanCycles()).isEqualTo(cycles);
        assertThat(seen.of(Kind.FAN_ON)).hasSize(cycles);
        summary.peak().ifPresent(p -> assertThat(p.mean() - KELVIN).isCloseTo(95.0, within(GAUGE)));
        // "95 C, pulled down 5..6 K"
        summary.trough().ifPresent(t -> assertThat(t.mean() - KELVIN).isCloseTo(89.5, within(GAUGE)));
        for (Event on : seen.of(Kind.FAN_ON)) {
            assertThat(on.value() - KELVIN).isCloseTo(95.0, within(GAUGE));
            assertThat(on.confidence()).isGreaterThan(0.8);
        }
        if (switchOns >= 0) {
            int tolerance = switchOns == 0 ? 0 : SWITCHINGS;
            assertThat(summary.compressorStarts()).isBetween(switchOns - tolerance, switchOns + tolerance);
        }
        assertThat(seen.of(Kind.HEATER_ON)).isEmpty();
    }

    /** "period about 85..135 s (idle25, idle29)"; the gauge has whole degrees, so no threshold is better known than that. */
    @Test
    void thresholdsOfTheIdlingCarWithUncertainty() {
        Summary summary =
                seen(IDLING, "idle12", "idle25", "idle27", "idle29", "idle36").summary();
        assertThat(summary.fanOn()).hasValueSatisfying(e -> {
            assertThat(e.low() - KELVIN).isBetween(93.5, 95.0);
            assertThat(e.high() - KELVIN).isBetween(95.0, 96.5);
            assertThat(e.count()).isGreaterThan(10);
        });
        assertThat(summary.fanOff()).hasValueSatisfying(e -> {
            assertThat(e.mean() - KELVIN).isBetween(89.0, 95.0);
            assertThat(e.high() - e.low()).isBetween(1.3, 4.0);
        });
        assertThat(summary.period())
                .hasValueSatisfying(e -> assertThat(e.mean()).isBetween(85.0, 135.0));
    }

    /** "on for 11..27 s, off for 8..12 s": 0.48 to 0.77 while it cycles. */
    @ParameterizedTest
    @ValueSource(strings = {"idle22", "idle36"})
    void dutyOfTheCyclingCompressor(String file) {
        assertThat(seen(IDLING, file).summary().compressorDuty().orElseThrow()).isBetween(0.48, 0.77);
    }

    /** "vehicle 2 fan starts about 96 C and pulls to 87 C" */
    @Test
    void secondVehicleAtAltitude() {
        Summary summary = seen(ALTITUDE, "veh2_20231226", "veh2_20240111").summary();
        assertThat(summary.peak().orElseThrow().mean() - KELVIN).isCloseTo(96.0, within(GAUGE));
        assertThat(summary.trough().orElseThrow().mean() - KELVIN).isCloseTo(87.0, within(GAUGE));
    }

    /** "vehicle 4 starts 101..105 C and pulls down 8..20 K (coarse sampling)": on the road, so never with confidence. */
    @Test
    void fourthVehicleAtAltitude() {
        Inferred seen = seen(ALTITUDE, "veh4");
        List<Event> starts = seen.of(Kind.FAN_ON);
        assertThat(starts).isNotEmpty().allSatisfy(e -> {
            assertThat(e.value() - KELVIN).isBetween(100.99, 105.01);
            assertThat(e.confidence()).isLessThan(0.4);
        });
        double drop = seen.summary().peak().orElseThrow().mean()
                - seen.summary().trough().orElseThrow().mean();
        assertThat(drop).isBetween(8.0, 20.0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2017-07-11", "2017-07-14", "2017-07-24", "2017-07-26", "2017-08-09", "2017-08-10", "2018-02-14",
                "2018-02-18", "2018-02-27", "2018-02-28", "2018-03-01", "2018-03-06", "2018-03-07", "2018-03-23",
                "2018-03-26", "2018-04-23",
            })
    void nothingIsInventedOnTheRoad(String file) {
        Inferred seen = seen(ROAD, file);
        assertThat(seen.of(Kind.FAN_ON)).isEmpty();
        assertThat(seen.of(Kind.COMPRESSOR_ON)).isEmpty();
        assertThat(seen.of(Kind.HEATER_ON)).isEmpty();
        // "thermostat knee at 94..96 C": where the warm-up ends, a gauge step or two before the highest
        assertThat(seen.of(Kind.THERMOSTAT_OPEN)).allMatch(e -> e.value() - KELVIN > 91.9 && e.value() - KELVIN < 96.1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "61410004",
                "61410005",
                "61410007",
                "61410008",
                "61410012",
                "61410013",
                "61410015",
                "61410016",
                "61410017",
                "61410028",
                "61410029",
                "61410030",
                "61410031",
                "61410032",
                "61410033",
            })
    void nothingIsInventedOnTheDynamometer(String file) {
        Inferred seen = seen(SEDAN, file);
        assertThat(seen.of(Kind.FAN_ON)).isEmpty();
        assertThat(seen.of(Kind.COMPRESSOR_ON)).isEmpty();
    }

    /** "thermostat opening as a knee at 88..93 C followed by a drop of about 5 K (61410012, t = 490 s)" */
    @Test
    void thermostatOfTheSedan() {
        List<Event> open = seen(SEDAN, "61410012").of(Kind.THERMOSTAT_OPEN);
        assertThat(open).hasSize(1);
        assertThat(open.get(0).value() - KELVIN).isBetween(88.0, 93.0);
        assertThat(open.get(0).time()).isCloseTo(490.0, within(45.0));
    }
}
