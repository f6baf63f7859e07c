package hotday.validation.recordings;

import hotday.validation.CommandLineRun;
import hotday.validation.SharedData;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import tools.jackson.databind.JsonNode;

/** Proofs on the open recordings of a 2014 diesel sedan on a chassis dynamometer, run as a user runs them. */
final class DieselSedan {
    static final String SOURCE =
            "Downloadable Dynamometer Database (D3), Argonne National Laboratory; thresholds: see docs/validation.md";

    private static final ConcurrentHashMap<String, CommandLineRun> DONE = new ConcurrentHashMap<>();

    private DieselSedan() {}

    /** @param fit, predict last two digits of the test numbers, blank between */
    static CommandLineRun prove(String fit, String predict) {
        return prove(fit, predict, List.of());
    }

    /** @param more words of the command line */
    static CommandLineRun prove(String fit, String predict, List<Object> more) {
        List<Object> words = new ArrayList<>(List.of(
                "prove",
                "--json",
                "--build",
                CommandLineRun.repository("validation/sets/d3-diesel-sedan/build.yaml"),
                "--map",
                CommandLineRun.repository("validation/sets/d3-diesel-sedan/channels.yaml")));
        add(words, "--fit", fit);
        add(words, "--predict", predict);
        words.addAll(more);
        return DONE.computeIfAbsent(fit + ">" + predict + more, k -> CommandLineRun.of(words.toArray()));
    }

    private static void add(List<Object> words, String option, String tests) {
        for (String test : tests.split(" ")) {
            words.add(option);
            words.add(SharedData.file("data/d3-diesel-sedan/614100" + test + ".txt"));
        }
    }

    static JsonNode run(CommandLineRun proof, String test) {
        for (JsonNode run : proof.json().get("runs")) {
            if (run.get("run").asString().equals("614100" + test)) {
                return run;
            }
        }
        throw new AssertionError("no run 614100" + test + " in the proof; it said: " + proof.err());
    }
}
