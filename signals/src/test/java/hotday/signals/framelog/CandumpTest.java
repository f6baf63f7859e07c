package hotday.signals.framelog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Severity;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CandumpTest {
    private static final String TWO = """
            (1622547830.084000) can0 123#1122
            (1622547830.084600) can0 124#
            """;

    @TempDir
    private Path folder;

    private ReadFrames read(String text) {
        return ReadFrames.of(folder, text);
    }

    @Test
    void readsEveryKindOfCompactLine() {
        ReadFrames read = read("""
                (1622547830.084000) can0 0CF00400#F0FF7D0000FFFFFF
                (1622547830.084001) vcan1 7ff#
                (1622547830.084002) can0 123#11.22.33
                (1622547830.084003) can0 123#R
                (1622547830.084004) can0 123#R8 T

                (1622547830.084005) can0 123##1112233445566778899AA
                (1622547830.084006) can0 123#1122334455667788_F R
                (1622547830.084007) can0 20000004#0004000000000000
                (0.5) can0 1FFFFFFF#00
                """);
        assertThat(read.lines())
                .containsExactly(
                        "1.622547830084E9 0 0CF00400#F0FF7D0000FFFFFF",
                        "1.622547830084001E9 1 7FF#",
                        "1.622547830084002E9 0 123#112233",
                        "1.622547830084003E9 0 123#R0",
                        "1.622547830084004E9 0 123#R8",
                        "1.622547830084005E9 0 123##112233445566778899AA",
                        "1.622547830084006E9 0 123#1122334455667788",
                        "1.622547830084007E9 0 00000004#0004000000000000 error",
                        "0.5 0 1FFFFFFF#00");
        assertThat(read.buses()).containsExactly("can0", "vcan1");
        assertThat(read.layout()).isEqualTo("candump text");
        assertThat(read.keys()).containsExactly("clock-goes-back");
    }

    @Test
    void readsScreensWithAndWithoutStamps() {
        ReadFrames stamped = read("""
                 (000.000000)  can0  123   [8]  11 22 33 44 55 66 77 88
                 (000.001200)  can0  0CF00400   [2]  11 22   '."'
                 (2023-03-01 00:00:01.500000)  can0  RX - -  123   [0]
                 (1677628802.500000)  can0  TX B E  123  [12]  01 02 03 04 05 06 07 08 09 0A 0B 0C
                 (1677628803.000000)  can0  123   [4]  remote request
                 (1677628804.000000)  can0  20000080   [8]  00 00 00 00 00 00 00 00   ERRORFRAME
                """);
        assertThat(stamped.findings()).isEmpty();
        assertThat(stamped.lines())
                .containsExactly(
                        "0.0 0 123#1122334455667788",
                        "0.0012 0 0CF00400#1122",
                        // 2023-03-01 00:00:00 UTC is 1677628800 s (date -u -d 2023-03-01 +%s)
                        "1.6776288015E9 0 123#",
                        "1.6776288025E9 0 123##0102030405060708090A0B0C",
                        "1.677628803E9 0 123#R4",
                        "1.677628804E9 0 00000080#0000000000000000 error");
        ReadFrames bare = read("  can0  123   [2]  11 22\n  can1  0CF00400   [0]\n");
        assertThat(bare.lines()).containsExactly("- 0 123#1122", "- 1 0CF00400#");
        assertThat(bare.layout()).isEqualTo("candump text without time stamps");
        assertThat(bare.first()).isNaN();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "(1622547830.09) can0 12#11|22|3 or 8 hexadecimal digits",
                "(1622547830.09) can0 800#11|22|at most 7FF",
                "(1622547830.09) can0 40000001#11|22|at most 1FFFFFFF",
                "(1622547830.09) can0 12345#81:00:12345678#11|22|has 5",
                "(1622547830.09) can0 123#112|28|two hexadecimal digits",
                "(1622547830.09) can0 123#11G2|28|two hexadecimal digits",
                "(1622547830.09) can0 123#112233445566778899|42|more than 8 bytes",
                "(1622547830.09) can0 123#R9|27|must be 0 to 8",
                "(1622547830.09) can0 123#11 more|29|goes on",
                "(1622547830.09) can0 123##|27|digit of flags",
                "(1622547830.09) can0 123#1122_9|30|length code",
                "(1622547830.09) can0 123 [3] 11 22|35|two hexadecimal digits",
                "(1622547830.09) can0 123 [9] 11 22|27|0 to 8 bytes",
                "(1622547830.09) can0 123 [65] 11 22|27|0 to 64 bytes",
                "(1622547830.09) can0 123 [1] 11 22|33|more bytes than",
                "(1622547830.09) can0|17|name and a frame",
                "(16225x7830.09) can0 123#11|7|time stamp such as",
                "(2023-13-01 00:00:00.0) can0 123#11|2|time stamp such as",
                "can0 123#11|1|stamp is missing",
                "nothing of the kind|1|stamp is missing",
            })
    void tellsWhereALineIsBroken(String line, int column, String why) {
        ReadFrames read = read(TWO + line + "\n");
        assertThat(read.frames()).hasSize(2);
        Finding broken = read.findings().get(0);
        assertThat(broken.key()).isEqualTo("line-broken");
        assertThat(broken.severity()).isEqualTo(Severity.WARNING);
        assertThat(broken.message()).contains(why);
        assertThat(broken.place().orElseThrow().line()).isEqualTo(3);
        assertThat(broken.place().orElseThrow().column()).isEqualTo(column);
        assertThat(read.findings().get(1).values()).containsEntry("lines", 1L).containsEntry("frames", 2L);
        assertThat(read.buses()).containsExactly("can0");
    }

    @Test
    void tellsOfTheFirstBrokenLinesAndCountsAll() {
        ReadFrames read = read(TWO.repeat(10) + "broken\n".repeat(15));
        assertThat(read.findings())
                .filteredOn(f -> f.key().equals("line-broken"))
                .hasSize(5);
        assertThat(read.findings())
                .filteredOn(f -> f.key().equals("lines-broken"))
                .singleElement()
                .satisfies(f -> assertThat(f.values()).containsEntry("lines", 15L));
    }

    @Test
    void tellsOfClocksThatGoBackAndOfStampsThatAreNone() {
        Finding slip = read(TWO.repeat(2) + TWO.replace("830", "831").repeat(5))
                .findings()
                .get(0);
        assertThat(slip.key()).isEqualTo("clock-goes-back");
        assertThat(slip.values()).containsEntry("times", 5L);
        assertThat((double) slip.values().get("farthest_s"))
                .isEqualTo(0.0006, org.assertj.core.api.Assertions.within(1e-6));
        Finding steps = read("(0.2) can0 123#11\n(0.1) can0 123#11\n".repeat(20))
                .findings()
                .get(0);
        assertThat(steps.severity()).isEqualTo(Severity.FAULT);
        assertThat(steps.message()).contains("from frame to frame");
        assertThat(steps.place().orElseThrow().line()).isEqualTo(2);
    }

    @Test
    void readsPackedFilesWhateverTheirNameAndLineEnds() throws IOException {
        Path packed = folder.resolve("frames.dat");
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(packed))) {
            out.write(TWO.strip().replace("\n", "\r\n").getBytes(StandardCharsets.US_ASCII));
        }
        ReadFrames read = ReadFrames.of(packed, FrameLogOptions.NONE);
        assertThat(read.frames()).hasSize(2);
        assertThat(read.keys()).containsExactly("last-line-open");
        byte[] all = Files.readAllBytes(packed);
        Files.write(packed, java.util.Arrays.copyOf(all, all.length - 12));
        assertThatThrownBy(() -> ReadFrames.of(packed, FrameLogOptions.NONE))
                .isInstanceOfSatisfying(
                        InputException.class,
                        e -> assertThat(e.findings().get(0).key()).isEqualTo("packed-file-damaged"));
    }

    @ParameterizedTest
    @CsvSource({
        "'time,speed\n1,2\n', not-a-frame-log",
        "'', empty-file",
        "'\n\n', not-a-frame-log",
        "'some words\nand more\n(1.0) can0 123#11\n', not-a-frame-log",
        "'\0\0\0\0', binary-file",
    })
    void refusesWhatIsNoRecordingOfFrames(String text, String key) {
        assertThatThrownBy(() -> read(text))
                .isInstanceOfSatisfying(
                        InputException.class,
                        e -> assertThat(e.findings().get(0).key()).isEqualTo(key));
    }

    @Test
    void refusesFoldersAndFilesThatAreNotThere() {
        assertThatThrownBy(() -> ReadFrames.of(folder, FrameLogOptions.NONE)).hasMessageContaining("is a folder");
        assertThatThrownBy(() -> ReadFrames.of(folder.resolve("no.log"), FrameLogOptions.NONE))
                .hasMessageContaining("no such file");
    }
}
