package hotday.app.web;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.study.shop.Bench;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Reads what is sent, writes answers. */
final class Reply {
    static final String JSON = "application/json";
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private Reply() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static String text(ObjectNode node) {
        return MAPPER.writeValueAsString(node);
    }

    /** The object that was sent. */
    static JsonNode body(Context ctx) {
        JsonNode body = MAPPER.readTree(ctx.bodyAsBytes());
        if (body == null || !body.isObject()) {
            throw new BadRequestResponse("an object is expected");
        }
        return body;
    }

    static void json(Context ctx, int status, ObjectNode node) {
        ctx.status(status).contentType(JSON).result(MAPPER.writeValueAsBytes(node));
    }

    static void error(Context ctx, int status, String key, String message) {
        json(ctx, status, object().put("error", key).put("message", message));
    }

    /** The sheet has faults. */
    static void findings(Context ctx, int status, List<Finding> findings) {
        ObjectNode node = object().put("in_order", false);
        all(node.putArray("findings"), findings);
        json(ctx, status, node);
    }

    static void all(ArrayNode array, List<Finding> findings) {
        for (Finding finding : findings) {
            ObjectNode node = array.addObject();
            node.put("severity", finding.severity().name().toLowerCase(java.util.Locale.ROOT));
            node.put("key", finding.key());
            node.put("message", finding.message());
            node.put("sheet_key", Bench.key(finding).orElse(null));
            finding.place().filter(p -> Bench.key(finding).isEmpty()).ifPresent(p -> at(node, p));
        }
    }

    private static void at(ObjectNode node, Place place) {
        if (place.line() > 0) {
            String file = place.file();
            node.put("file", file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1));
            node.put("line", place.line()).put("column", place.column());
        }
    }

    static void number(ObjectNode node, String key, double value) {
        if (Double.isFinite(value)) {
            node.put(key, value);
        } else {
            node.putNull(key);
        }
    }
}
