package hotday.study.workspace;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.regex.Pattern;

/** What a killed program left half written: files of this package's own names that nobody writes to any more. */
public final class Leftovers {
    static final String ENDING = ".part";
    private static final Duration STILL_WRITTEN = Duration.ofSeconds(60);

    private Leftovers() {}

    /** Removes files of a kind that a newer one has taken the place of. */
    public static void removeOthers(Path folder, Pattern kind, String but) {
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder)) {
            for (Path each : found) {
                String name = each.getFileName().toString();
                if (kind.matcher(name).matches() && !name.equals(but)) {
                    Files.deleteIfExists(each);
                }
            }
        } catch (IOException e) {
            // they do no harm and are tried again next time
        }
    }

    /** Removes them from a folder; younger ones stay, another program may be at them. */
    public static void remove(Path folder) {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, ".*" + ENDING)) {
            Instant old = Instant.now().minus(STILL_WRITTEN);
            for (Path each : found) {
                if (Files.isRegularFile(each)
                        && Files.getLastModifiedTime(each).toInstant().isBefore(old)) {
                    Files.deleteIfExists(each);
                }
            }
        } catch (IOException e) {
            // they do no harm and are tried again next time
        }
    }
}
