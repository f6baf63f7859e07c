package hotday.bench;

import hotday.signals.dbc.DbcFile;
import hotday.signals.dbc.MessageDecoder;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
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
 * One signal of a frame of eight bytes with eight signals of both byte orders and signs; payloads are random. Beside ours: the Python library canmatrix,
 * which has to come to the same values (no library for the JVM reads such descriptions), and code written by hand for this one message.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FrameDecode {
    private static final int SIGNALS = 8;
    private static final int FRAMES = 1024;
    private static final String DBC = """
            BO_ 1 a: 8 x
             SG_ a : 0|8@1+ (1,-40) [0|0] "degC" x
             SG_ b : 8|12@1+ (0.1,0) [0|0] "%" x
             SG_ c : 20|4@1- (1,0) [0|0] "" x
             SG_ d : 31|16@0+ (0.125,0) [0|0] "rpm" x
             SG_ e : 47|10@0- (0.5,0) [0|0] "Nm" x
             SG_ f : 53|3@0+ (1,0) [0|0] "" x
             SG_ g : 48|3@1+ (1,0) [0|0] "" x
             SG_ h : 56|8@1- (0.4,10) [0|0] "%" x
            """;

    private final MessageDecoder decoder =
            MessageDecoder.of(DbcFile.parse("bench", DBC.getBytes(StandardCharsets.US_ASCII))
                    .messages()
                    .get(0));
    private final byte[] payloads = new byte[8 * FRAMES];
    private final ByteBuffer buffer = ByteBuffer.wrap(payloads).order(ByteOrder.LITTLE_ENDIAN);
    private final double[] out = new double[SIGNALS];
    private int at;

    public FrameDecode() {
        new Random(1).nextBytes(payloads);
    }

    /** The product. */
    @Benchmark
    @OperationsPerInvocation(SIGNALS)
    public double[] own() {
        decoder.decode(payloads, next(), 8, out);
        return out;
    }

    /** The outside reader, all frames at once. */
    @Benchmark
    @OperationsPerInvocation(SIGNALS * FRAMES)
    public double canmatrix(Outside outside) {
        double sum = outside.peer.pass();
        if (Math.abs(sum - outside.expected) > 1e-9 * Math.abs(outside.expected)) {
            throw new IllegalStateException("canmatrix adds up to " + sum + ", ours to " + outside.expected);
        }
        return sum;
    }

    /** What no decoder for any message can be faster than. */
    @Benchmark
    @OperationsPerInvocation(SIGNALS)
    public double[] byHand() {
        long little = buffer.getLong(next());
        long big = Long.reverseBytes(little);
        out[0] = (little & 0xFF) - 40;
        out[1] = (little >>> 8 & 0xFFF) * 0.1;
        out[2] = little << 40 >> 60;
        out[3] = (big >>> 24 & 0xFFFF) * 0.125;
        out[4] = (big << 40 >> 54) * 0.5;
        out[5] = big >>> 11 & 7;
        out[6] = little >>> 48 & 7;
        out[7] = (little >> 56) * 0.4 + 10;
        return out;
    }

    /** The other process, and what ours makes of the same frames. */
    @State(Scope.Thread)
    public static class Outside {
        private DbcPeer peer;
        private double expected;

        @Setup(Level.Trial)
        public void start() throws IOException {
            FrameDecode ours = new FrameDecode();
            for (int i = 0; i < FRAMES; i++) {
                expected += Arrays.stream(ours.own()).sum();
            }
            peer = new DbcPeer(DBC.getBytes(StandardCharsets.US_ASCII), ours.payloads);
        }

        @TearDown(Level.Trial)
        public void stop() throws IOException {
            peer.close();
        }
    }

    private int next() {
        at = at + 8 & 8 * FRAMES - 1;
        return at;
    }
}
