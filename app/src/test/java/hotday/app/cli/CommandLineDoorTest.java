package hotday.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Exit status and streams, as product page and README promise them. */
class CommandLineDoorTest {
    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(Object... words) {
        String[] args = new String[words.length];
        for (int i = 0; i < words.length; i++) {
            args[i] = words[i].toString();
        }
        return CommandLineDoor.run(args, stream(out), stream(err));
    }

    private static PrintStream stream(OutputStream to) {
        return new PrintStream(to, true, StandardCharsets.UTF_8);
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void versionAndHelpGoToTheResults() {
        assertThat(run("--version")).isZero();
        assertThat(out()).isEqualToNormalizingNewlines("hotday 0.1.0\n");
        assertThat(run("--help")).isZero();
        assertThat(run()).isZero();
        assertThat(out()).contains("check", "predict", "prove", "Exit status");
        assertThat(err()).isEmpty();
    }

    @Test
    void aMistypedCommandIsWrongInputAndGetsASuggestion() {
        assertThat(run("chekc", "x.yaml")).isEqualTo(2);
        assertThat(err()).contains("'chekc'", "check");
        assertThat(out()).isEmpty();
    }

    @Test
    void aMistypedOptionIsWrongInputAndNamesWhereToLook() {
        assertThat(run("predict", "x.yaml", "--jsno")).isEqualTo(2);
        assertThat(err()).contains("'--jsno'", "--json", "hotday predict --help");
    }

    @Test
    void aMissingWordIsNamed() {
        assertThat(run("check")).isEqualTo(2);
        assertThat(err()).contains("BUILD");
    }

    @Test
    void everyFaultOfTheInputStandsOnItsOwnLineWithItsPlaceFirst() {
        Path nowhere = folder.resolve("nowhere.yaml");
        assertThat(run("check", nowhere)).isEqualTo(2);
        assertThat(err().lines()).hasSize(1).first().asString().startsWith(nowhere.toString());
        assertThat(out()).isEmpty();
    }

    @Test
    void aNewShopHoldsAndItsSheetIsInOrder() {
        Path shop = folder.resolve("shop");
        assertThat(run("new", shop)).as(err()).isZero();
        assertThat(run("check", shop.resolve("builds/heron/build.yaml")))
                .as(err())
                .isZero();
        assertThat(run("new", shop)).isEqualTo(2);
    }

    @Test
    void resultsThatCannotBeWrittenAreNotPassedOverInSilence() {
        PrintStream full = stream(new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("No space left on device");
            }
        });
        assertThat(CommandLineDoor.run(new String[] {"--help"}, full, stream(err)))
                .isEqualTo(2);
        assertThat(err()).contains("standard output");
    }

    @Test
    void aFaultOfOurOwnIsStatusThreeAndShowsItsOriginOnlyWhenAsked() {
        PrintStream breaks = new PrintStream(out) {
            @Override
            public void println(String line) {
                throw new IllegalStateException("broken on purpose");
            }
        };
        String shop = folder.resolve("shop").toString();
        assertThat(CommandLineDoor.run(new String[] {"new", shop}, breaks, stream(err)))
                .isEqualTo(3);
        assertThat(err().lines()).hasSize(1).first().asString().contains("fault of our own", "broken on purpose");
        assertThat(CommandLineDoor.run(new String[] {"--debug", "new", shop + "2"}, breaks, stream(err)))
                .isEqualTo(3);
        assertThat(err()).contains("\tat hotday.app");
    }
}
