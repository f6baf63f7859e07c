package hotday.signals.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hotday.core.finding.InputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsRowTest {
    @TempDir
    private Path folder;

    private DelimitedText open(String secondLine) throws IOException {
        return DelimitedText.open(
                WrittenFile.text(folder, "Time;ECT;RPM\n" + secondLine + "\n0;80;700\n"), ReaderOptions.auto());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            s;degC;rpm              | s        | degC | rpm
            [s];[°C];[1/min]        | s        | °C   | 1/min
            (ms);(degF);(U/min)     | ms       | degF | U/min
            " s ";"\uFFFDC";"rpm"   | s        | °C   | rpm
            hh:mm:ss.SSS;degC;-     | hh:mm:ss.SSS | degC |
            s;;                     | s        |      |
            s;degC;rpm;             | s        | degC | rpm
            s;degC;mg/Hub           | s        | degC | mg/Hub
            s;%;1                   | s        | %    |
            """)
    void unitsUnderTheNames(String line, String time, String coolant, String engine) throws IOException {
        DelimitedText text = open(line);
        assertThat(text.unit(0)).isEqualTo(Optional.ofNullable(time));
        assertThat(text.unit(1)).isEqualTo(Optional.ofNullable(coolant));
        assertThat(text.unit(2)).isEqualTo(Optional.ofNullable(engine));
        assertThat(text.unit(3)).isEmpty();
        assertThat(text.unitsLine()).isEqualTo(2);
        assertThat(text.headerLine()).isEqualTo(1);
        assertThat(WrittenFile.rows(text)).containsExactly(List.of("3", "0", "80", "700"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "raw;raw;raw",
                "0;degC;rpm",
                "00:00:00;degC;rpm",
                "s;degC;12,5",
                "-;-;-",
                ";;",
                "s;ab;cd",
                "s;degC;1.2V"
            })
    void rowsAndWordsAreNoUnits(String line) throws IOException {
        DelimitedText text = open(line);
        assertThat(text.unitsLine()).isZero();
        assertThat(text.unit(1)).isEmpty();
        assertThat(WrittenFile.rows(text)).hasSizeGreaterThan(";;".equals(line) ? 0 : 1);
    }

    @Test
    void blankAndHeadLinesBefore() throws IOException {
        String text = "\n\nLogger 4711\n\n# note\nTime,ECT\n\n# units\ns,degC\n\n0,80\n";
        ReaderOptions second = new ReaderOptions(Optional.empty(), ReaderOptions.Decimal.AUTO, "#", 2);
        DelimitedText read = DelimitedText.open(WrittenFile.text(folder, text), second);
        assertThat(read.header()).containsExactly("Time", "ECT");
        assertThat(read.unit(1)).contains("degC");
        assertThat(read.unitsLine()).isEqualTo(9);
        assertThat(WrittenFile.rows(read)).containsExactly(List.of("11", "0", "80"));
    }

    /** Lines about car and logger above the names need nobody to count them. */
    @Test
    void namesBelowLinesThatAreNone() throws IOException {
        String table = "Time;ECT\ns;degC\n0;80,5\n1;81\n";
        DelimitedText read = DelimitedText.open(
                WrittenFile.text(folder, "Logger v1.2\nDriver: Smith, J.\n\n" + table), ReaderOptions.auto());
        assertThat(read.header()).containsExactly("Time", "ECT");
        assertThat(read.headerLine()).isEqualTo(4);
        assertThat(read.unit(1)).contains("degC");
        assertThat(WrittenFile.rows(read)).containsExactly(List.of("6", "0", "80,5"), List.of("7", "1", "81"));
    }

    /** Cut by something unknown, a row with a decimal comma is no header. */
    @ParameterizedTest
    @ValueSource(strings = {"Time|ECT\n0|80,5\n1|81,5\n", "Time ECT\n0 80,5\n1 81,5\n", "Time\n1\n2\n"})
    void aTableCutByOtherMarksIsRefused(String text) throws IOException {
        Path file = WrittenFile.text(folder, text);
        InputException wrong =
                catchThrowableOfType(InputException.class, () -> DelimitedText.open(file, ReaderOptions.auto()));
        assertThat(wrong.findings().get(0).key()).isEqualTo("one-column");
    }

    @Test
    void inOldLettersToo() throws IOException {
        Path latin = WrittenFile.text(folder, "Zeit;ECT\ns;°C\n0;80\n", StandardCharsets.ISO_8859_1);
        assertThat(DelimitedText.open(latin, ReaderOptions.auto()).unit(1)).contains("°C");
    }

    /** A list of values says its units in the names: a line of words there is the reader's to refuse. */
    @Test
    void notInAListOfValues() throws IOException {
        Path file = WrittenFile.text(folder, "T,p\nK,Pa\n300,1e5\n");
        assertThat(WrittenFile.rows(DelimitedText.open(file, ReaderOptions.list())))
                .hasSize(2);
    }
}
