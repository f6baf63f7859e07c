package hotday.bench;

import hotday.signals.check.Checksum;
import hotday.signals.check.Crc;
import hotday.signals.translator.Field;
import hotday.signals.translator.Program;
import hotday.signals.translator.Program.Counter;
import hotday.signals.translator.Program.Guard;
import hotday.signals.translator.Program.Incoming;
import hotday.signals.translator.Program.Line;
import hotday.signals.translator.Program.Outgoing;
import hotday.signals.translator.Program.Rest;
import hotday.signals.translator.Program.Source;
import hotday.signals.translator.Program.Values;
import hotday.signals.translator.Scaling;
import hotday.signals.translator.Translator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A frame from one network to the other: counter and checksum looked at, three signals taken, scaled and put, counter and
 * checksum filled in; a look a frame. No library for the JVM does that, so that the peer is code written by hand for these
 * two messages.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class GatewayFrame {
    private static final int FRAMES = 1024;
    private static final int ID = 0x120;
    private static final Field COUNTER = field(48, 4);
    private static final Field CHECKSUM = field(56, 8);

    private final byte[] payloads = new byte[8 * FRAMES];
    private final Translator gateway = new Translator(program());
    private final Translator.Outlet outlet = this::took;
    private final byte[] sent = new byte[8];
    private long sum;
    private int at;
    private int last = -1;
    private int count;

    public GatewayFrame() {
        Random random = new Random(1);
        random.nextBytes(payloads);
        for (int i = 0; i < FRAMES; i++) {
            payloads[8 * i + 6] = (byte) (i & 15);
            payloads[8 * i + 7] = (byte) Crc.CRC8_1D.of(payloads, 8 * i, 7);
        }
    }

    private static Field field(int start, int bits) {
        return new Field(false, start, bits, false, start / 8, (start + bits - 1) / 8);
    }

    private static Program program() {
        Counter counter = new Counter("Counter", COUNTER, 0, 15, 1);
        Guard guard = new Guard(
                "Checksum", CHECKSUM, Checksum.crc8J1850(), List.of(), List.of(0, 1, 2, 3, 4, 5, 6), List.of());
        return new Program(
                "bench",
                List.of("a", "b"),
                1,
                0,
                List.of(new Incoming(0, "From", ID, false, Optional.of(counter), Optional.of(guard))),
                List.of(new Outgoing(1, "To", ID, false, 8, 1, 0, 0, Optional.of(counter), Optional.of(guard))),
                List.of(
                        line(field(0, 16), field(0, 16), new Scaling(1, 0, 4, 0, 16_383)),
                        line(field(16, 16), field(16, 16), new Scaling(31_250, 0, 25_146, 0, 65_535)),
                        line(field(32, 8), field(32, 12), new Scaling(18, 320, 10, 0, 4095))));
    }

    private static Line line(Field from, Field to, Scaling scaling) {
        Values values = new Values(List.of(), Rest.SCALED, 0, 0, 65_535, scaling);
        return new Line("from", 0, new Source(from, List.of(), 0), values, "to", 0, to, 3, 2, 0);
    }

    private int next() {
        at = at + 8 & 8 * FRAMES - 1;
        return at;
    }

    /** The product. */
    @Benchmark
    public long own() {
        gateway.receive(0, ID, false, payloads, next(), 8);
        gateway.look(outlet);
        return sum;
    }

    private void took(int network, int id, boolean extended, byte[] data, int length) {
        sum += data[0] + data[length - 1];
    }

    /** The peer. */
    @Benchmark
    public long byHand() {
        int from = next();
        int counter = payloads[from + 6] & 15;
        if (Crc.CRC8_1D.of(payloads, from, 7) == (payloads[from + 7] & 0xFF) && counter != last) {
            last = counter;
            int a = Math.min(16_383, ((payloads[from] & 0xFF | (payloads[from + 1] & 0xFF) << 8) + 2) / 4);
            long b = (payloads[from + 2] & 0xFF | (payloads[from + 3] & 0xFF) << 8) * 31_250L;
            long scaled = Math.min(65_535, (b + 12_573) / 25_146);
            int c = ((payloads[from + 4] & 0xFF) * 18 + 325) / 10;
            sent[0] = (byte) a;
            sent[1] = (byte) (a >> 8);
            sent[2] = (byte) scaled;
            sent[3] = (byte) (scaled >> 8);
            sent[4] = (byte) c;
            sent[5] = (byte) (c >> 8 & 15);
        }
        sent[6] = (byte) count;
        count = count + 1 & 15;
        sent[7] = (byte) Crc.CRC8_1D.of(sent, 0, 7);
        sum += sent[0] + sent[7];
        return sum;
    }
}
