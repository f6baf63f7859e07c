package hotday.signals.channel;

import hotday.signals.log.Table;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A channel map of one recording's own, laid out column by column: as somebody fills it in, and as it is written. What it says is judged when
 * it is read as a {@link ChannelMap}.
 *
 * @param channels one line a channel
 * @param facts by state, see docs/channel-map.md
 * @param reader keys of the block {@code reader}, as typed
 */
public record MapDraft(Time time, List<Line> channels, Map<String, Fact> facts, Map<String, String> reader) {
    /** States of a run that its facts may tell. */
    public static final List<String> STATES = MapFile.STATES;

    public MapDraft {
        channels = List.copyOf(channels);
        facts = Map.copyOf(facts);
        reader = Map.copyOf(reader);
    }

    /**
     * Where time stands.
     *
     * @param position of the column, from 1; 0 for none
     * @param unit of a column of numbers
     * @param clock true for stamps
     * @param step from row to row as typed, of a recording without a time column
     * @param why it was taken, for people; empty when somebody said so
     */
    public record Time(int position, Optional<String> unit, boolean clock, Optional<String> step, String why) {
        static final Time NONE = new Time(0, Optional.empty(), false, Optional.empty(), "");

        /** False where nothing tells time yet. */
        public boolean told() {
            return position > 0 || step.isPresent();
        }
    }

    /**
     * One channel.
     *
     * @param position of the column, from 1; 0 for a constant
     * @param unit as typed
     * @param constant as typed, with its unit
     * @param more further keys of the channel, in YAML
     * @param why the column was taken, for people; empty when somebody said so
     */
    public record Line(
            ModelChannel channel,
            int position,
            Optional<String> unit,
            Optional<String> constant,
            Map<String, String> more,
            String why) {
        public Line {
            more = Map.copyOf(more);
        }
    }

    /** The same with what another map says besides of channels that stay in their columns and units: lag, range and the like. */
    public MapDraft keeping(MapDraft other) {
        List<Line> lines = new ArrayList<>();
        for (Line line : channels) {
            Map<String, String> more = other.channels().stream()
                    .filter(o ->
                            o.channel() == line.channel() && o.position() == line.position() && line.position() > 0)
                    .filter(o -> o.unit().equals(line.unit()))
                    .findFirst()
                    .map(Line::more)
                    .orElse(Map.of());
            lines.add(new Line(line.channel(), line.position(), line.unit(), line.constant(), more, line.why()));
        }
        return new MapDraft(time, lines, facts, other.reader());
    }

    /** The map as a file. */
    public byte[] file(RecordingHead head) {
        StringBuilder out = new StringBuilder(
                "# Channel map of this recording alone, written by the page. Keys: docs/channel-map.md\n");
        out.append("time: ").append(block(timeKeys(head))).append('\n');
        out.append(channels.isEmpty() ? "channels: {}\n" : "channels:\n");
        for (Line line : channels) {
            out.append("  ")
                    .append(line.channel().key())
                    .append(": ")
                    .append(block(keys(line, head)))
                    .append('\n');
        }
        Map<String, String> stated = new TreeMap<>();
        facts.forEach((state, fact) -> stated.put(state, fact.name().toLowerCase(Locale.ROOT)));
        if (!stated.isEmpty()) {
            out.append("facts: ").append(block(quoted(stated))).append('\n');
        }
        if (!reader.isEmpty()) {
            out.append("reader: ").append(block(quoted(new TreeMap<>(reader)))).append('\n');
        }
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private Map<String, String> timeKeys(RecordingHead head) {
        Map<String, String> keys = new LinkedHashMap<>();
        column(keys, time.position(), head);
        time.step().ifPresent(s -> keys.put("step", quoted(s)));
        if (time.clock()) {
            keys.put("clock", quoted("hh:mm:ss"));
        }
        time.unit().ifPresent(u -> keys.put("unit", quoted(u)));
        return keys;
    }

    private static Map<String, String> keys(Line line, RecordingHead head) {
        Map<String, String> keys = new LinkedHashMap<>();
        column(keys, line.position(), head);
        line.unit().ifPresent(u -> keys.put("unit", quoted(u)));
        line.constant().ifPresent(c -> keys.put("constant", quoted(c)));
        keys.putAll(new TreeMap<>(line.more()));
        return keys;
    }

    private static void column(Map<String, String> keys, int position, RecordingHead head) {
        if (position > 0 && position <= head.columns().size()) {
            String name = head.columns().get(position - 1).header();
            if (!name.isBlank()) {
                keys.put("column", quoted(name));
            }
        }
        if (position != 0) {
            keys.put("position", String.valueOf(position));
        }
    }

    private static Map<String, String> quoted(Map<String, String> plain) {
        Map<String, String> out = new LinkedHashMap<>();
        plain.forEach((key, value) -> out.put(key, quoted(value)));
        return out;
    }

    private static String block(Map<String, String> keys) {
        List<String> all = new ArrayList<>();
        keys.forEach((key, value) -> all.add(key + ": " + value));
        return "{" + String.join(", ", all) + "}";
    }

    /** Any text as one value of YAML, in double quotes. */
    static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                out.append('\\').append((char) c);
            } else if ((c >= ' ' && c < 0x7F) || (c > 0xA0 && c < 0x250)) {
                out.append((char) c);
            } else {
                out.append(String.format(
                        Locale.ROOT, "\\U%08X", Character.isSurrogate((char) c) && c < 0x10000 ? 0xFFFD : c));
            }
        });
        return out.append('"').toString();
    }

    /** What a map says of one recording: columns found, runs' facts resolved. Channels that the file lacks are left out. */
    static MapDraft of(
            TimeRule time, List<ChannelRule> rules, Map<String, Fact> facts, Table text, RecordingHead head) {
        MappedColumns header = new MappedColumns(text, new ArrayList<>(), new ArrayList<>());
        int at = header.time(time).map(i -> i + 1).orElse(0);
        Optional<String> unit = time.unit().map(u -> u.symbol()).or(() -> inHeader(head, at));
        List<Line> lines = new ArrayList<>();
        for (ChannelRule rule : rules) {
            if (rule.constant().isPresent()) {
                lines.add(new Line(
                        rule.kind(),
                        0,
                        Optional.empty(),
                        Optional.of(rule.typed().get("constant")),
                        Map.of(),
                        ""));
            } else {
                header.column(rule)
                        .ifPresent(i -> lines.add(new Line(
                                rule.kind(),
                                i + 1,
                                rule.unit().or(() -> inHeader(head, i + 1)),
                                Optional.empty(),
                                more(rule),
                                "")));
            }
        }
        return new MapDraft(
                new Time(at, time.clock() ? Optional.empty() : unit, time.clock(), step(time), ""),
                lines,
                facts,
                head.reader());
    }

    private static Optional<String> step(TimeRule time) {
        return time.counted() ? Optional.of(time.step() + " s") : Optional.empty();
    }

    private static Map<String, String> more(ChannelRule rule) {
        Map<String, String> more = new TreeMap<>(rule.typed());
        more.remove("constant");
        return more;
    }

    private static Optional<String> inHeader(RecordingHead head, int position) {
        return position == 0
                ? Optional.empty()
                : head.columns().get(position - 1).unit();
    }
}
