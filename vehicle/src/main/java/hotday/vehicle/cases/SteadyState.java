package hotday.vehicle.cases;

import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;

/**
 * The state a case settles to, found on the same plant step with the step taken as endless: for a given thermostat
 * temperature the nodes are linear, so only that one temperature is searched. What the wax feels falls as it opens, so
 * the root is single; it is bracketed and closed by bisection with secant steps (Illinois).
 */
public final class SteadyState {
    private static final double TOLERANCE = 1e-9; // K
    private static final int SWEEPS = 60;

    private final double coolant;
    private final double oil;
    private final double opening;
    private final double faceSpeed;
    private final double faceTemperature;
    private final double radiatorHeat;
    private final boolean found;

    private SteadyState(Run run, boolean found) {
        this.coolant = run.get(State.JACKET);
        this.oil = run.get(State.OIL);
        this.opening = run.get(Output.OPENING);
        this.faceSpeed = run.get(Output.FACE_SPEED);
        this.faceTemperature = run.get(Output.FACE_TEMPERATURE);
        this.radiatorHeat = run.get(Output.RADIATOR_HEAT);
        this.found = found;
    }

    /** Settles a run whose inputs are set; the fan turns at what is asked of it. */
    public static SteadyState of(Run run) {
        Plant plant = run.plant();
        double ambient = run.get(Input.AMBIENT);
        run.start(plant.soaked(ambient + 60.0), 0.0);
        run.set(State.FAN, run.get(Input.FAN_DEMAND));
        double low = ambient - 50.0;
        double high = ambient + 600.0;
        double atLow = gap(run, low);
        double atHigh = gap(run, high);
        if (!(atLow > 0.0) || !(atHigh < 0.0)) {
            return new SteadyState(run, false);
        }
        int side = 0;
        while (high - low > TOLERANCE) {
            double middle = (low * atHigh - high * atLow) / (atHigh - atLow);
            if (!(middle > low && middle < high) || side > 3 || side < -3) {
                middle = 0.5 * (low + high);
                side = 0;
            }
            double at = gap(run, middle);
            if (at == 0.0) {
                break;
            }
            if (at > 0.0) {
                low = middle;
                atLow = at;
                atHigh = side > 0 ? 0.5 * atHigh : atHigh;
                side = Math.max(1, side + 1);
            } else {
                high = middle;
                atHigh = at;
                atLow = side < 0 ? 0.5 * atLow : atLow;
                side = Math.min(-1, side - 1);
            }
            if (Math.abs(at) < TOLERANCE) {
                break;
            }
        }
        return new SteadyState(run, true);
    }

    /** What the wax would feel when it acts as if at {@code wax}, less that: falling in wax. */
    private static double gap(Run run, double wax) {
        double felt = wax;
        double last = Double.NaN;
        for (int i = 0; i < SWEEPS; i++) {
            run.set(State.WAX, wax);
            run.set(State.WAX_PLAY, wax);
            run.step(Double.POSITIVE_INFINITY);
            felt = run.get(State.WAX);
            if (Math.abs(felt - last) < 0.1 * TOLERANCE) {
                break;
            }
            last = felt;
        }
        return felt - wax;
    }

    /** Engine-out coolant, K. */
    public double coolant() {
        return coolant;
    }

    /** Oil, K. */
    public double oil() {
        return oil;
    }

    /** Thermostat opening, 0..1. */
    public double opening() {
        return opening;
    }

    /** Air speed at the radiator, m/s. */
    public double faceSpeed() {
        return faceSpeed;
    }

    /** Air temperature at the radiator, K. */
    public double faceTemperature() {
        return faceTemperature;
    }

    /** Coolant to air, W. */
    public double radiatorHeat() {
        return radiatorHeat;
    }

    /** False when the state lies outside ambient -50..+600 K and the values must not be used. */
    public boolean found() {
        return found;
    }
}
