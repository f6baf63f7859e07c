package hotday.vehicle.cases;

import hotday.vehicle.plant.Coefficient;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/** Searches the outside temperature at which each limit gives way first. */
public final class AmbientCeiling {
    /** Searched range, K. */
    public static final double LOWEST = 253.15;

    public static final double HIGHEST = 353.15;
    private final VehicleSpec spec;

    public AmbientCeiling(VehicleSpec spec) {
        this.spec = spec;
    }

    /**
     * The ceiling of a case with everything that goes with it.
     *
     * @param coolantAllowance added to coolant before it is compared, K: what the model is known to miss
     */
    public Ceiling find(Plant plant, Case kase, double coolantAllowance) {
        return find(plant, kase, coolantAllowance, spec.designAmbient());
    }

    /** The same, with operating points and headrooms at another outside temperature than the design day's, K. */
    public Ceiling find(Plant plant, Case kase, double coolantAllowance, double day) {
        Tries tries = new Tries(spec, plant, kase, coolantAllowance);
        List<Ceiling.Crossing> crossings =
                kase.steady() ? new SteadySearch(tries).crossings() : new MovingSearch(tries).crossings(day);
        crossings.sort(Comparator.comparingDouble(Ceiling.Crossing::ambient));
        return result(tries, kase, crossings, day);
    }

    /** Those of many cases, side by side on the machine's cores, the long ones first; in the order of the cases. */
    public List<Ceiling> find(Plant plant, List<Case> cases, double coolantAllowance, double day) {
        List<Integer> order = IntStream.range(0, cases.size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> cases.get(i).steady())
                        .thenComparing(i -> -i))
                .toList();
        Ceiling[] found = new Ceiling[cases.size()];
        AtomicInteger next = new AtomicInteger();
        IntStream.range(0, Runtime.getRuntime().availableProcessors())
                .parallel()
                .forEach(worker -> {
                    for (int at = next.getAndIncrement(); at < found.length; at = next.getAndIncrement()) {
                        int i = order.get(at);
                        found[i] = find(plant, cases.get(i), coolantAllowance, day);
                    }
                });
        return List.of(found);
    }

    /**
     * Only the outside temperature, K, for draws by the hundred.
     *
     * @param guess where it may lie, K: the ceiling of a similar plant
     */
    public double ambient(Plant plant, Case kase, double coolantAllowance, double guess) {
        Tries tries = new Tries(spec, plant, kase, coolantAllowance);
        return kase.steady() ? new SteadySearch(tries).close(guess) : new MovingSearch(tries).close(guess, 1);
    }

    /**
     * Where the first limit gives way.
     *
     * @param ambient K
     * @param binding what gives way, or comes closest when {@code reach} says that nothing does
     */
    public record Found(double ambient, Ceiling.Reach reach, Limit binding) {}

    /** The ceiling of a steady case alone; empty where the engine has not the power to hold it. */
    public Optional<Found> first(Plant plant, Case kase, double guess) {
        Tries tries = new Tries(spec, plant, kase, 0.0);
        double ambient = new SteadySearch(tries).close(guess);
        if (tries.trial.load() > 1.0) {
            return Optional.empty();
        }
        Ceiling.Reach reach = ambient >= HIGHEST
                ? Ceiling.Reach.ABOVE_RANGE
                : ambient <= LOWEST ? Ceiling.Reach.BELOW_RANGE : Ceiling.Reach.FOUND;
        return Optional.of(new Found(ambient, reach, tries.last().tightest()));
    }

    private Ceiling result(Tries tries, Case kase, List<Ceiling.Crossing> crossings, double day) {
        Ceiling.Crossing first = crossings.get(0);
        Ceiling.Crossing second = crossings.size() > 1 ? crossings.get(1) : first;
        Tries.Try there = tries.on(day);
        double coolant = kase.steady() ? tries.on(first.ambient()).worst(Limit.COOLANT) : there.worst(Limit.COOLANT);
        Trial trial = tries.trial;
        List<Ceiling.Headroom> rooms = Arrays.stream(Limit.values())
                .filter(trial::judges)
                .map(limit -> headroom(tries, there, limit))
                .toList();
        tries.startNear(day);
        trial.settleBySchedule(day);
        OperatingPoint scheduled = OperatingPoint.of(trial.run(), trial.unrest());
        return new Ceiling(
                kase,
                first.ambient(),
                first.reach(),
                first.limit(),
                second.limit(),
                first.again(),
                coolant,
                trial.boiling(),
                airToBoil(trial, kase, day),
                crossings,
                day,
                rooms,
                scheduled);
    }

    private static Ceiling.Headroom headroom(Tries tries, Tries.Try there, Limit limit) {
        double bound = tries.trial.limit(limit);
        double room = limit.headroom(there.worst(limit), bound) - tries.allowance(limit);
        return new Ceiling.Headroom(limit, there.worst(limit), bound, room);
    }

    /**
     * Air-to-boil as field practice has it (SAE J1393, published summaries): thermostat blocked open, settled, fan at full speed;
     * boiling at the cap less coolant plus outside air, K; NaN where that comes to no rest.
     */
    private double airToBoil(Trial trial, Case kase, double day) {
        Plant plant = trial.run().plant();
        double[] k = plant.coefficients();
        k[Coefficient.THERMOSTAT_OPENS.index()] = LOWEST - 100.0;
        Trial open = new Trial(spec, plant.with(k), kase);
        if (!open.settle(day, 1.0)) {
            return Double.NaN;
        }
        return open.boiling() - open.worst(Limit.COOLANT) + day;
    }
}
