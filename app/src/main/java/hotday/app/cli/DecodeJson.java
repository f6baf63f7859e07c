package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.signals.dbc.DbcFile;
import hotday.signals.dbc.Message;
import hotday.signals.dbc.Multiplexing;
import hotday.signals.dbc.Signal;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The description of a network for machines. Keys: docs/decode.md. */
final class DecodeJson {
    private DecodeJson() {}

    static void print(Console console, DbcFile file) {
        ObjectNode root = Console.object();
        root.put("file", file.name());
        root.put("encoding", file.encoding().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        ArrayNode nodes = root.putArray("nodes");
        file.nodes().forEach(nodes::add);
        ArrayNode messages = root.putArray("messages");
        file.messages().forEach(m -> put(messages.addObject(), m));
        put(root.putArray("findings"), file.findings());
        console.json(root);
    }

    static void refused(Console console, InputException wrong) {
        ObjectNode root = Console.object();
        root.put("refused", true);
        put(root.putArray("findings"), wrong.findings());
        console.json(root);
    }

    private static void put(ObjectNode to, Message m) {
        to.put("id", m.id()).put("extended", m.extended()).put("name", m.name()).put("length", m.length());
        to.put("sender", m.sender());
        ArrayNode more = to.putArray("more_senders");
        m.moreSenders().forEach(more::add);
        to.put("comment", m.comment());
        ObjectNode attributes = to.putObject("attributes");
        m.attributes().forEach(attributes::put);
        ArrayNode signals = to.putArray("signals");
        m.signals().forEach(s -> put(signals.addObject(), s));
    }

    private static void put(ObjectNode to, Signal s) {
        to.put("name", s.name()).put("start_bit", s.start()).put("bits", s.bits());
        to.put("byte_order", s.bigEndian() ? "big" : "little")
                .put("form", s.form().word());
        to.put("factor", s.factor())
                .put("offset", s.offset())
                .put("min", s.min())
                .put("max", s.max());
        to.put("unit", s.unit());
        ArrayNode receivers = to.putArray("receivers");
        s.receivers().forEach(receivers::add);
        put(to, s.multiplexing());
        ObjectNode words = to.putObject("words");
        new TreeMap<>(s.words()).forEach((raw, word) -> words.put(String.valueOf(raw), word));
        to.put("comment", s.comment());
        ObjectNode attributes = to.putObject("attributes");
        s.attributes().forEach(attributes::put);
        to.put("usable", s.usable());
    }

    private static void put(ObjectNode to, Multiplexing m) {
        to.put("multiplexor", m.multiplexor());
        to.put("multiplexed_by", m.by().isEmpty() ? null : m.by());
        ArrayNode when = to.putArray("when");
        m.values().forEach(v -> when.addArray().add(v.low()).add(v.high()));
    }

    static void put(ArrayNode all, List<Finding> findings) {
        for (Finding f : findings) {
            ObjectNode one = all.addObject().put("key", f.key());
            one.put("severity", f.severity().name().toLowerCase(Locale.ROOT)).put("message", f.message());
            f.place()
                    .ifPresent(
                            p -> one.put("file", p.file()).put("line", p.line()).put("column", p.column()));
        }
    }
}
