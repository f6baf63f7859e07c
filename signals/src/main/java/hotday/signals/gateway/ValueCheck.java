package hotday.signals.gateway;

import hotday.core.finding.Place;
import hotday.signals.dbc.Signal;
import hotday.signals.translator.Scaling;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;

/** Whether the values of a source keep their meaning in the target: units, range, steps, words. */
final class ValueCheck {
    private static final String SAFE = "safe";
    /** Raw values of a table without words are looked through one by one up to here. */
    private static final int MOST_LISTED = 1024;

    private static final double ROUNDING = 1e-9;

    private final Line line;
    private final Line.End from;
    private final Translation typed;
    private final Findings out;

    private ValueCheck(Line line, Line.End from, Findings out) {
        this.line = line;
        this.from = from;
        this.typed = line.typed();
        this.out = out;
    }

    /** How the values get over, for people. */
    static String check(Line line, Findings out) {
        if (line.from().isEmpty()) {
            return "fixed";
        }
        ValueCheck check = new ValueCheck(line, line.from().get(), out);
        return typedByTable(line) ? check.table() : check.numbers();
    }

    private static boolean typedByTable(Line line) {
        return !line.typed().table().isEmpty();
    }

    private Place at(String key) {
        return typed.places().at(key);
    }

    private Signal source() {
        return from.signal();
    }

    private Signal target() {
        return line.to().signal();
    }

    private String table() {
        if (floats()) {
            onlyAsItIs();
            return "-";
        }
        Map<Long, OptionalLong> rows = rows(typed.table(), "table");
        typed.otherwise().ifPresent(o -> targetValue(o, "otherwise"));
        if (typed.otherwise().isEmpty()) {
            gaps(rows);
        }
        return "by table";
    }

    /** Rows by raw value of the source; empty where the safe value is asked for or the target is unknown. */
    private Map<Long, OptionalLong> rows(Map<String, String> texts, String key) {
        Map<Long, OptionalLong> rows = new HashMap<>();
        texts.forEach((a, b) -> {
            OptionalLong target = targetValue(b, key);
            told(TypedValue.wordOrRaw(source(), a), key).ifPresent(raw -> {
                if (rows.put(raw, target) != null) {
                    out.fault(
                            "row-twice",
                            at(key),
                            "'" + key + "' has two rows for raw value " + raw + " of " + from.name());
                }
            });
        });
        return rows;
    }

    private OptionalLong targetValue(String text, String key) {
        return text.strip().equals(SAFE) ? OptionalLong.empty() : told(TypedValue.wordOrRaw(target(), text), key);
    }

    private OptionalLong told(TypedValue.Answer answer, String key) {
        if (answer.raw().isEmpty()) {
            out.fault(answer.key(), at(key), "'" + key + "': " + answer.message());
        }
        return answer.raw();
    }

    private void gaps(Map<Long, OptionalLong> rows) {
        Map<Long, String> without = new TreeMap<>();
        Scale scale = Scale.of(source());
        source().words().forEach((raw, word) -> {
            if (!rows.containsKey(raw)) {
                without.put(raw, raw + " (" + word + ")");
            }
        });
        if (scale.whole() && scale.rawHigh() - scale.rawLow() < MOST_LISTED) {
            for (long raw = (long) scale.rawLow(); raw <= scale.rawHigh(); raw++) {
                if (!rows.containsKey(raw)) {
                    without.putIfAbsent(raw, String.valueOf(raw));
                }
            }
        }
        boolean more = !scale.whole() || scale.rawHigh() - scale.rawLow() >= MOST_LISTED;
        if (!without.isEmpty() || more) {
            String named = without.values().stream()
                    .limit(5)
                    .reduce((a, b) -> a + ", " + b)
                    .orElse("most");
            out.fault(
                    "table-gap",
                    at("table"),
                    "raw " + named + (without.size() > 5 ? " ..." : "") + " of " + from.name()
                            + " stands in no row; add it, or say 'otherwise' (a value of the target, or safe)");
        }
    }

    private boolean floats() {
        return source().form().isFloat() || target().form().isFloat();
    }

    private void onlyAsItIs() {
        out.fault(
                "floating-point",
                at("from"),
                from.name() + " (" + source().form().word() + ") to "
                        + line.to().name() + " ("
                        + target().form().word()
                        + "): a floating-point signal gets over as it is, to one of the same form, scale and unit, without table or factor");
    }

    private boolean same() {
        return source().form() == target().form()
                && source().factor() == target().factor()
                && source().offset() == target().offset()
                && typed.factor() == 1
                && typed.special().isEmpty();
    }

