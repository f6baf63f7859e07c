package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.Severity;
import hotday.signals.gateway.GatewayReport;
import hotday.signals.gateway.GatewayReport.BusLine;
import hotday.signals.gateway.GatewayReport.MessageLine;
import hotday.signals.gateway.GatewayReport.PathLine;
import hotday.signals.gateway.GatewayReport.SignalLine;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;

/** A checked translation sheet for people. */
final class GatewayText {
    private static final double MILLI = 1e6;

    private GatewayText() {}

    static void print(Console console, GatewayReport report) {
        console.result(report.title() + ": " + verdict(report.findings()));
        report.buses().forEach(bus -> bus(console, bus));
        signals(console, report.signals());
        report.paths().forEach(path -> path(console, path));
        report.findings().forEach(f -> console.say(f.severity().name().toLowerCase(Locale.ROOT) + ": " + f));
    }

    private static String verdict(List<Finding> findings) {
        long faults = count(findings, Severity.FAULT);
        long warnings = count(findings, Severity.WARNING);
        String look = warnings == 0 ? "" : ", " + warnings + " to look at";
        return faults == 0 ? "in order" + look + "." : faults + (faults == 1 ? " fault" : " faults") + look + ".";
    }

    private static long count(List<Finding> findings, Severity severity) {
        return findings.stream().filter(f -> f.severity() == severity).count();
    }

    private static void bus(Console console, BusLine bus) {
        console.result("");
        console.result(String.format(
                Locale.ROOT,
                "%s  %s kbit/s, load %.1f %% (%.1f %% without stuff bits)",
                bus.name(),
                plain(bus.bitRate() / 1e3),
                100 * bus.load(),
                100 * bus.bareLoad()));
        console.result(String.format(
                "  %-8s  %-24s %5s  %-12s %10s %10s %12s",
                "id", "message", "bytes", "from", "every ms", "jitter ms", "response ms"));
        bus.messages().forEach(m -> console.result(message(m)));
    }

    private static String message(MessageLine m) {
        return String.format(
                "  %-8s  %-24s %5d  %-12s %10s %10s %12s",
                String.format(m.extended() ? "%08X" : "%03X", m.id()),
                m.name(),
                m.bytes(),
                m.sender(),
                ms(m.period()),
                ms(OptionalLong.of(m.jitter())),
                ms(m.response()));
    }

    private static void signals(Console console, List<SignalLine> signals) {
        if (!signals.isEmpty()) {
            console.result("");
            console.result("translated");
        }
        for (SignalLine s : signals) {
            String from = s.from().isEmpty() ? "" : s.from() + " -> ";
            String oldest = s.oldest().isEmpty() ? "" : ", at most " + ms(s.oldest()) + " ms old, then " + s.safe();
            console.result("  " + from + s.to() + "  " + s.how() + (s.from().isEmpty() ? " " + s.safe() : "") + oldest);
        }
    }

    private static void path(Console console, PathLine path) {
        console.result("");
        console.result(path.name() + ": " + ms(path.worst()) + " ms at worst, allowed "
                + ms(OptionalLong.of(path.limit())) + " ms");
        path.parts().forEach(p -> console.result(String.format("  %10s ms  %s", ms(p.time()), p.what())));
    }

    /** Upwards to the microsecond: a bound must not look smaller than it is. */
    private static String ms(OptionalLong ns) {
        return ns.isEmpty() ? "-" : plain(Math.ceil(ns.getAsLong() / MILLI * 1e3) / 1e3);
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
