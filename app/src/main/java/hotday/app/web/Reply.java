package hotday.app.web;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.finding.Wording;
import hotday.study.shop.Bench;
import hotday.study.workspace.AtomicFile;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Reads what is sent, writes answers. */
final class Reply {
    static final String JSON = "application/json";
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private static final String MAP_FILE = "channels.yaml";

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

    /** What is said when the disk does not take a file; empty when something is wrong with what was sent. */
    static Optional<String> notWritten(InputException e) {
        return e.findings().stream()
                .filter(f -> f.key().equals(AtomicFile.CANNOT_WRITE))
                .findFirst()
                .map(Reply::sentence);
    }

    /** A finding about a file as one sentence, the file by its bare name. */
    private static String sentence(Finding finding) {
        return finding.place().map(p -> bare(p.file()) + " ").orElse("")
                + finding.sentence().said(PageWording.PAGE);
    }

    private static String bare(String file) {
        return file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
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
            node.put("message", finding.sentence().said(inSheet(finding) ? Wording.FILE : PageWording.PAGE));
            node.put("sheet_key", Bench.key(finding).orElse(null));
            Optional<String> control = PageWording.control(finding);
            control.ifPresent(key -> node.put("control", key));
            finding.place()
                    .filter(p -> control.isEmpty() || !inMap(p))
                    .filter(p -> Bench.key(finding).isEmpty())
                    .ifPresent(p -> at(node, p));
        }
    }

    /** Keys of a sheet are what the page calls its fields. */
    private static boolean inSheet(Finding finding) {
        return Bench.key(finding).isPresent()
                || finding.place()
                        .filter(p -> p.file().endsWith(".yaml") && !inMap(p))
                        .isPresent();
    }

    /** Of a map the page shows controls, not lines. */
    private static boolean inMap(Place place) {
        return place.file().endsWith(MAP_FILE);
    }

    private static void at(ObjectNode node, Place place) {
        if (place.line() > 0) {
            node.put("file", bare(place.file()));
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
