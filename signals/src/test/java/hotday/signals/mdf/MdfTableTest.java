package hotday.signals.mdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.InputException;
import hotday.signals.channel.ChannelMap;
import hotday.signals.channel.ModelChannel;
import hotday.signals.channel.Recording;
import hotday.signals.channel.Sampling;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MdfTableTest {
    private static final String MAP = """
            time: {column: time}
            channels:
              coolant_temperature: {column: ECT}
              engine_speed: {column: Speed}
            """;

    @TempDir
    private Path folder;

    private static void group(
            MdfBlocks file, String name, String unit, int cycles, int more, double step, double factor) {
        ByteBuffer data = MdfBlocks.data(10 * cycles);
        for (int i = 0; i < cycles; i++) {
            data.putDouble(i * step).putShort((short) (100 + i));
        }
        long time = file.channel("t", "s", Channel.MASTER, MdfBlocks.REAL, 0, 64, 0);
        long value = file.channel(name, unit, Channel.FIXED, MdfBlocks.UNSIGNED, 64, 16, file.linear(0, factor));
        file.dataGroup(file.group(file.chain(time, value), 0, cycles + more, 10), file.block("##DT", data.array()));
    }

    /** @param more records that the second group says it has beyond those there */
    private Path recorded(int more) throws IOException {
        MdfBlocks file = new MdfBlocks();
        group(file, "ECT", "degF", 4, 0, 1.0, 1);
        group(file, "Speed", "1/min", 10, more, 0.25, 10);
        return Files.write(folder.resolve("run.mf4"), file.bytes());
    }

    @Test
    void aRowForEveryTimeAtWhichAValueCame() throws IOException {
        MdfTable table = MdfTable.open(recorded(0));
        List<String> rows = new ArrayList<>();
        table.rows(row -> rows.add(row.line() + ": " + row.text(0) + "," + row.text(1) + "," + row.text(2)));

        assertThat(table.header()).containsExactly("time", "ECT", "Speed");
        assertThat(table.unit(1)).contains("degF");
        assertThat(rows)
                .startsWith("1: 0,100,1000", "2: 0.25,,1010", "3: 0.5,,1020")
                .hasSize(11);
        assertThat(rows.get(4)).isEqualTo("5: 1,101,1040");
        assertThat(rows.get(10)).isEqualTo("11: 3,103,");
    }

    @Test
    void readThroughAChannelMap() throws IOException {
        Recording read = ChannelMap.of("channels.yaml", MAP).recording(recorded(0));

        assertThat(read.channel(ModelChannel.COOLANT_TEMPERATURE).orElseThrow().values()[4])
                .isCloseTo((101 - 32) / 1.8 + 273.15, within(1e-9));
        double[] between = read.sampled(ModelChannel.COOLANT_TEMPERATURE, new double[] {0, 0.5}, Sampling.LINEAR);
        assertThat(between[1]).isCloseTo((100.5 - 32) / 1.8 + 273.15, within(1e-9));
    }

    @Test
    void aDamagedOneIsRefusedWithWhatStillCanBeDone() throws IOException {
        Path damaged = recorded(5);

        assertThatThrownBy(() -> ChannelMap.of("channels.yaml", MAP).recording(damaged))
                .isInstanceOfSatisfying(
                        InputException.class,
                        e -> assertThat(e.findings().stream().map(f -> f.key()))
                                .containsExactly("records-broken", "recording-damaged"));
    }
}
