package hotday.study.workspace;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder of the machine's temporary ones that is gone with all that lies in it when it is closed. */
public final class ScratchFolder implements AutoCloseable {
    private final Path path;

    private ScratchFolder(Path path) {
        this.path = path;
    }

    public static ScratchFolder open() {
        try {
            return new ScratchFolder(Files.createTempDirectory("hotday"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Path path() {
        return path;
    }

    @Override
    public void close() {
        try (Stream<Path> all = Files.walk(path)) {
            List<Path> deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
            for (Path each : deepestFirst) {
                Files.deleteIfExists(each);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
