package hotday.app.cli;

import hotday.signals.frame.Frame;
import hotday.signals.frame.SampleState;
import hotday.signals.framelog.BusCount;
import hotday.signals.framelog.IdentifierCount;
import hotday.signals.sample.SignalStatistics;
import hotday.study.decode.LogSummary;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A recording of frames for machines. Keys: docs/decode.md. */
final class FrameLogJson {
    private FrameLogJson() {}

    static void print(Console console, FrameLogReport report) {
        LogSummary log = report.log();
        ObjectNode root = Console.object();
        root.put("file", log.file()).put("layout", log.layout());
        root.put("frames", log.frames()).put("broken_lines", log.brokenLines());
        number(root, "first_stamp_s", log.firstStamp());
        number(root, "duration_s", log.duration());
        number(root, "bitrate_bit_s", report.bitRate());
        number(root, "unknown_percent", 100 * log.counts().unknownShare());
        ArrayNode buses = root.putArray("buses");
        for (int i = 0; i < log.counts().buses().size(); i++) {
            put(buses.addObject(), report, i);
        }
        ArrayNode identifiers = root.putArray("identifiers");
        log.counts().identifiers().forEach(i -> put(identifiers.addObject(), log, i));
        ArrayNode signals = root.putArray("signals");
        log.signals().forEach(s -> put(signals.addObject(), s));
        DecodeJson.put(root.putArray("findings"), report.findings());
        console.json(root);
    }

    /** Null where it is not known. */
    private static void number(ObjectNode to, String key, double value) {
        if (Double.isFinite(value)) {
            to.put(key, value);
        } else {
            to.putNull(key);
        }
    }

    private static void put(ObjectNode to, FrameLogReport report, int number) {
        BusCount bus = report.log().counts().buses().get(number);
        to.put("bus", report.log().busName(number)).put("frames", bus.frames());
        to.put("data", bus.of(Frame.Kind.DATA))
                .put("remote", bus.of(Frame.Kind.REMOTE))
                .put("errors", bus.of(Frame.Kind.ERROR));
        to.put("fd", bus.flexible()).put("unknown", bus.unknown());
        number(to, "unstuffed_bit_s", report.log().fewestBitsPerSecond(bus));
        number(to, "worst_bit_s", report.log().mostBitsPerSecond(bus));
        number(to, "busiest_second_bit_s", report.log().duration() > 0 ? bus.busiestSecond() : Double.NaN);
        number(to, "unstuffed_load_percent", report.fewestLoad(bus));
        number(to, "worst_load_percent", report.mostLoad(bus));
    }

    private static void put(ObjectNode to, LogSummary log, IdentifierCount i) {
        to.put("bus", log.busName(i.bus())).put("id", i.id()).put("extended", i.extended());
        to.put("name", i.name()).put("known", i.known()).put("frames", i.count());
        to.put("min_bytes", i.shortest()).put("max_bytes", i.longest());
        number(to, "rate_Hz", i.rate());
        number(to, "period_s", i.period());
        number(to, "jitter_s", i.jitter());
        number(to, "longest_gap_s", i.longestStep());
    }

    private static void put(ObjectNode to, SignalStatistics s) {
        to.put("name", s.name()).put("unit", s.unit()).put("samples", s.count());
        number(to, "min", s.min());
        number(to, "mean", s.mean());
        number(to, "max", s.max());
        ObjectNode states = to.putObject("states");
        for (SampleState state : SampleState.values()) {
            states.put(state.word(), s.of(state));
        }
        to.put("texts", s.texts()).put("last_text", s.texts() == 0 ? null : s.lastText());
    }
}
