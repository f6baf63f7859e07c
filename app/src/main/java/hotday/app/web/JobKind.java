package hotday.app.web;

import hotday.study.shop.Bench;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/** Work that can be asked for by name. */
@FunctionalInterface
interface JobKind {
    /** Reads what is asked; throws what a bad request or wrong input throws. */
    Job.Work of(Bench bench, JsonNode asked);

    /** All there are, by name. */
    static Map<String, JobKind> all() {
        return PredictionJobs.all();
    }
}
