package hotday.validation.signals;

import hotday.core.finding.Finding;
import hotday.signals.frame.Frame;
import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import hotday.signals.mdf.MdfLog;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** All that a file of MDF 4 holds, kept. Buses of frames are the numbers that the recorder gave them. */
record MdfSamplesRead(List<Frame> frames, List<Signal> signals, List<Finding> findings) {
    /** Stands for a value that is none. */
    static final Object NOTHING = new Object();

    /** Values are numbers, texts or {@link #NOTHING}. */
    record Signal(String name, String unit, List<Double> times, List<Object> values) {
        /** Whether it is a channel of that name, whatever group stands before it. */
        boolean isOf(String channel) {
            return name.equals(channel) || name.endsWith(":" + channel);
        }
    }

    static MdfSamplesRead of(Path file) {
        Kept kept = new Kept(new ArrayList<>());
        List<Frame> frames = new ArrayList<>();
        try (MdfLog log = MdfLog.open(file)) {
            log.samplesTo(kept);
            Frame frame = new Frame();
            while (log.next(frame)) {
                frames.add(frame.copy());
            }
            List<Frame> numbered = frames.stream().map(f -> numbered(f, log)).toList();
            return new MdfSamplesRead(numbered, kept.signals(), log.findings());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Frame numbered(Frame f, MdfLog log) {
        int bus = Integer.parseInt(log.buses().get(f.bus()).substring("can".length()));
        Frame copy = new Frame().set(f.time(), bus, f.id(), f.extended(), f.data(), f.offset(), f.length());
        copy.as(f.kind());
        return f.flexible() ? copy.asFlexible() : copy;
    }

    private record Kept(List<Signal> signals) implements SampleSink {
        @Override
        public int signal(String name, String unit) {
            signals.add(new Signal(name, unit, new ArrayList<>(), new ArrayList<>()));
            return signals.size() - 1;
        }

        @Override
        public void sample(double time, int signal, double value, SampleState state) {
            put(time, signal, state == SampleState.VALID ? (Object) value : NOTHING);
        }

        @Override
        public void text(double time, int signal, String value) {
            put(time, signal, value);
        }

        private void put(double time, int signal, Object value) {
            signals.get(signal).times().add(time);
            signals.get(signal).values().add(value);
        }
    }
}
