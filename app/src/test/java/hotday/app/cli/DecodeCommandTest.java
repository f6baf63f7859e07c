package hotday.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class DecodeCommandTest {
    @TempDir
    private Path folder;

    private Path dbc;
    private String out;
    private String err;

    @BeforeEach
    void aFile() throws IOException {
        dbc = folder.resolve("car.dbc");
        Files.writeString(dbc, """
                BU_: ECM FAN
                BO_ 2364540158 Engine: 8 ECM
                 SG_ Speed : 24|16@1+ (0.125,0) [0|8031.875] "rpm" FAN
                 SG_ Which M : 0|4@1+ (1,0) [0|0] "" FAN
                 SG_ Coolant m2 : 15|8@0- (1,-40) [-40|210] "°C" FAN
                CM_ SG_ 2364540158 Coolant "behind the
                thermostat";
                VAL_ 2364540158 Which 0 "none" 2 "coolant";
                """);
    }

    private int run(String... words) {
        CommandRun run = CommandRun.of((Object[]) words);
        out = run.out();
        err = run.err();
        return run.status();
    }

    private int summary(String... more) {
        String[] words = {"decode", "--dbc", dbc.toString(), "--summary", "--json"};
        return run(java.util.Arrays.copyOf(words, more.length == 0 ? 4 : 5));
    }

    private JsonNode json() {
        return JsonMapper.builder().build().readTree(out);
    }

    @Test
    void describesForPeople() {
        assertThat(summary()).isZero();
        assertThat(out)
                .contains(
                        "car.dbc: 1 message, 3 signals",
                        "0CF004FE  Engine, 8 bytes, from ECM",
                        "24|16 little unsigned    x 0.125  0 to 8031.875 rpm",
                        "x 1  [multiplexor]",
                        "x 1 - 40  -40 to 210 °C  [when Which is 2]  \"behind the thermostat\"");
        assertThat(err).isEmpty();
    }

    @Test
    void describesForMachines() {
        assertThat(summary("--json")).isZero();
        JsonNode message = json().path("messages").path(0);
        assertThat(message.path("id").intValue()).isEqualTo(0x0CF004FE);
        assertThat(message.path("extended").booleanValue()).isTrue();
        JsonNode coolant = message.path("signals").path(2);
        assertThat(coolant.path("name").stringValue()).isEqualTo("Coolant");
        assertThat(coolant.path("form").stringValue()).isEqualTo("signed");
        assertThat(coolant.path("offset").doubleValue()).isEqualTo(-40);
        assertThat(coolant.path("multiplexed_by").stringValue()).isEqualTo("Which");
        assertThat(coolant.path("when").path(0).path(1).intValue()).isEqualTo(2);
        assertThat(message.path("signals").path(1).path("words").path("2").stringValue())
                .isEqualTo("coolant");
        assertThat(json().path("findings")).isEmpty();
    }

    @Test
    void whatIsNotUnderstoodIsToldAndTheRestDescribed() throws IOException {
        Files.writeString(dbc, Files.readString(dbc).replace("@0-", "@7-"));
        assertThat(summary()).isEqualTo(1);
        assertThat(out).contains("1 message, 2 signals");
        assertThat(err).startsWith("fault: " + dbc + ":5:24: SG_: byte order").doesNotContain("Exception");
        assertThat(summary("--json")).isEqualTo(1);
        JsonNode fault = json().path("findings").path(0);
        assertThat(fault.path("key").stringValue()).isEqualTo("statement-not-understood");
        assertThat(fault.path("line").intValue()).isEqualTo(5);
    }

    @Test
    void refusesWhatIsNoDbc() throws IOException {
        Files.write(dbc, new byte[] {1, 0, 2});
        assertThat(summary()).isEqualTo(2);
        assertThat(out).isEmpty();
        assertThat(err).contains("car.dbc: is a binary file");
        assertThat(summary("--json")).isEqualTo(2);
        assertThat(json().path("refused").booleanValue()).isTrue();
        assertThat(json().path("findings").path(0).path("key").stringValue()).isEqualTo("binary-file");
        assertThat(err).isEmpty();
        dbc = folder.resolve("nothing.dbc");
        assertThat(summary()).isEqualTo(2);
        assertThat(err).contains("nothing.dbc: no such file");
    }

    @Test
    void saysWhatIsMissingOnTheCommandLine() {
        assertThat(run("decode", "--summary")).isEqualTo(2);
        assertThat(err).contains("--dbc").contains("'hotday decode --help'");
        assertThat(run("decode", "--dbc", dbc.toString())).isEqualTo(2);
        assertThat(err).contains("--summary");
        assertThat(run("decode", "--help")).isZero();
        assertThat(out).contains("--dbc=FILE", "--json", "for machines");
    }
}
