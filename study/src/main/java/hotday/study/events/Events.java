package hotday.study.events;

import hotday.study.events.FanCycle.Proof;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Works out what switched from the channels that were recorded. Runs given together are of one vehicle. */
public final class Events {
    private static final double KELVIN = 273.15;
    /** How far a load step of the fan may lie from the fall it belongs to, s. */
    private static final int FAN_EARLY = 30;

    private static final int FAN_LATE = 15;
    /** Starts further apart than this are not neighbours, times the median. */
    private static final double PAUSE = 1.8;

    private record Seen(Seconds run, Compressor.Switching compressor, FanSearch search, List<FanCycle> fan) {}

    private final List<Seen> runs = new ArrayList<>();
    private final List<Event> events = new ArrayList<>();

    private Events() {}

    public static Inferred of(Trace trace) {
        return of(List.of(trace));
    }

    /** @param traces runs of one vehicle; where its fan starts is taken from all of them together */
    public static Inferred of(List<Trace> traces) {
        Events work = new Events();
        traces.forEach(work::see);
        work.alike();
        work.runs.forEach(work::tell);
        return new Inferred(work.events, work.summary());
    }

    private void see(Trace trace) {
        Seconds run = new Seconds(trace);
        Compressor.Switching compressor = Compressor.of(run);
        FanSearch search = new FanSearch(run, compressor);
        if (Compressor.isTheFan(compressor, search.fastFalls(), FAN_EARLY, FAN_LATE)) {
            compressor = Compressor.none(compressor);
            search = new FanSearch(run, compressor);
        }
        runs.add(new Seen(run, compressor, search, new ArrayList<>(search.plain())));
    }

    private void alike() {
        double still = Middle.median(all(FanCycle::still, FanCycle::peakCoolant));
        double road = Middle.median(all(c -> c.proof() == Proof.ROAD, FanCycle::peakCoolant));
        for (Seen seen : runs) {
            seen.fan().addAll(seen.search().alike(still, road));
            seen.fan().sort(Comparator.comparingInt(FanCycle::peak));
        }
    }

    private List<FanCycle> cycles() {
        return runs.stream().flatMap(s -> s.fan().stream()).toList();
    }

    private double[] all(Predicate<FanCycle> which, ToDoubleFunction<FanCycle> value) {
        return Middle.present(cycles().stream().filter(which).mapToDouble(value).toArray());
    }

    private void tell(Seen seen) {
        List<Event> told = new ArrayList<>(WarmUp.of(seen.run()));
        told.addAll(Heater.of(seen.run()));
        seen.fan().forEach(c -> fan(seen.run(), c, told));
        compressor(seen, told);
        told.sort(Comparator.comparingDouble(Event::time));
        events.addAll(told);
    }

    private void fan(Seconds run, FanCycle c, List<Event> told) {
        double confidence = c.confidence(cycles());
        String fall = String.format(
                Locale.ROOT,
                "coolant falls %.2f K/s from %.0f degC %s",
                c.rate(),
                c.peakCoolant() - KELVIN,
                c.proof().where);
        String load = c.channels() == 0 ? "" : ", step of load in " + c.channels() + " channels";
        told.add(new Event(run.run, run.time(c.start()), Kind.FAN_ON, c.startCoolant(), "K", confidence, fall + load));
        if (c.stop() >= 0) {
            String end = Double.isNaN(c.trough())
                    ? "step of load back"
                    : String.format(Locale.ROOT, "pull-down ends at %.0f degC", c.trough() - KELVIN);
            told.add(new Event(run.run, run.time(c.stop()), Kind.FAN_OFF, c.stopCoolant(), "K", 0.9 * confidence, end));
        }
    }

    private static void compressor(Seen seen, List<Event> told) {
        Compressor.Switching s = seen.compressor();
        double confidence = Compressor.confidence(s);
        String evidence = Compressor.levels(s);
        s.starts()
                .forEach(i -> told.add(new Event(
                        seen.run().run,
                        seen.run().time(i),
                        Kind.COMPRESSOR_ON,
                        s.high(),
                        s.unit(),
                        confidence,
                        evidence)));
        s.stops()
                .forEach(i -> told.add(new Event(
                        seen.run().run,
                        seen.run().time(i),
                        Kind.COMPRESSOR_OFF,
                        s.low(),
                        s.unit(),
                        confidence,
                        evidence)));
    }

    private Summary summary() {
        double resolution =
                runs.stream().mapToDouble(s -> s.run().resolution).max().orElse(0.0);
        Predicate<FanCycle> told = clearest(c -> true, FanCycle::still);
        Predicate<FanCycle> starts = clearest(told, c -> c.channels() > 0);
        Predicate<FanCycle> stops = clearest(told, c -> c.stopChannels() > 0);
        double[] watched = new double[2];
        for (Seen seen : runs) {
            double[] one = Compressor.watched(seen.compressor());
            watched[0] += one[0];
            watched[1] += one[1];
        }
        return new Summary(
                cycles().size(),
                Estimate.of(all(starts, FanCycle::startCoolant), resolution),
                Estimate.of(all(stops, FanCycle::stopCoolant), resolution),
                Estimate.of(all(told, FanCycle::peakCoolant), resolution),
                Estimate.of(all(told, FanCycle::trough), resolution),
                Estimate.of(periods(), 1.0),
                runs.stream().mapToInt(s -> s.compressor().starts().size()).sum(),
                watched[1] > 0.0 ? OptionalDouble.of(watched[0] / watched[1]) : OptionalDouble.empty());
    }

    /** Of the cycles told so, those that are also clear, where there are any. */
    private Predicate<FanCycle> clearest(Predicate<FanCycle> told, Predicate<FanCycle> clear) {
        boolean any = cycles().stream().anyMatch(told.and(clear));
        return any ? told.and(clear) : told;
    }

    /** Distances of neighbouring starts between which the vehicle did not drive, s. */
    private double[] periods() {
        List<Double> apart = new ArrayList<>();
        for (Seen seen : runs) {
            for (int i = 1; i < seen.fan().size(); i++) {
                int from = seen.fan().get(i - 1).peak();
                int to = seen.fan().get(i).peak();
                if (seen.search().standsBetween(from, to)) {
                    apart.add((double) to - from);
                }
            }
        }
        double[] all = apart.stream().mapToDouble(Double::doubleValue).toArray();
        double middle = Middle.median(all);
        return Arrays.stream(all).filter(p -> p <= PAUSE * middle).toArray();
    }
}
