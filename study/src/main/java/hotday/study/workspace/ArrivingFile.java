package hotday.study.workspace;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A file that comes in from somewhere and is looked at before it gets its name; gone when it is closed without one. */
public final class ArrivingFile implements AutoCloseable {
    /** Key of the fault that it is larger than allowed. */
    public static final String TOO_LARGE = "file-too-large";

    private static final int CHUNK = 1 << 16;

    private final Path path;
    private final String digest;

    /** What sends it ended too early; the disk is not at fault. */
    private static final class BrokenOff extends IOException {
        private static final long serialVersionUID = 1L;

        BrokenOff(IOException cause) {
            super(cause.getMessage(), cause);
        }
    }

    private ArrivingFile(Path path, String digest) {
        this.path = path;
        this.digest = digest;
    }

    /**
     * Takes all of a stream.
     *
     * @param folder it will lie in, made where there is none
     * @param name for findings
     * @param most bytes
     */
    public static ArrivingFile receive(Path folder, String name, InputStream in, long most) {
        Path path = folder.resolve(".arriving." + Long.toHexString(System.nanoTime()) + Leftovers.ENDING);
        try {
            Files.createDirectories(folder);
            return new ArrivingFile(path, copy(in, path, name, most));
        } catch (BrokenOff e) {
            discard(path);
            throw InputException.at(
                    Place.of(name),
                    "not-received",
                    "did not arrive whole (" + AtomicFile.reason(e)
                            + "); nothing was kept. Put that right, then send it again.");
        } catch (IOException e) {
            discard(path);
            throw notKept(name, e);
        } catch (RuntimeException e) {
            discard(path);
            throw e;
        }
    }

    private static String copy(InputStream in, Path path, String name, long most) throws IOException {
        MessageDigest digest = sha256();
        byte[] chunk = new byte[CHUNK];
        long size = 0;
        try (OutputStream out = Files.newOutputStream(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            for (int read = read(in, chunk); read >= 0; read = read(in, chunk)) {
                size += read;
                if (size > most) {
                    throw InputException.at(
                            Place.of(name),
                            TOO_LARGE,
                            "is larger than " + most / 1_000_000 + " MB; cut it into runs, or pack it with gzip");
                }
                digest.update(chunk, 0, read);
                out.write(chunk, 0, read);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static int read(InputStream in, byte[] chunk) throws BrokenOff {
        try {
            return in.read(chunk);
        } catch (IOException e) {
            throw new BrokenOff(e);
        }
    }

    private static InputException notKept(String name, IOException e) {
        return InputException.at(
                Place.of(name),
                AtomicFile.CANNOT_WRITE,
                "cannot be kept (" + AtomicFile.reason(e) + "); free space, then send it again");
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    public Path path() {
        return path;
    }

    /** SHA-256 of its bytes, hexadecimal. */
    public String digest() {
        return digest;
    }

    /** Gives it its name in the same folder, on the disk for good. The caller sees to it that the name is free. */
    public void moveTo(Path target) {
        try {
            try (FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            Files.move(path, target, StandardCopyOption.ATOMIC_MOVE);
            AtomicFile.flushNames(target.toAbsolutePath().getParent());
        } catch (IOException e) {
            throw notKept(target.getFileName().toString(), e);
        }
    }

    @Override
    public void close() {
        discard(path);
    }

    private static void discard(Path path) {
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            path.toFile().deleteOnExit();
        }
    }
}
