package hotday.app.web;

import hotday.study.shop.Bench;
import hotday.study.shop.Shop;
import java.util.HashMap;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/** Work that can be asked for by name. */
@FunctionalInterface
interface JobKind {
    /** Reads what is asked; throws what a bad request or wrong input throws. */
    Job.Work of(Bench bench, JsonNode asked);

    /** All there are, by name. */
    static Map<String, JobKind> all(Shop shop, KeptJudgings judgings) {
        Map<String, JobKind> all = new HashMap<>(PredictionJobs.all());
        all.put(ProofRoutes.KIND, new ProofRoutes(shop)::work);
        all.put(ScheduleJobs.KIND, new ScheduleJobs(judgings)::work);
        return Map.copyOf(all);
    }
}
