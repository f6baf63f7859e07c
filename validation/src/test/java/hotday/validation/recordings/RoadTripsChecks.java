package hotday.validation.recordings;

import hotday.validation.Check;
import hotday.validation.Topic;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** Summer trips never seen by a fit on winter trips, fuel worked out from boost: coolant against what was measured. */
public final class RoadTripsChecks implements Topic {
    @Override
    public String title() {
        return "Recorded runs: road trips of a turbo-diesel without fuel signal, frosty and cool fitted, summer predicted";
    }

    @Override
    public boolean slow() {
        return true;
    }

    @Override
    public List<Check> checks() {
        JsonNode pooled = RoadTrips.proof().json().get("pooled");
        return List.of(
                below("coolant, rms over the unseen trips", pooled, "predict_rmse_K", 2.8),
                below("the same once warm, from 600 s on", pooled, "predict_warm_rmse_K", 2.0),
                Check.inside(
                        "the constant warm level instead (null model), once warm",
                        pooled.get("predict_warm_null_rmse_K").asDouble(),
                        1.7,
                        2.2,
                        "K",
                        RoadTrips.SOURCE),
                Check.inside(
                        "samples inside the 90 % band",
                        pooled.get("predict_coverage90").asDouble(), 0.80, 1.0, "-", RoadTrips.SOURCE));
    }

    private static Check below(String what, JsonNode node, String key, double limit) {
        return Check.inside(what, node.get(key).asDouble(), Double.NEGATIVE_INFINITY, limit, "K", RoadTrips.SOURCE);
    }
}