    private String numbers() {
        UnitLink.Answer units = UnitLink.between(line.fromUnit(), line.toUnit(), typed.measures());
        if (floats() && !(same() && units.link().filter(UnitLink.SAME::equals).isPresent())) {
            onlyAsItIs();
            return "-";
        }
        Map<Long, OptionalLong> special = rows(typed.special(), "special");
        if (units.link().isEmpty()) {
            out.fault(units.key(), at("from"), from.name() + " to " + line.to().name() + ": " + units.message());
            return "-";
        }
        UnitLink plain = units.link().get();
        UnitLink link = new UnitLink(plain.factor() * typed.factor(), plain.offset() * typed.factor());
        range(link);
        if (floats()) {
            return "as it is";
        }
        steps(link);
        Optional<Scaling> scaling = Conversion.of(Scale.of(source()), plain, typed.factor(), Scale.of(target()));
        if (scaling.isEmpty()) {
            tooWide();
            return how(link);
        }
        wordsOfSource(special, scaling.get());
        wordsOfTarget(scaling.get());
        return how(link);
    }

    private void tooWide() {
        out.fault(
                "arithmetic-too-wide",
                at("from"),
                "the conversion of " + from.name() + " to " + line.to().name()
                        + " does not fit whole numbers of 64 bits: factors have too many digits, or limits in the DBC file are missing or too wide");
    }

    private static String how(UnitLink link) {
        String offset =
                link.offset() == 0 ? "" : (link.offset() > 0 ? " + " : " - ") + Shown.number(Math.abs(link.offset()));
        return "x " + Shown.number(link.factor()) + offset;
    }

    private void range(UnitLink link) {
        Scale source = Scale.of(source());
        Scale target = Scale.of(target());
        double a = link.apply(source.low());
        double b = link.apply(source.high());
        double low = Math.min(a, b);
        double high = Math.max(a, b);
        double room = 0.5 * target.step() * (1 + ROUNDING) + ROUNDING * Math.max(Math.abs(low), Math.abs(high));
        if (low < target.low() - room || high > target.high() + room) {
            out.loss(
                    typed.clip(),
                    "range-loss",
                    at("to"),
                    from.name() + " goes from " + Shown.number(low) + " to " + Shown.number(high, line.toUnit())
                            + ", its target only from " + Shown.number(target.low()) + " to "
                            + Shown.number(target.high(), line.toUnit()) + ": what lies beyond is cut off",
                    "say 'clip: yes' if that may be");
        }
    }

    /** A value survives the way there and back to half a step only when the target's steps are not the bigger ones. */
    private void steps(UnitLink link) {
        double step = Scale.of(source()).step() * Math.abs(link.factor());
        double targetStep = Scale.of(target()).step();
        if (targetStep > step * (1 + ROUNDING)) {
            out.loss(
                    typed.coarser(),
                    "resolution-loss",
                    at("to"),
                    "steps of " + (step == 0 ? "nothing (a floating-point number)" : Shown.number(step, line.toUnit()))
                            + " become steps of " + Shown.number(targetStep, line.toUnit()),
                    "say 'coarser: yes' if that may be");
        }
    }

    /** Raw values that are no numbers ("not available") must not be converted as if they were. */
    private void wordsOfSource(Map<Long, OptionalLong> special, Scaling scaling) {
        Scale scale = Scale.of(source());
        new TreeMap<>(source().words()).forEach((raw, word) -> {
            if (scale.within(raw) && !special.containsKey(raw)) {
                long becomes = scaling.apply(raw);
                Optional<String> there = target().word(becomes);
                if (there.isEmpty() || !there.get().strip().equalsIgnoreCase(word.strip())) {
                    out.fault(
                            "special-value-not-mapped",
                            at("from"),
                            "raw " + raw + " of " + from.name() + " means '" + word + "'; as a number it would become "
                                    + Shown.number(Scale.of(target()).physical(becomes), line.toUnit())
                                    + there.map(t -> " ('" + t + "')").orElse("")
                                    + "; say under 'special' what is sent");
                }
            }
        });
    }

    /** A number must not come out as a raw value that means something else. */
    private void wordsOfTarget(Scaling scaling) {
        Scale source = Scale.of(source());
        long a = scaling.apply((long) source.rawLow());
        long b = scaling.apply((long) source.rawHigh());
        new TreeMap<>(target().words()).forEach((raw, word) -> {
            boolean hit = raw >= Math.min(a, b) && raw <= Math.max(a, b);
            boolean meant =
                    source().words().values().stream().anyMatch(w -> w.strip().equalsIgnoreCase(word.strip()));
            if (hit && !meant) {
                out.fault(
                        "special-value-hit",
                        at("to"),
                        "a number could come out as raw " + raw + " of "
                                + line.to().name() + ", which means '" + word
                                + "'; limits of that signal in its DBC file that leave it out prevent it");
            }
        });
    }
}
