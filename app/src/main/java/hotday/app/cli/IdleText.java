package hotday.app.cli;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.core.unit.UnitSystem;
import hotday.study.idle.IdleCell;
import hotday.study.idle.IdleCompensation;
import hotday.vehicle.idle.IdleRun;
import java.util.Comparator;
import java.util.Locale;
import java.util.function.Function;

/** A table of announcements for people. */
final class IdleText {
    private static final double RPM = Math.PI / 30.0;

    private IdleText() {}

    static void print(Console console, IdleCompensation made, UnitSystem units) {
        Display show = new Display(units);
        String pressure = show.unitFor(Quantity.PRESSURE_ABSOLUTE).symbol();
        String share = made.byAir() ? "air" : "fuel";
        console.result(made.vehicle().name() + ": the compressor announced to the idle control "
                + (made.holds() ? "keeps the speed." : "does not keep the speed everywhere."));
        console.result(
                "Allowed: sag 50 rpm, flare 150 rpm, back within 25 rpm in 1.5 s. Sag/flare in rpm, settling in s.");
        console.result("");
        console.result(String.format(
                "  %9s %6s %9s %7s %9s %6s %7s   %-16s   %-16s",
                "head", "engine", "suction", "load", "announce", "lead", "more " + share, "without", "with"));
        console.result(
                String.format("  %9s %6s %9s %7s %9s %6s %7s", pressure, "rpm", pressure, "N m", "N m", "s", "%"));
        for (IdleCell c : made.cells()) {
            console.result(cell(c, show));
        }
        console.result("");
        wrong(console, made, "0.1 s too short", IdleCell::tooShort);
        wrong(console, made, "0.1 s too long", IdleCell::tooLong);
        made.findings().forEach(f -> console.result("look at " + f));
        console.result("");
        console.result(
                "Head pressure is that of the moment before the clutch closes. Suction is that of the vehicle settled at idle on the"
                        + " day that brings this head pressure, 3 K above the freeze limit at least; whole stroke.");
        console.result(
                "Inertia, lag and gains of the idle control are usual values from memory: measure on the car how late torque follows before"
                        + " trusting hundredths of a second. Mind belts and fans: they start without warning.");
    }

    private static String cell(IdleCell c, Display show) {
        return String.format(
                        Locale.ROOT,
                        "  %9s %6.0f %9s %7.1f %9.1f %6.2f %7.1f   %-16s   %-16s%s",
                        show.number(Quantity.PRESSURE_ABSOLUTE, c.head()),
                        c.speed() / RPM,
                        show.number(Quantity.PRESSURE_ABSOLUTE, c.suction()),
                        c.load(),
                        c.forward().torque(),
                        c.forward().lead(),
                        100.0 * c.share(),
                        run(c.unannounced()),
                        run(c.announced()),
                        c.holds() ? "" : "  !")
                .stripTrailing();
    }

    private static String run(IdleRun r) {
        return String.format(Locale.ROOT, "%3.0f/%3.0f  %4.2f s", r.sag() / RPM, r.flare() / RPM, r.settling());
    }

    private static void wrong(Console console, IdleCompensation made, String how, Function<IdleCell, IdleRun> which) {
        IdleRun sag = made.cells().stream()
                .map(which)
                .max(Comparator.comparingDouble(IdleRun::sag))
                .orElseThrow();
        IdleRun flare = made.cells().stream()
                .map(which)
                .max(Comparator.comparingDouble(IdleRun::flare))
                .orElseThrow();
        IdleRun slow = made.cells().stream()
                .map(which)
                .max(Comparator.comparingDouble(IdleRun::settling))
                .orElseThrow();
        console.result(String.format(
                Locale.ROOT,
                "With a lead %s, at worst: sag %.0f rpm, flare %.0f rpm, settled after %.2f s.",
                how,
                sag.sag() / RPM,
                flare.flare() / RPM,
                slow.settling()));
    }
}
