package hotday.bench;

import hotday.signals.frame.Frame;
import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import hotday.signals.j1939.J1939Decoder;
import java.util.HexFormat;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One frame of a truck's network, out of fourteen: seven single ones of six groups (21 parameters, some not available),
 * one of a group that is not known, and two broadcasts of two packets from two senders. No library for the JVM decodes
 * such frames, so that the peer is code written by hand for these very single frames, without senders, codes or packets.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class J1939Decode {
    private static final int FRAMES = 14;
    private static final String[] RECORDED = {
        "0CF00400 607D844A1400F084", "18FEEE00 6F3F502BFFFFFFFF", "18FEF500 C5FFFFD323FFFFFF",
                "1CECFF00 200E0002FFE3FE00",
        "18FEF600 00015833FFD931FF", "18FEF200 37000000870100FF", "1CECFF0B 200E0002FFE3FE00",
                "0CFEF100 F7000004000000FF",
        "1CEBFF00 01201CDD6842DCA0", "1CEBFF0B 01201CDD6842DCA0", "18FEE000 FFFFFFFF4B1C0100",
                "1CEBFF00 020FD58D20E37A31",
        "18FEEE01 823FC02BFFFFFFFF", "1CEBFF0B 020FD58D20E37A31"
    };

    private final Frame[] frames = new Frame[FRAMES];
    private final J1939Decoder decoder = new J1939Decoder();
    private final Sum sum = new Sum();
    private double time;

    public J1939Decode() {
        for (int i = 0; i < FRAMES; i++) {
            String[] parts = RECORDED[i].split(" ");
            byte[] data = HexFormat.of().parseHex(parts[1]);
            frames[i] = new Frame().set(0, 0, Integer.parseInt(parts[0], 16), true, data, 0, data.length);
        }
    }

    /** Adds up what it is given, so that nothing is left out. */
    private static final class Sum implements SampleSink {
        private int numbers;
        private double values;
        private int others;

        @Override
        public int signal(String name, String unit) {
            return numbers++;
        }

        @Override
        public void sample(double time, int signal, double value, SampleState state) {
            if (state == SampleState.VALID) {
                values += value;
            } else {
                others += signal;
            }
        }

        @Override
        public void text(double time, int signal, String value) {
            others += value.length();
        }
    }

    /** The product. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public double own() {
        time += 0.01;
        for (Frame frame : frames) {
            frame.set(time, 0, frame.id(), true, frame.data(), 0, frame.length());
            decoder.decode(frame, sum);
        }
        return sum.values + sum.others;
    }

    /** The peer. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public double byHand() {
        for (Frame frame : frames) {
            byte[] d = frame.data();
            switch (frame.id() >>> 8 & 0x3FFFF) {
                case 0xF004 -> sum.values += two(d, 3) * 0.125 + one(d, 1) - 125 + one(d, 2) - 125 + (d[6] & 0xF);
                case 0xFEEE -> sum.values += one(d, 0) - 40 + one(d, 1) - 40 + two(d, 2) * 0.03125 - 273;
                case 0xFEF5 -> sum.values += one(d, 0) * 0.5 + two(d, 3) * 0.03125 - 273;
                case 0xFEF6 -> sum.values += one(d, 1) * 2 + one(d, 2) - 40 + two(d, 5) * 0.03125 - 273;
                case 0xFEF2 -> sum.values += two(d, 0) * 0.05 + one(d, 6) * 0.4;
                case 0xFEF1 -> sum.values += two(d, 1) / 256.0;
                default -> sum.others++;
            }
        }
        return sum.values + sum.others;
    }

    private static int one(byte[] d, int at) {
        return d[at] & 0xFF;
    }

    private static int two(byte[] d, int at) {
        return d[at] & 0xFF | (d[at + 1] & 0xFF) << 8;
    }
}
