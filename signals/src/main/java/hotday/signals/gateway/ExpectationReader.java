package hotday.signals.gateway;

import hotday.core.finding.Place;
import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.signals.expect.Condition;
import hotday.signals.expect.Condition.Relation;
import hotday.signals.expect.Expected;
import hotday.signals.expect.Watched;
import hotday.signals.translator.Program.Source;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads what somebody expects of a translation. Faults are booked at their places. */
final class ExpectationReader {
    static final String KEY = "expect";

    private static final double NANO = 1e9;
    private static final double LONGEST = 3600; // s
    private static final double SHORTEST = 1e-4; // s
    private static final int MOST = 1000;
    private static final Pattern STEPS = Pattern.compile("([0-9]+(?:\\.[0-9]+)?)\\s+steps?");
    private static final Pattern AMOUNT = Pattern.compile("([0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)\\s*(.*)");
    private static final String NOT = "not ";
    private static final String KINDS =
            "an expectation has 'when' and 'then', or 'never', or 'always', or 'message', or 'signal' and 'equals'";

    private final TranslationSheet sheet;
    private final Map<String, Bus> buses = new LinkedHashMap<>();
    private final List<String> networks;

    ExpectationReader(TranslationSheet sheet) {
        this.sheet = sheet;
        this.networks = sheet.networkNames();
        sheet.networks().forEach(n -> buses.put(n.name(), Bus.of(n)));
    }

    /** Those under {@code expect}. */
    List<Expected> read(TypedMap root) {
        List<TypedMap> maps = root.maps(KEY);
        if (maps.size() > MOST) {
            root.fault(KEY, "lists " + maps.size() + "; no more than " + MOST + " are read");
            return List.of();
        }
        List<Expected> all = new ArrayList<>();
        for (TypedMap map : maps) {
            new One(map).read().ifPresent(all::add);
        }
        return all;
    }

    /** One expectation. */
    private final class One {
        private final TypedMap map;
        private final String name;
        private final Place place;

        One(TypedMap map) {
            this.map = map;
            this.name = map.requiredText("name").orElse("");
            this.place = map.place();
        }

        Optional<? extends Expected> read() {
            if (map.has("when") || map.has("then")) {
                return response();
            }
            if (map.has("never") || map.has("always")) {
                return bound();
            }
            if (map.has("message")) {
                return rate();
            }
            if (map.has("signal") || map.has("equals")) {
                return equality();
            }
            map.fault("name", KINDS);
            return Optional.empty();
        }

        private Optional<Expected.Response> response() {
            map.refuseUnknown("name", "when", "then", "within");
            Optional<Condition> when = condition("when");
            Optional<Condition> then = condition("then");
            long within = nanos(map.requiredQuantity("within", Quantity.TIME, 0, LONGEST));
            return when.flatMap(w -> then.map(t -> new Expected.Response(name, place, w, t, within)));
        }

        private Optional<Expected.Bound> bound() {
            boolean always = map.has("always");
            map.refuseUnknown("name", always ? "always" : "never", "while", "after");
            Optional<Condition> never = condition(always ? "always" : "never");
            Optional<Condition> during = map.has("while") ? condition("while") : Optional.empty();
            if (map.has("after") && !map.has("while")) {
                map.fault("after", "'after' says how long 'while' must have been true; there is none");
            }
            long after = nanos(map.quantity("after", Quantity.TIME, 0, LONGEST, 0));
            return never.map(c -> new Expected.Bound(name, place, c, always, during, after));
        }

        private Optional<Expected.Rate> rate() {
            map.refuseUnknown("name", "message", "every", "not_closer");
            long every = nanos(map.requiredQuantity("every", Quantity.TIME, SHORTEST, LONGEST));
            long notCloser = nanos(map.quantity("not_closer", Quantity.TIME, SHORTEST, LONGEST, 0));
            Optional<String> typed = map.requiredText("message");
            return typed.flatMap(this::message)
                    .map(end -> new Expected.Rate(
                            name,
                            place,
                            typed.get().strip(),
                            networks.indexOf(end.bus().name()),
                            end.message().message().id(),
                            end.message().message().extended(),
                            every,
                            notCloser));
        }

