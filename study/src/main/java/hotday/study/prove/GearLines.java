package hotday.study.prove;

import hotday.vehicle.plant.Input;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Engine speed over road speed of steady driving against the gears of a sheet, rad/m. In a locked gear the two go together
 * to a per cent; tyre wear, a wrong tyre or a speedometer that reads high shifts all gears alike.
 */
final class GearLines {
    /** All gears alike may lie off by this, of the logarithm. */
    static final double TYRE = 0.045;
    /** One gear beyond that, of the logarithm: estimated ratios of an open data set were off by 3 % among themselves. */
    static final double GEAR = 0.035;

    private static final double TYRE_STEP = 0.005;
    /** Below, converters slip, m/s. */
    private static final double FAST = 8.0;

    private static final double STEADY_TIME = 4.0; // s
    private static final double STEADY = 0.02;
    /** Less steady driving says nothing, s. */
    private static final double ENOUGH = 120.0;
    /** Share in no gear: own recordings of two open data sets stayed below 0.03, foreign ones lay at 0.1 to 1. */
    private static final double FOREIGN_SHARE = 0.15;

    private static final double FOREIGN_TIME = 40.0; // s
    private static final double BIN = 0.02;
    /** A line is a gear only where it holds over speeds this far apart: at one speed a slipping converter stands still too. */
    private static final double SPEEDS = 1.2;

    private final double[] gears;

    GearLines(VehicleSpec spec) {
        this.gears = Arrays.stream(of(spec)).map(Math::log).toArray();
    }

    /** Engine over road speed of every gear, rad/m. */
    static double[] of(VehicleSpec spec) {
        double turns = spec.gearbox().finalDrive() / spec.roadLoad().tyreRadius();
        return spec.gearbox().ratios().stream().mapToDouble(r -> turns * r).toArray();
    }

    /**
     * Steady driving in no gear of the sheet.
     *
     * @param steady time of steady driving, s
     * @param foreign time of it in no gear, s
     * @param most where most of that lies, rad/m
     */
    record Foreign(double steady, double foreign, double most) {}

    /** A moment of steady driving: logarithm of engine over road speed, and road speed, m/s. */
    private record Moment(double line, double speed) {}

    /** Empty when the gears fit or too little was driven steadily. */
    Optional<Foreign> foreign(RunData run) {
        List<Moment> steady = steady(run);
        if (steady.size() * run.step() < ENOUGH) {
            return Optional.empty();
        }
        List<Moment> least = steady;
        for (double tyre = -TYRE; tyre <= TYRE + 1e-9; tyre += TYRE_STEP) {
            double shift = tyre;
            List<Moment> left = steady.stream()
                    .filter(m -> nearest(m.line() - shift) > GEAR)
                    .toList();
            least = left.size() < least.size() ? left : least;
        }
        double[] lines = gears(least);
        double foreign = lines.length * run.step();
        boolean much = foreign >= FOREIGN_TIME && lines.length > FOREIGN_SHARE * steady.size();
        return much ? Optional.of(new Foreign(steady.size() * run.step(), foreign, fullest(lines))) : Optional.empty();
    }

    /** Lines, rising, of the moments whose line holds over many speeds. */
    private static double[] gears(List<Moment> moments) {
        List<Moment> sorted = moments.stream()
                .sorted(Comparator.comparingDouble(Moment::line))
                .toList();
        double[] found = new double[sorted.size()];
        int n = 0;
        int from = 0;
        int to = 0;
        for (Moment m : sorted) {
            while (sorted.get(from).line() < m.line() - 0.5 * BIN) {
                from++;
            }
            while (to < sorted.size() && sorted.get(to).line() <= m.line() + 0.5 * BIN) {
                to++;
            }
            if (holds(sorted.subList(from, to))) {
                found[n++] = m.line();
            }
        }
        return Arrays.copyOf(found, n);
    }

    private static boolean holds(List<Moment> alike) {
        double slowest = Double.POSITIVE_INFINITY;
        double fastest = 0.0;
        for (Moment m : alike) {
            slowest = Math.min(slowest, m.speed());
            fastest = Math.max(fastest, m.speed());
        }
        return fastest > SPEEDS * slowest;
    }

    private double nearest(double line) {
        double nearest = Double.POSITIVE_INFINITY;
        for (double gear : gears) {
            nearest = Math.min(nearest, Math.abs(line - gear));
        }
        return nearest;
    }

    private static List<Moment> steady(RunData run) {
        int half = (int) Math.round(0.5 * STEADY_TIME / run.step());
        List<Moment> found = new ArrayList<>();
        for (int i = half; i < run.size() - half; i++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int j = i - half; j <= i + half; j++) {
                double speed = run.input(j, Input.SPEED);
                double turns = run.input(j, Input.ENGINE_SPEED);
                boolean drives = speed >= FAST && turns >= Preparation.ENGINE_STANDS;
                double line = drives ? Math.log(turns / speed) : Double.NaN;
                low = Math.min(low, line);
                high = Math.max(high, line);
            }
            if (high - low < STEADY) {
                found.add(new Moment(0.5 * (low + high), run.input(i, Input.SPEED)));
            }
        }
        return found;
    }

    /** Middle of the fullest bin. */
    private static double fullest(double[] rising) {
        int best = 0;
        int from = 0;
        double middle = rising[0];
        for (int to = 0; to < rising.length; to++) {
            while (rising[to] - rising[from] > BIN) {
                from++;
            }
            if (to - from >= best) {
                best = to - from;
                middle = rising[(from + to) / 2];
            }
        }
        return Math.exp(middle);
    }
}
