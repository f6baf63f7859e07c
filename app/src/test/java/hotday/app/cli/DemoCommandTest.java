package hotday.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import hotday.study.shop.Proofs;
import hotday.study.shop.Shop;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first command of a newcomer. */
@Tag("slow")
class DemoCommandTest {
    private static final Pattern INSIDE = Pattern.compile("(\\d+) of 16 hidden ceilings lie inside");

    @TempDir
    private Path folder;

    @Test
    void itWalksBothBuildsAndLeavesThemProvenAndSigned() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream printed = new PrintStream(out, true, StandardCharsets.UTF_8);
        int status = CommandLineDoor.run(new String[] {"demo", "--to", folder.toString()}, printed, printed);
        assertThat(status).isEqualTo(CommandLineDoor.HOLDS);
        Matcher inside = INSIDE.matcher(out.toString(StandardCharsets.UTF_8));
        assertThat(inside.find()).isTrue();
        assertThat(Integer.parseInt(inside.group(1))).isGreaterThanOrEqualTo(13);
        Proofs proofs = Shop.open(folder).proofs();
        for (String build : DemoShop.BUILDS) {
            Proofs.State state = proofs.state(build);
            assertThat(state.current()).as(build).isTrue();
            assertThat(state.signed()).as(build).isTrue();
            assertThat(folder.resolve("builds").resolve(build).resolve("plots/ceilings.svg"))
                    .isRegularFile();
        }
    }
}
