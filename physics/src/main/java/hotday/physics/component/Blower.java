package hotday.physics.component;

/**
 * Cabin blower: air and power by step, straight between steps, nothing at step 0. It moves a volume: flow and power go with
 * the density. What it draws ends up as heat in its air.
 */
public final class Blower {
    private static final double REFERENCE_DENSITY = 1.2;

    private final double[] flows;
    private final double[] powers;

    /**
     * @param flows kg/s of air at 1.2 kg/m3 at steps 1, 2, ..., rising
     * @param powers W electric at the same steps and that density
     */
    public Blower(double[] flows, double[] powers) {
        if (flows.length == 0 || flows.length != powers.length) {
            throw new IllegalArgumentException("blower has " + flows.length + " flows and " + powers.length
                    + " powers: must be as many, one or more");
        }
        this.flows = rising("flow", flows, "kg/s");
        this.powers = rising("power", powers, "W");
    }

    /** Four steps of a mid-size estate or pick-up, outside air, from memory: 0.045 to 0.15 kg/s, 30 to 260 W. */
    public static Blower midSize() {
        return new Blower(new double[] {0.045, 0.08, 0.115, 0.15}, new double[] {30, 75, 150, 260});
    }

    /** The fastest step. */
    public int steps() {
        return flows.length;
    }

    /** kg/s of air of a density, kg/m3; the step is cut to 0..{@link #steps()}. */
    public double flow(double step, double density) {
        return at(flows, step) * density / REFERENCE_DENSITY;
    }

    /** W electric. */
    public double power(double step, double density) {
        return at(powers, step) * density / REFERENCE_DENSITY;
    }

    private static double at(double[] values, double step) {
        double s = Math.max(0.0, Math.min(values.length, step));
        int below = Math.min(values.length - 1, (int) s);
        double left = below == 0 ? 0.0 : values[below - 1];
        return left + (s - below) * (values[below] - left);
    }

    /** A bounded copy: from 0, each above the one before. */
    private static double[] rising(String what, double[] values, String unit) {
        double before = 0.0;
        for (double value : values) {
            if (!(value > before && value < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("blower " + what + " " + value + " " + unit
                        + " must be above that of the step before, " + before);
            }
            before = value;
        }
        return values.clone();
    }
}
