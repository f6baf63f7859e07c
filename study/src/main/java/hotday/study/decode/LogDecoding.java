package hotday.study.decode;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.signals.channel.ChannelGuess;
import hotday.signals.channel.ChannelMap;
import hotday.signals.channel.RecordingHead;
import hotday.signals.frame.BusDecoders;
import hotday.signals.frame.Frame;
import hotday.signals.frame.FrameDecoder;
import hotday.signals.frame.FrameSource;
import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import hotday.signals.framelog.FrameLog;
import hotday.signals.framelog.FrameLogOptions;
import hotday.signals.framelog.LogCounts;
import hotday.signals.mdf.MdfLog;
import hotday.signals.parquet.ParquetTable;
import hotday.signals.sample.ParquetSamples;
import hotday.signals.sample.SampleColumns;
import hotday.signals.sample.SampleRows;
import hotday.signals.sample.SampleStatistics;
import hotday.signals.sample.SampleWriter;
import hotday.study.workspace.AtomicFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A recording of frames or of measured values worked through once, or twice for columns (which signals there are is known at the end only).
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
        return summary(hasSeveralBuses());
    }

    private LogSummary summary(boolean several) {
        SampleStatistics statistics = new SampleStatistics();
        return pass(several, read -> statistics, statistics, sink -> {});
    }

    /** Told by content. */
    private FrameSource open() {
        if (MdfLog.isMdf(log)) {
            return MdfLog.open(log);
        }
        return isTableOfValues(log) ? TableSource.open(log, options.stampUnit()) : FrameLog.open(log, options);
    }

    private static boolean isTableOfValues(Path log) {
        return ParquetTable.isParquet(log)
                ? !FrameLog.namesFrames(ParquetTable.open(log))
                : !FrameLog.isFrames(log) && isMeasuredText(log);
    }

    /** A text with a column of time among others; what is neither this nor frames is refused as no recording of frames. */
    private static boolean isMeasuredText(Path log) {
        try {
            RecordingHead head = ChannelMap.headUnmapped(log);
            return head.columns().size() > 1 && ChannelGuess.of(head).time().position() > 0;
        } catch (InputException none) {
            return false;
        }
    }

    /** Whether a recording holds, or may hold, values as such, which no description is needed for. */
    public static boolean holdsSamples(Path log) {
        return MdfLog.isMdf(log) || isTableOfValues(log);
    }

    private static boolean isParquet(Path target) {
        return target.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".parquet");
    }

    /** Looked for first, so that names of signals do not hang on which bus speaks when. */
    private boolean hasSeveralBuses() {
        try (FrameSource read = open()) {
            Frame frame = new Frame();
            while (read.holdsFrames() && read.next(frame)) {
                if (frame.bus() > 0) {
                    return true;
                }
            }
            return false;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes a row for every sample, whole or not at all; a Parquet file where the target's name ends so. */
    public LogSummary writeRows(Path target) {
        boolean several = hasSeveralBuses();
        LogSummary[] summary = new LogSummary[1];
        AtomicFile.write(
                target,
                out -> summary[0] = unwrapped(() -> {
                    SampleStatistics statistics = new SampleStatistics();
                    return pass(
                            several,
                            read -> new Both(
                                    statistics,
                                    isParquet(target)
                                            ? new ParquetSamples(out, read::zero)
                                            : new SampleRows(out, read::zero)),
                            statistics,
                            sink -> ((Both) sink).rows().finish());
                }));
        return summary[0];
    }

    /**
     * Writes a column for every signal, whole or not at all; a Parquet file where the target's name ends so.
     *
     * @param raster s; 0 for a row at every time at which a sample came
     */
    public LogSummary writeColumns(Path target, double raster) {
        boolean several = hasSeveralBuses();
        LogSummary summary = summary(several);
        if (Double.isNaN(summary.firstStamp())) {
            throw InputException.at(
                    Place.of(log.toString()), "no-time-stamps", "has no time stamps: rows cannot be put at times");
        }
        requireSamples(summary.signals().isEmpty());
        AtomicFile.write(
                target,
                out -> unwrapped(() -> pass(
                        several,
                        read -> isParquet(target)
                                ? SampleColumns.parquet(out, read::zero, raster, summary.signals())
                                : new SampleColumns(out, read::zero, raster, summary.signals()),
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
            boolean several,
            Function<FrameSource, SampleSink> sinks,
            SampleStatistics statistics,
            Consumer<SampleSink> end) {
        try (FrameSource read = open()) {
            SampleSink sink = sinks.apply(read);
            read.samplesTo(sink);
            BusDecoders known =
                    new BusDecoders(decoders, bus -> several ? read.buses().get(bus) + ":" : "", sink);
            LogCounts counts = new LogCounts();
            Function<Frame, String> names = known::name;
            Frame frame = new Frame();
            while (read.next(frame)) {
                counts.add(frame, known.decode(frame), names);
            }
            requireContent(read);
            requireSamples(sink instanceof Both && statistics.signals().isEmpty());
            end.accept(sink);
            return summary(read, counts, statistics, known.findings());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void requireContent(FrameSource read) {
        if (read.frames() == 0 && read.samples() == 0) {
            List<Finding> all = new ArrayList<>();
            all.add(Finding.fault(
                    "no-frames", Place.of(log.toString()), "holds not a single frame or value that can be read"));
            all.addAll(read.findings());
            throw new InputException(all);
        }
    }

    private void requireSamples(boolean none) {
        if (none) {
            throw InputException.at(
                    Place.of(log.toString()),
                    "nothing-decoded",
                    "no frame of it holds a signal that is described, and it holds no values itself; nothing was written");
        }
    }

    private LogSummary summary(FrameSource read, LogCounts counts, SampleStatistics statistics, List<Finding> more) {
        List<Finding> findings = new ArrayList<>(read.findings());
        more.stream().filter(f -> !findings.contains(f)).forEach(findings::add);
        return new LogSummary(
                log.toString(),
                read.layout(),
                read.frames(),
                read.broken(),
                read.firstTime(),
                read.duration(),
                read.buses(),
                counts,
                statistics.signals(),
                findings);
    }

    /** Both number signals as they come, so that their numbers are the same. */
    private record Both(SampleStatistics statistics, SampleWriter rows) implements SampleSink {
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
