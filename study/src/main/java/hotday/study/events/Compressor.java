package hotday.study.events;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Compressor switching: idle load and manifold pressure of the warm engine going to and fro between two levels. Cold idle is
 * left out because the faster idle of a cold engine looks the same.
 */
final class Compressor {
    /** Idle is no longer raised above this coolant, K (78 degC). Common practice, no source. */
    private static final double WARM = 351.15;

    private static final int FEWEST = 60; // s of warm idle
    private static final double LESSER_SHARE = 0.05;
    private static final double LEAST_SEPARATION = 6.0;
    /** What changes slower than over so long, s, is drift: warming of oil, a wandering battery. */
    private static final int DRIFT = 90;

    /** A compressor takes at least a fifth more of an idling engine; a fan's current takes a tenth at most. */
    private static final double LEAST_RATIO = 1.22;

    private static final double ON_ABOVE = 0.65;
    private static final double OFF_BELOW = 0.35;
    /** A level counts when it is kept for so long, s. */
    private static final int KEPT = 4;
    /** Load and manifold pressure tell the same, engine speed only whether idle was raised. */
    private static final double RAISED_IDLE = 3.0;

    /**
     * @param starts seconds of switching on
     * @param stops seconds of switching off
     * @param on second by second; false where nothing is known
     * @param known warm idle looked at
     * @param separation of the levels in noise
     * @param witnesses channels that show it
     * @param low, high levels of the channel it is reported in
     * @param unit of that channel
     */
    record Switching(
            List<Integer> starts,
            List<Integer> stops,
            boolean[] on,
            boolean[] known,
            double separation,
            int witnesses,
            double low,
            double high,
            String unit) {
        boolean startsWithin(int from, int to) {
            return starts.stream().anyMatch(s -> s >= from && s <= to);
        }
    }

    private final Seconds run;
    private final boolean[] warm;

    private Compressor(Seconds run) {
        this.run = run;
        Idle idle = new Idle(run);
        warm = new boolean[run.size()];
        for (int i = 0; i < warm.length; i++) {
            warm[i] = idle.at(i) && run.coolant[i] >= WARM;
        }
    }

    static Switching of(Seconds run) {
        return new Compressor(run).find();
    }

    private Switching find() {
        double[] load = evened(warmOnly(Middle.ofThree(run.load)));
        double[] manifold = evened(warmOnly(Middle.ofThree(run.manifold)));
        TwoLevels ofLoad = TwoLevels.of(load);
        TwoLevels ofManifold = TwoLevels.of(manifold);
        boolean byLoad = plain(ofLoad) && Middle.present(load).length >= FEWEST;
        boolean byManifold = plain(ofManifold) && Middle.present(manifold).length >= FEWEST;
        double[] share = new double[run.size()];
        for (int i = 0; i < share.length; i++) {
            double a = byLoad ? ofLoad.share(load[i]) : Double.NaN;
            double b = byManifold ? ofManifold.share(manifold[i]) : Double.NaN;
            share[i] = !warm[i] ? Double.NaN : Double.isNaN(a) ? b : Double.isNaN(b) ? a : 0.5 * (a + b);
        }
        TwoLevels told = byLoad ? ofLoad : ofManifold;
        double separation = Math.max(byLoad ? ofLoad.separation() : 0.0, byManifold ? ofManifold.separation() : 0.0);
        return follow(share, told, separation, byLoad, byManifold);
    }

    private static boolean plain(TwoLevels levels) {
        return levels.separation() >= LEAST_SEPARATION
                && levels.low() > 0.0
                && levels.high() >= LEAST_RATIO * levels.low()
                && levels.lesser() >= LESSER_SHARE;
    }

    private double[] warmOnly(double[] channel) {
        double[] out = channel.clone();
        for (int i = 0; i < out.length; i++) {
            out[i] = warm[i] ? out[i] : Double.NaN;
        }
        return out;
    }

    /** With the slow drift of both levels together taken away. */
    private static double[] evened(double[] channel) {
        TwoLevels levels = TwoLevels.of(channel);
        double middle = 0.5 * (levels.low() + levels.high());
        double[] off = new double[channel.length];
        for (int i = 0; i < off.length; i++) {
            off[i] = channel[i] - (channel[i] > middle ? levels.high() : levels.low());
        }
        double[] out = channel.clone();
        for (int i = 0; i < out.length; i++) {
            out[i] -= Double.isNaN(out[i]) || Double.isNaN(middle) ? 0.0 : Middle.median(off, i - DRIFT, i + DRIFT + 1);
        }
        return out;
    }

