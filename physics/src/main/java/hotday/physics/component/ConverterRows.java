package hotday.physics.component;

/** What a converter's rows must satisfy before they are believed. */
final class ConverterRows {
    /** Rounding of published tables. */
    private static final double ROUNDING = 1e-9;

    private final double[] s;
    private final double[] k;
    private final double[] r;

    private ConverterRows(double[] speedRatio, double[] capacity, double[] torqueRatio) {
        this.s = speedRatio;
        this.k = capacity;
        this.r = torqueRatio;
    }

    static void check(double[] speedRatio, double[] capacity, double[] torqueRatio) {
        if (speedRatio.length < 2 || speedRatio.length != capacity.length || speedRatio.length != torqueRatio.length) {
            throw new IllegalArgumentException("converter: at least two rows needed, " + speedRatio.length
                    + " speed ratios, " + capacity.length + " capacity factors and " + torqueRatio.length
                    + " torque ratios given");
        }
        ConverterRows rows = new ConverterRows(speedRatio, capacity, torqueRatio);
        for (int i = 0; i < speedRatio.length; i++) {
            rows.row(i);
        }
        for (int i = 1; i < speedRatio.length; i++) {
            rows.between(i);
        }
        rows.end();
    }

    private void row(int i) {
        if (!(k[i] > 0.0 && k[i] < Double.POSITIVE_INFINITY && r[i] > 0.0)) {
            throw fault(i, "capacity factor " + k[i] + " and torque ratio " + r[i] + " must be above 0");
        }
        if (i == 0 ? s[0] != 0.0 : !(s[i] > s[i - 1])) {
            throw fault(i, "speed ratio " + s[i] + ", but they must rise, beginning at 0");
        }
        if (!(s[i] * r[i] <= 1.0 + ROUNDING)) {
            throw fault(
                    i,
                    "speed ratio " + s[i] + " times torque ratio " + r[i] + " is an efficiency of " + s[i] * r[i]
                            + ", above 1");
        }
        if (s[i] > 1.0) {
            throw fault(i, "speed ratio " + s[i] + " is above 1");
        }
    }

    private void between(int i) {
        double slopeK = (k[i] - k[i - 1]) / (s[i] - s[i - 1]);
        double slopeR = (r[i] - r[i - 1]) / (s[i] - s[i - 1]);
        double level = r[i - 1] - slopeR * s[i - 1];
        double top = -0.5 * level / slopeR; // of (level + slope s) s
        if (slopeR < 0.0 && top > s[i - 1] && top < s[i] && 0.5 * level * top > 1.0 + ROUNDING) {
            throw fault(i, "between it and the row before the efficiency reaches " + 0.5 * level * top + ", above 1");
        }
        for (int end = i - 1; end <= i; end++) {
            double rise = k[end] + slopeK * s[end];
            if (!(rise > 0.0)) {
                throw fault(
                        i,
                        "capacity factor falls from " + k[i - 1] + " to " + k[i]
                                + " so fast that a faster turbine would take more torque");
            }
            if (!(2.0 * r[end] * rise > slopeR * k[end] * s[end])) {
                throw fault(
                        i,
                        "torque ratio rises from " + r[i - 1] + " to " + r[i]
                                + " so fast that a faster turbine would give more torque");
            }
        }
    }

    /** The last row is joined to torque ratio 1 at speed ratio 1; on that line s R stays below 1 when R <= 2 - s. */
    private void end() {
        int last = s.length - 1;
        if (!(s[last] >= 0.5 && r[last] <= 2.0 - s[last] + ROUNDING)) {
            throw fault(
                    last,
                    "the table ends at speed ratio " + s[last] + " with torque ratio " + r[last]
                            + "; it must reach 0.5 and come within " + (2.0 - s[last]) + " of coupling");
        }
    }

    private static IllegalArgumentException fault(int row, String what) {
        return new IllegalArgumentException("converter row " + (row + 1) + ": " + what);
    }
}
