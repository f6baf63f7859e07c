package hotday.signals.channel;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which column is guessed to be time, and which never is. */
class TimeGuessTest {
    @TempDir
    private Path folder;

    private MapDraft.Time guess(String text) throws IOException {
        return ChannelGuess.of(ChannelMap.headUnmapped(Files.writeString(folder.resolve("a.csv"), text)))
                .time();
    }

    /** A warm-up: every column rises from row to row. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ECT [degC];RPM               | 0
            Coolant (C);RPM              | 0
            engine temp;oil temp         | 0
            sump temperature;distance    | 0
            T [degC];x (V)               | 0
            t [degC];elapsed (km)        | 0
            odometer;vss                 | 0
            ECT [degC];t                 | 2
            ECT [degC];t [s]             | 2
            Coolant (C);Zeit             | 2
            Coolant (C);Time (local)     | 2
            ECT;ENGINE_RUN_TINE ()       | 2
            run hours (h);x              | 1
            """)
    void columnsThatRise(String header, int position) throws IOException {
        assertThat(guess(header + "\n20,5;1\n21;2\n22;3\n23;4\n").position()).isEqualTo(position);
    }

    @Test
    void aRowOfUnitsSpeaksToo() throws IOException {
        assertThat(guess("t;x\ndegC;V\n20;1\n21;2\n").position()).isZero();
        assertThat(guess("a;b\ndegC;s\n20;1\n21;2\n").position()).isEqualTo(2);
    }

    /** Whatever is measured in another unit is never time, in any order of the columns. */
    @Test
    void noColumnWithAnotherUnitIsEverTime() throws IOException {
        Random random = new Random(5);
        String[] names = {"t", "time", "a", "ECT", "clock", "elapsed", "x1", "seconds", "Coolant", "run time"};
        String[] units = {"degC", "km/h", "V", "kPa", "%", "rpm", "g/s", "A", "m"};
        for (int run = 0; run < 200; run++) {
            StringBuilder head = new StringBuilder();
            int columns = 2 + random.nextInt(4);
            for (int i = 0; i < columns; i++) {
                head.append(i == 0 ? "" : ";")
                        .append(names[random.nextInt(names.length)])
                        .append(" [")
                        .append(units[random.nextInt(units.length)])
                        .append(']');
            }
            String row = ";1".repeat(columns).substring(1) + "\n";
            assertThat(guess(head + "\n" + row + row.replace('1', '2') + row.replace('1', '3')))
                    .as(head.toString())
                    .isEqualTo(MapDraft.Time.NONE);
        }
    }
}
