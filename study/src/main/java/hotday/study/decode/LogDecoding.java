package hotday.study.decode;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.signals.frame.BusDecoders;
import hotday.signals.frame.Frame;
import hotday.signals.frame.FrameDecoder;
import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import hotday.signals.framelog.FrameLog;
import hotday.signals.framelog.FrameLogOptions;
import hotday.signals.framelog.LogCounts;
import hotday.signals.sample.SampleColumns;
import hotday.signals.sample.SampleRows;
import hotday.signals.sample.SampleStatistics;
import hotday.study.workspace.AtomicFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A recording of frames worked through once, or twice for columns (which signals there are is known at the end only).
 * Memory does not grow with the recording.
 *
 * @param log the recording
 * @param options what is said about it
 * @param decoders each makes a decoder for one bus; a frame goes to the first that knows it
 */
public record LogDecoding(Path log, FrameLogOptions options, List<Supplier<FrameDecoder>> decoders) {
    public LogDecoding {
        decoders = List.copyOf(decoders);
    }

    /** Sums the recording up. */
    public LogSummary summary() {
        SampleStatistics statistics = new SampleStatistics();
        return pass(read -> statistics, statistics, sink -> {});
    }

    /** Writes a row for every sample, whole or not at all. */
    public LogSummary writeRows(Path target) {
        LogSummary[] summary = new LogSummary[1];
        AtomicFile.write(
                target,
                out -> summary[0] = unwrapped(() -> {
                    SampleStatistics statistics = new SampleStatistics();
                    return pass(
                            read -> new Both(statistics, new SampleRows(out, read::firstTime)),
                            statistics,
                            sink -> ((Both) sink).rows().finish());
                }));
        return summary[0];
    }

    /**
     * Writes a column for every signal, whole or not at all.
     *
     * @param raster s; 0 for a row at every time at which a sample came
     */
    public LogSummary writeColumns(Path target, double raster) {
        LogSummary summary = summary();
        if (Double.isNaN(summary.firstStamp())) {
            throw InputException.at(
                    Place.of(log.toString()), "no-time-stamps", "has no time stamps: rows cannot be put at times");
        }
        requireSamples(summary.signals().isEmpty());
        AtomicFile.write(
                target,
                out -> unwrapped(() -> pass(
                        read -> new SampleColumns(out, read::firstTime, raster, summary.signals()),
                        new SampleStatistics(),
                        sink -> ((SampleColumns) sink).finish())));
        return summary;
    }

    private static LogSummary unwrapped(Supplier<LogSummary> writing) throws IOException {
        try {
            return writing.get();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private LogSummary pass(
            Function<FrameLog, SampleSink> sinks, SampleStatistics statistics, Consumer<SampleSink> end) {
        try (FrameLog read = FrameLog.open(log, options)) {
            SampleSink sink = sinks.apply(read);
            BusDecoders known = new BusDecoders(decoders, bus -> prefix(read, bus), sink);
            LogCounts counts = new LogCounts();
            Frame frame = new Frame();
            while (read.next(frame)) {
                counts.add(frame, known.decode(frame), known::name);
            }
            requireFrames(read);
            requireSamples(sink instanceof Both && statistics.signals().isEmpty());
            end.accept(sink);
            return summary(read, counts, statistics, known.findings());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String prefix(FrameLog read, int bus) {
        List<String> names = read.buses();
        return bus == 0 && read.beginsWithOneBus() || bus >= names.size() ? "" : names.get(bus) + ":";
    }

    private void requireFrames(FrameLog read) {
        if (read.frames() == 0) {
            List<Finding> all = new ArrayList<>();
            all.add(Finding.fault("no-frames", Place.of(log.toString()), "not a single line is a frame"));
            all.addAll(read.findings());
            throw new InputException(all);
        }
    }

    private void requireSamples(boolean none) {
        if (none) {
            throw InputException.at(
                    Place.of(log.toString()),
                    "nothing-decoded",
                    "no frame of it holds a signal that is described; nothing was written");
        }
    }

    private LogSummary summary(FrameLog read, LogCounts counts, SampleStatistics statistics, List<Finding> more) {
        List<Finding> findings = new ArrayList<>(read.findings());
        more.stream().filter(f -> !findings.contains(f)).forEach(findings::add);
        return new LogSummary(
                log.toString(),
                read.layout(),
                read.frames(),
                read.brokenLines(),
                read.firstTime(),
                read.duration(),
                read.buses(),
                counts,
                statistics.signals(),
                findings);
    }

    /** Both number signals as they come, so that their numbers are the same. */
    private record Both(SampleStatistics statistics, SampleRows rows) implements SampleSink {
        @Override
        public int signal(String name, String unit) {
            statistics.signal(name, unit);
            return rows.signal(name, unit);
        }

        @Override
        public void sample(double time, int signal, double value, SampleState state) {
            statistics.sample(time, signal, value, state);
            rows.sample(time, signal, value, state);
        }

        @Override
        public void text(double time, int signal, String value) {
            statistics.text(time, signal, value);
            rows.text(time, signal, value);
        }
    }
}
