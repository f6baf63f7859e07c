package hotday.validation.recordings;

import hotday.validation.CommandLineRun;
import hotday.validation.SharedData;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/** A proof on the open road trips of a turbo-diesel hatchback without a fuel signal, run as a user runs it. */
final class RoadTrips {
    static final String SOURCE = "open road trips, DOI 10.35097/1130; thresholds: see docs/validation.md";

    /** Frosty and cool mornings, -14 to 10 degC. */
    static final List<String> COLD = List.of(
            "2018-02-28",
            "2018-02-27",
            "2018-03-01",
            "2018-02-14",
            "2018-02-18",
            "2018-03-26",
            "2018-03-07",
            "2018-03-23",
            "2018-03-06");

    /** Summer mornings, 13 to 21 degC. */
    static final List<String> WARM = List.of("2017-07-26", "2017-07-24", "2017-08-09");

    private static CommandLineRun done;

    private RoadTrips() {}

    /** The cold trips fitted, the warm ones predicted. */
    static synchronized CommandLineRun proof() {
        if (done == null) {
            List<Object> words = new ArrayList<>(List.of(
                    "prove",
                    "--json",
                    "--build",
                    CommandLineRun.repository("validation/sets/kit-road-trips/build.yaml"),
                    "--map",
                    CommandLineRun.repository("validation/sets/kit-road-trips/channels.yaml")));
            COLD.forEach(day -> words.addAll(List.of("--fit", trip(day))));
            WARM.forEach(day -> words.addAll(List.of("--predict", trip(day))));
            done = CommandLineRun.of(words.toArray());
        }
        return done;
    }

    /** @param day of the trip; its recording's name begins with it */
    private static Path trip(String day) {
        Path folder = SharedData.file("data/kit-road-trips");
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.getFileName().toString().startsWith(day))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no trip of " + day + " in " + folder));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static JsonNode run(String day) {
        for (JsonNode run : proof().json().get("runs")) {
            if (run.get("run").asString().startsWith(day)) {
                return run;
            }
        }
        throw new AssertionError("no run of " + day + " in the proof; it said: " + proof().err());
    }
}
