package hotday.vehicle.idle;

import java.util.ArrayList;
import java.util.List;

/**
 * Best announcement of a load against its torque. Best is the least sum of three squares, each over what is acceptable: (sag / 75 rpm)^2 +
 * (flare / 150 rpm)^2 + (off after 2.5 s / 25 rpm)^2. Torque and lead are searched on a coarse grid, then by golden section between the neighbours
 * of its best point, the lead inside the torque: the same answer every time.
 */
public record FeedForwardTable(List<Row> rows) {
    /**
     * @param load that comes on, N m
     * @param forward its best announcement
     * @param announced the run with it
     * @param unannounced the run without
     */
    public record Row(double load, FeedForward forward, IdleRun announced, IdleRun unannounced) {}

    private static final double RPM = Math.PI / 30.0;
    private static final double SAG = 75.0 * RPM;
    private static final double FLARE = 150.0 * RPM;
    private static final double OFF = 25.0 * RPM;
    private static final double RECOVERY = 2.5; // s
    private static final double LONGEST_LEAD = IdleStudy.ENGAGED;
    private static final double LARGEST_TORQUE = 2.0; // of the load
    private static final int GRID = 10;
    private static final int SECTIONS = 16;
    private static final double GOLDEN = 0.5 * (Math.sqrt(5.0) - 1.0);

    public FeedForwardTable {
        rows = List.copyOf(rows);
    }

    /**
     * @param lag of the loads, s, as in {@link IdleLoad}
     * @param loads torques at the crankshaft, N m
     */
    public static FeedForwardTable of(IdleSettings settings, double lag, double... loads) {
        List<Row> rows = new ArrayList<>();
        for (double torque : loads) {
            IdleLoad load = new IdleLoad(torque, lag);
            FeedForward best = best(settings, load);
            rows.add(new Row(
                    torque,
                    best,
                    IdleStudy.run(settings, load, best),
                    IdleStudy.run(settings, load, FeedForward.NONE)));
        }
        return new FeedForwardTable(rows);
    }

    /** The announcement with the least cost, lead 0..1 s, torque up to twice the load. */
    public static FeedForward best(IdleSettings settings, IdleLoad load) {
        double most = LARGEST_TORQUE * load.torque();
        double share = lowest(s -> cost(settings, load, bestLead(settings, load, s * most)));
        return bestLead(settings, load, share * most);
    }

    private static FeedForward bestLead(IdleSettings settings, IdleLoad load, double torque) {
        double share = lowest(s -> cost(settings, load, new FeedForward(torque, s * LONGEST_LEAD)));
        return new FeedForward(torque, share * LONGEST_LEAD);
    }

    static double cost(IdleSettings settings, IdleLoad load, FeedForward forward) {
        double end = IdleStudy.ENGAGED + RECOVERY;
        IdleRun run = IdleStudy.run(settings, load, forward, end);
        double off = run.trace().speed(run.trace().size() - 1) - settings.speed();
        return square(run.sag() / SAG) + square(run.flare() / FLARE) + square(off / OFF);
    }

    private static double square(double x) {
        return x * x;
    }

    private interface Cost {
        double of(double share);
    }

    /** Place of the least cost in 0..1. */
    private static double lowest(Cost cost) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= GRID; i++) {
            double value = cost.of((double) i / GRID);
            if (value < least) {
                least = value;
                best = i;
            }
        }
        return golden(cost, Math.max(0, best - 1) / (double) GRID, Math.min(GRID, best + 1) / (double) GRID);
    }

    private static double golden(Cost cost, double from, double to) {
        double low = from;
        double high = to;
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double atLeft = cost.of(left);
        double atRight = cost.of(right);
        for (int i = 0; i < SECTIONS; i++) {
            if (atLeft <= atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - GOLDEN * (high - low);
                atLeft = cost.of(left);
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + GOLDEN * (high - low);
                atRight = cost.of(right);
            }
        }
        return atLeft <= atRight ? left : right;
    }
}
