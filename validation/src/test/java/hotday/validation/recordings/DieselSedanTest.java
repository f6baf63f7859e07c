package hotday.validation.recordings;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.validation.CommandLineRun;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

@Tag("slow")
class DieselSedanTest {
    @Test
    void everyRunCarriesWhatTheContractPromises() {
        CommandLineRun proof = DieselSedan.prove("12 13 16 17", "15 08 04 05");
        assertThat(proof.status()).as(proof.err()).isIn(0, 1);
        List<String> roles = new ArrayList<>();
        for (JsonNode run : proof.json().get("runs")) {
            roles.add(run.get("role").asString());
            JsonNode coolant = run.get("coolant");
            assertThat(coolant.get("rmse_K").isNumber()).isTrue();
            assertThat(coolant.get("bias_K").isNumber()).isTrue();
            assertThat(coolant.get("max_error_K").isNumber()).isTrue();
            JsonNode peak = coolant.get("peak_degC");
            assertThat(peak.get("interval90").get(0).asDouble())
                    .isLessThan(peak.get("predicted").asDouble());
            assertThat(peak.get("interval90").get(1).asDouble())
                    .isGreaterThan(peak.get("predicted").asDouble());
            assertThat(coolant.get("reach")).hasSize(5);
            assertThat(coolant.get("reach").get(1).get("degC").asDouble()).isEqualTo(60.0);
            assertThat(run.get("coverage90").isNumber()).isTrue();
            assertThat(run.get("null_rmse_K").isNumber()).isTrue();
            assertThat(run.get("findings").isArray()).isTrue();
            assertThat(run.get("brackets")).hasSize(2);
            assertThat(run.get("brackets").get(0).get("state").asString()).isEqualTo("fan");
        }
        assertThat(roles).containsExactly("fit", "fit", "fit", "fit", "predict", "predict", "predict", "predict");
    }

    /** Warm-up of the one mild cold start, which the fit saw: measured 203 s to 60 degC. */
    @Test
    void warmUpOfTheFittedColdStartIsReproduced() {
        JsonNode run = DieselSedan.run(DieselSedan.prove("12 13 16 17", "15 08 04 05"), "12");
        JsonNode sixty = run.get("coolant").get("reach").get(1);
        assertThat(run.get("coolant").get("rmse_K").asDouble()).isLessThan(1.5);
        assertThat(sixty.get("predicted_s").asDouble())
                .isBetween(
                        0.95 * sixty.get("measured_s").asDouble(),
                        1.05 * sixty.get("measured_s").asDouble());
    }

    /** A cold start at -6 degC with the heater on, asked of a fit that saw mild tests only. */
    @Test
    void coldStartWithAnUnknownHeaterGetsABracketAndNoSingleNumber() {
        CommandLineRun proof = DieselSedan.prove("12 13 16 17", "28");
        JsonNode run = DieselSedan.run(proof, "28");
        JsonNode coolant = run.get("coolant");
        assertThat(run.get("single_number").asBoolean()).isFalse();
        assertThat(coolant.get("rmse_K").isNull()).isTrue();
        assertThat(coolant.get("peak_degC").get("predicted").isNull()).isTrue();
        for (JsonNode reach : coolant.get("reach")) {
            assertThat(reach.get("predicted_s").isNull()).isTrue();
        }
        List<String> branches = new ArrayList<>();
        for (JsonNode bracket : run.get("brackets")) {
            if (bracket.get("state").asString().equals("heater")) {
                branches.add(bracket.get("branch").asString());
                assertThat(bracket.get("rmse_K").isNumber()).isTrue();
                assertThat(bracket.get("peak_degC").isNumber()).isTrue();
            }
        }
        assertThat(branches).containsExactlyInAnyOrder("off", "on");
        List<String> findings = new ArrayList<>();
        run.get("findings").forEach(f -> findings.add(f.get("key").asString()));
        assertThat(findings).contains("heater-unknown", "bracket-only");
        assertThat(run.get("coverage90").asDouble()).isGreaterThan(0.8);
    }

    /** The harder split: no fitted test works the engine as hard as the predicted ones. */
    @Test
    void harderWorkThanAnyFittedRunIsSaidToBeAnExtrapolation() {
        CommandLineRun proof = DieselSedan.prove("12 15 08 04 05", "13 16 17");
        List<String> findings = new ArrayList<>();
        proof.json().get("findings").forEach(f -> findings.add(f.get("key").asString()));
        assertThat(findings).contains("beyond-fitted-load");
    }

    /** Bands of peaks hold the truth as bands of samples do: of eleven unseen tests, nine in ten. */
    @Test
    void peaksLieInTheirBands() {
        int inside = 0;
        int asked = 0;
        for (CommandLineRun proof : List.of(
                DieselSedan.prove("12 13 16 17", "15 08 04 05"),
                DieselSedan.prove("12 15 08 04 05", "13 16 17"),
                DieselSedan.prove("12 13 16 17 28 33", "29 30 31 32"))) {
            for (JsonNode run : proof.json().get("runs")) {
                if (run.get("role").asString().equals("predict")) {
                    JsonNode peak = run.get("coolant").get("peak_degC");
                    double measured = peak.get("measured").asDouble();
                    asked++;
                    inside += measured >= peak.get("interval90").get(0).asDouble()
                                    && measured <= peak.get("interval90").get(1).asDouble()
                            ? 1
                            : 0;
                }
            }
        }
        assertThat(asked).isEqualTo(11);
        assertThat(inside).isGreaterThanOrEqualTo(10);
    }

    @Test
    void theAnswerDoesNotDependOnTheNumberOfThreads() {
        CommandLineRun both = DieselSedan.prove("13", "15");
        List<Object> words = new ArrayList<>(List.of("prove", "--json", "--threads", "1"));
        words.addAll(List.of(
                "--build", CommandLineRun.repository("validation/sets/d3-diesel-sedan/build.yaml"),
                "--map", CommandLineRun.repository("validation/sets/d3-diesel-sedan/channels.yaml"),
                "--fit", hotday.validation.SharedData.file("data/d3-diesel-sedan/61410013.txt"),
                "--predict", hotday.validation.SharedData.file("data/d3-diesel-sedan/61410015.txt")));
        assertThat(CommandLineRun.of(words.toArray()).out()).isEqualTo(both.out());
    }
}
