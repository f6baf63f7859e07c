package hotday.vehicle.plant;

import java.util.Arrays;
import java.util.List;

/**
 * One thread's arrays for one plant: state, inputs, outputs and the energy that has passed. {@link #advance} moves the whole
 * vehicle, {@link #step} the engine side of a recorded run. Not thread-safe; neither allocates.
 */
public final class Run {
    /**
     * A step is compared with what passed or with this, W: stored heat is a difference of temperatures, so its rounding is
     * capacity over step times the last digit of 350 K, 3e-8 W at 0.1 s, also when nearly nothing passes.
     */
    private static final double LEAST_PASSED = 100.0;

    /** A step times the fastest rate: the method is stable on the real axis up to 1, coolant going round doubles the rate. */
    private static final double LONGEST = 0.4;

    private static final int MOST_PARTS = 64;

    private static final List<State> ENGINE_AND_GEARBOX = List.of(
            State.METAL,
            State.JACKET,
            State.OIL,
            State.RADIATOR_INLET,
            State.RADIATOR_MIDDLE,
            State.RADIATOR_OUTLET,
            State.HEATER,
            State.WAX,
            State.WAX_PLAY,
            State.SUMP);

    private final Plant plant;
    private final Work work;
    private final double[] x = new double[State.COUNT];
    private final double[] u = new double[Input.COUNT];
    private final double[] now = new double[State.COUNT];
    private final double[] before = new double[State.COUNT];
    private final double[] ahead = new double[State.COUNT];
    private final double[] heats = new double[Output.COUNT];
    private final double[] total = new double[Output.COUNT];
    private boolean restarted = true;
    private double step; // the last one, s
    private double time;
    private double in;
    private double out;
    private double stored;
    private double worst;

    public Run(Plant plant) {
        this.plant = plant;
        this.work = plant.work();
    }

    /** Starts over from a state; the energy account is cleared. */
    public void start(double[] state, double startTime) {
        System.arraycopy(state, 0, x, 0, State.COUNT);
        time = startTime;
        in = 0.0;
        out = 0.0;
        stored = 0.0;
        worst = 0.0;
        Arrays.fill(total, 0.0);
        restarted = true;
    }

    /**
     * Moves the engine side over {@code dt} seconds, implicitly, with the inputs as they stand; endless steps settle and are
     * not booked.
     */
    public void step(double dt) {
        plant.step(x, u, work, dt);
        if (Double.isInfinite(dt)) {
            return;
        }
        time += dt;
        double entering = get(Output.GAS_HEAT) + get(Output.FRICTION_HEAT) + get(Output.GEARBOX_TANK_HEAT);
        double leaving = get(Output.RADIATOR_HEAT) + get(Output.HEATER_HEAT) + get(Output.SURFACE_HEAT);
        double held = get(Output.STORED);
        in += entering * dt;
        out += leaving * dt;
        stored += held * dt;
        double passed = Math.abs(entering) + Math.abs(leaving) + Math.abs(held);
        worst = Math.max(worst, Math.abs(entering - leaving - held) / Math.max(passed, LEAST_PASSED));
    }

    /**
     * Moves the whole vehicle over {@code dt} seconds by the two-step method of Adams and Bashforth with the weights of its last two steps
     * (Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I, III.1 and III.5); the first step after {@link #start} or
     * {@link #restart} is Heun's. Heats are added up by the same formula, so the balances close to rounding. The fan, faster than all else, goes
     * exactly where its lag and its slew take it. Where coolant runs through its cores or a stroke holds the suction pressure too fast for {@code dt}, the step
     * is taken in parts. Tried from 0.1 to 0.4 s.
     */
    public void advance(double dt) {
        plant.rates(x, u, work, now);
        double steps = plant.fastest(work) * dt / LONGEST;
        int parts = steps <= 1.0 ? 1 : (int) Math.min(MOST_PARTS, Math.ceil(steps));
        move(dt / parts);
        for (int i = 1; i < parts; i++) {
            plant.rates(x, u, work, now);
            move(dt / parts);
        }
    }

    /** One step from the rates at hand. */
    private void move(double dt) {
        double last = restarted ? 0.0 : -0.5 * dt / step;
        double share = 1.0 - last;
        double fan = plant.fanAfter(dt, x, u, work);
        if (restarted) {
            heun(dt);
        } else {
            for (int i = 0; i < State.COUNT; i++) {
                x[i] += dt * (share * now[i] + last * before[i]);
            }
        }
        x[State.FAN.ordinal()] = fan;
        double[] w = work.w;
        for (int i = 0; i < Output.COUNT; i++) {
            total[i] += dt * (share * w[i] + last * heats[i]);
            heats[i] = w[i];
        }
        System.arraycopy(now, 0, before, 0, State.COUNT);
        restarted = false;
        step = dt;
        EngineLoop.play(plant.values(), x);
        time += dt;
    }

    /** Heun's step; leaves the mean rate in {@link #now} and mean outputs. */
    private void heun(double dt) {
        for (int i = 0; i < State.COUNT; i++) {
            ahead[i] = x[i] + dt * now[i];
        }
        System.arraycopy(work.w, 0, heats, 0, Output.COUNT);
        plant.rates(ahead, u, work, before);
        for (int i = 0; i < State.COUNT; i++) {
            x[i] += 0.5 * dt * (now[i] + before[i]);
        }
        for (int i = 0; i < Output.COUNT; i++) {
            work.w[i] = 0.5 * (work.w[i] + heats[i]);
        }
    }

    /** Something jumped: the next {@link #advance} does not look back. */
    public void restart() {
        restarted = true;
    }

    /** Works out all outputs for state and inputs as they stand, moving nothing. */
    public void look() {
        plant.rates(x, u, work, now);
    }

    /** Time derivative at the last {@link #look}, per second. */
    public double rate(State slot) {
        return now[slot.ordinal()];
    }

    /** An output added up over all {@link #advance} since the start: J for W. */
    public double total(Output slot) {
        return total[slot.ordinal()];
    }

    /** Time derivatives of another state under the inputs as they stand: for solvers and reference integrators. */
    public void rates(double[] state, double[] derivative) {
        plant.rates(state, u, work, derivative);
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
        return work.w[slot.ordinal()];
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

    /** Takes over a state that somebody else moved; the play of the thermostat follows its wax. */
    public void put(double[] state) {
        System.arraycopy(state, 0, x, 0, State.COUNT);
        EngineLoop.play(plant.values(), x);
    }

    /** Sets engine, coolant and gearbox to one temperature, K. */
    public void warm(double temperature) {
        ENGINE_AND_GEARBOX.forEach(node -> set(node, temperature));
    }

    /** A copy of the state. */
    public double[] state() {
        return x.clone();
    }

    /** Copies the state into an array of the caller. */
    public void state(double[] out) {
        System.arraycopy(x, 0, out, 0, State.COUNT);
    }

    /** Coolant temperature as the car's own sensor reads it, K. */
    public double coolantReading() {
        return x[State.JACKET.ordinal()] + plant.coefficient(Coefficient.COOLANT_SENSOR_OFFSET);
    }

    /** Heat into the engine side since the start, J. */
    public double energyIn() {
        return in;
    }

    /** Heat out of it since the start, J. */
    public double energyOut() {
        return out;
    }

    /** Heat held in its nodes since the start, J. */
    public double energyStored() {
        return stored;
    }

    /** Largest gap of the heat balance over all steps so far, relative to the heat that passed, 100 W at least. */
    public double worstBalance() {
        return worst;
    }
}
