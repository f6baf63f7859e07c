package hotday.study.shop;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.finding.Sentence;
import hotday.core.finding.Setting;
import hotday.signals.channel.ChannelGuess;
import hotday.signals.channel.ChannelMap;
import hotday.signals.channel.MapDraft;
import hotday.signals.channel.Recording;
import hotday.signals.channel.RecordingHead;
import hotday.signals.log.Table;
import hotday.study.prove.MissingChannels;
import hotday.study.workspace.ArrivingFile;
import hotday.study.workspace.AtomicFile;
import hotday.study.workspace.Leftovers;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Recordings of a shop: its folder {@code runs}, each with a map of its own ({@code NAME.channels.yaml}) or read by the shop's
 * {@code channels.yaml}. One is read at a time, so that memory does not grow with the people who look. Shared between threads.
 */
public final class Runs {
    /** Key of the fault that a name is no name for a recording. */
    public static final String WRONG_NAME = "run-name-wrong";

    /** Bytes of one file as sent. */
    public static final long LARGEST = 256_000_000;

    private static final int MOST_ROWS = 10_000_000;
    private static final int LONGEST_TITLE = 400; // bytes

    private final Path shop;
    private final Path folder;
    private final Path shopMap;
    private final Map<Path, Known> known = new ConcurrentHashMap<>();
    private final Object reading = new Object();

    /** Which map reads a recording. */
    public enum MapKind {
        OWN,
        SHOP,
        /** Neither: what its columns mean can only be guessed. */
        NONE
    }

    /**
     * A recording in the folder.
     *
     * @param name of the run, letters of ASCII
     * @param title the name it was sent with
     * @param bytes as it lies there
     * @param version changes with file and map
     */
    public record Run(String name, String title, Path file, long bytes, MapKind map, String version) {}

    /**
     * A recording and what its columns mean.
     *
     * @param head its header and first rows
     * @param map its own, the shop's, or guessed
     * @param recording as read by that; empty when it cannot be
     * @param findings faults, or what reading it showed
     */
    public record Look(
            Run run, RecordingHead head, MapDraft map, Optional<Recording> recording, List<Finding> findings) {
        public Look {
            findings = List.copyOf(findings);
        }
    }

    /**
     * What came of a file that was sent.
     *
     * @param name of the run
     * @param run it is now; empty when another recording has this name
     * @param added false when these bytes were there already
     */
    public record Sent(String name, Optional<Run> run, boolean added) {}

    private record Known(long bytes, long modified, String digest) {}

    Runs(Path shop) {
        this.shop = shop;
        this.folder = shop.resolve("runs");
        this.shopMap = shop.resolve("channels.yaml");
        Leftovers.remove(folder);
    }

