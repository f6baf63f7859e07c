package hotday.signals.channel;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.typed.TypedFile;
import hotday.signals.log.ReaderOptions;
import hotday.signals.log.Table;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Which column of a recording means what, in which unit. Read from a small YAML file, docs/channel-map.md; used on any
 * number of recordings of the same make. Immutable.
 */
public final class ChannelMap {
    private final TimeRule time;
    private final Map<ModelChannel, ChannelRule> rules;
    private final Map<String, Fact> facts;
    private final Map<String, Map<String, Fact>> runs;
    private final ReaderOptions reader;
    private final boolean skipText;

    ChannelMap(
            TimeRule time,
            Map<ModelChannel, ChannelRule> rules,
            Map<String, Fact> facts,
            Map<String, Map<String, Fact>> runs,
            ReaderOptions reader,
            boolean skipText) {
        this.time = time;
        this.rules = Map.copyOf(rules);
        this.facts = Map.copyOf(facts);
        this.runs = Map.copyOf(runs);
        this.reader = reader;
        this.skipText = skipText;
    }

    /** Reads a channel map; all its faults come in one {@link InputException}. */
    public static ChannelMap read(Path path) {
        return of(TypedFile.read(path));
    }

    /**
     * The same for text that was read already.
     *
     * @param file what places call it
     */
    public static ChannelMap of(String file, String text) {
        return of(TypedFile.of(file, text));
    }

    private static ChannelMap of(TypedFile typed) {
        ChannelMap map = MapFile.map(typed.root());
        typed.faults().throwIfAny();
        return map;
    }

    /** Header and first rows of a recording as this map has it cut; throws {@link InputException} when there are none. */
    public RecordingHead head(Path log) {
        return RecordingHead.of(log, reader, skipText);
    }

    /** A recording as this map has it cut. */
    public Table table(Path log) {
        return TableFile.open(log, reader);
    }

    /** A recording nobody has said anything about. */
    public static Table tableUnmapped(Path log) {
        return TableFile.open(log, ReaderOptions.auto());
    }

    /** Header and first rows of a recording nobody has said anything about. */
    public static RecordingHead headUnmapped(Path log) {
        return RecordingHead.of(log, ReaderOptions.auto(), false);
    }

    /** What this map says of a recording, to be changed by somebody. */
    public MapDraft draft(Path log) {
        Table text = TableFile.open(log, reader);
        return MapDraft.of(time, inOrder(), factsOf(nameOf(log)), text, head(log));
    }

    /** What keeps a recording from being read with this map, as far as its header tells; empty when nothing does. */
    public List<Finding> faultsOfHeader(Path log) {
        List<Finding> faults = new ArrayList<>();
        MappedColumns header = new MappedColumns(TableFile.open(log, reader), faults, new ArrayList<>());
        header.time(time).filter(c -> !time.clock()).ifPresent(c -> header.timeUnit(time, c));
        header.channels(inOrder());
        return faults;
    }

    private List<ChannelRule> inOrder() {
        return rules.keySet().stream().sorted().map(rules::get).toList();
    }

    /** Reads a recording through this map; throws {@link InputException} with every fault found. */
    public Recording recording(Path log) {
        Table text = TableFile.open(log, reader);
        String name = nameOf(log);
        return new Reading(text, name, time, inOrder(), skipText, factsOf(name)).recording();
    }

    private Map<String, Fact> factsOf(String run) {
        Map<String, Fact> stated = new LinkedHashMap<>();
        MapFile.STATES.forEach(s -> stated.put(s, Fact.UNKNOWN));
        stated.putAll(facts);
        stated.putAll(runs.getOrDefault(run, Map.of()));
        return stated;
    }

    /** Name of a run: that of its file without the ending of a packed one and without its own. */
    public static String nameOf(Path log) {
        String name = log.getFileName().toString();
        String unpacked = name.toLowerCase(Locale.ROOT).endsWith(".gz") ? name.substring(0, name.length() - 3) : name;
        int dot = unpacked.lastIndexOf('.');
        return dot <= 0 ? unpacked : unpacked.substring(0, dot);
    }
}
