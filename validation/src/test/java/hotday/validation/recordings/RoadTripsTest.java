package hotday.validation.recordings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

@Tag("slow")
class RoadTripsTest {
    /** The measured times to 40, 60, 70 and 80 degC lie in their 90 % intervals on trips the fit never saw. */
    @ParameterizedTest
    @ValueSource(strings = {"2017-07-26", "2017-07-24", "2017-08-09"})
    void warmUpTimesOfUnseenTripsLieInTheirIntervals(String day) {
        JsonNode coolant = RoadTrips.run(day).get("coolant");
        for (JsonNode reach : coolant.get("reach")) {
            double level = reach.get("degC").asDouble();
            if (level <= 80.0 && !reach.get("measured_s").isNull()) {
                JsonNode interval = reach.get("interval90_s");
                double high = interval.get(1).isNull()
                        ? Double.POSITIVE_INFINITY
                        : interval.get(1).asDouble();
                assertThat(reach.get("measured_s").asDouble())
                        .as("time to " + level + " degC")
                        .isBetween(interval.get(0).asDouble(), high);
            }
        }
    }

    /** Three summer mornings get one number each from a fit on winter mornings, and the report says how. */
    @ParameterizedTest
    @ValueSource(strings = {"2017-07-26", "2017-07-24", "2017-08-09"})
    void theReportSaysWhatWasWorkedOut(String day) {
        JsonNode run = RoadTrips.run(day);
        assertThat(run.get("single_number").asBoolean()).isTrue();
        List<String> keys = new ArrayList<>();
        run.get("findings").forEach(f -> keys.add(f.get("key").asString()));
        assertThat(keys).contains("fuel-worked-out", "ambient-heat-soaked", "heater-by-weather");
    }

    @Test
    void theMildestTripsLieBeyondTheFittedWeatherAndTheProofSaysSo() {
        List<String> keys = new ArrayList<>();
        RoadTrips.proof()
                .json()
                .get("findings")
                .forEach(f -> keys.add(f.get("key").asString()));
        assertThat(keys).contains("beyond-fitted-weather");
    }
}