        /** Any signal of it stands for it. */
        private Optional<Line.End> message(String typed) {
            String[] parts = typed.strip().split("\\.", -1);
            Optional<OnBus> there = parts.length == 2
                    ? Optional.ofNullable(buses.get(parts[0])).flatMap(b -> b.message(parts[1]))
                    : Optional.empty();
            if (there.isEmpty()) {
                map.fault("message", "there is no message '" + typed + "'; one is typed as network.message");
            }
            return there.map(m -> new Line.End(buses.get(parts[0]), m, null));
        }

        private Optional<Expected.Equality> equality() {
            map.refuseUnknown("name", "signal", "equals", "tolerance", "not_older", "while", "measures");
            Optional<Line.End> signal = map.requiredText("signal").flatMap(t -> end("signal", t));
            Optional<Line.End> source = map.requiredText("equals").flatMap(t -> end("equals", t));
            Optional<String> tolerance = map.requiredText("tolerance");
            long notOlder = nanos(map.requiredQuantity("not_older", Quantity.TIME, 0, LONGEST));
            Optional<Condition> during = map.has("while") ? condition("while") : Optional.empty();
            if (signal.isEmpty() || source.isEmpty() || tolerance.isEmpty()) {
                return Optional.empty();
            }
            Ends ends = new Ends(signal.get(), source.get());
            Optional<UnitLink> link = link(ends);
            Optional<Double> room = tolerance(ends.signal(), ends.unit(), tolerance.get());
            return link.flatMap(l -> room.map(r -> new Expected.Equality(
                    name,
                    place,
                    watched(ends.signal(), ends.unit()),
                    watched(ends.source(), ends.sourceUnit()),
                    l.factor(),
                    l.offset(),
                    r,
                    notOlder,
                    during)));
        }

        /** Two signals that should be equal, and the line of the sheet between them where there is one. */
        private final class Ends {
            private final Line.End signal;
            private final Line.End source;
            private final Optional<Line> line;

            Ends(Line.End signal, Line.End source) {
                this.signal = signal;
                this.source = source;
                LineFinder finder = new LineFinder(buses, new Findings());
                this.line = sheet.translations().stream()
                        .flatMap(t -> finder.find(t).stream())
                        .filter(l -> l.to().signal() == signal.signal()
                                && l.from()
                                        .filter(f -> f.signal() == source.signal())
                                        .isPresent())
                        .findFirst();
            }

            Line.End signal() {
                return signal;
            }

            Line.End source() {
                return source;
            }

            String unit() {
                return line.map(Line::toUnit).orElse(signal.signal().unit());
            }

            String sourceUnit() {
                return line.map(Line::fromUnit).orElse(source.signal().unit());
            }

            Optional<String> measures() {
                String[] titles =
                        Arrays.stream(Quantity.values()).map(Quantity::title).toArray(String[]::new);
                return map.text("measures", titles)
                        .or(() -> line.flatMap(l -> l.typed().measures()));
            }

            double factor() {
                return line.map(l -> l.typed().factor()).orElse(1.0);
            }
        }

        private Optional<UnitLink> link(Ends ends) {
            UnitLink.Answer answer = UnitLink.between(ends.sourceUnit(), ends.unit(), ends.measures());
            if (answer.link().isEmpty()) {
                map.fault("equals", answer.message());
            }
            return answer.link().map(l -> new UnitLink(l.factor() * ends.factor(), l.offset() * ends.factor()));
        }

        /** In the signal's unit. */
        private Optional<Double> tolerance(Line.End end, String unit, String typed) {
            Matcher steps = STEPS.matcher(typed.strip());
            if (steps.matches()) {
                return Optional.of(Double.parseDouble(steps.group(1))
                        * Scale.of(end.signal()).step());
            }
            Matcher m = AMOUNT.matcher(typed.strip());
            if (!m.matches() || m.group(2).isBlank() != unit.isBlank()) {
                map.fault(
                        "tolerance",
                        "'tolerance' is '" + typed + "'; it is typed like '1 step' or '2"
                                + (unit.isBlank() ? "" : " " + unit) + "'");
                return Optional.empty();
            }
            Optional<String> difference = Optional.of(Quantity.TEMPERATURE_DIFFERENCE.title());
            UnitLink.Answer asDifference = UnitLink.between(m.group(2), unit, difference);
            UnitLink.Answer answer = asDifference.link().isPresent()
                    ? asDifference
                    : UnitLink.between(m.group(2), unit, Optional.empty());
            if (answer.link().isEmpty()) {
                map.fault("tolerance", "'tolerance': " + answer.message());
            }
            return answer.link().map(l -> Double.parseDouble(m.group(1)) * Math.abs(l.factor()));
        }

