package hotday.signals.channel;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.finding.Sentence;
import hotday.core.finding.Setting;
import hotday.core.unit.Nearest;
import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.core.unit.UnitException;
import hotday.core.unit.Units;
import hotday.signals.log.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Finds the columns of a map in the header of a file, and their units. Books everything wrong. */
final class MappedColumns {
    private static final int NAMES_SHOWN = 40;
    private static final Setting TIME = Setting.named("time", "time");

    /**
     * A channel's column.
     *
     * @param index from 0
     * @param gauge true when the unit counts from the pressure outside and the channel from vacuum
     */
    record Mapped(ChannelRule rule, int index, String name, Unit unit, boolean gauge) {}

    private final Table text;
    private final String file;
    private final List<Finding> faults;
    private final List<Finding> findings;

    MappedColumns(Table text, List<Finding> faults, List<Finding> findings) {
        this.text = text;
        this.file = text.path().toString();
        this.faults = faults;
        this.findings = findings;
    }

    /** Index of a channel's column; empty after a fault. */
    Optional<Integer> column(ChannelRule rule) {
        return column(rule.column(), rule.position(), Named.channel(rule.kind()), rule.place(), rule.optional());
    }

    /** Index of the time column; empty after a fault and where there is none. */
    Optional<Integer> time(TimeRule rule) {
        if (rule.counted()) {
            return Optional.empty();
        }
        return column(rule.column(), rule.position(), TIME, rule.place(), false);
    }

    /** Unit of a time column of numbers; seconds after a fault. */
    Unit timeUnit(TimeRule rule, int column) {
        String name = text.header().get(column);
        Optional<Unit> unit =
                rule.unit().or(() -> HeaderName.unit(text, column).flatMap(u -> Units.find(Quantity.TIME, u)));
        if (unit.isEmpty()) {
            faults.add(Finding.fault(
                    "unit-missing",
                    rule.place(),
                    Sentence.of(
                            "the time column '",
                            name,
                            "' has no unit: ",
                            new Setting("time.unit", "s", "add 'unit: s'"),
                            " (or ms, min, h), or ",
                            new Setting("time.clock", "hh:mm:ss", "'clock: hh:mm:ss'"))));
        }
        return unit.orElseGet(() -> Units.unit(Quantity.TIME, "s"));
    }

    /** Columns of all channels that are not constants. */
    List<Mapped> channels(Iterable<ChannelRule> rules) {
        List<Mapped> all = new ArrayList<>();
        Map<Integer, ModelChannel> taken = new TreeMap<>();
        for (ChannelRule rule : rules) {
            if (rule.constant().isEmpty()) {
                column(rule).flatMap(c -> mapped(rule, c)).ifPresent(m -> {
                    all.add(m);
                    once(taken, m);
                });
            }
        }
        return all;
    }

    private void once(Map<Integer, ModelChannel> taken, Mapped mapped) {
        ModelChannel other = taken.putIfAbsent(mapped.index(), mapped.rule().kind());
        if (other != null) {
            findings.add(Finding.warning(
                    "column-used-twice",
                    mapped.rule().place(),
                    Sentence.of(
                            "column '",
                            mapped.name(),
                            "' is taken for both ",
                            Named.channel(other),
                            " and ",
                            Named.channel(mapped.rule().kind()),
                            ": check ",
                            Named.MAP)));
        }
    }

    private Optional<Integer> column(String name, int position, Setting what, Place place, boolean optional) {
        List<Integer> named = named(name);
        boolean inside = position > 0 && position <= text.header().size();
        if (named.size() == 1 || (inside && named.contains(position - 1))) {
            return Optional.of(named.size() == 1 ? named.get(0) : position - 1);
        }
        if (inside && named.isEmpty()) {
            byPosition(name, position, what);
            return Optional.of(position - 1);
        }
        if (!named.isEmpty()) {
            faults.add(Finding.fault(
                    "column-twice",
                    new Place(file, text.headerLine(), 0),
                    Sentence.of(
                            "the header has " + named.size() + " columns '" + name + "' (numbers ",
                            named.stream().map(i -> String.valueOf(i + 1)).collect(Collectors.joining(", ")),
                            "): say which one is ",
                            what,
                            " with ",
                            Setting.named(what.key() + ".position", "'position' in the channel map"))));
        } else if (optional) {
            findings.add(Finding.note(
                            "column-absent",
                            new Place(file, text.headerLine(), 0),
                            Sentence.of("no column '", name, "'; this run has no ", what))
                    .with("channel", what.inFile()));
        } else {
            absent(name, what, place);
        }
        return Optional.empty();
    }

