package hotday.app.web;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;

/** A folder that takes no file for a while; a test that needs it is skipped with a visible line where nobody is kept from writing. */
final class ReadOnly implements AutoCloseable {
    private final Path folder;

    private ReadOnly(Path folder) {
        this.folder = folder;
    }

    static ReadOnly of(Path folder) {
        ReadOnly closed = new ReadOnly(folder);
        boolean said = folder.toFile().setWritable(false);
        if (!said || Files.isWritable(folder)) {
            closed.close();
            System.out.println("skipped: a folder that cannot be written to (this user may write everywhere)");
            Assumptions.abort("permissions do not bind here");
        }
        return closed;
    }

    @Override
    public void close() {
        if (!folder.toFile().setWritable(true)) {
            throw new AssertionError("cannot be opened again: " + folder);
        }
    }
}
