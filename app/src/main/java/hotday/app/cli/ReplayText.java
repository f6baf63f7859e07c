package hotday.app.cli;

import hotday.signals.expect.Verdict;
import hotday.signals.frame.SampleState;
import hotday.signals.sample.SignalStatistics;
import hotday.study.replay.ReplayReport;
import hotday.study.replay.ReplayReport.ListenedLine;
import hotday.study.replay.ReplayReport.NetworkLine;
import hotday.study.replay.ReplayReport.SignalLine;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Recordings run through a sheet, for people. */
final class ReplayText {
    private static final double NANO = 1e9;
    private static final int DIGITS = 6;

    private ReplayText() {}

    static void print(Console console, ReplayReport report, Optional<Path> to, Optional<Path> decoded) {
        console.result(report.title() + ": " + verdict(report));
        console.result("");
        report.networks().forEach(n -> console.result(network(n)));
        report.listened().forEach(m -> console.result(listened(m)));
        report.sent().forEach(m -> console.result("  sent " + m.message() + ": " + m.frames() + " frames"));
        console.result("");
        console.result("both sides");
        report.lines().forEach(line -> sides(console, line));
        if (!report.verdicts().isEmpty()) {
            console.result("");
            console.result("expected");
            report.verdicts().forEach(v -> verdict(console, v));
        }
        to.ifPresent(file -> console.result("The gateway's frames are in " + file + "."));
        decoded.ifPresent(file -> console.result("Signals of both sides are in " + file + "."));
        report.findings().forEach(f -> console.say(f.severity().name().toLowerCase(Locale.ROOT) + ": " + f));
    }

    private static String verdict(ReplayReport report) {
        long failed = report.verdicts().stream().filter(v -> !v.holds()).count();
        int all = report.verdicts().size();
        String ran = String.format(Locale.ROOT, "%.3f s run through, ", report.duration() / NANO);
        if (all == 0) {
            return ran + "nothing is expected.";
        }
        return ran
                + (failed == 0
                        ? "all of " + all + " expectations hold."
                        : failed + " of " + all + " expectations " + (failed == 1 ? "does" : "do") + " not hold.");
    }

    private static String network(NetworkLine n) {
        return n.bus().isEmpty()
                ? n.name() + ": nothing was recorded"
                : n.name() + ": " + n.frames() + " frames on " + n.bus() + ", nobody listens to " + n.passedOver();
    }

    private static String listened(ListenedLine m) {
        return "  heard " + m.message() + ": " + m.taken() + " frames"
                + part(m.wrongChecksum(), "with a wrong checksum") + part(m.wrongCounter(), "with a wrong counter")
                + part(m.lost(), "lost by its counter");
    }

    private static String part(long count, String what) {
        return count == 0 ? "" : ", " + count + " " + what;
    }

    private static void sides(Console console, SignalLine line) {
        console.result("  " + line.from() + "  " + values(line.source()));
        console.result("    -> " + line.to() + "  " + values(line.target()) + "; sent in time " + line.live()
                + ", held " + line.held() + ", safe " + line.safe());
    }

    private static String values(Optional<SignalStatistics> all) {
        if (all.isEmpty()) {
            return "never";
        }
        SignalStatistics s = all.get();
        String words = s.texts() == 0 ? "" : s.texts() + " words, last '" + s.lastText() + "'";
        long outside = s.of(SampleState.RESERVED);
        return Stream.of(range(s), words, outside == 0 ? "" : outside + " outside its limits")
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static String range(SignalStatistics s) {
        long numbers = s.of(SampleState.VALID);
        return numbers == 0
                ? ""
                : number(s.min()) + (s.min() == s.max() ? "" : " to " + number(s.max()))
                        + (s.unit().isBlank() ? "" : " " + s.unit()) + " (" + numbers + ")";
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(DIGITS))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String times(long count) {
        return count + (count == 1 ? " time" : " times");
    }

    private static void verdict(Console console, Verdict v) {
        if (v.holds()) {
            String often = v.judged() == 0 ? "never came up" : "holds, looked at " + times(v.judged());
            console.result("  " + v.name() + ": " + often);
            return;
        }
        console.result("  " + v.name() + ": DOES NOT HOLD, " + times(v.failed()) + " (" + v.place() + ")");
        v.first()
                .forEach(f -> console.result(String.format(
                        Locale.ROOT, "    %.4f s  %s; expected: %s", f.time() / NANO, f.what(), f.limit())));
        if (v.failed() > v.first().size()) {
            console.result("    and " + (v.failed() - v.first().size()) + " more");
        }
    }
}
