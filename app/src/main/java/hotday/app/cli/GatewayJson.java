package hotday.app.cli;

import hotday.core.finding.InputException;
import hotday.signals.gateway.GatewayReport;
import hotday.signals.gateway.GatewayReport.BusLine;
import hotday.signals.gateway.GatewayReport.MessageLine;
import hotday.signals.gateway.GatewayReport.PathLine;
import hotday.signals.gateway.GatewayReport.SignalLine;
import java.util.OptionalLong;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A checked translation sheet for machines. Keys: docs/network.md. */
final class GatewayJson {
    private static final double MILLI = 1e6;

    private GatewayJson() {}

    static void print(Console console, GatewayReport report) {
        ObjectNode root = Console.object();
        root.put("sheet", report.title());
        root.put("holds", report.holds());
        ArrayNode buses = root.putArray("networks");
        report.buses().forEach(bus -> bus(buses.addObject(), bus));
        ArrayNode signals = root.putArray("translations");
        report.signals().forEach(s -> signal(signals.addObject(), s));
        ArrayNode paths = root.putArray("paths");
        report.paths().forEach(p -> path(paths.addObject(), p));
        FindingJson.put(root.putArray("findings"), report.findings());
        console.json(root);
    }

    static void refused(Console console, InputException wrong) {
        ObjectNode root = Console.object();
        root.put("refused", true);
        FindingJson.put(root.putArray("findings"), wrong.findings());
        console.json(root);
    }

    private static void bus(ObjectNode node, BusLine bus) {
        node.put("name", bus.name());
        node.put("bit_rate_bit_s", bus.bitRate());
        node.put("load_percent", 100 * bus.load());
        node.put("load_without_stuff_bits_percent", 100 * bus.bareLoad());
        ArrayNode messages = node.putArray("messages");
        bus.messages().forEach(m -> message(messages.addObject(), m));
    }

    private static void message(ObjectNode node, MessageLine m) {
        node.put("name", m.name());
        node.put("id", m.id());
        node.put("extended", m.extended());
        node.put("bytes", m.bytes());
        node.put("from", m.sender());
        ms(node, "every_ms", m.period());
        ms(node, "jitter_ms", OptionalLong.of(m.jitter()));
        ms(node, "response_ms", m.response());
        ms(node, "deadline_ms", m.deadline());
    }

    private static void signal(ObjectNode node, SignalLine s) {
        if (s.from().isEmpty()) {
            node.putNull("from");
        } else {
            node.put("from", s.from());
        }
        node.put("to", s.to());
        node.put("how", s.how());
        ms(node, "oldest_ms", s.oldest());
        node.put(s.from().isEmpty() ? "fixed" : "safe", s.safe());
    }

    private static void path(ObjectNode node, PathLine path) {
        node.put("name", path.name());
        ms(node, "limit_ms", OptionalLong.of(path.limit()));
        ms(node, "worst_ms", path.worst());
        ArrayNode parts = node.putArray("parts");
        path.parts().forEach(p -> ms(parts.addObject().put("what", p.what()), "ms", p.time()));
    }

    private static void ms(ObjectNode node, String key, OptionalLong ns) {
        if (ns.isEmpty()) {
            node.putNull(key);
        } else {
            node.put(key, ns.getAsLong() / MILLI);
        }
    }
}
