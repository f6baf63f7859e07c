package hotday.study.wiring;

import hotday.core.finding.Place;
import hotday.core.finding.Severity;
import hotday.core.unit.Quantity;
import hotday.physics.component.BladeFuse;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.Wiring;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Voltage lost, what the cable carries, and the fuse before it. */
final class CableRules {
    private static final double MOST_DROP = 0.03;
    private static final double GOOD_GROUND = 0.1; // V
    private static final double WORST_GROUND = 0.2; // V
    private static final double LOADED = 0.75;
    private static final double LOADED_MOST = 0.80;
    private static final double LOADED_HOT = 0.70;
    private static final double HOT = 338.15; // K
    private static final double FAR = 0.18; // m

    private final BuildSheet sheet;
    private final Wiring wiring;
    private final FanLoop loop;

    CableRules(BuildSheet sheet, Wiring wiring, FanLoop loop) {
        this.sheet = sheet;
        this.wiring = wiring;
        this.loop = loop;
    }

    List<Rule> all() {
        List<Rule> out = new ArrayList<>();
        out.add(drop());
        out.add(ground());
        out.add(fuseLoad());
        out.add(fuseCable());
        out.add(fuseStart());
        out.add(fusePlace());
        return out;
    }

    private Optional<Place> place(String key) {
        boolean elsewhere = key.startsWith("wiring.feed") && !sheet.places().containsKey("wiring.feed");
        return sheet.place(elsewhere ? "electrical.fan_cable" : key);
    }

