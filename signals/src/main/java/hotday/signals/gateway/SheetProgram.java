package hotday.signals.gateway;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.signals.dbc.Message;
import hotday.signals.translator.Field;
import hotday.signals.translator.Program;
import hotday.signals.translator.Program.Incoming;
import hotday.signals.translator.Program.Outgoing;
import hotday.signals.translator.Program.Rest;
import hotday.signals.translator.Program.Row;
import hotday.signals.translator.Program.Source;
import hotday.signals.translator.Program.Values;
import hotday.signals.translator.Scaling;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;

/** Turns a sheet into the program that a gateway runs. */
public final class SheetProgram {
    /** Faults that leave open what the gateway does. Others (a full bus, a late path) can be run, and seen. */
    private static final Set<String> BLOCKING = Set.of(
            "source-missing",
            "target-missing",
            "message-missing",
            "unit-missing",
            "unit-unknown",
            "unit-ambiguous",
            "unit-mismatch",
            "special-value-not-mapped",
            "table-gap",
            "row-twice",
            "word-unknown",
            "raw-value-impossible",
            "time-out-missing",
            "safe-value-missing",
            "value-out-of-range",
            "value-wrong",
            "two-senders",
            "sender-missing",
            "source-is-own",
            "target-twice",
            "target-multiplexed",
            "counter-missing",
            "checksum-missing",
            "counter-wrong",
            "checksum-wrong",
            "checksum-rule-missing",
            "arithmetic-too-wide",
            "floating-point");

    private static final String SAFE = "safe";

    private final TranslationSheet sheet;
    private final Map<String, Bus> buses = new LinkedHashMap<>();
    private final List<Bus> order = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private final Map<OnBus, Integer> incoming = new IdentityHashMap<>();
    private final Map<OnBus, Integer> outgoing = new IdentityHashMap<>();

    private SheetProgram(TranslationSheet sheet) {
        this.sheet = sheet;
        for (NetworkPlan plan : sheet.networks()) {
            Bus bus = Bus.of(plan);
            buses.put(plan.name(), bus);
            order.add(bus);
        }
        LineFinder finder = new LineFinder(buses, new Findings());
        sheet.translations().forEach(t -> finder.find(t).ifPresent(lines::add));
    }

    /**
     * The program of a sheet.
     *
     * @throws InputException with every fault that leaves open what the gateway does
     */
    public static Program of(TranslationSheet sheet) {
        refuse(GatewayCheck.of(sheet).findings().stream()
                .filter(f -> BLOCKING.contains(f.key()))
                .toList());
        return new SheetProgram(sheet).program();
    }

    private static void refuse(List<Finding> faults) {
        if (!faults.isEmpty()) {
            throw new InputException(faults.stream()
                    .map(f -> Finding.fault(f.key(), f.place().orElseThrow(), f.message()))
                    .toList());
        }
    }

    private Program program() {
        requireInside();
        List<Incoming> listened = listened();
        List<Outgoing> sent = sent();
        List<Program.Line> carried = new ArrayList<>();
        for (Line line : lines) {
            line.from().ifPresent(from -> carried.add(carried(line, from)));
        }
        return new Program(
                sheet.title(),
                List.copyOf(buses.keySet()),
                sheet.gateway().poll(),
                sheet.gateway().processing(),
                listened,
                sent,
                carried);
    }

    private void requireInside() {
        List<Finding> faults = new ArrayList<>();
        for (Line line : lines) {
            line.from().ifPresent(from -> inside(from, line, "from", faults));
            inside(line.to(), line, "to", faults);
        }
        refuse(faults);
    }

    private static void inside(Line.End end, Line line, String key, List<Finding> faults) {
        if (!end.message().classic() || !Source.exists(end.message().message(), end.signal())) {
            faults.add(Finding.fault(
                    "frame-too-long",
                    line.typed().places().at(key),
                    end.name() + " of '" + end.message().message().name()
                            + "' does not lie inside a classic frame of up to " + Field.MOST_BYTES + " bytes"));
        }
    }

    private List<Incoming> listened() {
        List<Incoming> all = new ArrayList<>();
        for (Line line : lines) {
            line.from().filter(from -> !incoming.containsKey(from.message())).ifPresent(from -> {
                incoming.put(from.message(), all.size());
                Message m = from.message().message();
                all.add(new Incoming(
                        order.indexOf(from.bus()),
                        m.name(),
                        m.id(),
                        m.extended(),
                        Guards.counter(from.message()),
                        Guards.checksum(from.message())));
            });
        }
        return all;
    }

