package hotday.signals.channel;

import hotday.core.finding.InputException;
import hotday.core.typed.TypedFile;
import hotday.signals.log.DelimitedText;
import hotday.signals.log.ReaderOptions;
import java.nio.file.Path;
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
        TypedFile typed = TypedFile.read(path);
        ChannelMap map = MapFile.map(typed.root());
        typed.faults().throwIfAny();
        return map;
    }

    /** Reads a recording through this map; throws {@link InputException} with every fault found. */
    public Recording recording(Path log) {
        DelimitedText text = DelimitedText.open(log, reader);
        String name = nameOf(log);
        List<ChannelRule> inOrder =
                rules.keySet().stream().sorted().map(rules::get).toList();
        return new Reading(text, name, time, inOrder, skipText, factsOf(name)).recording();
    }

    private Map<String, Fact> factsOf(String run) {
        Map<String, Fact> stated = new LinkedHashMap<>();
        MapFile.STATES.forEach(s -> stated.put(s, Fact.UNKNOWN));
        stated.putAll(facts);
        stated.putAll(runs.getOrDefault(run, Map.of()));
        return stated;
    }

    /** File name without the ending of a packed file and without its own. */
    static String nameOf(Path log) {
        String name = log.getFileName().toString();
        String unpacked = name.toLowerCase(Locale.ROOT).endsWith(".gz") ? name.substring(0, name.length() - 3) : name;
        int dot = unpacked.lastIndexOf('.');
        return dot <= 0 ? unpacked : unpacked.substring(0, dot);
    }
}