    private static String say(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    private Rule drop() {
        Rule rule = Rule.most(
                "wiring-drop",
                "voltage lost both ways, of the supply",
                Quantity.RATIO,
                loop.share(),
                MOST_DROP,
                "3 % for what must work: published marine practice; common practice on the road: 0.5 V in the feed");
        if (!rule.broken()) {
            return rule;
        }
        String size = Sizes.enough(
                        wiring,
                        w -> FanLoop.at(w, loop.supply(), loop.current()).share() <= MOST_DROP)
                .map(s -> "take " + s + " all the way, or a shorter way")
                .orElse("no listed size is enough: shorten the way or mend the ground");
        return rule.said(
                Severity.FAULT,
                place("wiring.feed.size"),
                say(
                        "the fan's cables lose %.3f V of %.1f V at %.1f A (feed %.3f V, ground %.3f V), %.1f %% where 3 %% are allowed: %s",
                        loop.drop(),
                        loop.supply(),
                        loop.current(),
                        loop.feedDrop(),
                        loop.groundDrop(),
                        100 * loop.share(),
                        size));
    }

    private Rule ground() {
        Rule rule = Rule.most(
                "wiring-ground",
                "voltage lost in the ground path",
                Quantity.VOLTAGE,
                loop.groundDrop(),
                WORST_GROUND,
                "0.1 V is good, 0.2 V the most; common practice, no source");
        if (loop.groundDrop() <= GOOD_GROUND) {
            return rule;
        }
        String size = Sizes.enough(
                        wiring,
                        w -> FanLoop.at(w, loop.supply(), loop.current()).groundDrop() <= GOOD_GROUND)
                .map(s -> s + " would bring it to 0.1 V")
                .orElse(
                        "no cable helps, the joints and the body lose it: clean bare metal, a second strap or a cable back");
        return rule.said(
                rule.broken() ? Severity.FAULT : Severity.WARNING,
                groundPlace(),
                say("the ground path loses %.3f V at %.1f A: %s", loop.groundDrop(), loop.current(), size));
    }

    private Optional<Place> groundPlace() {
        if (sheet.places().containsKey("wiring.return")) {
            return sheet.place("wiring.return.size");
        }
        if (wiring.groundResistance() > 0.0) {
            boolean typed = sheet.places().containsKey("wiring.ground_resistance");
            return sheet.place(typed ? "wiring.ground_resistance" : "wiring.ground");
        }
        return place("wiring.feed.size");
    }

    private boolean hotFuse() {
        return wiring.fuse().temperature() > HOT;
    }

    /** Smallest usual fuse for the running current, A. */
    private double wantedFuse() {
        return BladeFuse.ratingFrom(loop.current() / (hotFuse() ? LOADED_HOT : LOADED) - 1e-9);
    }

    private Rule fuseLoad() {
        double rating = wiring.fuse().rating();
        double most = hotFuse() ? LOADED_HOT : LOADED_MOST;
        Rule rule = Rule.most(
                "wiring-fuse-load",
                "running current over the fuse's rating",
                Quantity.RATIO,
                loop.current() / rating,
                most,
                hotFuse()
                        ? "70 % above 65 degC; common practice, no source"
                        : "75 to 80 %; common practice, no source");
        if (rule.value() <= (hotFuse() ? LOADED_HOT : LOADED)) {
            return rule;
        }
        boolean fits = wantedFuse() <= loop.ampacity();
        return rule.said(
                rule.broken() ? Severity.FAULT : Severity.WARNING,
                place("wiring.fuse.rating"),
                say(
                        "%.1f A through a fuse of %.0f A are %.0f %% of its rating: take %.0f A%s",
                        loop.current(),
                        rating,
                        100 * rule.value(),
                        wantedFuse(),
                        fits ? "" : say(" and a thicker cable, this one carries %.0f A", loop.ampacity())));
    }

    private Rule fuseCable() {
        double rating = wiring.fuse().rating();
        Rule rule = Rule.most(
                "wiring-fuse-cable",
                "fuse against what the cable carries",
                Quantity.CURRENT,
                rating,
                loop.ampacity(),
                "the fuse must open before the cable burns; ampacity from a published table, corrected for warmth and bundle");
        if (!rule.broken()) {
            return rule;
        }
        double smaller = BladeFuse.ratingUpTo(loop.ampacity());
        String remedy = smaller >= wantedFuse()
                ? say("take a fuse of %.0f A", smaller)
                : Sizes.enough(
                                wiring,
                                w -> FanLoop.at(w, loop.supply(), loop.current())
                                                .ampacity()
                                        >= Math.max(wantedFuse(), 0.0))
                        .map(s -> say("take %s with a fuse of %.0f A", s, wantedFuse()))
                        .orElse("no listed size is enough: take a cooler way or better insulation");
        return rule.said(
                Severity.FAULT,
                place("wiring.fuse.rating"),
                say(
                        "the fuse of %.0f A lets more through than the %.0f A that the cable carries: %s",
                        rating, loop.ampacity(), remedy));
    }

    private Rule fuseStart() {
        Wiring.Drive drive = wiring.drive();
        double share = drive.startCurrent() / wiring.fuse().rating();
        double stands = Math.min(3600.0, BladeFuse.shortestTime(share));
        Rule rule = Rule.most(
                "wiring-fuse-start",
                "start against the time that the fuse surely stands it",
                Quantity.TIME,
                drive.startTime(),
                stands,
                "time limits of blade fuses, SAE J1284 and ISO 8820-3, from memory");
        if (!rule.broken()) {
            return rule;
        }
        double rating = wiring.fuse().rating();
        while (!Double.isNaN(rating) && BladeFuse.shortestTime(drive.startCurrent() / rating) < drive.startTime()) {
            rating = BladeFuse.ratingFrom(rating + 0.1);
        }
        String bigger = rating <= loop.ampacity()
                ? say("take %.0f A, or a drive that ramps", rating)
                : "a fuse large enough would no longer protect this cable: take a drive that ramps, or a slow fuse";
        return rule.said(
                Severity.FAULT,
                place("wiring.fuse.rating"),
                say(
                        "the start takes %.0f A for %.2f s, a fuse of %.0f A may open after %.2f s: %s",
                        drive.startCurrent(), drive.startTime(), wiring.fuse().rating(), stands, bigger));
    }

    private Rule fusePlace() {
        Rule rule = Rule.most(
                "wiring-fuse-place",
                "cable without fuse from the source on",
                Quantity.LENGTH,
                wiring.fuse().distance(),
                FAR,
                "7 in: marine practice, from memory");
        return rule.broken()
                ? rule.said(
                        Severity.FAULT,
                        place("wiring.fuse.distance"),
                        say(
                                "%.2f m of cable lie between the source and its fuse; a chafed cable burns there: bring the fuse within 0.18 m",
                                wiring.fuse().distance()))
                : rule;
    }
}