    private Switching follow(double[] share, TwoLevels told, double separation, boolean byLoad, boolean byManifold) {
        List<Integer> starts = new ArrayList<>();
        List<Integer> stops = new ArrayList<>();
        boolean[] on = new boolean[share.length];
        boolean[] known = new boolean[share.length];
        int state = 0; // unknown; -1 off, 1 on
        for (int i = 0; i < share.length; i++) {
            if (Double.isNaN(share[i])) {
                state = 0;
                continue;
            }
            int seen = level(share, i);
            if (seen != 0 && seen != state) {
                if (state != 0) {
                    (seen > 0 ? starts : stops).add(i);
                }
                state = seen;
            }
            on[i] = state > 0;
            known[i] = state != 0;
        }
        int raised = raises(on, known) ? 1 : 0;
        int witnesses = (byLoad ? 1 : 0) + (byManifold ? 1 : 0) + raised;
        return new Switching(
                starts, stops, on, known, separation, witnesses, told.low(), told.high(), byLoad ? "1" : "Pa");
    }

    /** 1 or -1 when the level is clear here and kept for the next seconds, else 0. */
    private static int level(double[] share, int second) {
        double next = Middle.median(share, second, second + KEPT);
        double later = Middle.median(share, second + 1, second + 1 + KEPT);
        if (share[second] > ON_ABOVE && next > ON_ABOVE && later > 0.5) {
            return 1;
        }
        return share[second] < OFF_BELOW && next < OFF_BELOW && later < 0.5 ? -1 : 0;
    }

    private boolean raises(boolean[] on, boolean[] known) {
        double[] with = run.engineSpeed.clone();
        double[] without = run.engineSpeed.clone();
        for (int i = 0; i < on.length; i++) {
            with[i] = known[i] && on[i] ? with[i] : Double.NaN;
            without[i] = known[i] && !on[i] ? without[i] : Double.NaN;
        }
        double base = Middle.median(without);
        double noise = Middle.sigma(Middle.present(without), base);
        return Middle.median(with) - base > RAISED_IDLE * Math.max(noise, 1e-3 * Math.abs(base));
    }

    /** Nothing seen, with the same length. */
    static Switching none(Switching like) {
        boolean[] none = new boolean[like.on().length];
        return new Switching(List.of(), List.of(), none, none, 0.0, 0, Double.NaN, Double.NaN, like.unit());
    }

    /** Confidence of one switching: distance of the levels, channels that show it, and how often it happens. */
    static double confidence(Switching s) {
        double clear = 1.0 - Math.exp(-s.separation() / 8.0);
        double shown = 1.0 - (1.0 - clear) * Math.pow(0.7, s.witnesses() - 1.0);
        int n = Math.max(s.starts().size(), s.stops().size());
        return Math.min(0.98, shown * n / (n + 1.0));
    }

    /** Seconds on, and seconds known, between the first and the last switching. */
    static double[] watched(Switching s) {
        int[] all = Stream.concat(s.starts().stream(), s.stops().stream())
                .mapToInt(Integer::intValue)
                .sorted()
                .toArray();
        double on = 0.0;
        double known = 0.0;
        for (int i = all.length == 0 ? 0 : all[0]; all.length > 0 && i < all[all.length - 1]; i++) {
            on += s.on()[i] ? 1.0 : 0.0;
            known += s.known()[i] ? 1.0 : 0.0;
        }
        return new double[] {on, known};
    }

    /** True when most of the high stretches lie in coolant falls of {@code swings}: then it is the fan that draws. */
    static boolean isTheFan(Switching s, List<Swing> swings, int early, int late) {
        long inFalls = s.starts().stream()
                .filter(a -> swings.stream().anyMatch(w -> a >= w.peak() - early && a <= w.trough() + late))
                .count();
        return !s.starts().isEmpty()
                && swings.size() >= s.starts().size() / 2.0
                && 2 * inFalls > s.starts().size();
    }

    static String levels(Switching s) {
        double scale = s.unit().equals("1") ? 100.0 : 1e-3;
        String unit = s.unit().equals("1") ? "% load" : "kPa";
        return String.format(
                Locale.ROOT,
                "%.0f and %.0f %s at warm idle, %.0f times the noise apart, %d channels",
                scale * s.low(),
                scale * s.high(),
                unit,
                s.separation(),
                s.witnesses());
    }
}
