package hotday.signals.framelog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DelimitedFramesTest {
    @TempDir
    private Path folder;

    private ReadFrames read(String text) {
        return ReadFrames.of(folder, text);
    }

    private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable read, String key, int column) {
        assertThatThrownBy(read).isInstanceOfSatisfying(InputException.class, e -> {
            Finding f = e.findings().get(0);
            assertThat(f.key()).isEqualTo(key);
            assertThat(f.place().orElseThrow().column()).isEqualTo(column);
        });
    }

    @Test
    void readsBytesInCellsOfTheirOwn() {
        ReadFrames read = read("""
                Time (us),ID,Extended,Dir,Bus,LEN,D1,D2,D3,D4,D5,D6,D7,D8
                1000,000007DF,false,Rx,1,8,02,01,00,00,00,00,00,FF,
                2500,18FEEE00,true,Rx,0,2,82,FF,,,,,,
                3000,00000111,false,Rx,0,0,,,,,,,,
                """);
        assertThat(read.findings()).isEmpty();
        assertThat(read.buses()).containsExactly("1", "0");
        assertThat(read.lines())
                .containsExactly("0.001 0 7DF#02010000000000FF", "0.0025 1 18FEEE00#82FF", "0.003 1 111#");
        assertThat(read.layout()).isEqualTo("rows with identifiers, time in us");
    }

    @Test
    void readsColumnsInAnyOrderWithAnyDelimiter() {
        ReadFrames read = read("""
                # written by a logger
                Data [hex];"CAN ID [dec]";IDE;Time[ms]
                1A2B3C;291;0;12,5
                "1A 2B";419360256;1;13
                0x1A 0x2B;1;0;13,25
                1A-2B-3C;1;0;14
                """);
        assertThat(read.findings()).isEmpty();
        assertThat(read.lines())
                .containsExactly(
                        "0.0125 0 123#1A2B3C", "0.013 0 18FEEE00#1A2B", "0.01325 0 001#1A2B", "0.014 0 001#1A2B3C");
    }

    @Test
    void readsPayloadsInDecimalAndFromByteNought() {
        ReadFrames read = read("time_s\tid\td0\td1\td2\trtr\n1e-3\t0x123\t1\t255\t16\t0\n0.5\t0x124\t\t\t\t1\n");
        assertThat(read.lines()).containsExactly("0.001 0 123#01FF10", "0.5 0 124#R0");
        assertThat(read("time_s,id,data\n1,0x1,100 20 3\n").lines()).containsExactly("1.0 0 001#641403");
    }

    @Test
    void makesIdentifiersOfParameterGroups() {
        // check values of SAE J1939 identifiers: 0x0CF00400 group 61444, 0x18E0FF21 group 57344 to all from 0x21
        ReadFrames read = read("""
                ,time [ms],pgn,priority,source,destination,data,description
                0,1.0,61444,3,0,255,F0 FF 7D 00 00 FF FF FF ,Unknown
                1,2.0,57344,6,33,255,FF ,"some, words"
                2,3.0,57344,6,33,3,FF ,
                """);
        assertThat(read.findings()).isEmpty();
        assertThat(read.lines())
                .containsExactly("0.001 0 0CF00400#F0FF7D0000FFFFFF", "0.002 0 18E0FF21#FF", "0.003 0 18E00321#FF");
        assertThat(read.frames().get(0).extended()).isTrue();
    }

    @Test
    void readsLengthCodesOfLongFrames() {
        String twelve = "00112233445566778899AABB";
        assertThat(read("time_s,id,dlc,data\n1,0x1,9," + twelve + "\n").lines())
                .containsExactly("1.0 0 001##" + twelve);
        assertThat(read("time_s,id,dlc,data\n1,0x1,12," + twelve + "\n").lines())
                .containsExactly("1.0 0 001##" + twelve);
    }

    /** Five identifiers every 10 ms each. */
    private static String cycle(double step) {
        StringBuilder text = new StringBuilder("time,id,data\n");
        for (int i = 0; i < 300; i++) {
            text.append(i * step).append(",0x10").append(i % 5).append(",1122334455667788\n");
        }
        return text.toString();
    }

    @Test
    void tellsTheUnitOfStampsByWhatANetworkCanDo() {
        assertThat(read(cycle(2)).layout()).endsWith("in ms");
        assertThat(read(cycle(2000)).layout()).endsWith("in us");
        assertThat(read(cycle(0.002)).layout()).endsWith("in s");
        assertThat(read(cycle(2e6)).layout()).endsWith("in ns");
        assertThat(read(cycle(2)).duration()).isEqualTo(0.598);
    }

    @Test
    void refusesWhatItCannotKnowAndTakesWhatIsSaid() {
        // every identifier comes once in 1500: 1.5 s or 1.5 ms, both can be
        refused(() -> read(cycle(300)), "stamp-unit-unknown", 1);
        refused(() -> read("time,id,data\n1,0x1,FF\n2,0x1,FF\n"), "stamp-unit-unknown", 1);
        refused(() -> read("time_s,id,data\n1,100,FF\n2,101,FF\n"), "base-unknown", 2);
        refused(() -> read("time_s,id,d0,d1\n1,0x100,1,2\n2,0x101,3,10\n"), "base-unknown", 3);
        refused(() -> read("time_s,id,identifier,data\n1,0x100,0x100,FF\n"), "column-twice", 3);
        refused(() -> read("time_s,id,d0,d2\n1,0x100,FF,FF\n"), "byte-columns-incomplete", 3);
        refused(() -> read("time_s,pgn,data\n1,61444,FF\n"), "no-such-column", 0);
        refused(() -> read("time_s,id,data\n"), "no-rows", 0);
        FrameLogOptions said = new FrameLogOptions(
                Optional.of(StampUnit.MILLISECONDS), Optional.of(NumberBase.DECIMAL), Optional.of(NumberBase.HEX));
        assertThat(ReadFrames.of(folder, "time,id,d0,d1\n1,100,1,2\n2,101,3,10\n", said)
                        .lines())
                .containsExactly("0.001 0 064#0102", "0.002 0 065#0310");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "x,100,true,2,AA,BB|1|must be a number",
                "1,20000000,true,2,AA,BB|3|up to 1FFFFFFF",
                "1,800,false,2,AA,BB|3|at most 7FF",
                "1,100,maybe,2,AA,BB|7|true or false",
                "1,100,true,65,AA,BB|12|0 to 64 bytes",
                "1,100,true,3,AA,BB|14|columns for",
                "1,100,true,2,AA,|17|0 to 255",
                "1,100,true,2,AAA,BB|14|0 to 255",
                "1,100,true,2,AA,BB,CC|20|more cells",
                "1,100|6|true or false",
            })
    void tellsWhichCellIsBroken(String row, int column, String why) {
        ReadFrames read = read("time_s,id,extended,len,d0,d1\n1,7FF,false,2,AA,BB\n" + row + "\n2,7FF,false,2,AA,BB\n");
        assertThat(read.frames()).hasSize(2);
        Finding broken = read.findings().get(0);
        assertThat(broken.key()).isEqualTo("line-broken");
        assertThat(broken.message()).contains(why);
        assertThat(broken.place().orElseThrow().line()).isEqualTo(3);
        assertThat(broken.place().orElseThrow().column()).isEqualTo(column);
    }
}
