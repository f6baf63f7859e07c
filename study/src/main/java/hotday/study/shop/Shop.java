package hotday.study.shop;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.typed.TypedFile;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/** A shop folder: {@code shop.yaml}, {@code builds/ID/build.yaml}, {@code runs}. Shared between threads. */
public final class Shop {
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]{0,63}");

    private final Path folder;
    private final String name;
    private final Runs runs;
    private final Map<String, Bench> benches = new ConcurrentHashMap<>();

    private Shop(Path folder, String name) {
        this.folder = folder;
        this.name = name;
        this.runs = new Runs(folder);
    }

    /** Opens a folder that holds {@code shop.yaml}; throws {@link InputException} when it does not. */
    public static Shop open(Path folder) {
        Path sheet = folder.resolve("shop.yaml");
        if (!Files.isRegularFile(sheet)) {
            throw InputException.at(
                    Place.of(folder.toString()),
                    "no-shop",
                    "there is no shop.yaml in it; 'hotday new " + folder + "' makes a shop, or give another folder");
        }
        TypedFile file = TypedFile.read(sheet);
        String name = file.root().requiredText("shop").orElse("");
        file.faults().throwIfAny();
        return new Shop(folder, name);
    }

    public String name() {
        return name;
    }

    /** Its recordings. */
    public Runs runs() {
        return runs;
    }

    /** Ids of the builds, in the order of the alphabet. */
    public List<String> builds() {
        List<String> all = new ArrayList<>();
        Path builds = folder.resolve("builds");
        if (!Files.isDirectory(builds)) {
            return all;
        }
        try (DirectoryStream<Path> found = Files.newDirectoryStream(builds)) {
            for (Path each : found) {
                find(each.getFileName().toString()).ifPresent(bench -> all.add(bench.id()));
            }
        } catch (IOException e) {
            throw InputException.at(Place.of(builds.toString()), "not-readable", "cannot be read: " + e.getMessage());
        }
        Collections.sort(all);
        return all;
    }

    /** The bench of a build; empty when there is none of that id within this folder. */
    public Optional<Bench> find(String id) {
        if (!ID.matcher(id).matches()) {
            return Optional.empty();
        }
        Path sheet = folder.resolve("builds").resolve(id).resolve("build.yaml");
        return Files.isRegularFile(sheet) && within(sheet)
                ? Optional.of(benches.computeIfAbsent(id, i -> new Bench(i, sheet)))
                : Optional.empty();
    }

    /** Not where a link leads out of the shop. */
    private boolean within(Path file) {
        try {
            return file.toRealPath().startsWith(folder.toRealPath());
        } catch (IOException e) {
            return false;
        }
    }

    /** Where a build stands on its way. */
    public Progress progress(String id) {
        Path build = folder.resolve("builds").resolve(id);
        return new Progress(
                recorded(id),
                Files.isRegularFile(build.resolve("proof.json")) || Files.isDirectory(build.resolve("plots")),
                Files.isRegularFile(build.resolve("signoff.pdf")));
    }

    private boolean recorded(String id) {
        Path runs = folder.resolve("runs");
        if (!Files.isDirectory(runs)) {
            return false;
        }
        try (DirectoryStream<Path> found = Files.newDirectoryStream(runs, id + "*")) {
            return found.iterator().hasNext();
        } catch (IOException e) {
            return false;
        }
    }

    /**
     * What has been done besides the sheet.
     *
     * @param commissioned a run of the build is in the folder {@code runs}
     * @param proven a proof or its pictures lie beside the sheet
     * @param signed so does a sign-off
     */
    public record Progress(boolean commissioned, boolean proven, boolean signed) {}
}
