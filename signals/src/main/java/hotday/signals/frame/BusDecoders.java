package hotday.signals.frame;

import hotday.core.finding.Finding;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.Supplier;

/**
 * The decoders of a recording, a set of their own for every bus. A frame goes to them in order until one knows it; names of
 * signals get the bus in front where there are several. For one thread.
 */
public final class BusDecoders {
    private final List<Supplier<FrameDecoder>> makers;
    private final IntFunction<String> prefix;
    private final SampleSink samples;
    private FrameDecoder[][] decoders = {};
    private SampleSink[] sinks = {};

    /**
     * @param makers each makes a decoder for one bus
     * @param prefix what stands before the names of a bus's signals, asked once a bus
     * @param samples takes the samples of all buses
     */
    public BusDecoders(List<Supplier<FrameDecoder>> makers, IntFunction<String> prefix, SampleSink samples) {
        this.makers = List.copyOf(makers);
        this.prefix = prefix;
        this.samples = samples;
    }

    /** Whether any decoder knows the frame; remote and error frames are known to none. */
    public boolean decode(Frame frame) {
        if (frame.kind() != Frame.Kind.DATA) {
            return false;
        }
        FrameDecoder[] all = of(frame.bus());
        for (FrameDecoder one : all) {
            if (one.decode(frame, sinks[frame.bus()])) {
                return true;
            }
        }
        return false;
    }

    /** What the first decoder that has a name for it calls the message of a frame; empty when none has. */
    public String name(Frame frame) {
        return Arrays.stream(of(frame.bus()))
                .map(d -> d.name(frame))
                .filter(n -> !n.isEmpty())
                .findFirst()
                .orElse("");
    }

    private FrameDecoder[] of(int bus) {
        if (bus >= decoders.length) {
            int before = decoders.length;
            decoders = Arrays.copyOf(decoders, bus + 1);
            sinks = Arrays.copyOf(sinks, bus + 1);
            for (int i = before; i <= bus; i++) {
                decoders[i] = makers.stream().map(Supplier::get).toArray(FrameDecoder[]::new);
                sinks[i] = named(prefix.apply(i));
            }
        }
        return decoders[bus];
    }

    private SampleSink named(String before) {
        return before.isEmpty() ? samples : new Prefixed(before, samples);
    }

    /** What the decoders found, bus by bus. */
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>();
        for (FrameDecoder[] bus : decoders) {
            for (FrameDecoder one : bus) {
                all.addAll(one.findings());
            }
        }
        return all;
    }

    private record Prefixed(String before, SampleSink samples) implements SampleSink {
        @Override
        public int signal(String name, String unit) {
            return samples.signal(before + name, unit);
        }

        @Override
        public void sample(double time, int signal, double value, SampleState state) {
            samples.sample(time, signal, value, state);
        }

        @Override
        public void text(double time, int signal, String value) {
            samples.text(time, signal, value);
        }
    }
}