    /** All, by name. */
    public List<Run> all() {
        Shop.requireThere(shop);
        Map<String, Run> all = new TreeMap<>();
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> found = Files.newDirectoryStream(folder)) {
                for (Path file : found) {
                    run(file).ifPresent(run -> all.merge(run.name(), run, Runs::first));
                }
            } catch (IOException e) {
                throw InputException.at(
                        Place.of(folder.toString()), "not-readable", "cannot be read: " + AtomicFile.reason(e));
            }
        }
        return List.copyOf(all.values());
    }

    private static Run first(Run a, Run b) {
        return a.file().compareTo(b.file()) <= 0 ? a : b;
    }

    /** The recording of that name. */
    public Optional<Run> find(String name) {
        return all().stream().filter(run -> run.name().equals(name)).findFirst();
    }

    private Optional<Run> run(Path file) {
        if (!RunName.SAFE.matcher(file.getFileName().toString()).matches()
                || !Files.isRegularFile(file)
                || !within(file)) {
            return Optional.empty();
        }
        try {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
            String name = ChannelMap.nameOf(file);
            MapKind kind = kind(file, name);
            String map = kind == MapKind.NONE ? "" : Files.readString(mapFile(kind, name), StandardCharsets.UTF_8);
            return Optional.of(
                    new Run(name, title(name), file, now.size(), kind, Digest.of(digest(file, now) + kind + map)));
        } catch (IOException e) {
            return Optional.empty(); // taken away in between, or not ours to read
        }
    }

    private Path titleFile(String name) {
        return folder.resolve(name + ".title");
    }

    /** As it was sent; the name where nothing else is known. */
    private String title(String name) {
        Path file = titleFile(name);
        try {
            boolean there = Files.isRegularFile(file) && within(file) && Files.size(file) <= LONGEST_TITLE;
            String title =
                    there ? Files.readString(file, StandardCharsets.UTF_8).strip() : "";
            return title.isEmpty() || title.chars().anyMatch(Character::isISOControl) ? name : title;
        } catch (IOException e) {
            return name; // not text, or taken away in between
        }
    }

    /** Only where it says more than the name, or something older does. */
    private void keepTitle(String name, String title) {
        Path file = titleFile(name);
        byte[] line = (title + "\n").getBytes(StandardCharsets.UTF_8);
        if ((!title.equals(name) && line.length <= LONGEST_TITLE) || Files.exists(file)) {
            AtomicFile.write(file, out -> out.write(line));
        }
    }

    private boolean within(Path file) {
        try {
            return file.toRealPath().startsWith(folder.toRealPath());
        } catch (IOException e) {
            return false;
        }
    }

    private String digest(Path file, BasicFileAttributes now) throws IOException {
        Known before = known.get(file);
        long modified = now.lastModifiedTime().toMillis();
        if (before == null || before.bytes() != now.size() || before.modified() != modified) {
            before = new Known(now.size(), modified, Digest.of(file));
            known.put(file, before);
        }
        return before.digest();
    }

    private Path mapFile(MapKind kind, String name) {
        return kind == MapKind.OWN ? folder.resolve(name + ".channels.yaml") : shopMap;
    }

    private MapKind kind(Path file, String name) {
        if (Files.isRegularFile(mapFile(MapKind.OWN, name))) {
            return MapKind.OWN;
        }
        try {
            boolean fits = Files.isRegularFile(shopMap)
                    && ChannelMap.read(shopMap).faultsOfHeader(file).isEmpty();
            return fits ? MapKind.SHOP : MapKind.NONE;
        } catch (InputException wrong) {
            return MapKind.NONE;
        }
    }

    /**
     * Takes a file that is sent: streamed into a file without a name, looked through, then moved to its name. Throws {@link InputException} for
     * what is no recording; nothing is left of it.
     */
    public Sent take(String file, InputStream body) {
        RunName name = RunName.of(file)
                .orElseThrow(
                        () -> InputException.at(
                                Place.of("file"),
                                WRONG_NAME,
                                "a recording has a name of at most " + RunName.LONGEST
                                        + " characters with at least one letter or digit"
                                        + " of a-z and 0-9 (or one that can be spelt so, as oe for \u00F6) that does not begin with a dot,"
                                        + " and ends in .csv, .txt, .tsv or .log, packed with gzip or not, or in .parquet, .mf4 or .mdf"));
        Shop.requireThere(shop);
        Leftovers.remove(folder);
        try (ArrivingFile arriving = ArrivingFile.receive(folder, file, body, LARGEST)) {
            synchronized (reading) {
                requireRecording(arriving.path(), file);
            }
            return named(arriving, name);
        }
    }

    private synchronized Sent named(ArrivingFile arriving, RunName sent) {
        Path target = folder.resolve(sent.file());
        String name = ChannelMap.nameOf(target);
        Optional<Run> there = find(name);
        if (there.isEmpty() && !Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            keepTitle(name, sent.title());
            arriving.moveTo(target);
            return new Sent(name, run(target), true);
        }
        boolean same = there.isPresent()
                && arriving.digest().equals(known.get(there.get().file()).digest());
        return new Sent(name, there.filter(run -> same), false);
    }

    /** Through all of it once: text with a header, rows, no more of them than can be read. */
    private void requireRecording(Path arrived, String name) {
        try {
            Table table = cut(arrived);
            int[] rows = new int[1];
            table.rows(row -> rows[0]++, MOST_ROWS + 1);
            if (rows[0] == 0) {
                throw InputException.at(
                        Place.of(name), "no-rows", "the file has a header and no rows: nothing was recorded");
            }
            if (rows[0] > MOST_ROWS) {
                throw InputException.at(
                        Place.of(name), "too-many-rows", "has more than " + MOST_ROWS + " rows: cut it into runs");
            }
        } catch (InputException wrong) {
            throw new InputException(
                    wrong.findings().stream().map(f -> called(f, name)).toList());
        }
    }

    /** As the shop's map has it cut, or else by its own looks. */
    private Table cut(Path arrived) {
        if (Files.isRegularFile(shopMap)) {
            try {
                ChannelMap map = ChannelMap.read(shopMap);
                if (map.faultsOfHeader(arrived).isEmpty()) {
                    return map.table(arrived);
                }
            } catch (InputException wrong) {
                // then the file's own looks say what is wrong with it
            }
        }
        return ChannelMap.tableUnmapped(arrived);
    }

    private static Finding called(Finding finding, String name) {
        return new Finding(
                finding.key(),
                finding.severity(),
                finding.place().map(p -> new Place(name, p.line(), p.column())),
                finding.sentence(),
                finding.values());
    }

    /** Reads a recording with its map, or with what can be guessed. */
    public Look look(Run run) {
        synchronized (reading) {
            if (run.map() != MapKind.NONE) {
                Path file = mapFile(run.map(), run.name());
                try {
                    ChannelMap map = ChannelMap.read(file);
                    return read(run, map, map.draft(run.file()));
                } catch (InputException wrong) {
                    MapDraft guess = ChannelGuess.of(ChannelMap.headUnmapped(run.file()));
                    return new Look(
                            run, ChannelMap.headUnmapped(run.file()), guess, Optional.empty(), wrong.findings());
                }
            }
            RecordingHead head = ChannelMap.headUnmapped(run.file());
            return tried(run, head, ChannelGuess.of(head));
        }
    }

    /** What a map would make of a recording; nothing is written. */
    public Look tried(Run run, MapDraft draft) {
        synchronized (reading) {
            Basis basis = basis(run);
            return tried(run, basis.head(), draft.keeping(basis.draft()));
        }
    }

    private record Basis(RecordingHead head, MapDraft draft) {}

    /** What stands before somebody changes it. */
    private Basis basis(Run run) {
        if (run.map() != MapKind.NONE) {
            try {
                ChannelMap map = ChannelMap.read(mapFile(run.map(), run.name()));
                return new Basis(map.head(run.file()), map.draft(run.file()));
            } catch (InputException wrong) {
                // a map that somebody broke says nothing; it is about to be replaced
            }
        }
        RecordingHead head = ChannelMap.headUnmapped(run.file());
        return new Basis(head, ChannelGuess.of(head));
    }

    private Look tried(Run run, RecordingHead head, MapDraft draft) {
        try {
            return read(run, map(run, head, draft), draft);
        } catch (InputException wrong) {
            return new Look(run, head, draft, Optional.empty(), wrong.findings());
        }
    }

    private ChannelMap map(Run run, RecordingHead head, MapDraft draft) {
        if (!draft.time().told()) {
            throw new InputException(Finding.fault(
                    "no-time-column",
                    Place.of(run.file().toString()),
                    Sentence.of(
                            "no column of this recording is named like time or looks like it. If one holds it, ",
                            new Setting("time.column", "it", "name it in the map, 'time: {column: ...}'"),
                            ". If none does and the rows were written at equal steps, ",
                            new Setting("time.step", "0.1 s", "say how far they are apart, 'time: {step: 0.1 s}'"),
                            ". If the names stand further down, say so with ",
                            new Setting("reader.header", "2", "'reader: {header: 2}' in the channel map"),
                            ". Else record again with the time.")));
        }
        return ChannelMap.of(
                mapFile(MapKind.OWN, run.name()).getFileName().toString(),
                new String(draft.file(head), StandardCharsets.UTF_8));
    }

    private static Look read(Run run, ChannelMap map, MapDraft draft) {
        RecordingHead head = map.head(run.file());
        try {
            Recording recording = recording(run, map);
            List<Finding> findings = new ArrayList<>(recording.findings());
            findings.addAll(MissingChannels.warnings(recording));
            return new Look(run, head, draft, Optional.of(recording), findings);
        } catch (InputException wrong) {
            return new Look(run, head, draft, Optional.empty(), wrong.findings());
        }
    }

    private static Recording recording(Run run, ChannelMap map) {
        try {
            return map.recording(run.file());
        } catch (OutOfMemoryError e) {
            throw InputException.at(
                    Place.of(run.file().toString()),
                    "not-enough-memory",
                    "is too long for this machine; cut it into runs, or map fewer columns");
        }
    }

    /**
     * Writes a map of a recording's own. Throws {@link InputException} when the recording cannot be read by it.
     *
     * @param version of the run that it was made for; another one is not overwritten
     * @return empty when file or map were changed elsewhere in between, and nothing was written
     */
    public synchronized Optional<Look> saveMap(String name, String version, MapDraft draft) {
        Run run = find(name).orElseThrow();
        if (!run.version().equals(version)) {
            return Optional.empty();
        }
        Basis basis = basis(run);
        MapDraft whole = draft.keeping(basis.draft());
        synchronized (reading) {
            recording(run, map(run, basis.head(), whole));
        }
        byte[] content = whole.file(basis.head());
        AtomicFile.write(mapFile(MapKind.OWN, name), out -> out.write(content));
        return find(name).map(this::look);
    }

    /** A recording as its map has it; throws {@link InputException} when there is none, or no map. */
    public Recording recording(String name) {
        Run run = find(name)
                .orElseThrow(() -> InputException.at(
                        Place.of(name), "no-such-run", "there is no recording '" + name + "' in this shop"));
        if (run.map() == MapKind.NONE) {
            throw InputException.at(
                    Place.of(name), "run-without-map", "nobody has said yet what the columns of '" + name + "' mean");
        }
        synchronized (reading) {
            return recording(run, ChannelMap.read(mapFile(run.map(), name)));
        }
    }
}
