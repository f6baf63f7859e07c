package hotday.app.cli;

import hotday.signals.expect.Verdict;
import hotday.signals.frame.SampleState;
import hotday.signals.sample.SignalStatistics;
import hotday.study.replay.ReplayReport;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Recordings run through a sheet, for machines. Keys: docs/network.md. */
final class ReplayJson {
    private static final double NANO = 1e9;

    private ReplayJson() {}

    static void print(Console console, ReplayReport report) {
        ObjectNode root = Console.object();
        root.put("sheet", report.title());
        root.put("holds", report.holds());
        root.put("duration_s", report.duration() / NANO);
        frames(root, report);
        ArrayNode lines = root.putArray("translations");
        report.lines().forEach(l -> {
            ObjectNode node = lines.addObject().put("from", l.from()).put("to", l.to());
            side(node.putObject("source"), l.source());
            side(node.putObject("target"), l.target());
            node.put("live", l.live()).put("held", l.held()).put("safe", l.safe());
        });
        ArrayNode verdicts = root.putArray("expectations");
        report.verdicts().forEach(v -> verdict(verdicts.addObject(), v));
        FindingJson.put(root.putArray("findings"), report.findings());
        console.json(root);
    }

    private static void frames(ObjectNode root, ReplayReport report) {
        ArrayNode networks = root.putArray("networks");
        report.networks()
                .forEach(n -> networks.addObject()
                        .put("name", n.name())
                        .put("bus", n.bus())
                        .put("frames", n.frames())
                        .put("passed_over", n.passedOver()));
        ArrayNode listened = root.putArray("listened");
        report.listened()
                .forEach(m -> listened.addObject()
                        .put("message", m.message())
                        .put("taken", m.taken())
                        .put("wrong_checksum", m.wrongChecksum())
                        .put("wrong_counter", m.wrongCounter())
                        .put("lost", m.lost()));
        ArrayNode sent = root.putArray("sent");
        report.sent().forEach(m -> sent.addObject().put("message", m.message()).put("frames", m.frames()));
    }

    private static void side(ObjectNode node, Optional<SignalStatistics> all) {
        node.put("values", all.map(s -> s.of(SampleState.VALID)).orElse(0L));
        node.put("words", all.map(SignalStatistics::texts).orElse(0L));
        node.put("outside", all.map(s -> s.of(SampleState.RESERVED)).orElse(0L));
        number(node, "min", all.map(SignalStatistics::min));
        number(node, "max", all.map(SignalStatistics::max));
        node.put("unit", all.map(SignalStatistics::unit).orElse(""));
        node.put("last_word", all.map(SignalStatistics::lastText).orElse(""));
    }

    private static void number(ObjectNode node, String key, Optional<Double> value) {
        if (value.filter(v -> !Double.isNaN(v)).isPresent()) {
            node.put(key, value.get());
        } else {
            node.putNull(key);
        }
    }

    private static void verdict(ObjectNode node, Verdict v) {
        node.put("name", v.name());
        node.put("holds", v.holds());
        node.put("judged", v.judged());
        node.put("failed", v.failed());
        node.put("file", v.place().file());
        node.put("line", v.place().line());
        node.put("column", v.place().column());
        ArrayNode first = node.putArray("first");
        v.first()
                .forEach(f -> first.addObject()
                        .put("time_s", f.time() / NANO)
                        .put("what", f.what())
                        .put("limit", f.limit()));
    }
}
