package hotday.vehicle.plant;

import hotday.core.solve.PseudoTransient;
import java.util.Arrays;
import java.util.Optional;

/**
 * The state a run comes to rest in with its inputs as they stand. The play of the thermostat follows its wax; battery charge
 * is left out. One a thread; settling allocates nothing.
 */
public final class Equilibrium {
    private static final double COLDEST = 200.0; // K
    private static final double FAR = 20.0; // s, first pseudo time step from a soaked vehicle
    private static final double CLOSE_BY = 0.1; // s, the same from a vehicle that has lived
    private static final int MOST = 60;
    private static final int WHILE = 600; // steps of a tenth of a second
    private static final int LIFE = 40_000; // steps of a tenth of a second
    private static final int LIVES = 4; // for what is still on its way
    private static final double CREEPING = 1e-4; // per second, K or share; slower than that is not waited for
    private static final int SPAN = 5_000; // of the last steps, twice: watched for swings
    private static final int LOOK = 1_000; // steps between two looks for what runs away
    private static final int TRY = 5_000; // steps between two tries whether Newton's way leads on
    private static final double STILL = 1e-8; // per second, K or share; balances then close within 1e-7
    private static final State[] STATES = State.values();
    private static final int[] ALL = moving(true);
    private static final int[] WITHOUT_CONDITIONING = moving(false);

    private final Run run;
    private final PseudoTransient solver;
    private final int[] moving;
    private final double[] y;
    private final double[] x = new double[State.COUNT];
    private final double[] dx = new double[State.COUNT];
    private final double[] kept = new double[State.COUNT];
    private final PseudoTransient.Rates rates = this::rates;
    private final Watch watch;
    private boolean close;
    private Unrest.Reason unrest = Unrest.Reason.NOT_FOUND;
    private int restless; // state that shows it most
    private double amount;

    public Equilibrium(Run run) {
        this.run = run;
        this.moving = run.plant().conditioned() ? ALL : WITHOUT_CONDITIONING;
        int n = moving.length;
        y = new double[n];
        double[] low = new double[n];
        double[] high = new double[n];
        double[] scale = new double[n];
        for (int i = 0; i < n; i++) {
            State state = STATES[moving[i]];
            boolean kelvin = "K".equals(state.unit());
            low[i] = kelvin ? COLDEST : 0.0;
            high[i] = kelvin ? Unrest.HOTTEST : 1.0;
            scale[i] = kelvin ? 1.0 : 0.01;
        }
        this.solver = new PseudoTransient(low, high, scale, MOST);
        this.watch = new Watch(moving, scale);
    }

    private static int[] moving(boolean conditioned) {
        return Arrays.stream(STATES)
                .filter(s -> s != State.WAX_PLAY && s != State.CHARGE_DRAWN)
                .filter(s -> conditioned || !s.ofConditioning())
                .mapToInt(State::index)
                .toArray();
    }

    /** Whether the last search found a rest, where the next one starts. */
    public boolean close() {
        return close;
    }

    /** Copies the last rest that was found. */
    public void last(double[] state) {
        System.arraycopy(kept, 0, state, 0, State.COUNT);
    }

    /** Starts the next search from far: everything soaked, fan where it is asked to be. */
    public void forget() {
        close = false;
    }

    /** Starts the next search from a state that lies close to its rest. */
    public void startFrom(double[] state) {
        System.arraycopy(state, 0, kept, 0, State.COUNT);
        solver.forget();
        close = true;
    }

    /** Settles the run like {@link #settle}, but gives up at once where a rest is hard to find: for guesses. */
    public boolean settleQuickly() {
        return keep(again() || searchFromFar());
    }

    private boolean keep(boolean rests) {
        close = rests;
        if (rests) {
            run.state(kept);
        }
        return rests;
    }

    /**
     * Settles the run: from its last rest if there is one, else, or when that fails, from a vehicle warmed through.
     *
     * @return false when it does not come to rest; the run is then where the search ended
     */
    public boolean settle() {
        return keep(again() || searchFromFar() || searchAfterAWhile() || live());
    }

    /** From the last rest. */
    private boolean again() {
        if (!close) {
            return false;
        }
        run.start(kept, run.time());
        if (search(Double.POSITIVE_INFINITY)) {
            return true;
        }
        run.start(kept, run.time());
        return search(FAR);
    }

    private boolean searchFromFar() {
        solver.forget();
        warm();
        return search(FAR);
    }

    /** From where a warm vehicle is after a few minutes: it has left the corner the search could not get out of. */
    private boolean searchAfterAWhile() {
        solver.forget();
        warm();
        for (int i = 0; i < WHILE; i++) {
            run.advance(0.1);
            run.set(State.WAX_PLAY, run.get(State.WAX));
        }
        return search(CLOSE_BY);
    }

