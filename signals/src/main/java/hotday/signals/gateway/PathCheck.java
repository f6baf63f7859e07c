package hotday.signals.gateway;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.signals.bus.Schedule;
import hotday.signals.gateway.GatewayReport.Part;
import hotday.signals.gateway.GatewayReport.PathLine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** Longest time from a change at the first sender to the arrival at the last receiver, part by part. */
final class PathCheck {
    private final TranslationSheet.Gateway gateway;
    private final Map<String, Bus> buses;
    private final List<Translation> translations;
    private final Findings out;

    PathCheck(TranslationSheet.Gateway gateway, Map<String, Bus> buses, List<Translation> translations, Findings out) {
        this.gateway = gateway;
        this.buses = buses;
        this.translations = List.copyOf(translations);
        this.out = out;
    }

    PathLine check(PathPlan path) {
        LineFinder finder = new LineFinder(buses, out);
        List<Part> parts = new ArrayList<>();
        Line.End before = null;
        for (int i = 0; i < path.steps().size(); i++) {
            SignalName name = path.steps().get(i);
            Optional<Line.End> end = finder.end(name, path.stepPlaces().get(i), "path-broken");
            if (end.isEmpty()) {
                return new PathLine(path.name(), path.limit(), OptionalLong.empty(), List.of());
            }
            if (before != null && !follows(path, i, before, end.get(), parts)) {
                return new PathLine(path.name(), path.limit(), OptionalLong.empty(), List.of());
            }
            onBus(end.get(), parts);
            before = end.get();
        }
        return judged(path, parts);
    }

    /** From one signal to the next: over the gateway where a translation leads, else through the node that sends it. */
    private boolean follows(PathPlan path, int step, Line.End from, Line.End to, List<Part> parts) {
        Place place = path.stepPlaces().get(step);
        boolean translated = translations.stream()
                .anyMatch(t -> t.to().equals(path.steps().get(step))
                        && t.from().filter(path.steps().get(step - 1)::equals).isPresent());
        if (translated) {
            parts.add(new Part("until the gateway looks", OptionalLong.of(gateway.poll())));
            parts.add(new Part("in the gateway", OptionalLong.of(gateway.processing())));
            return true;
        }
        if (from.bus() != to.bus()
                || to.message().ours()
                || to.message().senders().isEmpty()) {
            out.fault(
                    "path-broken",
                    place,
                    "no translation leads from '" + from.signal().name() + "' of '"
                            + from.bus().name() + "' to '" + to.signal().name() + "' of '"
                            + to.bus().name() + "'");
            return false;
        }
        String node = to.message().sender();
        Long takes = path.takes().get(node);
        if (takes == null) {
            out.fault(
                    "path-time-missing",
                    place,
                    "'" + to.signal().name() + "' follows from '"
                            + from.signal().name() + "' in " + node + "; type how long that takes: 'takes: {" + node
                            + ": ...}'");
            return false;
        }
        parts.add(new Part("in " + node, OptionalLong.of(takes)));
        return true;
    }

    private static void onBus(Line.End end, List<Part> parts) {
        String name = end.message().message().name();
        long response = end.bus().response(end.message());
        parts.add(new Part("until '" + name + "' is sent next", end.message().shortest()));
        parts.add(new Part(
                "'" + name + "' on '" + end.bus().name() + "'",
                response == Schedule.UNBOUNDED ? OptionalLong.empty() : OptionalLong.of(response)));
    }

    private PathLine judged(PathPlan path, List<Part> parts) {
        boolean bounded = parts.stream().allMatch(p -> p.time().isPresent());
        if (!bounded) {
            out.fault("path-unbounded", path.limitPlace(), "'" + path.name() + "' has a part without bound, see there");
            return new PathLine(path.name(), path.limit(), OptionalLong.empty(), parts);
        }
        long worst = parts.stream().mapToLong(p -> p.time().getAsLong()).sum();
        if (worst > path.limit()) {
            Part longest = parts.stream()
                    .max(Comparator.comparingLong(p -> p.time().getAsLong()))
                    .orElseThrow();
            out.add(Finding.fault(
                            "path-too-late",
                            path.limitPlace(),
                            "'" + path.name() + "' may take " + Shown.ms(worst) + ", allowed are "
                                    + Shown.ms(path.limit()) + "; the longest part is " + longest.what() + ", "
                                    + Shown.ms(longest.time().getAsLong()))
                    .with("worst_ms", worst / 1e6)
                    .with("limit_ms", path.limit() / 1e6));
        }
        return new PathLine(path.name(), path.limit(), OptionalLong.of(worst), parts);
    }
}
