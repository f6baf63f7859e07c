package hotday.study.decode;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import hotday.signals.dbc.DbcFile;
import hotday.signals.dbc.NetworkDecoder;
import hotday.signals.frame.BusDecoders;
import hotday.signals.frame.Frame;
import hotday.signals.framelog.FrameLog;
import hotday.signals.framelog.FrameLogOptions;
import hotday.signals.framelog.LogCounts;
import hotday.signals.sample.SampleRows;
import hotday.signals.sample.SampleStatistics;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the bytes of a line to the text of its samples nothing is allocated for a frame, so that a recording may have any size. */
class DecodingAllocationTest {
    private static final int WARM = 60_000;
    private static final int FRAMES = 50_000;

    @TempDir
    private Path folder;

    private static final String DBC = """
            BO_ 2364540158 EEC1: 8 x
             SG_ Speed : 24|16@1+ (0.125,0) [0|0] "rpm" x
             SG_ Torque : 16|8@1+ (1,-125) [0|0] "%" x
            BA_DEF_  "ProtocolType" STRING ;
            BA_ "ProtocolType" "J1939";
            """;

    @Test
    void textOfTheSocketsAllocatesNothing() throws IOException {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < WARM + FRAMES; i++) {
            text.append(String.format(
                    "(16225%05d.%06d) can%d 0CF004%02X#F0FF%02X%04X00FFFF%n", i, i, i % 2, i % 5, i % 250, i % 60_000));
        }
        assertThat(bytesAFrame(text.toString())).isLessThan(1);
    }

    @Test
    void rowsAllocateNothing() throws IOException {
        StringBuilder text = new StringBuilder("time_ms,id,extended,bus,data\n");
        for (int i = 0; i < WARM + FRAMES; i++) {
            text.append(
                    String.format("%d.5,0CF004%02X,1,%d,F0 FF %02X %02X 11 00%n", i, i % 5, i % 2, i % 250, i % 60));
        }
        assertThat(bytesAFrame(text.toString())).isLessThan(1);
    }

    private double bytesAFrame(String text) throws IOException {
        Path path = folder.resolve("frames.txt");
        Files.writeString(path, text);
        DbcFile file = DbcFile.parse("net", DBC.getBytes(StandardCharsets.UTF_8));
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        Frame frame = new Frame();
        SampleStatistics statistics = new SampleStatistics();
        LogCounts counts = new LogCounts();
        long before = 0;
        int read = 0;
        try (FrameLog log = FrameLog.open(path, FrameLogOptions.NONE)) {
            SampleRows rows = new SampleRows(OutputStream.nullOutputStream(), log::firstTime);
            BusDecoders toRows =
                    new BusDecoders(List.of(() -> new NetworkDecoder(List.of(file), false)), b -> "", rows);
            BusDecoders toSums =
                    new BusDecoders(List.of(() -> new NetworkDecoder(List.of(file), false)), b -> "", statistics);
            Function<Frame, String> name = toRows::name;
            for (int i = 0; i < WARM + FRAMES; i++) {
                before = i == WARM ? threads.getThreadAllocatedBytes(id) : before;
                read += log.next(frame) ? 1 : 0;
                counts.add(frame, toRows.decode(frame) & toSums.decode(frame), name);
            }
        }
        double allocated = threads.getThreadAllocatedBytes(id) - before;
        assertThat(read).isEqualTo(WARM + FRAMES);
        assertThat(statistics.signals()).hasSize(10);
        return allocated / FRAMES;
    }
}