    private List<Integer> named(String name) {
        String wanted = HeaderName.plain(name);
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < text.header().size(); i++) {
            if (!wanted.isEmpty() && HeaderName.plain(text.header().get(i)).equals(wanted)) {
                found.add(i);
            }
        }
        return found;
    }

    private void byPosition(String name, int position, Setting what) {
        String there = text.header().get(position - 1);
        if (!name.isEmpty()) {
            findings.add(Finding.note(
                            "column-by-position",
                            new Place(file, text.headerLine(), 0),
                            Sentence.of(
                                    "'" + name + "' is not in the header; column " + position + " ('" + there,
                                    "') is taken for ",
                                    what))
                    .with("channel", what.inFile())
                    .with("column", there));
        }
    }

    private void absent(String name, Setting what, Place place) {
        List<String> header = text.header();
        String nearest = Nearest.to(name, header)
                .map(n -> " The nearest is '" + n + "'.")
                .orElse("");
        String more = header.size() > NAMES_SHOWN ? " and " + (header.size() - NAMES_SHOWN) + " more" : "";
        String names = String.join(", ", header.subList(0, Math.min(NAMES_SHOWN, header.size())));
        faults.add(Finding.fault(
                        what.equals(TIME) ? "no-time-column" : "no-such-column",
                        new Place(file, text.headerLine(), 0),
                        Sentence.of(
                                "no column '",
                                name,
                                "' for ",
                                what,
                                new Setting(what.key() + ".place", "", " (" + place + ")"),
                                "." + nearest + " The header has: " + names + more))
                .with("channel", what.inFile()));
    }

    private Optional<Mapped> mapped(ChannelRule rule, int column) {
        String name = text.header().get(column);
        Quantity quantity = rule.kind().quantity();
        Optional<String> inHeader = HeaderName.unit(text, column);
        Optional<String> symbol = rule.unit().or(() -> inHeader.filter(MappedColumns::isAnyUnit));
        if (symbol.isEmpty()) {
            faults.add(Finding.fault(
                            "unit-missing",
                            rule.place(),
                            Sentence.of(
                                    "column '",
                                    name,
                                    "' for ",
                                    Named.channel(rule.kind()),
                                    " has no unit: ",
                                    unit(rule.kind(), exampleUnit(quantity))))
                    .with("channel", rule.kind().key()));
            return Optional.empty();
        }
        if (isGauge(quantity, symbol.get())) {
            Unit unit = Units.unit(Quantity.PRESSURE_GAUGE, symbol.get());
            return Optional.of(new Mapped(rule, column, name, unit, true));
        }
        try {
            Unit unit = unit(quantity, symbol.get());
            inHeader.ifPresent(h -> compare(rule, name, h, unit));
            return Optional.of(new Mapped(rule, column, name, unit, false));
        } catch (UnitException e) {
            faults.add(
                    Finding.fault(e.key(), rule.place(), Sentence.of(Named.channel(rule.kind()), ": ", e.getMessage()))
                            .with("channel", rule.kind().key()));
            return Optional.empty();
        }
    }

    /** A symbol typed for a channel; a share may be given as {@code 1}. */
    static Unit unit(Quantity quantity, String symbol) {
        return Units.unit(quantity, quantity == Quantity.RATIO && symbol.equals("1") ? "" : symbol);
    }

    /** True for a symbol that says gauge, such as psig, where the channel counts from vacuum. */
    static boolean isGauge(Quantity quantity, String symbol) {
        return quantity == Quantity.PRESSURE_ABSOLUTE
                && symbol.toLowerCase(Locale.ROOT).contains("g")
                && Units.find(Quantity.PRESSURE_ABSOLUTE, symbol).isEmpty()
                && Units.find(Quantity.PRESSURE_GAUGE, symbol).isPresent();
    }

    static boolean isAnyUnit(String symbol) {
        for (Quantity quantity : Quantity.values()) {
            if (Units.find(quantity, symbol).isPresent()) {
                return true;
            }
        }
        return false;
    }

    private static Setting unit(ModelChannel kind, String example) {
        return Named.value(kind, "unit", example, "add one, such as 'unit: " + example + "'");
    }

    private static String exampleUnit(Quantity quantity) {
        String example = quantity.example();
        return example.substring(example.indexOf(' ') + 1);
    }

    private void compare(ChannelRule rule, String name, String inHeader, Unit unit) {
        Optional<Unit> other = Units.find(rule.kind().quantity(), inHeader);
        if (other.isPresent() && !other.get().equals(unit)) {
            findings.add(Finding.warning(
                            "unit-differs-from-header",
                            rule.place(),
                            Sentence.of(
                                    Named.MAP,
                                    " says " + unit.symbol() + " for ",
                                    Named.channel(rule.kind()),
                                    ", the file says " + inHeader + " for '" + name,
                                    "'. The map is followed; check which one is right."))
                    .with("channel", rule.kind().key()));
        }
    }
}
