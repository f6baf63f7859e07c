package hotday.signals.gateway;

import hotday.signals.bus.Schedule;
import hotday.signals.bus.Traffic;
import hotday.signals.gateway.GatewayReport.BusLine;
import hotday.signals.gateway.GatewayReport.MessageLine;
import hotday.signals.gateway.GatewayReport.PathLine;
import hotday.signals.gateway.GatewayReport.SignalLine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/** Everything that can be said about a translation sheet before anything is flashed. */
public final class GatewayCheck {
    private final TranslationSheet sheet;
    private final Findings out = new Findings();
    private final Map<String, Bus> buses = new LinkedHashMap<>();

    private GatewayCheck(TranslationSheet sheet) {
        this.sheet = sheet;
    }

    public static GatewayReport of(TranslationSheet sheet) {
        return new GatewayCheck(sheet).report();
    }

    private GatewayReport report() {
        sheet.networks().forEach(n -> buses.put(n.name(), Bus.of(n)));
        buses.values().forEach(bus -> BusCheck.check(bus, out));
        List<Line> lines = lines();
        TimeCheck times = new TimeCheck(sheet.gateway(), out);
        List<SignalLine> signals = new ArrayList<>();
        for (Line line : lines) {
            String how = ValueCheck.check(line, out);
            signals.add(signalLine(line, how, times.check(line)));
        }
        new SendCheck(List.copyOf(buses.values()), sheet.gateway(), out).check(lines);
        PathCheck paths = new PathCheck(sheet.gateway(), buses, sheet.translations(), out);
        List<PathLine> pathLines = sheet.paths().stream().map(paths::check).toList();
        return new GatewayReport(
                sheet.title(),
                buses.values().stream().map(GatewayCheck::busLine).toList(),
                signals,
                pathLines,
                out.sorted());
    }

    private List<Line> lines() {
        LineFinder finder = new LineFinder(buses, out);
        List<Line> lines = new ArrayList<>();
        sheet.translations().forEach(t -> finder.find(t).ifPresent(lines::add));
        return lines;
    }

    private static SignalLine signalLine(Line line, String how, OptionalLong oldest) {
        Translation t = line.typed();
        return new SignalLine(
                t.from().map(SignalName::toString).orElse(""),
                t.to().toString(),
                how,
                oldest,
                t.safe().or(t::fixed).orElse(""));
    }

    private static BusLine busLine(Bus bus) {
        List<MessageLine> messages = bus.messages().stream()
                .sorted(Comparator.comparingLong(
                        m -> Traffic.priority(m.message().id(), m.message().extended())))
                .map(m -> messageLine(bus, m))
                .toList();
        return new BusLine(bus.name(), bus.plan().bitRate(), bus.load(), bus.bareLoad(), messages);
    }

    private static MessageLine messageLine(Bus bus, OnBus m) {
        long response = bus.response(m);
        return new MessageLine(
                m.message().name(),
                m.message().id(),
                m.message().extended(),
                m.message().length(),
                m.sender(),
                m.shortest(),
                m.jitter(),
                response == Schedule.UNBOUNDED ? OptionalLong.empty() : OptionalLong.of(response),
                m.deadline());
    }
}
