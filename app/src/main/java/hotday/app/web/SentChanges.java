package hotday.app.web;

import io.javalin.http.BadRequestResponse;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/**
 * What a page would change in a sheet.
 *
 * @param values full key to value as typed; later ones win
 * @param out full keys that are taken out
 */
record SentChanges(Map<String, String> values, Set<String> out) {
    private static final int MOST = 500;

    /** Those of {@code changes}. */
    static SentChanges of(JsonNode body) {
        JsonNode all = body.path("changes");
        if (!all.isArray() || all.size() > MOST) {
            throw new BadRequestResponse("'changes' must be a list of at most " + MOST);
        }
        Map<String, String> values = new LinkedHashMap<>();
        Set<String> out = new LinkedHashSet<>();
        for (JsonNode each : all) {
            if (each.path("key").isString() && each.path("out").asBoolean(false)) {
                out.add(each.path("key").asString());
            } else if (each.path("key").isString() && each.path("value").isString()) {
                values.put(each.path("key").asString(), each.path("value").asString());
            } else {
                throw new BadRequestResponse("every change needs 'key' and 'value', both texts, or 'out'");
            }
        }
        return new SentChanges(values, out);
    }

    /** The same; refused when one is not of a block. */
    SentChanges onlyOf(String block) {
        boolean only =
                Stream.concat(values.keySet().stream(), out.stream()).allMatch(key -> key.startsWith(block + "."));
        if (!only) {
            throw new BadRequestResponse("only keys of '" + block + "' can be changed here");
        }
        return this;
    }
}