    /** In the order of the networks and their files. */
    private List<Outgoing> sent() {
        Set<OnBus> targets = Collections.newSetFromMap(new IdentityHashMap<>());
        lines.forEach(line -> targets.add(line.to().message()));
        List<Finding> faults = new ArrayList<>();
        List<Outgoing> all = new ArrayList<>();
        for (Bus bus : order) {
            for (OnBus m : bus.messages()) {
                boolean ours = m.ours() || targets.contains(m);
                if (ours && (m.every().isEmpty() || !m.classic())) {
                    faults.add(m.classic() ? periodMissing(m) : tooLong(m));
                } else if (ours) {
                    outgoing.put(m, all.size());
                    all.add(outgoing(order.indexOf(bus), m));
                }
            }
        }
        refuse(faults);
        return all;
    }

    private static Finding periodMissing(OnBus m) {
        return Finding.fault(
                "period-missing",
                m.place(),
                "how often the gateway sends '" + m.message().name() + "' is not said; type 'every' under 'messages'");
    }

    private static Finding tooLong(OnBus m) {
        return Finding.fault(
                "frame-too-long",
                m.place(),
                "the gateway would send '" + m.message().name() + "' of "
                        + m.message().length() + " bytes; a classic frame has up to " + Field.MOST_BYTES);
    }

    private Outgoing outgoing(int network, OnBus m) {
        OptionalLong onChange = m.plan().map(MessagePlan::onChange).orElse(OptionalLong.empty());
        return new Outgoing(
                network,
                m.message().name(),
                m.message().id(),
                m.message().extended(),
                m.message().length(),
                looks(m.every().orElseThrow()),
                onChange.isPresent() ? looks(onChange.getAsLong()) : 0,
                fixed(m),
                Guards.counter(m),
                Guards.checksum(m));
    }

    /** Upwards: never sent more often than allowed, never missing too early. */
    private int looks(long ns) {
        long poll = sheet.gateway().poll();
        return Math.toIntExact(Math.max(1, (ns + poll - 1) / poll));
    }

    private long fixed(OnBus m) {
        long word = 0;
        for (Line line : lines) {
            if (line.to().message() == m && line.typed().fixed().isPresent()) {
                word = Field.of(line.to().signal())
                        .put(word, physical(line, line.typed().fixed().get()));
            }
        }
        return word;
    }

    private static long physical(Line line, String text) {
        return TypedValue.physical(
                        line.to().signal(), line.toUnit(), line.typed().measures(), text)
                .raw()
                .orElseThrow();
    }

    private Program.Line carried(Line line, Line.End from) {
        Translation t = line.typed();
        return new Program.Line(
                t.from().orElseThrow().toString(),
                incoming.get(from.message()),
                Source.of(from.message().message(), from.signal()),
                values(line, from),
                t.to().toString(),
                outgoing.get(line.to().message()),
                Field.of(line.to().signal()),
                looks(t.timeOut().orElseThrow()),
                t.hold(),
                physical(line, t.safe().orElseThrow()));
    }

    private static Values values(Line line, Line.End from) {
        Translation t = line.typed();
        if (!t.table().isEmpty()) {
            OptionalLong otherwise = t.otherwise().map(o -> target(line, o)).orElse(OptionalLong.empty());
            Rest rest = t.otherwise().isEmpty() ? Rest.NOTHING : otherwise.isPresent() ? Rest.VALUE : Rest.SAFE;
            Scaling unused = new Scaling(1, 0, 1, 0, 0);
            return new Values(rows(line, from, t.table()), rest, otherwise.orElse(0), 0, 0, unused);
        }
        if (from.signal().form().isFloat()) {
            Scaling asItIs = new Scaling(1, 0, 1, Long.MIN_VALUE, Long.MAX_VALUE);
            return new Values(List.of(), Rest.SCALED, 0, Long.MIN_VALUE, Long.MAX_VALUE, asItIs);
        }
        Scale source = Scale.of(from.signal());
        UnitLink link = UnitLink.between(line.fromUnit(), line.toUnit(), t.measures())
                .link()
                .orElseThrow();
        Scaling scaling = Conversion.of(
                        source, link, t.factor(), Scale.of(line.to().signal()))
                .orElseThrow();
        return new Values(
                rows(line, from, t.special()),
                Rest.SCALED,
                0,
                (long) source.rawLow(),
                (long) source.rawHigh(),
                scaling);
    }

    private static List<Row> rows(Line line, Line.End from, Map<String, String> typed) {
        List<Row> rows = new ArrayList<>();
        typed.forEach((a, b) -> {
            OptionalLong to = target(line, b);
            long raw = TypedValue.wordOrRaw(from.signal(), a).raw().orElseThrow();
            rows.add(new Row(raw, to.isEmpty(), to.orElse(0)));
        });
        rows.sort(Comparator.comparingLong(Row::from));
        return rows;
    }

    /** Empty for the safe value. */
    private static OptionalLong target(Line line, String text) {
        return text.strip().equals(SAFE)
                ? OptionalLong.empty()
                : OptionalLong.of(
                        TypedValue.wordOrRaw(line.to().signal(), text).raw().orElseThrow());
    }
}
