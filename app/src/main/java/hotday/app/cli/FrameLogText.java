package hotday.app.cli;

import hotday.signals.frame.Frame;
import hotday.signals.frame.SampleState;
import hotday.signals.framelog.BusCount;
import hotday.signals.framelog.IdentifierCount;
import hotday.signals.sample.SignalStatistics;
import hotday.study.decode.LogSummary;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

/** A recording of frames for people. */
final class FrameLogText {
    /** Stamps between 2000 and 2100 count from 1970 on. */
    private static final double EPOCH_FROM = 946_684_800;

    private static final double EPOCH_TO = 4_102_444_800.0;

    private FrameLogText() {}

    static void print(Console console, FrameLogReport report) {
        LogSummary log = report.log();
        console.result(head(log));
        for (int i = 0; i < log.counts().buses().size(); i++) {
            bus(console, report, i);
        }
        if (log.frames() > 0) {
            identifiers(console, log);
        }
        signals(console, log.signals());
        findings(console, report);
    }

    static void printWritten(Console console, FrameLogReport report, Path to) {
        long samples = report.log().signals().stream()
                .mapToLong(SignalStatistics::count)
                .sum();
        console.result(head(report.log()));
        console.result(String.format(
                Locale.ROOT,
                "%s: %d samples of %d signals",
                to,
                samples,
                report.log().signals().size()));
        findings(console, report);
    }

    private static void findings(Console console, FrameLogReport report) {
        report.findings().forEach(f -> console.say(f.severity().name().toLowerCase(Locale.ROOT) + ": " + f));
    }

    private static String head(LogSummary log) {
        String line = log.file() + ": " + log.layout();
        if (log.frames() > 0) {
            line += ", " + log.frames() + " frames";
        }
        if (log.brokenLines() > 0) {
            line += ", " + log.brokenLines() + " broken and left out";
        }
        return Double.isNaN(log.firstStamp())
                ? line
                : line + String.format(Locale.ROOT, ", %.3f s from %s on", log.duration(), stamp(log.firstStamp()));
    }

    private static String stamp(double seconds) {
        String plain = String.format(Locale.ROOT, "%.6f s", seconds);
        return seconds > EPOCH_FROM && seconds < EPOCH_TO
                ? plain + " (" + Instant.ofEpochSecond((long) seconds) + ")"
                : plain;
    }

    private static void bus(Console console, FrameLogReport report, int number) {
        BusCount bus = report.log().counts().buses().get(number);
        String name = report.log().busName(number);
        console.result("");
        console.result("bus" + (name.isEmpty() ? "" : " " + name) + ": " + bus.frames() + " frames" + kinds(bus));
        double most = report.log().mostBitsPerSecond(bus);
        if (!Double.isNaN(most)) {
            console.result(String.format(
                    Locale.ROOT,
                    "  %.1f kbit/s without stuffing, %.1f with all there can be, %.1f of that in the busiest second%s",
                    report.log().fewestBitsPerSecond(bus) / 1e3,
                    most / 1e3,
                    bus.busiestSecond() / 1e3,
                    load(report, bus)));
        }
    }

    private static String load(FrameLogReport report, BusCount bus) {
        return Double.isNaN(report.bitRate())
                ? "; say --bitrate for the load"
                : String.format(
                        Locale.ROOT,
                        "; load %.1f to %.1f %% of %.0f kbit/s",
                        report.fewestLoad(bus),
                        report.mostLoad(bus),
                        report.bitRate() / 1e3);
    }

    private static String kinds(BusCount bus) {
        StringBuilder text = new StringBuilder();
        count(text, bus.of(Frame.Kind.REMOTE), "remote");
        count(text, bus.of(Frame.Kind.ERROR), "notes of errors");
        count(text, bus.flexible(), "of CAN FD, left out of the load");
        return text.toString();
    }

    private static void count(StringBuilder text, long count, String what) {
        if (count > 0) {
            text.append(", ").append(count).append(' ').append(what);
        }
    }

    private static void identifiers(Console console, LogSummary log) {
        List<IdentifierCount> all = log.counts().identifiers();
        long unknown = all.stream().filter(i -> !i.known()).count();
        console.result("");
        console.result(String.format(
                Locale.ROOT,
                "%d identifiers, %d of them not described (%.1f %% of the data frames)",
                all.size(),
                unknown,
                100 * log.counts().unknownShare()));
        console.result(String.format(
                "  %-8s %-8s %9s %9s %10s %9s %9s %5s  %s",
                "bus", "id", "frames", "Hz", "period ms", "jitter", "longest", "bytes", "message"));
        all.forEach(i -> console.result(line(log, i).stripTrailing()));
        if (log.counts().untold() > 0) {
            console.result("  and " + log.counts().untold() + " frames of further identifiers");
        }
    }

    private static String line(LogSummary log, IdentifierCount i) {
        String bytes = i.shortest() == i.longest() ? "" + i.shortest() : i.shortest() + "-" + i.longest();
        return String.format(
                Locale.ROOT,
                "  %-8s %-8s %9d %9s %10s %9s %9s %5s  %s",
                log.busName(i.bus()),
                String.format(i.extended() ? "%08X" : "%03X", i.id()),
                i.count(),
                fixed(i.rate()),
                fixed(1e3 * i.period()),
                fixed(1e3 * i.jitter()),
                fixed(1e3 * i.longestStep()),
                bytes,
                i.name());
    }

    private static void signals(Console console, List<SignalStatistics> signals) {
        if (signals.isEmpty()) {
            return;
        }
        console.result("");
        console.result(signals.size() + " signals");
        console.result(
                String.format("  %-40s %9s %12s %12s %12s  %s", "signal", "values", "min", "mean", "max", "unit"));
        signals.forEach(s -> console.result(line(s)));
    }

    private static String line(SignalStatistics s) {
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "  %-40s %9d %12s %12s %12s  %s",
                s.name(),
                s.of(SampleState.VALID),
                plain(s.min()),
                plain(s.mean()),
                plain(s.max()),
                s.unit()));
        for (SampleState state : SampleState.values()) {
            if (state != SampleState.VALID) {
                count(text, s.of(state), state.word());
            }
        }
        if (s.texts() > 0) {
            text.append(", ")
                    .append(s.texts())
                    .append(" texts, the last '")
                    .append(s.lastText())
                    .append('\'');
        }
        return text.toString().stripTrailing();
    }

    private static String fixed(double value) {
        return Double.isNaN(value) ? "-" : String.format(Locale.ROOT, "%.3f", value);
    }

    private static String plain(double value) {
        if (Double.isNaN(value)) {
            return "-";
        }
        if (value == Math.rint(value) && Math.abs(value) < 1e9) {
            return String.valueOf((long) value);
        }
        return String.format(Locale.ROOT, Math.abs(value) < 1e-3 || Math.abs(value) >= 1e9 ? "%.3e" : "%.3f", value);
    }
}
