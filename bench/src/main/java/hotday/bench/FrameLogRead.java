package hotday.bench;

import hotday.signals.frame.Frame;
import hotday.signals.framelog.FrameLog;
import hotday.signals.framelog.FrameLogOptions;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A frame of a recording, candump text or rows, of 200,000 frames of 29 bits with eight bytes, from a file that the system
 * holds in memory. No library for the JVM reads such recordings, so that the peer is the plainest reader: lines as strings,
 * cut with {@code split}.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FrameLogRead {
    private static final int FRAMES = 200_000;

    private final Frame frame = new Frame();
    private Path text;
    private Path rows;

    @Setup(Level.Trial)
    public void write() throws IOException {
        text = Files.createTempFile("bench", ".log");
        rows = Files.createTempFile("bench", ".csv");
        StringBuilder lines = new StringBuilder();
        StringBuilder cells = new StringBuilder("time_us,id,extended,bus,len,d0,d1,d2,d3,d4,d5,d6,d7\n");
        Random random = new Random(1);
        byte[] data = new byte[8];
        for (int i = 0; i < FRAMES; i++) {
            random.nextBytes(data);
            String id = String.format("%08X", 0x0CF00400 + random.nextInt(1 << 20));
            lines.append(String.format("(1622547%03d.%06d) can0 ", i / 1000, i % 1000 * 1000))
                    .append(id)
                    .append('#');
            lines.append(HexFormat.of().withUpperCase().formatHex(data)).append('\n');
            cells.append(1000L * i).append(',').append(id).append(",true,0,8,");
            cells.append(HexFormat.ofDelimiter(",").withUpperCase().formatHex(data))
                    .append('\n');
        }
        Files.writeString(text, lines);
        Files.writeString(rows, cells);
    }

    @TearDown(Level.Trial)
    public void remove() throws IOException {
        Files.delete(text);
        Files.delete(rows);
    }

    /** The product, candump text. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public long ownText() throws IOException {
        return own(text);
    }

    /** The product, rows. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public long ownRows() throws IOException {
        return own(rows);
    }

    private long own(Path path) throws IOException {
        long sum = 0;
        try (FrameLog log = FrameLog.open(path, FrameLogOptions.NONE)) {
            while (log.next(frame)) {
                sum += frame.id() + frame.at(7);
            }
        }
        return sum;
    }

    /** The peer, candump text. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public long splitText() throws IOException {
        long sum = 0;
        try (BufferedReader reader = Files.newBufferedReader(text, StandardCharsets.US_ASCII)) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String[] words = line.split(" ");
                double time = Double.parseDouble(words[0].substring(1, words[0].length() - 1));
                String[] parts = words[2].split("#");
                byte[] data = HexFormat.of().parseHex(parts[1]);
                frame.set(time, 0, Integer.parseInt(parts[0], 16), true, data, 0, data.length);
                sum += frame.id() + frame.at(7);
            }
        }
        return sum;
    }
}
