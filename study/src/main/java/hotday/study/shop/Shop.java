package hotday.study.shop;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.typed.TypedFile;
import hotday.study.workspace.AtomicFile;
import hotday.study.workspace.Leftovers;
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

    private static final String SHEET = "shop.yaml";

    private final Path folder;
    private final String name;
    private final Runs runs;
    private final Proofs proofs;
    private final Map<String, Bench> benches = new ConcurrentHashMap<>();

    private Shop(Path folder, String name) {
        this.folder = folder;
        this.name = name;
        this.runs = new Runs(folder);
        this.proofs = new Proofs(folder, runs);
    }

    /** Opens a folder that holds {@code shop.yaml}; throws {@link InputException} when it does not. */
    public static Shop open(Path folder) {
        Path sheet = folder.resolve(SHEET);
        if (!Files.isRegularFile(sheet)) {
            throw InputException.at(
                    Place.of(folder.toString()),
                    "no-shop",
                    "there is no shop.yaml in it; 'hotday new " + folder + "' makes a shop, or give another folder");
        }
        TypedFile file = TypedFile.read(sheet);
        String name = file.root().requiredText("shop").orElse("");
        file.faults().throwIfAny();
        Shop shop = new Shop(folder, name);
        shop.builds().forEach(id -> Leftovers.remove(folder.resolve("builds").resolve(id)));
        return shop;
    }

    /** Refuses to go on with a folder that went away, such as a drive pulled out or a network folder: nothing is to be written in its place. */
    static void requireThere(Path folder) {
        if (!Files.isRegularFile(folder.resolve(SHEET))) {
            throw InputException.at(
                    Place.of("shop"),
                    "shop-gone",
                    "the folder of this shop is not there any more (a drive or network folder that went away?); nothing was written. Put it back and try again.");
        }
    }

    public String name() {
        return name;
    }

    /** Its recordings. */
    public Runs runs() {
        return runs;
    }

    /** The last proofs of its builds. */
    public Proofs proofs() {
        return proofs;
    }

    /** Ids of the builds, in the order of the alphabet. */
    public List<String> builds() {
        requireThere(folder);
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
            throw InputException.at(
                    Place.of(builds.toString()), "not-readable", "cannot be read: " + AtomicFile.reason(e));
        }
        Collections.sort(all);
        return all;
    }

    /** The bench of a build; empty when there is none of that id within this folder. */
    public Optional<Bench> find(String id) {
        if (!ID.matcher(id).matches()) {
            return Optional.empty();
        }
        requireThere(folder);
        Path sheet = folder.resolve("builds").resolve(id).resolve("build.yaml");
        return Files.isRegularFile(sheet) && within(sheet)
                ? Optional.of(benches.computeIfAbsent(id, i -> new Bench(i, folder, sheet)))
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
        Proofs.State proof = proofs.state(id);
        return new Progress(
                !proof.runs().isEmpty() || recorded(id),
                proof.current(),
                proof.made() && !proof.current(),
                proof.signed());
    }

    private boolean recorded(String id) {
        return runs.all().stream().anyMatch(run -> run.name().startsWith(id));
    }

    /**
     * What has been done besides the sheet.
     *
     * @param commissioned a recording is called like the build, or its proof was made from one
     * @param proven a proof of this sheet and these recordings lies beside the sheet
     * @param proofOld one lies there of another sheet or other recordings
     * @param signed the sign-off beside the sheet is the one of the last proof, or of no proof of the page
     */
    public record Progress(boolean commissioned, boolean proven, boolean proofOld, boolean signed) {}
}
