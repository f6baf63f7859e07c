package hotday.study.wiring;

import hotday.core.finding.Severity;
import hotday.core.unit.Quantity;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.Wiring;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What switches the fan, what feeds it at idle, and what is left in the battery. */
final class SupplyRules {
    private static final double RPM = Math.PI / 30.0;
    private static final double HOUR = 3600.0;
    private static final double JAM = 1200.0; // s
    private static final double HOT_RELAY = 0.75;
    private static final double HOT_DRIVER = 0.85;
    private static final double INRUSH = 3.0;
    private static final double OVER_VOLTAGE = 16.0;

    private final BuildSheet sheet;
    private final VehicleSpec spec;
    private final Wiring wiring;
    private final FanLoop loop;

    SupplyRules(BuildSheet sheet, Wiring wiring, FanLoop loop) {
        this.sheet = sheet;
        this.spec = sheet.vehicle();
        this.wiring = wiring;
        this.loop = loop;
    }

    private static String say(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    List<Rule> all(HotIdle idle, AfterRun after) {
        List<Rule> out = new ArrayList<>();
        out.add(duty());
        out.add(rating());
        out.add(start());
        out.add(overVoltage());
        idle.bySchedule().ifPresent(b -> out.add(alternator(b, idle.enoughSpeed())));
        idle.fullFan().ifPresent(b -> out.add(fullFan(b, idle)));
        out.add(charge(after));
        out.add(stop(after));
        return out;
    }

    private boolean relay() {
        return wiring.drive().kind() == Wiring.DriveKind.RELAY;
    }

    /** Demands between off and full that the schedule asks for. */
    private long steps() {
        FanSchedule s = spec.schedule();
        Stream<Double> constant = s.headPressure().isEmpty() ? Stream.of(s.airConditioningDemand()) : Stream.empty();
        Stream<Double> charge = s.chargeAir().stream().flatMap(c -> c.demand().stream());
        return Stream.of(
                        s.coolantDemand().stream(),
                        s.headDemand().stream(),
                        s.gearboxDemand().stream(),
                        charge,
                        constant)
                .flatMap(x -> x)
                .filter(d -> d > 0.0 && d < 1.0)
                .distinct()
                .count();
    }

    private Rule duty() {
        Rule rule = Rule.most(
                "wiring-relay-duty",
                "demands between off and full that a relay is asked for",
                Quantity.NUMBER,
                relay() ? steps() : 0,
                0,
                "contacts wear and weld when they chop; common practice, no source");
        return rule.broken()
                ? rule.said(
                        Severity.FAULT,
                        sheet.place("wiring.drive.kind"),
                        say(
                                "the schedule asks for %d demands between off and full, a relay knows none of them: take a solid-state driver that takes a duty, or make every demand of the schedule 0 or 100 %%",
                                steps()))
                : rule;
    }

    private Rule rating() {
        double share = relay() ? HOT_RELAY : HOT_DRIVER;
        String what = relay() ? "relay" : "driver";
        Rule rule = Rule.most(
                "wiring-drive-rating",
                "running current over the " + what + "'s rating",
                Quantity.RATIO,
                loop.current() / wiring.drive().rating(),
                share,
                say("%.0f %% in a hot bay; common practice, no source", 100 * share));
        return rule.broken()
                ? rule.said(
                        Severity.FAULT,
                        sheet.place("wiring.drive.rating"),
                        say(
                                "%.1f A run through a %s of %.0f A, %.0f %% of its rating: take one of %.0f A or more",
                                loop.current(),
                                what,
                                wiring.drive().rating(),
                                100 * rule.value(),
                                Math.ceil(loop.current() / share)))
                : rule;
    }

    private Rule start() {
        double most = (relay() ? INRUSH : 1.0) * wiring.drive().rating();
        Rule rule = Rule.most(
                "wiring-drive-start",
                relay()
                        ? "start current against what the contacts close on"
                        : "start current against the driver's rating",
                Quantity.CURRENT,
                wiring.drive().startCurrent(),
                most,
                relay()
                        ? "contacts close on 3 times their rating; from memory, see the data sheet"
                        : "a driver has no reserve for a start; common practice, no source");
        return rule.broken()
                ? rule.said(
                        Severity.FAULT,
                        sheet.place("wiring.drive.rating"),
                        say(
                                "the start takes %.0f A, more than the %.0f A that it may close on: take a rating of %.0f A, or a softer start",
                                wiring.drive().startCurrent(),
                                most,
                                Math.ceil(wiring.drive().startCurrent() / (relay() ? INRUSH : 1.0))))
                : rule;
    }

    private Rule overVoltage() {
        Rule rule = Rule.least(
                "wiring-over-voltage",
                "voltage the drive stands; fan and clutch off above 16 V for 5 s",
                Quantity.VOLTAGE,
                wiring.drive().highestVoltage(),
                OVER_VOLTAGE,
                "published service description of a road vehicle");
        return rule.broken()
                ? rule.said(
                        Severity.FAULT,
                        sheet.place("wiring.drive.highest_voltage"),
                        say(
                                "the drive stands %.1f V only, and the fan is switched off above 16 V for 5 s: take one for 16 V or more with its own load-dump protection",
                                wiring.drive().highestVoltage()))
                : rule;
    }

    private Rule alternator(IdleBalance b, double enoughSpeed) {
        Rule rule = Rule.least(
                "wiring-alternator-idle",
                "alternator at hot idle against its loads, fan by the schedule",
                Quantity.CURRENT,
                b.capacity(),
                b.load(),
                "the alternator must carry a jam by itself; common practice, no source");
        if (!rule.broken()) {
            return rule;
        }
        String idle = Double.isNaN(enoughSpeed) ? "" : say("raise the idle to %.0f rpm, ", enoughSpeed / RPM);
        return rule.said(
                Severity.FAULT,
                sheet.place("electrical.alternator"),
                say(
                        "at hot idle the alternator gives %.0f A, the loads take %.0f A (base %.0f, blower %.0f, fan %.0f, clutch %.0f): the battery gives %.0f A, %.1f Ah in 20 min: %stake an alternator with %.0f %% more, or cut loads by %.0f A",
                        b.capacity(),
                        b.load(),
                        b.base(),
                        b.blower(),
                        b.fan(),
                        b.clutch(),
                        b.deficit(),
                        b.drawn(JAM) / HOUR,
                        idle,
                        100 * (b.load() / b.capacity() - 1),
                        b.deficit()));
    }

    private Rule fullFan(IdleBalance b, HotIdle idle) {
        Rule rule = Rule.least(
                "wiring-alternator-full-fan",
                "alternator at hot idle against its loads, full fan",
                Quantity.CURRENT,
                b.capacity(),
                b.load(),
                "common practice, no source");
        boolean saidAlready = idle.bySchedule().map(s -> s.deficit() > 0.0).orElse(false);
        return rule.broken() && !saidAlready
                ? rule.said(
                        Severity.WARNING,
                        sheet.place("electrical.alternator"),
                        say(
                                "with the fan at full speed the alternator gives %.0f A at hot idle, the loads take %.0f A: the battery gives %.0f A, %.1f Ah in 20 min; a little more idle speed or a limit to the demand at rest helps",
                                b.capacity(), b.load(), b.deficit(), b.drawn(JAM) / HOUR))
                : rule;
    }

    private Rule charge(AfterRun after) {
        double most = spec.limits().afterRunShare();
        Rule rule = Rule.most(
                "wiring-after-run-charge",
                "charge of the longest after-run, of the battery",
                Quantity.RATIO,
                after.share(),
                most,
                most == VehicleSpec.Limits.AFTER_RUN_SHARE
                        ? "10 %, so that the engine starts again; common practice, no source"
                        : "'limits.after_run_charge' of the sheet");
        return rule.broken()
                ? rule.said(
                        Severity.FAULT,
                        sheet.place("electrical.battery"),
                        say(
                                "the after-run may take %.1f A for %.0f s, %.2f Ah or %.0f %% of the battery: shorten it to %.0f s, or take a battery of %.0f Ah",
                                after.current(),
                                after.time(),
                                after.charge() / HOUR,
                                100 * after.share(),
                                after.time() * most / after.share(),
                                Math.ceil(after.charge() / HOUR / most)))
                : rule;
    }

    private Rule stop(AfterRun after) {
        Rule rule = Rule.least(
                "wiring-after-run-voltage",
                "battery under the after-run against the voltage that stops it",
                Quantity.VOLTAGE,
                after.voltage(),
                after.stop(),
                "docs/controller.md");
        return rule.broken()
                ? rule.said(
                        Severity.FAULT,
                        sheet.place("electrical.battery"),
                        say(
                                "%.1f A pull the charged battery to %.2f V, below the %.1f V that stop the after-run: it would end as soon as it begins; a battery of less resistance, or a smaller demand after key-off",
                                after.current(), after.voltage(), after.stop()))
                : rule;
    }

    /** Whether rest could be found is said beside the rules. */
    Optional<String> notSettled(HotIdle idle) {
        return idle.bySchedule().isEmpty()
                ? Optional.of(
                        "nothing settles at hot idle on the design day: see 'hotday predict'; the alternator was not judged")
                : Optional.empty();
    }
}
