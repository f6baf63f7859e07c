package hotday.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** One file that is filled again and again, for readers that open a path. In memory where the machine has such a folder. */
final class ScratchFile {
    private final Path path;

    /**
     * @param name file name, for readers that look at it
     */
    ScratchFile(String name) {
        Path memory = Path.of("/dev/shm");
        try {
            Path folder = Files.isWritable(memory)
                    ? Files.createTempDirectory(memory, "fuzz")
                    : Files.createTempDirectory("fuzz");
            path = folder.resolve(name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        path.toFile().deleteOnExit();
    }

    /** The file with these bytes. */
    Path with(byte[] bytes) {
        try {
            return Files.write(path, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A file beside it. */
    ScratchFile beside(String name, byte[] bytes) {
        try {
            Files.write(path.resolveSibling(name), bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }
}
