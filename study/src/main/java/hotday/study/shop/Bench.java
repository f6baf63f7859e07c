package hotday.study.shop;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.typed.Overlay;
import hotday.core.typed.TypedEdit;
import hotday.core.typed.TypedText;
import hotday.study.workspace.AtomicFile;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Cases;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.sheet.BuildSheet;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One build sheet on the bench: read, tried with other values, saved. What is tried never touches the file; what is saved is written whole or
 * not at all, and only over the text that was read. Shared between threads.
 */
public final class Bench {
    private static final String SOURCE = "page";
    private static final String UNREADABLE =
            "unreadable"; // version of a sheet that is no text: there is nothing to lay changes over

    private final String id;
    private final Path shop;
    private final Path path;
    private Known known;

    /** What the sheet on the disk answers, until it or what lies beside it changes. */
    private record Known(String basis, Opened opened) {}

    /**
     * The sheet as it lies on the disk.
     *
     * @param version changes with every change of the text
     * @param sheet empty when it has faults
     * @param answer likewise
     * @param typed single values as typed, by key; also of a sheet with faults, as far as it can be taken apart
     * @param findings faults, or what should be looked at
     */
    public record Opened(
            String version,
            String text,
            Optional<BuildSheet> sheet,
            Optional<Answer> answer,
            Map<String, String> typed,
            List<Finding> findings) {
        public Opened {
            typed = Collections.unmodifiableMap(new LinkedHashMap<>(typed));
            findings = List.copyOf(findings);
        }
    }

    /**
     * What came of saving.
     *
     * @param written false when the file was changed elsewhere in between, and nothing was written
     * @param now the sheet as it lies on the disk after that
     */
    public record Saved(boolean written, Opened now) {}

    Bench(String id, Path shop, Path path) {
        this.id = id;
        this.shop = shop;
        this.path = path;
    }

    public String id() {
        return id;
    }

    /** Its cases, hot and cold: the shipped ones and the build's own. */
    public List<Case> cases() {
        return Cases.ofBuild(path);
    }

    /** Where the sheet lies. */
    public Path path() {
        return path;
    }

    /** Reads the sheet; one with faults, or that is no text at all, is opened all the same. */
    public synchronized Opened open() {
        String text;
        try {
            text = TypedText.read(path);
        } catch (InputException wrong) {
            return faulty(UNREADABLE, "", Map.of(), wrong.findings());
        }
        String version = Digest.of(text);
        String basis = version + beside();
        if (known == null || !known.basis().equals(basis)) {
            known = new Known(basis, opened(text, version));
        }
        return known.opened();
    }

    /** Changes with whatever an answer rests on: the sheet, parts of the shelf, cases. */
    public String basis() {
        return open().version() + beside();
    }

    private String beside() {
        try {
            return Beside.digest(shop);
        } catch (InputException unreadable) {
            return UNREADABLE; // whoever needs it says what is wrong with it
        }
    }

    private Opened opened(String text, String version) {
        try {
            BuildSheet sheet = BuildSheet.of(path, text, Overlay.none());
            Answer answer = Answer.of(path, sheet, List.of());
            return new Opened(version, text, Optional.of(sheet), Optional.of(answer), sheet.typed(), sheet.remarks());
        } catch (InputException wrong) {
            Map<String, String> typed = BuildSheet.typed(path, text);
            return faulty(version, text, typed, atKeys(text, typed, wrong.findings()));
        }
    }

    private static Opened faulty(String version, String text, Map<String, String> typed, List<Finding> faults) {
        return new Opened(version, text, Optional.empty(), Optional.empty(), typed, faults);
    }

    /** The same faults at the keys of the values they are about: read once more with every value laid over itself. */
    private List<Finding> atKeys(String text, Map<String, String> typed, List<Finding> faults) {
        try {
            BuildSheet.of(path, text, overlay(typed));
            return faults;
        } catch (InputException again) {
            return again.findings().size() == faults.size() ? again.findings() : faults;
        }
    }

    /**
     * What the sheet would answer with other values; throws {@link InputException} when they do not make a sheet.
     *
     * @param changes full key to value as typed
     */
    public Answer tried(Map<String, String> changes) {
        return tried(changes, Set.of());
    }

    /**
     * The same without some values.
     *
     * @param out full keys
     */
    public Answer tried(Map<String, String> changes, Set<String> out) {
        List<Ceiling> before = open().answer().map(Answer::ceilings).orElse(List.of());
        return Answer.of(path, sheet(changes, out), before);
    }

    /** The sheet alone, before anything is asked of it. */
    public BuildSheet sheet(Map<String, String> changes, Set<String> out) {
        return BuildSheet.of(path, without(readable(open()), out), overlay(changes));
    }

    private String without(Opened opened, Set<String> out) {
        String text = opened.text();
        for (String key : out) {
            text = TypedEdit.without(path.toString(), text, key);
        }
        return text;
    }

    private static Opened readable(Opened opened) {
        if (opened.version().equals(UNREADABLE)) {
            throw new InputException(opened.findings());
        }
        return opened;
    }

    private static Overlay overlay(Map<String, String> changes) {
        changes.forEach((key, value) -> TypedEdit.check(SOURCE, key, value));
        return Overlay.of(
                SOURCE,
                changes.entrySet().stream()
                        .map(e -> e.getKey() + "=" + e.getValue())
                        .toList());
    }

    /**
     * Writes other values into the sheet; comments and order stay. Throws {@link InputException} when they do not make a sheet.
     *
     * @param version of the text that the values were laid over
     */
    public Saved save(String version, Map<String, String> changes) {
        return save(version, changes, Set.of());
    }

    /**
     * The same, and takes some values out.
     *
     * @param out full keys
     */
    public synchronized Saved save(String version, Map<String, String> changes, Set<String> out) {
        Opened before = open();
        if (!before.version().equals(version)) {
            return new Saved(false, before);
        }
        String left = without(readable(before), out);
        BuildSheet meant = BuildSheet.of(path, left, overlay(changes));
        String text = TypedEdit.of(path.toString(), left, changes);
        BuildSheet written = BuildSheet.of(path, text, Overlay.none());
        if (!written.vehicle().equals(meant.vehicle())) {
            throw InputException.at(
                    Place.of(path.toString()),
                    "cannot-edit",
                    "these values cannot be written into this file without changing others; change them in the file");
        }
        AtomicFile.write(path, to -> to.write(text.getBytes(StandardCharsets.UTF_8)));
        return new Saved(true, open());
    }

    /** Where a key stands that was laid over a sheet. */
    public static Place place(String key) {
        return Place.of(SOURCE + " " + key);
    }

    /** The key that a finding of {@link #tried} names; empty for one about the file as it stands. */
    public static Optional<String> key(Finding finding) {
        return finding.place()
                .map(Place::file)
                .filter(file -> file.startsWith(SOURCE + " "))
                .map(file -> file.substring(SOURCE.length() + 1));
    }
}
