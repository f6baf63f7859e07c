package hotday.validation.house;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.File;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.FileWriter;
import java.io.IOException;
import java.io.PrintStream;
import java.io.RandomAccessFile;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Files are written in {@code hotday.study.workspace} and nowhere else; everybody may read. */
@AnalyzeClasses(packages = "hotday", importOptions = ImportOption.DoNotIncludeTests.class)
final class DiskTest {
    private static final Set<String> WRITING_FILES = Set.of(
            "write",
            "writeString",
            "newBufferedWriter",
            "newOutputStream",
            "newByteChannel",
            "createFile",
            "createDirectory",
            "createDirectories",
            "createTempFile",
            "createTempDirectory",
            "createLink",
            "createSymbolicLink",
            "copy",
            "move",
            "delete",
            "deleteIfExists",
            "setAttribute",
            "setLastModifiedTime",
            "setOwner",
            "setPosixFilePermissions");
    private static final Set<String> WRITING_FILE = Set.of(
            "createNewFile", "createTempFile", "delete", "deleteOnExit", "mkdir", "mkdirs", "renameTo", "setWritable");
    private static final Set<String> OPENED_BY_NAME =
            Set.of("java.io.PrintStream", "java.io.PrintWriter", "java.util.Formatter");

    @ArchTest
    static final ArchRule ONLY_THE_WORKSPACE_WRITES = noClasses()
            .that()
            .resideOutsideOfPackage("hotday.study.workspace..")
            .should()
            .callCodeUnitWhere(target(WritesToDisk.WRITES))
            .because("what is on disk stays whole after a pulled plug, and that is taken care of in one package");

    @Test
    void the_rule_sees_every_way_of_writing() {
        String found = ONLY_THE_WORKSPACE_WRITES
                .evaluate(new ClassFileImporter().importClasses(Scribbler.class))
                .getFailureReport()
                .toString();

        assertThat(found)
                .contains("Scribbler.text(", "Scribbler.stream(", "Scribbler.printer(", "Scribbler.moved(")
                .doesNotContain("Scribbler.console(", "Scribbler.read(");
    }

    /** What the rule must catch, and two things it must let pass. */
    @SuppressWarnings("unused")
    private static final class Scribbler {
        static void text(Path path) throws IOException {
            Files.writeString(path, "x");
        }

        static void stream(File file) throws IOException {
            new FileOutputStream(file).close();
        }

        static void printer(String name) throws IOException {
            new PrintStream(name, "UTF-8").close();
        }

        static void moved(Path from, Path to) throws IOException {
            Files.move(from, to);
        }

        static PrintStream console() {
            return new PrintStream(new FileOutputStream(FileDescriptor.out));
        }

        static String read(Path path) throws IOException {
            return Files.readString(path);
        }
    }

    /** A call that makes, changes or removes something on disk. */
    private static final class WritesToDisk extends DescribedPredicate<CodeUnitCallTarget> {
        static final WritesToDisk WRITES = new WritesToDisk();

        WritesToDisk() {
            super("writes to disk");
        }

        @Override
        public boolean test(CodeUnitCallTarget call) {
            if (call.getOwner().isEquivalentTo(Files.class)) {
                return WRITING_FILES.contains(call.getName());
            }
            if (call.getOwner().isEquivalentTo(File.class)) {
                return WRITING_FILE.contains(call.getName());
            }
            if (call.getOwner().isEquivalentTo(FileChannel.class)) {
                return call.getName().equals("open");
            }
            return makes(call) && opensFile(call);
        }

        private static boolean makes(CodeUnitCallTarget call) {
            return call.getName().equals("<init>");
        }

        private static boolean opensFile(CodeUnitCallTarget call) {
            if (call.getOwner().isEquivalentTo(FileOutputStream.class)
                    || call.getOwner().isEquivalentTo(FileWriter.class)) {
                return !firstIs(call, FileDescriptor.class);
            }
            if (call.getOwner().isEquivalentTo(RandomAccessFile.class)) {
                return true;
            }
            return OPENED_BY_NAME.contains(call.getOwner().getName())
                    && (firstIs(call, File.class) || firstIs(call, String.class));
        }

        private static boolean firstIs(CodeUnitCallTarget call, Class<?> type) {
            return !call.getRawParameterTypes().isEmpty()
                    && call.getRawParameterTypes().get(0).isEquivalentTo(type);
        }
    }
}
