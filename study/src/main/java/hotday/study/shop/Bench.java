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
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One build sheet on the bench: read, tried with other values, saved. What is tried never touches the file; what is saved is written whole or
 * not at all, and only over the text that was read. Shared between threads.
 */
public final class Bench {
    private static final String SOURCE = "page";

    private final String id;
    private final Path path;
    private Known known;

    /** What the sheet on the disk answers, until it changes. */
    private record Known(String version, Opened opened) {}

    /**
     * The sheet as it lies on the disk.
     *
     * @param version changes with every change of the text
     * @param sheet empty when it has faults
     * @param answer likewise
     * @param findings faults, or what should be looked at
     */
    public record Opened(
            String version, String text, Optional<BuildSheet> sheet, Optional<Answer> answer, List<Finding> findings) {
        public Opened {
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

    Bench(String id, Path path) {
        this.id = id;
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

    /** Reads the sheet; one with faults is opened all the same. */
    public synchronized Opened open() {
        String text = TypedText.read(path);
        String version = Digest.of(text);
        if (known == null || !known.version().equals(version)) {
            known = new Known(version, opened(text, version));
        }
        return known.opened();
    }

    private Opened opened(String text, String version) {
        try {
            BuildSheet sheet = BuildSheet.of(path, text, Overlay.none());
            Answer answer = Answer.of(path, sheet, List.of());
            return new Opened(version, text, Optional.of(sheet), Optional.of(answer), sheet.remarks());
        } catch (InputException wrong) {
            return new Opened(version, text, Optional.empty(), Optional.empty(), wrong.findings());
        }
    }

    /**
     * What the sheet would answer with other values; throws {@link InputException} when they do not make a sheet.
     *
     * @param changes full key to value as typed
     */
    public Answer tried(Map<String, String> changes) {
        Opened saved = open();
        BuildSheet sheet = BuildSheet.of(path, saved.text(), overlay(changes));
        List<Ceiling> before = saved.answer().map(Answer::ceilings).orElse(List.of());
        return Answer.of(path, sheet, before);
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
    public synchronized Saved save(String version, Map<String, String> changes) {
        Opened before = open();
        if (!before.version().equals(version)) {
            return new Saved(false, before);
        }
        BuildSheet meant = BuildSheet.of(path, before.text(), overlay(changes));
        String text = TypedEdit.of(path.toString(), before.text(), changes);
        BuildSheet written = BuildSheet.of(path, text, Overlay.none());
        if (!written.vehicle().equals(meant.vehicle())) {
            throw InputException.at(
                    Place.of(path.toString()),
                    "cannot-edit",
                    "these values cannot be written into this file without changing others; change them in the file");
        }
        AtomicFile.write(path, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
        return new Saved(true, open());
    }

    /** The key that a finding of {@link #tried} names; empty for one about the file as it stands. */
    public static Optional<String> key(Finding finding) {
        return finding.place()
                .map(Place::file)
                .filter(file -> file.startsWith(SOURCE + " "))
                .map(file -> file.substring(SOURCE.length() + 1));
    }
}
