package hotday.study.workspace;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.finding.Sentence;
import hotday.core.finding.Setting;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a file whole or not at all: into a temporary file beside the target, flushed to the disk, then renamed over it.
 * When anything goes wrong the old file, if there was one, stands untouched and nothing is left behind.
 */
public final class AtomicFile {
    /** Key of the fault that the disk does not take a file, which is nothing the content could help. */
    public static final String CANNOT_WRITE = "cannot-write";

    private AtomicFile() {}

    /** Fills a stream with the content. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Writes the target; wrong targets and a full disk are {@link InputException}s that say what to do. */
    public static void write(Path target, Content content) {
        write(target, content, AtomicFile::open);
    }

    /** Opens the temporary file; tests put a disk that fills up here. */
    @FunctionalInterface
    interface Opener {
        OutputStream open(Path temporary) throws IOException;
    }

    private static OutputStream open(Path temporary) throws IOException {
        return Files.newOutputStream(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }

    /** Refuses at once a target that could never be written, before somebody waits for the content. */
    public static void requireTarget(Path target) {
        if (Files.isDirectory(target)) {
            throw InputException.at(Place.of(target.toString()), "is-folder", "is a folder; give a file name");
        }
    }

    /** Refuses at once a folder that could never be made because a file stands there. */
    public static void requireFolder(Path folder) {
        for (Path p = folder.toAbsolutePath(); p != null; p = p.getParent()) {
            if (Files.exists(p) && !Files.isDirectory(p)) {
                throw InputException.at(Place.of(folder.toString()), "is-file", p + " is a file; give a folder");
            }
        }
    }

    static void write(Path target, Content content, Opener opener) {
        Place place = Place.of(target.toString());
        requireTarget(target);
        Path folder = target.toAbsolutePath().getParent();
        Path temporary = folder.resolve(
                "." + target.getFileName() + "." + Long.toHexString(System.nanoTime()) + Leftovers.ENDING);
        try {
            Files.createDirectories(folder);
            try (OutputStream out = opener.open(temporary)) {
                content.writeTo(out);
            }
            try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            flushNames(folder);
        } catch (IOException e) {
            remove(temporary);
            throw InputException.at(
                    place,
                    CANNOT_WRITE,
                    Sentence.of(
                            "cannot be written (" + reason(e) + "); nothing was changed. ",
                            Setting.named("disk", "Free space or choose another folder.")));
        } catch (RuntimeException e) {
            remove(temporary);
            throw e;
        }
    }

    /** So that the new name outlives a pulled plug too; some systems cannot do that with a folder, and need not. */
    static void flushNames(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // the file itself is whole and in place
        }
    }

    private static void remove(Path temporary) {
        try {
            Files.deleteIfExists(temporary);
        } catch (IOException e) {
            temporary.toFile().deleteOnExit();
        }
    }

    /** Why it could not be, without the path of a file: it may be told to another device. */
    public static String reason(IOException e) {
        if (e instanceof java.nio.file.AccessDeniedException) {
            return "no permission";
        }
        if (e instanceof java.nio.file.FileAlreadyExistsException) {
            return "a file stands where a folder is needed";
        }
        if (e instanceof java.nio.file.NoSuchFileException) {
            return "file or folder is not there any more";
        }
        String said = e instanceof FileSystemException file ? file.getReason() : e.getMessage();
        String text = said == null ? e.getClass().getSimpleName() : said;
        if (text.contains("Read-only file system")) {
            return "the disk is read-only";
        }
        return text.contains("No space left") ? "the disk is full" : text;
    }
}
