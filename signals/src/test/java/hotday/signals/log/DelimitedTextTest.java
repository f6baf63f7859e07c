package hotday.signals.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DelimitedTextTest {
    @TempDir
    private Path folder;

    private DelimitedText open(String text) throws IOException {
        return DelimitedText.open(WrittenFile.text(folder, text), ReaderOptions.auto());
    }

    private static String refused(Path path, ReaderOptions options) {
        InputException wrong =
                catchThrowableOfType(InputException.class, () -> WrittenFile.rows(DelimitedText.open(path, options)));
        assertThat(wrong).as("must be refused").isNotNull();
        Finding finding = wrong.findings().get(0);
        Place place = finding.place().orElseThrow();
        assertThat(place.file()).isEqualTo(path.toString());
        return finding.key() + "@" + place.line();
    }

    private static String refused(Path path) {
        return refused(path, ReaderOptions.auto());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            a,b,c\\n1,2,3\\n              | ,  | .
            a\\tb\\tc\\n1\\t2\\t3\\n          | \\t | .
            a;b;c\\n1;2;3\\n              | ;  | .
            a;b, mean;c\\n1;2;3\\n        | ;  | .
            a;b;c\\n1,5;2,25;3\\n         | ;  | ,
            a;b;c\\n1,5;2.25;3\\n         | ;  | .
            a\\tb, c, d\\n1,5\\t2,5\\n    | \\t | ,
            "a,x";"b,y"\\n1;2\\n          | ;  | .
            sep=;\\na;b\\n1,0;2,0\\n      | ;  | ,
            a,b,c\\n1,2,3,\\n4,5,6,\\n    | ,  | .
            """)
    void formIsToldFromTheHead(String text, String delimiter, String mark) throws IOException {
        DelimitedText read = open(text.replace("\\n", "\n").replace("\\t", "\t"));
        assertThat(String.valueOf(read.delimiter())).isEqualTo(delimiter.replace("\\t", "\t"));
        assertThat(String.valueOf(read.decimalMark())).isEqualTo(mark);
    }

    @Test
    void theMapDecidesOverTheHead() throws IOException {
        Path file = WrittenFile.text(folder, "a;b,c\n1;2,5\n");
        ReaderOptions comma = new ReaderOptions(Optional.of(','), ReaderOptions.Decimal.POINT, "", 1);
        assertThat(DelimitedText.open(file, comma).header()).containsExactly("a;b", "c");
    }

    @Test
    void paddedQuotedAndEmptyCells() throws IOException {
        DelimitedText text = open("time, \"speed, km/h\" ,x\r\n 1.0 , \"2,5\" ,\n2,\"say \"\"hi\"\"\",,\n,,\n");
        assertThat(text.header()).containsExactly("time", "speed, km/h", "x");
        assertThat(WrittenFile.rows(text))
                .containsExactly(
                        List.of("2", "1.0", "2,5", ""),
                        List.of("3", "2", "say \"hi\"", "", ""),
                        List.of("4", "", "", ""));
    }

    @Test
    void aQuoteInsideACellIsJustACharacter() throws IOException {
        assertThat(WrittenFile.rows(open("a,b\n5' 11\",2\n")).get(0)).containsExactly("2", "5' 11\"", "2");
        assertThat(WrittenFile.rows(open("a,b\n\"x\"y,2\n")).get(0)).containsExactly("2", "\"x\"y", "2");
    }

    @Test
    void anOpenQuoteSpoilsItsRowOnly() throws IOException {
        List<Row.Damage> damage = new ArrayList<>();
        open("a,b\n1,\"2\n3,4\n").rows(row -> damage.add(row.damage()));
        assertThat(damage).containsExactly(Row.Damage.OPEN_QUOTE, Row.Damage.NONE);
    }

    @Test
    void zeroBytesInARowAreSeen() throws IOException {
        List<Row.Damage> damage = new ArrayList<>();
        open("a,b\n1,2\n3\0\0,4\n\0\0\0\0").rows(row -> damage.add(row.damage()));
        assertThat(damage).containsExactly(Row.Damage.NONE, Row.Damage.ZERO_BYTES, Row.Damage.ZERO_BYTES);
    }

    @Test
    void byteOrderMarkIsNoPartOfTheFirstName() throws IOException {
        assertThat(open("\uFEFFtime,x\n1,2\n").header()).containsExactly("time", "x");
        assertThat(open("\uFEFF\"time\",x\n1,2\n").header()).containsExactly("time", "x");
    }

    @Test
    void latin1AndUtf8() throws IOException {
        String text = "t [s],coolant [°C]\n1,2\n";
        assertThat(open(text).header().get(1)).isEqualTo("coolant [°C]");
        Path latin = WrittenFile.text(folder, text, StandardCharsets.ISO_8859_1);
        assertThat(DelimitedText.open(latin, ReaderOptions.auto()).header().get(1))
                .isEqualTo("coolant [°C]");
    }

    @Test
    void aLongUtf8FileIsNotTakenForLatin1AtTheCut() throws IOException {
        for (int shift = 0; shift < 4; shift++) {
            String text = "t,°" + "x".repeat(shift) + "\n" + "1,°\n".repeat(20_000);
            assertThat(open(text).header().get(1)).startsWith("°");
        }
    }

    @Test
    void packedWhateverItsName() throws IOException {
        Path packed = WrittenFile.packed(folder, "a,b\n1,2\n");
        Path renamed = Files.move(packed, folder.resolve("log.txt"));
        assertThat(WrittenFile.rows(DelimitedText.open(renamed, ReaderOptions.auto())))
                .containsExactly(List.of("2", "1", "2"));
    }

    @Test
    void commentsBlankLinesAndALateHeader() throws IOException {
        Path file = WrittenFile.text(folder, "# logger 7\n\nRecorded by hand\n# more\na,b\n\n1,2\n# end\n3,4\n");
        ReaderOptions options = new ReaderOptions(Optional.empty(), ReaderOptions.Decimal.AUTO, "#", 2);
        DelimitedText text = DelimitedText.open(file, options);
        assertThat(text.headerLine()).isEqualTo(5);
        assertThat(WrittenFile.rows(text)).containsExactly(List.of("7", "1", "2"), List.of("9", "3", "4"));
    }

    @Test
    void aRowCutAtTheEndSaysSo() throws IOException {
        List<Boolean> unfinished = new ArrayList<>();
        open("a,b\n1,2\n3").rows(row -> unfinished.add(row.unfinished()));
        assertThat(unfinished).containsExactly(false, true);
    }

    @Test
    void veryWideRowsAreCountedNotKept() throws IOException {
        List<Integer> counts = new ArrayList<>();
        open("a,b\n" + "1,".repeat(9000) + "\n").rows(row -> {
            counts.add(row.count());
            assertThat(row.blank(8000)).isTrue();
        });
        assertThat(counts).containsExactly(9001);
    }

    @Test
    void whatIsNoText() throws IOException {
        assertThat(refused(folder)).isEqualTo("is-folder@0");
        assertThat(refused(folder.resolve("none.csv"))).isEqualTo("no-such-file@0");
        assertThat(refused(WrittenFile.text(folder, ""))).isEqualTo("empty-file@0");
        assertThat(refused(WrittenFile.text(folder, "\n \n\t\n"))).isEqualTo("no-header@0");
        Path single = WrittenFile.text(folder, "one\n1\n");
        assertThat(refused(single)).isEqualTo("one-column@1");
        assertThat(DelimitedText.open(single, ReaderOptions.list()).header()).containsExactly("one");
        assertThat(refused(WrittenFile.text(folder, "a,\"b\n1,2\n"))).isEqualTo("header-damaged@1");
        assertThat(refused(WrittenFile.text(folder, "a\0b,c\n1,2\n"))).isEqualTo("binary-file@0");
        assertThat(refused(WrittenFile.text(folder, "PK\u0003\u0004rest"))).isEqualTo("binary-file@0");
        assertThat(refused(WrittenFile.text(folder, "a,b\n1,2\n", StandardCharsets.UTF_16)))
                .isEqualTo("text-in-utf16@0");
        assertThat(refused(WrittenFile.text(folder, "a,b\n" + "1".repeat(3_000_000))))
                .isEqualTo("line-too-long@2");
        byte[] noise = new byte[5000];
        new java.util.Random(3).nextBytes(noise);
        assertThat(refused(Files.write(folder.resolve("noise"), noise))).isEqualTo("binary-file@0");
    }

    @Test
    void namesFurtherDownThanTheFileIsLong() throws IOException {
        ReaderOptions third = new ReaderOptions(Optional.empty(), ReaderOptions.Decimal.AUTO, "", 3);
        assertThat(refused(WrittenFile.text(folder, "a,b\n1,2\n"), third)).isEqualTo("no-header@0");
    }

    @Test
    void aPackedFileCutShort() throws IOException {
        byte[] whole = Files.readAllBytes(WrittenFile.packed(folder, "a,b\n" + "1.2345,2.71828\n".repeat(500)));
        Path cut = Files.write(folder.resolve("cut.gz"), Arrays.copyOf(whole, whole.length - 20));
        assertThat(refused(cut)).isEqualTo("packed-file-damaged@0");
    }
}