        private Optional<Line.End> end(String key, String typed) {
            Optional<SignalName> signal = SignalName.of(typed);
            if (signal.isEmpty()) {
                map.fault(key, "'" + typed + "' is no signal; one is typed as " + SignalName.FORM);
                return Optional.empty();
            }
            Findings found = new Findings();
            Optional<Line.End> end = new LineFinder(buses, found).end(signal.get(), map.place(key), key);
            found.sorted().forEach(f -> map.fault(key, f.message()));
            if (end.isPresent()
                    && !Source.exists(end.get().message().message(), end.get().signal())) {
                map.fault(key, "'" + typed + "' does not lie inside a classic frame");
                return Optional.empty();
            }
            return end;
        }

        /** "network.message.signal above 130 degC". */
        private Optional<Condition> condition(String key) {
            Optional<String> typed = map.requiredText(key).map(String::strip);
            for (Relation relation : Relation.values()) {
                String between = " " + relation.words() + " ";
                int at = typed.orElse("").indexOf(between);
                if (at > 0 && relation != Relation.IS_NOT) {
                    String value = typed.get().substring(at + between.length()).strip();
                    return end(key, typed.get().substring(0, at).strip())
                            .flatMap(end -> condition(key, end, relation, value, typed.get()));
                }
            }
            typed.ifPresent(t -> map.fault(
                    key,
                    "'" + t + "' is no condition; one is typed like 'network.message.signal is on' or"
                            + " '... above 130 degC' (is, is not, above, below, at least, at most)"));
            return Optional.empty();
        }

        /** "is not available" means that word where there is one, else the opposite of "is available". */
        private Optional<Condition> condition(String key, Line.End end, Relation relation, String value, String text) {
            boolean not = relation == Relation.IS && value.startsWith(NOT) && !TypedValue.isWord(end.signal(), value);
            return not
                    ? compared(key, end, Relation.IS_NOT, value.substring(NOT.length()), text)
                    : compared(key, end, relation, value, text);
        }

        private Optional<Condition> compared(String key, Line.End end, Relation relation, String value, String text) {
            String unit = unit(end);
            Watched watched = watched(end, unit);
            TypedValue.Answer raw = TypedValue.physical(end.signal(), unit, measures(end), value);
            if (relation.exact()) {
                return told(key, raw.message(), raw.raw())
                        .map(r -> new Condition(watched, relation, r, Double.NaN, text));
            }
            TypedValue.Number number = TypedValue.number(end.signal(), unit, measures(end), value);
            return told(key, number.message(), number.value()).map(n -> new Condition(watched, relation, 0, n, text));
        }

        private <T> Optional<T> told(String key, String message, Optional<T> value) {
            if (value.isEmpty()) {
                map.fault(key, "'" + key + "': " + message);
            }
            return value;
        }

        private Optional<Long> told(String key, String message, OptionalLong value) {
            return told(key, message, value.isPresent() ? Optional.of(value.getAsLong()) : Optional.empty());
        }

        /** Unit of a signal, as lines of the sheet say it first. */
        private String unit(Line.End end) {
            return lines(end)
                    .map(l -> isTarget(l, end) ? l.toUnit() : l.fromUnit())
                    .findFirst()
                    .orElse(end.signal().unit());
        }

        private Optional<String> measures(Line.End end) {
            return lines(end).flatMap(l -> l.typed().measures().stream()).findFirst();
        }

        private Stream<Line> lines(Line.End end) {
            LineFinder finder = new LineFinder(buses, new Findings());
            return sheet.translations().stream()
                    .flatMap(t -> finder.find(t).stream())
                    .filter(l -> isTarget(l, end)
                            || l.from().filter(f -> f.signal() == end.signal()).isPresent());
        }

        private boolean isTarget(Line line, Line.End end) {
            return line.to().signal() == end.signal();
        }

        private Watched watched(Line.End end, String unit) {
            String network = end.bus().name();
            return Watching.of(networks.indexOf(network), network, end.message().message(), end.signal(), unit);
        }
    }

    private static long nanos(double seconds) {
        return Math.round(seconds * NANO); // 0 for NaN, whose fault is booked
    }
}
