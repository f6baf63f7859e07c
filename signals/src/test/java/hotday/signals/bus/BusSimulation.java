package hotday.signals.bus;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Random;

/** A bus frame by frame: whenever it is free, the waiting frame of lowest identifier goes, and nobody stops it. */
final class BusSimulation {
    private record Offer(int of, long planned, long waitsFrom) {}

    private final List<Traffic> traffic;
    private final Random random;
    private final boolean alwaysLongest;
    private final long[] slowest;

    BusSimulation(List<Traffic> traffic, Random random, boolean alwaysLongest) {
        this.traffic = traffic;
        this.random = random;
        this.alwaysLongest = alwaysLongest;
        this.slowest = new long[traffic.size()];
    }

    /** Longest response seen of each, from the planned moment to the end of the frame, ns. */
    long[] run(long[] firstPlanned, long until) {
        PriorityQueue<Offer> coming = new PriorityQueue<>(Comparator.comparingLong(Offer::waitsFrom));
        offers(firstPlanned, until).forEach(coming::add);
        PriorityQueue<Offer> waiting = new PriorityQueue<>(
                Comparator.comparingLong((Offer o) -> traffic.get(o.of()).priority())
                        .thenComparingLong(Offer::planned));
        long now = 0;
        while (!coming.isEmpty() || !waiting.isEmpty()) {
            if (waiting.isEmpty()) {
                now = Math.max(now, coming.peek().waitsFrom());
            }
            while (!coming.isEmpty() && coming.peek().waitsFrom() <= now) {
                waiting.add(coming.poll());
            }
            Offer sent = waiting.poll();
            now += duration(traffic.get(sent.of()).transmission());
            slowest[sent.of()] = Math.max(slowest[sent.of()], now - sent.planned());
        }
        return slowest;
    }

    private List<Offer> offers(long[] firstPlanned, long until) {
        List<Offer> all = new ArrayList<>();
        for (int i = 0; i < traffic.size(); i++) {
            Traffic t = traffic.get(i);
            for (long planned = firstPlanned[i]; planned < until; planned += t.period()) {
                long late =
                        t.jitter() == 0 ? 0 : planned == firstPlanned[i] ? t.jitter() : random.nextLong(t.jitter() + 1);
                all.add(new Offer(i, planned, planned + late));
            }
        }
        return all;
    }

    private long duration(long longest) {
        return alwaysLongest ? longest : longest - random.nextLong(longest / 5 + 1);
    }
}
