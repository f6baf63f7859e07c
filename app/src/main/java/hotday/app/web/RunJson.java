package hotday.app.web;

import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.signals.channel.Channel;
import hotday.signals.channel.Fact;
import hotday.signals.channel.MapDraft;
import hotday.signals.channel.ModelChannel;
import hotday.signals.channel.Recording;
import hotday.signals.channel.RecordingHead;
import hotday.study.shop.Runs;
import io.javalin.http.BadRequestResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Recordings and their maps as the page reads and sends them. */
final class RunJson {
    private static final int LONGEST = 60;
    private static final int MOST_COLUMNS = 4096;
    private static final String CLOCK = "hh:mm:ss";

    private RunJson() {}

    static ObjectNode of(Runs.Run run) {
        return Reply.object()
                .put("name", run.name())
                .put("title", run.title())
                .put("file", run.file().getFileName().toString())
                .put("bytes", run.bytes())
                .put("map", run.map().name().toLowerCase(Locale.ROOT))
                .put("version", run.version());
    }

    static ObjectNode of(Runs.Look look) {
        ObjectNode root = of(look.run());
        ArrayNode columns = root.putArray("columns");
        for (RecordingHead.Column c : look.head().columns()) {
            ObjectNode node = columns.addObject();
            node.put("position", c.position()).put("header", c.header());
            node.put("unit", c.unit().orElse(null));
            ArrayNode examples = node.putArray("examples");
            c.examples().forEach(examples::add);
        }
        root.set("map", map(look));
        ArrayNode possible = root.putArray("possible");
        for (ModelChannel channel : ModelChannel.values()) {
            possible(possible.addObject(), channel);
        }
        PageWording.put(root.putObject("controls"));
        if (look.recording().isPresent()) {
            root.set("recording", recording(look.recording().get()));
        } else {
            root.putNull("recording");
        }
        Reply.all(root.putArray("findings"), look.findings());
        return root;
    }

    private static void possible(ObjectNode node, ModelChannel channel) {
        node.put("channel", channel.key());
        node.put("title", PageWording.title(channel));
        ArrayNode units = node.putArray("units");
        for (Unit unit : channel.quantity().units()) {
            units.add(unit.symbol().isEmpty() ? "1" : unit.symbol());
        }
        if (channel.quantity() == Quantity.PRESSURE_ABSOLUTE) {
            List.of("kPa gauge", "bar gauge", "psi gauge").forEach(units::add);
        }
    }

    private static ObjectNode map(Runs.Look look) {
        MapDraft map = look.map();
        ObjectNode node = Reply.object();
        node.put(
                "from",
                look.run().map() == Runs.MapKind.NONE
                        ? "guess"
                        : look.run().map().name().toLowerCase(Locale.ROOT));
        ObjectNode time = node.putObject("time");
        position(time, map.time().position());
        time.put("unit", map.time().unit().orElse(null));
        time.put("clock", map.time().clock() ? CLOCK : null);
        time.put("step", map.time().step().orElse(null));
        time.put("why", map.time().why());
        ArrayNode channels = node.putArray("channels");
        for (MapDraft.Line line : map.channels()) {
            ObjectNode one = channels.addObject();
            one.put("channel", line.channel().key());
            position(one, line.position());
            one.put("unit", line.unit().orElse(null));
            one.put("constant", line.constant().orElse(null));
            one.put("why", line.why());
        }
        ObjectNode facts = node.putObject("facts");
        for (String state : MapDraft.STATES) {
            facts.put(
                    state, map.facts().getOrDefault(state, Fact.UNKNOWN).name().toLowerCase(Locale.ROOT));
        }
        return node;
    }

    private static void position(ObjectNode node, int position) {
        if (position > 0) {
            node.put("position", position);
        } else {
            node.putNull("position");
        }
    }

    private static ObjectNode recording(Recording recording) {
        ObjectNode node = Reply.object();
        double[] time = recording.time();
        node.put("rows", time.length);
        Reply.number(node, "duration_s", time.length == 0 ? 0.0 : time[time.length - 1] - time[0]);
        ArrayNode channels = node.putArray("channels");
        for (Channel channel : recording.channels()) {
            ObjectNode one = channels.addObject();
            PageUnit unit = PageUnit.of(channel.kind().quantity());
            one.put("channel", channel.kind().key());
            one.put("unit", unit.symbol());
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (double v : channel.values()) {
                low = v < low ? v : low;
                high = v > high ? v : high;
            }
            Reply.number(one, "min", unit.of(low));
            Reply.number(one, "max", unit.of(high));
            one.put("good", channel.good());
            one.put("samples", channel.values().length);
        }
        return node;
    }

    /** A map as it is sent; throws for what the page would never send. What it means is judged by who reads with it. */
    static MapDraft draft(JsonNode body) {
        JsonNode time = body.path("time");
        List<MapDraft.Line> lines = new ArrayList<>();
        for (JsonNode one : body.path("channels")) {
            lines.add(line(one));
        }
        if (lines.stream().map(MapDraft.Line::channel).distinct().count() < lines.size()) {
            throw new BadRequestResponse("a channel may stand in 'channels' only once");
        }
        return new MapDraft(
                new MapDraft.Time(
                        position(time), text(time, "unit"), text(time, "clock").isPresent(), text(time, "step"), ""),
                lines,
                facts(body.path("facts")),
                Map.of());
    }

    private static MapDraft.Line line(JsonNode one) {
        ModelChannel channel = ModelChannel.of(one.path("channel").asString(""))
                .orElseThrow(() -> new BadRequestResponse("there is a channel here that is none"));
        return new MapDraft.Line(channel, position(one), text(one, "unit"), text(one, "constant"), Map.of(), "");
    }

    private static int position(JsonNode node) {
        int position = node.path("position").asInt(0);
        if (position < 0 || position > MOST_COLUMNS) {
            throw new BadRequestResponse("'position' must lie between 1 and " + MOST_COLUMNS);
        }
        return position;
    }

    private static Optional<String> text(JsonNode node, String key) {
        String text = node.path(key).asString("");
        if (text.length() > LONGEST) {
            throw new BadRequestResponse("'" + key + "' may have " + LONGEST + " letters");
        }
        return Optional.of(text).filter(t -> !t.isBlank());
    }

    private static Map<String, Fact> facts(JsonNode node) {
        Map<String, Fact> facts = new LinkedHashMap<>();
        for (String state : MapDraft.STATES) {
            String word = node.path(state).asString("unknown");
            facts.put(
                    state,
                    switch (word) {
                        case "on" -> Fact.ON;
                        case "off" -> Fact.OFF;
                        case "unknown" -> Fact.UNKNOWN;
                        default -> throw new BadRequestResponse("'" + state + "' is on, off or unknown");
                    });
        }
        return facts;
    }
}
