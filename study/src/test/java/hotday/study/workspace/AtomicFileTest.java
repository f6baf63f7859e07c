package hotday.study.workspace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hotday.core.finding.InputException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {
    @TempDir
    private Path folder;

    private static final byte[] MUCH = new byte[200_000];

    private static byte[] text(String s) {
        return s.getBytes(StandardCharsets.UTF_8);
    }

    private long files() throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.count();
        }
    }

    @Test
    void writesTheWholeAndLeavesNothingElse() throws IOException {
        Path target = folder.resolve("sub/out.txt");
        AtomicFile.write(target, out -> out.write(text("one")));
        AtomicFile.write(target, out -> out.write(text("two")));
        assertThat(target).hasContent("two");
        assertThat(files()).isEqualTo(1);
    }

    @Test
    void aDiskThatFillsUpLeavesTheOldFileAsItWas() throws IOException {
        Path target = folder.resolve("out.txt");
        AtomicFile.write(target, out -> out.write(text("old")));
        assertThatThrownBy(() -> AtomicFile.write(
                        target, out -> out.write(MUCH), t -> fullAfter(Files.newOutputStream(t), 1000)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("out.txt")
                .hasMessageContaining("the disk is full")
                .hasMessageContaining("nothing was changed");
        assertThat(target).hasContent("old");
        assertThat(files()).isEqualTo(1);
    }

    private static OutputStream fullAfter(OutputStream to, int bytes) {
        return new OutputStream() {
            private int left = bytes;

            @Override
            public void write(int b) throws IOException {
                if (left-- <= 0) {
                    throw new IOException("No space left on device");
                }
                to.write(b);
            }

            @Override
            public void close() throws IOException {
                to.close();
            }
        };
    }

    /** The same on a real file system of 64 kB, where this machine lets a test mount one. */
    @Test
    void aRealFullFileSystemIsToldAsSuch() throws Exception {
        Path mount = Files.createDirectory(folder.resolve("small"));
        Process p = new ProcessBuilder("mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", mount.toString())
                .redirectErrorStream(true)
                .start();
        p.getInputStream().readAllBytes();
        if (p.waitFor() != 0) {
            System.err.println("skipped: no permission to mount a small file system for the disk-full test");
            Assumptions.abort("no permission to mount");
        }
        try {
            Path target = mount.resolve("out.pdf");
            assertThatThrownBy(() -> AtomicFile.write(target, out -> out.write(MUCH)))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("the disk is full");
            try (Stream<Path> list = Files.list(mount)) {
                assertThat(list.count()).isZero();
            }
        } finally {
            new ProcessBuilder("umount", mount.toString()).start().waitFor();
        }
    }

    @Test
    void aFolderAsTargetAndAFileAsFolderAreRefused() throws IOException {
        assertThatThrownBy(() -> AtomicFile.write(folder, out -> {})).hasMessageContaining("is a folder");
        Path file = Files.writeString(folder.resolve("file"), "x");
        assertThatThrownBy(() -> AtomicFile.write(file.resolve("out"), out -> {}))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("cannot be written");
    }

    @Test
    void contentThatFailsLeavesNothing() throws IOException {
        assertThatThrownBy(() -> AtomicFile.write(folder.resolve("out"), out -> {
                    out.write(1);
                    throw new IllegalStateException("broken");
                }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(files()).isZero();
    }

    @Test
    void theReasonNamesNoPath() {
        assertThat(AtomicFile.reason(new FileSystemException("/srv/a.yaml", null, "Read-only file system")))
                .isEqualTo("the disk is read-only");
        assertThat(AtomicFile.reason(new NoSuchFileException("/srv/a.yaml"))).doesNotContain("/srv");
        assertThat(AtomicFile.reason(new FileSystemException("/srv/a.yaml"))).doesNotContain("/srv");
    }
}
