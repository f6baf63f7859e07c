package hotday.validation.signals;

import hotday.signals.bus.FrameLength;
import hotday.signals.bus.Schedule;
import hotday.signals.bus.Traffic;
import hotday.validation.Check;
import hotday.validation.Topic;
import java.util.ArrayList;
import java.util.List;

/** Times on a CAN bus; a simulated bus stands beside them in module signals. */
public final class BusChecks implements Topic {
    private static final String PAPER = "Davis et al. 2007, Real-Time Systems 35, 239 to 272; from memory, recomputed";
    private static final String SET = "equations of Davis et al. 2007, recomputed outside this program";
    private static final long MS = 1_000_000;
    private static final long BIT = 2_000; // ns, 500 kbit/s

    @Override
    public String title() {
        return "Times on a CAN bus";
    }

    @Override
    public List<Check> checks() {
        List<Check> rows = new ArrayList<>();
        rows.add(bits("longest frame, 11-bit identifier, 8 bytes", FrameLength.longest(false, 8), 135));
        rows.add(bits("longest frame, 29-bit identifier, 8 bytes", FrameLength.longest(true, 8), 160));
        rows.add(bits("shortest frame, 11-bit identifier, 8 bytes", FrameLength.shortest(false, 8), 111));
        publishedThree(rows);
        sixFrames(rows);
        return rows;
    }

    private static Check bits(String what, int ours, int published) {
        return Check.near(what, ours, published, 0, "bit", PAPER);
    }

    /** C is late by its second instance only. */
    private static void publishedThree(List<Check> rows) {
        Schedule bus = Schedule.of(
                List.of(
                        new Traffic(1, MS, 5 * MS / 2, 0),
                        new Traffic(2, MS, 7 * MS / 2, 0),
                        new Traffic(3, MS, 7 * MS / 2, 0)),
                1);
        double[] published = {2.0, 3.0, 3.5};
        for (int i = 0; i < published.length; i++) {
            rows.add(response("published set, message " + (char) ('A' + i), bus.response(i), published[i], PAPER));
        }
    }

    private static void sixFrames(List<Check> rows) {
        int[] bytes = {8, 8, 8, 4, 2, 8};
        double[] period = {10, 50, 100, 100, 100, 500};
        double[] jitter = {0.2, 0.5, 1, 1, 1, 5};
        double[] published = {0.74, 1.31, 2.08, 2.27, 2.42, 6.42};
        List<Traffic> traffic = new ArrayList<>();
        for (int i = 0; i < bytes.length; i++) {
            long longest = FrameLength.longest(false, bytes[i]) * BIT;
            traffic.add(new Traffic(i, longest, Math.round(period[i] * MS), Math.round(jitter[i] * MS)));
        }
        Schedule bus = Schedule.of(traffic, BIT);
        for (int i = 0; i < published.length; i++) {
            rows.add(response("six frames on 500 kbit/s, frame " + (i + 1), bus.response(i), published[i], SET));
        }
        rows.add(Check.near("six frames on 500 kbit/s, load", 100 * bus.load(), 3.90, 0.005, "%", SET));
    }

    private static Check response(String what, long ours, double published, String source) {
        return Check.near(what + ", response", (double) ours / MS, published, 1e-9, "ms", source);
    }
}