    /**
     * Lets the vehicle live until it rests, then looks closely: for what jumps where Newton's way needs a slope. What does not rest
     * either is told apart.
     */
    private boolean live() {
        boolean rests = liveOnce();
        for (int i = 1; i < LIVES && !rests && onItsWay(); i++) {
            rests = liveOnce();
        }
        return rests;
    }

    /** It may yet come to rest, or run away. */
    private boolean onItsWay() {
        return unrest == Unrest.Reason.NOT_FOUND && Math.abs(amount) > CREEPING;
    }

    private boolean liveOnce() {
        watch.begin();
        for (int i = 0; i < LIFE; i++) {
            if (i % LOOK == 0 && runsAway()) {
                return false;
            }
            if (i > 0 && i % TRY == 0 && searchFromHere()) {
                return true;
            }
            run.advance(0.1);
            run.set(State.WAX_PLAY, run.get(State.WAX));
            if (i >= LIFE - 2 * SPAN) {
                watch.see(run, i < LIFE - SPAN ? 0 : 1);
            }
        }
        run.look();
        if (runsAway()) {
            return false;
        }
        if (searchFromHere() || search(CLOSE_BY)) {
            return true;
        }
        run.start(kept, run.time());
        run.look();
        return still();
    }

    /** By Newton's way; where it does not lead to rest the run stays where it is. */
    private boolean searchFromHere() {
        run.state(kept);
        if (search(Double.POSITIVE_INFINITY)) {
            return true;
        }
        run.start(kept, run.time());
        return false;
    }

    /** Hotter than is searched and getting hotter. */
    private boolean runsAway() {
        int hottest = State.METAL.ordinal();
        for (int slot : moving) {
            if ("K".equals(STATES[slot].unit()) && run.get(STATES[slot]) > run.get(STATES[hottest])) {
                hottest = slot;
            }
        }
        note(Unrest.Reason.RUNS_AWAY, hottest, run.get(STATES[hottest]));
        return amount > Unrest.HOTTEST && run.rate(STATES[hottest]) > 0.0;
    }

    private boolean still() {
        int fastest = moving[0];
        for (int slot : moving) {
            if (Math.abs(run.rate(STATES[slot])) > Math.abs(run.rate(STATES[fastest]))) {
                fastest = slot;
            }
        }
        int swinging = watch.swinging();
        if (swinging >= 0) {
            note(Unrest.Reason.HUNTS, moving[swinging], watch.swing(swinging));
        } else {
            note(Unrest.Reason.NOT_FOUND, fastest, run.rate(STATES[fastest]));
        }
        return Math.abs(run.rate(STATES[fastest])) < STILL;
    }

    private void note(Unrest.Reason reason, int state, double howMuch) {
        unrest = reason;
        restless = state;
        amount = howMuch;
    }

    /** Whether the last {@link #settle} found a rest, or left the run where it is after an hour or more without running away. */
    public boolean lived() {
        return close || unrest != Unrest.Reason.RUNS_AWAY;
    }

    /** Why the last {@link #settle} found no rest; empty when it did. */
    public Optional<Unrest> unrest() {
        return close ? Optional.empty() : Optional.of(new Unrest(unrest, STATES[restless], amount));
    }

    private void warm() {
        double ambient = run.get(Input.AMBIENT);
        double[] state = run.plant().soaked(ambient);
        for (State s : new State[] {
            State.METAL, State.JACKET, State.OIL, State.WAX, State.WAX_PLAY, State.RADIATOR_INLET, State.SUMP
        }) {
            state[s.index()] = ambient + 60.0;
        }
        state[State.BAY.index()] = ambient + 25.0;
        state[State.CONDENSING.index()] = ambient + 20.0;
        state[State.EVAPORATING.index()] = Math.min(ambient - 5.0, 283.15);
        state[State.CABIN.index()] = Math.min(ambient, 298.15);
        state[State.INTERIOR.index()] = Math.min(ambient, 300.15);
        state[State.CABIN_HUMIDITY.index()] = run.get(Input.HUMIDITY);
        state[State.FAN.index()] = run.get(Input.FAN_DEMAND);
        run.start(state, run.time());
    }

    private boolean search(double first) {
        run.state(x);
        for (int i = 0; i < moving.length; i++) {
            y[i] = x[moving[i]];
        }
        boolean found = solver.solve(rates, y, first);
        spread(y);
        run.start(x, run.time());
        run.look();
        return found;
    }

    private void spread(double[] values) {
        for (int i = 0; i < moving.length; i++) {
            x[moving[i]] = values[i];
        }
        x[State.WAX_PLAY.ordinal()] = x[State.WAX.ordinal()];
    }

    private void rates(double[] values, double[] out) {
        spread(values);
        run.rates(x, dx);
        for (int i = 0; i < moving.length; i++) {
            out[i] = dx[moving[i]];
        }
    }

    /** Rate evaluations of the last search. */
    public int evaluations() {
        return solver.evaluations();
    }
}
