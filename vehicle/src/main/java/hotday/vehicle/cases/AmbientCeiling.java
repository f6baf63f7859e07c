package hotday.vehicle.cases;

import hotday.physics.fluid.Air;
import hotday.physics.fluid.Boiling;
import hotday.vehicle.drive.Drive;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.spec.VehicleSpec;

/**
 * Searches the outside temperature at which the first limit gives way, with the fan at full speed. The margin is scanned
 * upwards so that the first crossing is found even where it is not monotone, then closed by bisection.
 */
public final class AmbientCeiling {
    /** Searched range, K. */
    public static final double LOWEST = 253.15;

    public static final double HIGHEST = 353.15;
    private static final double SCAN = 10.0; // K
    private static final double TOLERANCE = 1e-3; // K
    private static final Limit[] LIMITS = Limit.values();

    private final VehicleSpec spec;
    private final Drive drive;
    private final double pressure;
    private final double boiling;

    public AmbientCeiling(VehicleSpec spec) {
        this.spec = spec;
        this.drive = new Drive(spec);
        this.pressure = Air.isaPressure(spec.altitude());
        this.boiling = Boiling.temperature(
                pressure + spec.coolant().capPressure(), spec.coolant().glycolVolumeShare());
    }

    /** The settled state of a case, fan at full speed. */
    public SteadyState at(Plant plant, Case kase, double ambient) {
        return at(new Run(plant), kase, ambient);
    }

    /** The same on a run that can be asked afterwards. */
    public SteadyState at(Run run, Case kase, double ambient) {
        run.set(Input.AMBIENT, ambient);
        run.set(Input.PRESSURE, pressure);
        run.set(
                Input.COMPRESSOR,
                kase.airConditioning() && spec.airConditioning().isPresent() ? 1.0 : 0.0);
        run.set(Input.FAN_DEMAND, 1.0);
        drive.apply(run, kase.speed(), 0.0, kase.grade());
        return SteadyState.of(run);
    }

    /** How far a limit is from giving way, K; negative when it has. */
    public double margin(Limit limit, SteadyState state, double coolantAllowance) {
        if (!state.found()) {
            return -1000.0;
        }
        double coolant = state.coolant() + coolantAllowance;
        return switch (limit) {
            case COOLANT -> spec.limits().coolant() - coolant;
            case BOILING -> boiling - spec.limits().boilMargin() - coolant;
            default -> Double.POSITIVE_INFINITY;
        };
    }

    /**
     * The ceiling of a case.
     *
     * @param coolantAllowance added to coolant before it is compared, K: what the model is known to miss
     */
    public Ceiling find(Plant plant, Case kase, double coolantAllowance) {
        Run run = new Run(plant);
        double low = LOWEST;
        double margin = worst(at(run, kase, low), coolantAllowance);
        if (margin < 0.0) {
            return result(run, kase, low, Ceiling.Reach.BELOW_RANGE, false, coolantAllowance);
        }
        double high = low;
        while (margin >= 0.0 && high < HIGHEST) {
            low = high;
            high = Math.min(HIGHEST, high + SCAN);
            margin = worst(at(run, kase, high), coolantAllowance);
        }
        if (margin >= 0.0) {
            return result(run, kase, HIGHEST, Ceiling.Reach.ABOVE_RANGE, false, coolantAllowance);
        }
        boolean again = false;
        for (double t = high + SCAN; t <= HIGHEST; t += SCAN) {
            again |= worst(at(run, kase, t), coolantAllowance) >= 0.0;
        }
        while (high - low > TOLERANCE) {
            double middle = 0.5 * (low + high);
            if (worst(at(run, kase, middle), coolantAllowance) >= 0.0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return result(run, kase, low, Ceiling.Reach.FOUND, again, coolantAllowance);
    }

    private double worst(SteadyState state, double allowance) {
        double worst = Double.POSITIVE_INFINITY;
        for (Limit limit : LIMITS) {
            worst = Math.min(worst, margin(limit, state, allowance));
        }
        return worst;
    }

    private Ceiling result(Run run, Case kase, double ambient, Ceiling.Reach reach, boolean again, double allowance) {
        SteadyState state = at(run, kase, ambient);
        Limit first = LIMITS[0];
        Limit second = LIMITS[1];
        for (Limit limit : LIMITS) {
            double m = margin(limit, state, allowance);
            if (m < margin(first, state, allowance)) {
                second = first;
                first = limit;
            } else if (limit != first && (second == first || m < margin(second, state, allowance))) {
                second = limit;
            }
        }
        SteadyState design = at(run, kase, spec.designAmbient());
        double airToBoil = boiling - design.coolant() + spec.designAmbient();
        return new Ceiling(kase, ambient, reach, first, second, again, state.coolant(), boiling, airToBoil);
    }
}
