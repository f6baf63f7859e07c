package hotday.validation.recordings;

import hotday.validation.Check;
import hotday.validation.CommandLineRun;
import hotday.validation.Topic;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** Mild tests never seen by the fit: coolant against what was measured, with the model-free guess beside it. */
public final class DieselSedanChecks implements Topic {
    @Override
    public String title() {
        return "Recorded runs: diesel sedan, four mild tests fitted, four others predicted";
    }

    @Override
    public boolean slow() {
        return true;
    }

    @Override
    public List<Check> checks() {
        CommandLineRun proof = DieselSedan.prove("12 13 16 17", "15 08 04 05");
        JsonNode pooled = proof.json().get("pooled");
        double none = Double.NEGATIVE_INFINITY;
        return List.of(
                Check.inside(
                        "coolant, rms over the unseen tests",
                        value(pooled, "predict_rmse_K"),
                        none,
                        2.7,
                        "K",
                        DieselSedan.SOURCE),
                Check.inside(
                        "coolant, bias over the unseen tests",
                        value(pooled, "predict_bias_K"),
                        -1.2,
                        1.2,
                        "K",
                        DieselSedan.SOURCE),
                Check.inside(
                        "coolant, worst moment of the unseen tests",
                        value(pooled, "predict_max_error_K"),
                        none,
                        9.0,
                        "K",
                        DieselSedan.SOURCE),
                Check.inside(
                        "the constant warm level instead (null model)",
                        value(pooled, "predict_null_rmse_K"),
                        2.8,
                        3.1,
                        "K",
                        DieselSedan.SOURCE),
                Check.inside(
                        "samples inside the 90 % band",
                        value(pooled, "predict_coverage90"), 0.80, 0.97, "-", DieselSedan.SOURCE),
                Check.inside(
                        "oil, rms over the unseen tests, where oil is fitted too",
                        value(oil(), "predict_oil_rmse_K"),
                        none,
                        3.0,
                        "K",
                        DieselSedan.SOURCE),
                Check.inside("half width of the band, widest test", widest(proof), none, 5.0, "K", DieselSedan.SOURCE));
    }

    private static JsonNode oil() {
        return DieselSedan.prove("12 13 16 17", "15 08 04 05", List.of("--observe", "oil"))
                .json()
                .get("pooled");
    }

    private static double value(JsonNode node, String key) {
        return node.get(key).asDouble();
    }

    private static double widest(CommandLineRun proof) {
        double widest = 0.0;
        for (JsonNode run : proof.json().get("runs")) {
            if (run.get("role").asString().equals("predict")) {
                widest = Math.max(widest, run.get("band_half_width_K").asDouble());
            }
        }
        return widest;
    }
}
