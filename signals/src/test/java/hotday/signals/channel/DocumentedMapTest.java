package hotday.signals.channel;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page about channel maps shows a map that works and names every channel. */
class DocumentedMapTest {
    private static final Path PAGE = Path.of(System.getProperty("hotday.root", ".."), "docs", "channel-map.md");

    @TempDir
    private Path folder;

    @Test
    void theExampleReadsARecording() throws IOException {
        String page = Files.readString(PAGE);
        int begin = page.indexOf("```yaml\n") + 8;
        String map = page.substring(begin, page.indexOf("```", begin));
        String log = "Time[sec],Speed [mph],Engine speed,Fuel (bench),ECT [°C],IAT [°C],High side,AC clutch\n"
                + "# a comment\n0,10,800,0.2,80,ERR,150,on\n1,12,810,0.3,81,-40,160,off\n2,14,0,0.2,82,20,170,on\n";
        Path file = Files.writeString(folder.resolve("trip 12.csv"), log);
        Recording run = Logged.map(folder, map).recording(file);
        assertThat(run.facts()).containsEntry("heater", Fact.ON).containsEntry("fan", Fact.UNKNOWN);
        assertThat(run.channels()).hasSize(9);
        assertThat(Logged.values(run, ModelChannel.COMPRESSOR)).containsExactly(1, 0, 1);
        assertThat(Logged.values(run, ModelChannel.HEAD_PRESSURE)[0]).isBetween(1.11e6, 1.12e6);
        assertThat(run.channel(ModelChannel.INTAKE_TEMPERATURE).orElseThrow().count(Channel.BLANK))
                .isEqualTo(2);
    }

    @Test
    void everyChannelIsNamed() throws IOException {
        String page = Files.readString(PAGE);
        assertThat(ModelChannel.keys()).allMatch(key -> page.contains("`" + key + "`"));
    }
}
