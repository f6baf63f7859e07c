package hotday.study.idle;

import hotday.core.finding.Finding;
import hotday.core.finding.Sentence;
import hotday.core.finding.Severity;
import hotday.vehicle.idle.IdleRun;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** What a table of announcements leaves open: one finding a kind, with its worst cell. */
final class IdleFindings {
    private static final double RPM = Math.PI / 30.0;

    private IdleFindings() {}

    static List<Finding> of(List<IdleCell> cells) {
        List<Finding> out = new ArrayList<>();
        add(
                out,
                cells,
                "idle-sag",
                Severity.FAULT,
                "rpm",
                c -> c.announced().sag() > IdleCell.MOST_SAG,
                c -> c.announced().sag() / RPM,
                c -> say(
                        "sags by %.0f rpm with the best announcement, 50 rpm are allowed: let the compressor start with a shorter stroke, or raise the idle before it engages",
                        c.announced().sag() / RPM));
        add(
                out,
                cells,
                "idle-settling",
                Severity.FAULT,
                "s",
                c -> c.announced().settling() > IdleCell.LONGEST_SETTLING,
                c -> c.announced().settling(),
                c -> say(
                        "takes %.1f s to come back within 25 rpm, 1.5 s are allowed: more gain of the idle control, or a softer start of the compressor",
                        c.announced().settling()));
        add(
                out,
                cells,
                "idle-flare",
                Severity.FAULT,
                "rpm",
                c -> c.announced().flare() > IdleCell.MOST_FLARE,
                c -> c.announced().flare() / RPM,
                c -> say(
                        "flares by %.0f rpm, 150 rpm are allowed (common practice, no source): announce in two steps",
                        c.announced().flare() / RPM));
        add(
                out,
                cells,
                "idle-reserve",
                Severity.WARNING,
                "rpm",
                IdleCell::reserveUsedUp,
                c -> Math.max(c.announced().sag(), c.announced().flare()) / RPM,
                c -> say(
                        "sags by %.0f and flares by %.0f rpm, which uses up what the ignition can give: keep more reserve at idle",
                        c.announced().sag() / RPM, c.announced().flare() / RPM));
        add(
                out,
                cells,
                "idle-lead",
                Severity.WARNING,
                "rpm",
                c -> !c.tooShort().acceptable() || !c.tooLong().acceptable(),
                c -> worst(c, IdleRun::sag),
                c -> say(
                        "sags by up to %.0f and flares by up to %.0f rpm when the lead is 0.1 s wrong, more than a driver takes without a complaint: measure on the car how late torque follows",
                        worst(c, IdleRun::sag), worst(c, IdleRun::flare)));
        return out;
    }

    private static String say(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    /** rpm of the worse of a lead too short and too long. */
    private static double worst(IdleCell c, ToDoubleFunction<IdleRun> what) {
        return Math.max(what.applyAsDouble(c.tooShort()), what.applyAsDouble(c.tooLong())) / RPM;
    }

    private static void add(
            List<Finding> out,
            List<IdleCell> cells,
            String key,
            Severity severity,
            String unit,
            Predicate<IdleCell> broken,
            ToDoubleFunction<IdleCell> value,
            Function<IdleCell, String> message) {
        List<IdleCell> all = cells.stream().filter(broken).toList();
        if (all.isEmpty()) {
            return;
        }
        IdleCell worst = all.stream().max(Comparator.comparingDouble(value)).orElseThrow();
        String where = String.format(
                Locale.ROOT,
                "%d of %d cells; worst at %.0f rpm and %.1f bar abs, where the speed ",
                all.size(),
                cells.size(),
                worst.speed() / RPM,
                worst.head() / 1e5);
        double at = value.applyAsDouble(worst);
        out.add(new Finding(
                key,
                severity,
                Optional.empty(),
                Sentence.of(where + message.apply(worst)),
                Map.of("cells", all.size(), "worst_" + unit, at)));
    }
}
