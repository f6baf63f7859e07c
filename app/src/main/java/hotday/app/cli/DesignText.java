package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.study.design.CompressorReport;
import hotday.study.design.Passage;
import hotday.study.design.ScheduleReport;
import hotday.study.design.ScheduleReport.KeyOff;
import hotday.study.design.ScheduleReport.Line;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.sheet.ScheduleText;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A designed or judged fan schedule for people. */
final class DesignText {
    private DesignText() {}

    static void print(
            Console console,
            String name,
            ScheduleReport report,
            Optional<CompressorReport> compressor,
            Display display,
            boolean given) {
        console.result(name + ", fan schedule " + (given ? "judged" : "designed") + ", aim "
                + report.aim().word() + ": "
                + (report.holds()
                        ? "holds whatever a fan at full speed holds."
                        : "gives way where a fan at full speed holds."));
        console.result(String.format(
                Locale.ROOT,
                "Mean of the day: %.0f Wh in an hour, %.1f starts in an hour (a plain switch at 205/195 degF: %.0f Wh, %.1f starts).",
                report.energy(),
                report.starts(),
                report.plain().energy(),
                report.plain().starts()));
        if (report.runs() > 0) {
            console.result("In the vehicle of the sheet as it fits " + runs(report) + " best.");
        }
        report.doubt()
                .ifPresent(d -> console.result(String.format(
                        Locale.ROOT,
                        "In %d vehicles that %s possible it holds %.0f of 100 cases that a fan at full speed holds%s.",
                        d.draws(),
                        report.runs() == 0 ? "the sheet leaves" : "the sheet and " + runs(report) + " leave",
                        Math.floor(100 * d.held()),
                        d.worst().isEmpty() ? "" : "; most at risk: " + d.worst())));
        console.result("");
        ScheduleText.of(report.schedule(), display).lines().forEach(console::result);
        console.result("");
        console.result(String.format(
                "%-36s %10s %5s  %-24s %5s %6s %8s %8s %9s %8s",
                "case", "outside", "share", "least room", "fan", "Wh/h", "starts/h", "clutch/h", "swing", "period s"));
        report.lines().forEach(line -> console.result(line(line, display)));
        report.keyOff().ifPresent(k -> {
            console.result("");
            console.result(afterKeyOff(k, display));
        });
        compressor.ifPresent(c -> CompressorText.print(console, c, display));
        if (!report.reasons().isEmpty()) {
            console.result("");
            report.reasons().forEach(r -> console.result(r.what() + ": " + r.why()));
        }
        console.result("");
        console.result(
                "Keep hands, hair and clothes away from a fan: it may start at any time, also with the engine off.");
        tell(console, report.findings());
        compressor.ifPresent(c -> tell(console, c.findings()));
    }

    private static String runs(ScheduleReport report) {
        return report.runs() == 1 ? "the recorded run" : "the " + report.runs() + " recorded runs";
    }

    private static String afterKeyOff(KeyOff k, Display display) {
        String room = "room to " + k.limit().title() + ": ";
        if (k.seconds() == 0.0) {
            return k.kase().title() + ": the fan does not run on; " + room + shown(k.limit(), k.room(), display) + ".";
        }
        return String.format(
                Locale.ROOT,
                "%s: the fan runs on for %.0f s and takes %.2f of the %.1f Ah that it may; %s%s, without it %s.",
                k.kase().title(),
                k.seconds(),
                k.charge() / 3600,
                k.allowed() / 3600,
                room,
                shown(k.limit(), k.room(), display),
                shown(k.limit(), k.without(), display));
    }

    static void tell(Console console, List<Finding> findings) {
        findings.forEach(f -> console.say(f.severity().name().toLowerCase(Locale.ROOT) + ": " + f));
    }

    private static String line(Line line, Display display) {
        Passage p = line.passage();
        return String.format(
                Locale.ROOT,
                "%-36s %10s %5s  %-24s %3.0f %% %6.0f %8.1f %8.1f %9s %8s",
                p.kase().title(),
                display.format(Quantity.TEMPERATURE, p.ambient()),
                line.share() == 0.0 ? "" : String.format(Locale.ROOT, "%.0f %%", 100 * line.share()),
                room(line, display),
                100 * p.fan(),
                p.energy(),
                p.startsPerHour(),
                p.clutchPerHour(),
                p.amplitude() == 0.0 ? "" : display.format(Quantity.TEMPERATURE_DIFFERENCE, p.amplitude()),
                Double.isNaN(p.period()) ? "" : String.format(Locale.ROOT, "%.0f", p.period()));
    }

    /** The tightest of the limits that must hold. */
    private static String room(Line line, Display display) {
        Optional<Limit> tightest =
                line.must().stream().min(Comparator.comparingDouble(limit -> room(line, limit) / limit.perKelvin()));
        return tightest.map(limit -> shown(limit, room(line, limit), display) + " " + limit.id())
                .orElse("full fan holds none");
    }

    private static double room(Line line, Limit limit) {
        return line.passage().headroom().get(limit);
    }

    private static String shown(Limit limit, double room, Display display) {
        return switch (limit) {
            case HEAD_PRESSURE -> String.format(Locale.ROOT, "%.1f bar", room / 1e5);
            case SUPPLY -> display.format(Quantity.VOLTAGE, room);
            case COOLANT, BOILING, GEARBOX, CABIN_COOLING, CHARGE_AIR ->
                display.format(Quantity.TEMPERATURE_DIFFERENCE, room);
        };
    }
}
