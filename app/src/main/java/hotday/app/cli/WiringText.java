package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.Severity;
import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.core.unit.Units;
import hotday.study.wiring.FanLoop;
import hotday.study.wiring.IdleBalance;
import hotday.study.wiring.Rule;
import hotday.study.wiring.WiringCheck;
import hotday.vehicle.sheet.Assumption;
import hotday.vehicle.spec.Wiring;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A checked wiring for people. */
final class WiringText {
    private static final String CAUTION =
            "High-current wiring starts fires: fuse near the source, protect cables from edges and heat,"
                    + " disconnect the battery first. Local codes and licensed practice come before this advice.";

    private WiringText() {}

    static void print(Console console, WiringCheck check) {
        Display show = new Display(check.sheet().units());
        console.result(check.sheet().vehicle().name() + ": the fan's wiring " + verdict(check.findings()));
        loop(console, check, show);
        check.idle().ifPresent(b -> balance(console, "hot idle", b));
        check.fullFan().ifPresent(b -> balance(console, "full fan", b));
        console.result(say(
                "  after-run  %.1f A for %.0f s at most: %.2f Ah, battery at %.2f V",
                check.afterRun().current(),
                check.afterRun().time(),
                check.afterRun().charge() / 3600.0,
                check.afterRun().voltage()));
        console.result("");
        console.result(String.format("  %-3s %-72s %12s %15s", "", "rule", "here", "limit"));
        check.rules().forEach(r -> console.result(rule(r, show)));
        if (!check.findings().isEmpty()) {
            console.result("");
            check.findings().forEach(f -> console.result(mark(Optional.of(f)) + " " + f));
        }
        assumed(console, check);
        console.result("");
        console.result(CAUTION);
    }

    private static String say(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    private static String verdict(List<Finding> findings) {
        long faults =
                findings.stream().filter(f -> f.severity() == Severity.FAULT).count();
        long warnings = findings.size() - faults;
        String look = warnings == 0 ? "" : ", " + warnings + " to look at";
        return faults == 0
                ? "is in order" + look + "."
                : "has " + faults + (faults == 1 ? " fault" : " faults") + look + ".";
    }

    private static void loop(Console console, WiringCheck check, Display show) {
        Wiring w = check.wiring();
        FanLoop l = check.loop();
        console.result(say("  fan        %.1f A at %.1f V, full speed", l.current(), l.supply()));
        console.result(say(
                "  feed       %s, copper at %s: %.3f V",
                cable(w.feed(), show), show.format(Quantity.TEMPERATURE, l.feedTemperature()), l.feedDrop()));
        String back = w.back()
                .map(b -> cable(b, show) + ", copper at " + show.format(Quantity.TEMPERATURE, l.backTemperature()))
                .orElse("");
        String body = w.groundResistance() > 0.0
                ? (back.isEmpty() ? "" : ", then ") + "body and joints of "
                        + show.format(Quantity.RESISTANCE, w.groundResistance())
                : "";
        console.result(say("  ground     %s%s: %.3f V", back, body, l.groundDrop()));
        console.result(say(
                "  together   %.3f V, %.1f %%; the thinner cable carries %.0f A",
                l.drop(), 100 * l.share(), l.ampacity()));
    }

    private static String cable(Wiring.Run run, Display show) {
        String list = switch (run.series()) {
            case IEC -> " (IEC 60228)";
            case ISO -> " (ISO 6722)";
            case AWG, SAE -> "";
        };
        boolean feet = show.system() == hotday.core.unit.UnitSystem.US;
        Unit unit = Units.unit(Quantity.LENGTH, feet ? "ft" : "m");
        return run.size() + list + say(", %.2f ", unit.fromSi(run.length())) + unit.symbol();
    }

    private static void balance(Console console, String what, IdleBalance b) {
        console.result(say(
                "  %-10s alternator %.0f A; loads %.0f A: base %.0f, blower %.0f, fan %.0f, clutch %.0f",
                what, b.capacity(), b.load(), b.base(), b.blower(), b.fan(), b.clutch()));
    }

    private static String rule(Rule r, Display show) {
        return String.format(
                "  %-3s %-72s %12s %15s",
                r.holds() || r.finding().isPresent() ? mark(r.finding()) : "!",
                r.what(),
                value(r.quantity(), r.value(), show),
                (r.least() ? "least " : "most ") + value(r.quantity(), r.limit(), show));
    }

    private static String mark(Optional<Finding> finding) {
        return finding.map(f -> f.severity() == Severity.FAULT ? "!!" : "!").orElse("ok");
    }

    private static String value(Quantity q, double si, Display show) {
        return switch (q) {
            case RATIO -> say("%.1f %%", 100 * si);
            case CURRENT -> say("%.1f A", si);
            case VOLTAGE -> say("%.3f V", si);
            case TIME -> say("%.2f s", si);
            default -> show.format(q, si);
        };
    }

    private static void assumed(Console console, WiringCheck check) {
        List<Assumption> own = check.sheet().assumptions().stream()
                .filter(a -> a.key().startsWith("wiring."))
                .toList();
        if (!own.isEmpty()) {
            console.result("");
            console.result("Left open and filled in (type the key to replace it):");
            own.forEach(a -> console.result(String.format("  %-30s %-22s %s", a.key(), a.value(), a.reason())));
        }
    }
}
