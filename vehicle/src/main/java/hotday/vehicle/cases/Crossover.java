package hotday.vehicle.cases;

import java.util.function.DoubleUnaryOperator;

/** Where room turns into lack as it gets hotter outside. */
final class Crossover {
    private static final double LEAST_STEP = 1.0; // K
    private static final double LONGEST_STEP = 30.0; // K
    private static final double BEYOND = 1.15; // of the step that a kelvin of room a kelvin would ask for
    private static final int ONE_SIDED = 3; // tries on one side before the middle is taken

    private Crossover() {}

    /** The last outside temperature with room, K, from a guess; an end of the searched range when it lies beyond. */
    static double find(DoubleUnaryOperator roomAt, double guess, double tolerance) {
        double now = clamp(guess);
        double room = roomAt.applyAsDouble(now);
        double before = now;
        double roomBefore = room;
        while (room >= 0.0 == roomBefore >= 0.0) {
            if (now == (room >= 0.0 ? AmbientCeiling.HIGHEST : AmbientCeiling.LOWEST)) {
                return now;
            }
            before = now;
            roomBefore = room;
            double step = Math.max(LEAST_STEP, Math.min(LONGEST_STEP, BEYOND * Math.abs(room)));
            now = clamp(now + (room >= 0.0 ? step : -step));
            room = roomAt.applyAsDouble(now);
        }
        return room >= 0.0
                ? between(roomAt, now, before, room, roomBefore, tolerance)
                : between(roomAt, before, now, roomBefore, room, tolerance);
    }

    static double clamp(double ambient) {
        return Math.max(AmbientCeiling.LOWEST, Math.min(AmbientCeiling.HIGHEST, ambient));
    }

    /** Illinois between two tries; gives the last outside temperature at which there is room. */
    static double between(
            DoubleUnaryOperator roomAt,
            double holding,
            double failing,
            double roomThere,
            double lackThere,
            double tolerance) {
        double low = holding;
        double high = failing;
        double atLow = roomThere;
        double atHigh = lackThere;
        int side = 0;
        while (high - low > tolerance) {
            double middle = low + (high - low) * atLow / (atLow - atHigh);
            double edge = 0.25 * tolerance;
            middle = Math.max(low + edge, Math.min(high - edge, middle));
            if (Math.abs(side) > ONE_SIDED) {
                middle = 0.5 * (low + high);
                side = 0;
            }
            double room = roomAt.applyAsDouble(middle);
            if (room >= 0.0) {
                low = middle;
                atLow = room;
                atHigh = side > 0 ? 0.5 * atHigh : atHigh;
                side = Math.max(1, side + 1);
            } else {
                high = middle;
                atHigh = room;
                atLow = side < 0 ? 0.5 * atLow : atLow;
                side = Math.min(-1, side - 1);
            }
        }
        return low;
    }
}
