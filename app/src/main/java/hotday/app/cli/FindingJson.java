package hotday.app.cli;

import hotday.core.finding.Finding;
import java.util.List;
import java.util.Locale;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Findings for machines: key, severity, message, place and the numbers behind it. */
final class FindingJson {
    private FindingJson() {}

    static void put(ArrayNode all, List<Finding> findings) {
        for (Finding f : findings) {
            ObjectNode node = all.addObject();
            node.put("key", f.key());
            node.put("severity", f.severity().name().toLowerCase(Locale.ROOT));
            node.put("message", f.message());
            f.place()
                    .ifPresent(p ->
                            node.put("file", p.file()).put("line", p.line()).put("column", p.column()));
            f.values().forEach((key, value) -> node.put(key, ((Number) value).doubleValue()));
        }
    }
}
