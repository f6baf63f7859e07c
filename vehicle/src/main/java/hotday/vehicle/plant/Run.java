package hotday.vehicle.plant;

/**
 * One thread's arrays for one plant: state, inputs, outputs and the energy that has passed. Not thread-safe; a step
 * allocates nothing.
 */
public final class Run {
    /**
     * A step is compared with what passed or with this, W: stored heat is a difference of temperatures, so its rounding is
     * capacity over step times the last digit of 350 K, 3e-8 W at 0.1 s, also when nearly nothing passes.
     */
    private static final double LEAST_PASSED = 100.0;

    private final Plant plant;
    private final double[] x = new double[State.COUNT];
    private final double[] u = new double[Input.COUNT];
    private final double[] w = new double[Output.COUNT];
    private double time;
    private double in;
    private double out;
    private double stored;
    private double worst;

    public Run(Plant plant) {
        this.plant = plant;
    }

    /** Starts over from a state; the energy account is cleared. */
    public void start(double[] state, double startTime) {
        System.arraycopy(state, 0, x, 0, State.COUNT);
        time = startTime;
        in = 0.0;
        out = 0.0;
        stored = 0.0;
        worst = 0.0;
    }

    /** Steps over {@code dt} seconds with the inputs as they stand; endless steps settle and are not booked. */
    public void step(double dt) {
        plant.step(x, u, w, dt);
        if (Double.isInfinite(dt)) {
            return;
        }
        time += dt;
        double entering = w[Output.GAS_HEAT.ordinal()] + w[Output.FRICTION_HEAT.ordinal()];
        double leaving =
                w[Output.RADIATOR_HEAT.ordinal()] + w[Output.HEATER_HEAT.ordinal()] + w[Output.SURFACE_HEAT.ordinal()];
        double held = w[Output.STORED.ordinal()];
        in += entering * dt;
        out += leaving * dt;
        stored += held * dt;
        double passed = Math.abs(entering) + Math.abs(leaving) + Math.abs(held);
        worst = Math.max(worst, Math.abs(entering - leaving - held) / Math.max(passed, LEAST_PASSED));
    }

    public Plant plant() {
        return plant;
    }

    /** s since the run's zero. */
    public double time() {
        return time;
    }

    public double get(State slot) {
        return x[slot.ordinal()];
    }

    public double get(Output slot) {
        return w[slot.ordinal()];
    }

    public void set(State slot, double value) {
        x[slot.ordinal()] = value;
    }

    public void set(Input slot, double value) {
        u[slot.ordinal()] = value;
    }

    public double get(Input slot) {
        return u[slot.ordinal()];
    }

    /** Copies a row of inputs, as laid out by {@link Input#index()}, from a flat table. */
    public void setInputs(double[] table, int offset) {
        System.arraycopy(table, offset, u, 0, Input.COUNT);
    }

    /** A copy of the state. */
    public double[] state() {
        return x.clone();
    }

    /** Coolant temperature as the car's own sensor reads it, K. */
    public double coolantReading() {
        return x[State.JACKET.ordinal()] + plant.coefficient(Coefficient.COOLANT_SENSOR_OFFSET);
    }

    /** Heat in since the start, J. */
    public double energyIn() {
        return in;
    }

    /** Heat out since the start, J. */
    public double energyOut() {
        return out;
    }

    /** Heat held in the nodes since the start, J. */
    public double energyStored() {
        return stored;
    }

    /** Largest gap of the heat balance over all steps so far, relative to the heat that passed, 100 W at least. */
    public double worstBalance() {
        return worst;
    }
}
