package hotday.vehicle.cases;

import hotday.vehicle.plant.Coefficient;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Searches the outside temperature at which each limit gives way first. Steady cases: fan at full speed, headrooms scanned upwards
 * so that a first crossing is found even where they are not monotone, then closed. Moving cases: fan by its schedule, the
 * first limit closed, the others read off the same tries.
 */
public final class AmbientCeiling {
    /** Searched range, K. */
    public static final double LOWEST = 253.15;

    public static final double HIGHEST = 353.15;
    private static final double SCAN = 10.0; // K
    private static final double TOLERANCE = 1e-3; // K
    private static final double CLOSE_MOVING = 0.3; // K, a last move; what is left is a tenth of it
    private static final int MOST_TRIES = 14;
    private static final Limit[] LIMITS = Limit.values();
    private static final int MILD = 4; // point of the scan that is settled first, from a vehicle warmed through
    private static final int POINTS = (int) Math.round((HIGHEST - LOWEST) / SCAN) + 1;

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
        Search search = new Search(plant, kase, coolantAllowance);
        List<Ceiling.Crossing> crossings = kase.steady() ? search.steady() : search.moving(day);
        crossings.sort(Comparator.comparingDouble(Ceiling.Crossing::ambient));
        return search.result(crossings, day);
    }

    /**
     * Only the outside temperature, K, for draws by the hundred.
     *
     * @param guess where it may lie, K: the ceiling of a similar plant
     */
    public double ambient(Plant plant, Case kase, double coolantAllowance, double guess) {
        Search search = new Search(plant, kase, coolantAllowance);
        return kase.steady() ? search.close(guess) : search.closeMoving(guess);
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
        Search search = new Search(plant, kase, 0.0);
        double ambient = search.close(guess);
        if (search.trial.load() > 1.0) {
            return Optional.empty();
        }
        Ceiling.Reach reach = ambient >= HIGHEST
                ? Ceiling.Reach.ABOVE_RANGE
                : ambient <= LOWEST ? Ceiling.Reach.BELOW_RANGE : Ceiling.Reach.FOUND;
        return Optional.of(new Found(ambient, reach, search.tightest()));
    }

    /** One search over one plant and case. */
    private final class Search {
        final Trial trial;
        final Plant plant;
        final Case kase;
        final double allowance;
        final List<double[]> tried = new ArrayList<>(); // ambient, then headroom by limit
        final List<double[]> met = new ArrayList<>(); // ambient, then worst value by limit

        Search(Plant plant, Case kase, double allowance) {
            this.trial = new Trial(spec, plant, kase);
            this.plant = plant;
            this.kase = kase;
            this.allowance = allowance;
        }

        double headroom(Limit limit) {
            double room = trial.headroom(limit);
            return limit == Limit.COOLANT || limit == Limit.BOILING ? room - allowance : room;
        }

        /** Least headroom of all judged limits over the steepness that each has per kelvin, so that they compare. */
        double least(double ambient) {
            trial.at(ambient);
            double least = Double.POSITIVE_INFINITY;
            double[] row = new double[LIMITS.length + 1];
            row[0] = ambient;
            for (Limit limit : LIMITS) {
                row[limit.ordinal() + 1] = trial.judges(limit) ? headroom(limit) : Double.POSITIVE_INFINITY;
                least = Math.min(least, row[limit.ordinal() + 1] / limit.perKelvin());
            }
            tried.add(row);
            met.add(values(ambient));
            return least;
        }

        private double[] values(double ambient) {
            double[] row = new double[LIMITS.length + 1];
            row[0] = ambient;
            for (Limit limit : LIMITS) {
                row[limit.ordinal() + 1] = trial.worst(limit);
            }
            return row;
        }

        /** Worst values on a day: of a try that was made there, else tried now. */
        private double[] valuesOn(double day) {
            return met.stream().filter(row -> row[0] == day).findFirst().orElseGet(() -> {
                trial.at(day);
                return values(day);
            });
        }

        /** The limit with the least headroom in the last try. */
        Limit tightest() {
            Limit tightest = LIMITS[0];
            double least = Double.POSITIVE_INFINITY;
            for (Limit limit : LIMITS) {
                double room = trial.judges(limit) ? headroom(limit) / limit.perKelvin() : Double.POSITIVE_INFINITY;
                if (room < least) {
                    least = room;
                    tightest = limit;
                }
            }
            return tightest;
        }

        List<Ceiling.Crossing> steady() {
            for (int i = MILD; i < POINTS; i++) {
                least(LOWEST + i * SCAN);
            }
            for (int i = MILD - 1; i >= 0; i--) {
                least(LOWEST + i * SCAN);
            }
            tried.sort(Comparator.comparingDouble(row -> row[0]));
            List<double[]> scan = List.copyOf(tried);
            List<Ceiling.Crossing> all = new ArrayList<>();
            for (Limit limit : LIMITS) {
                if (trial.judges(limit)) {
                    all.add(crossing(limit, scan));
                }
            }
            return all;
        }

        private Ceiling.Crossing crossing(Limit limit, List<double[]> scan) {
            int i = limit.ordinal() + 1;
            int first = 0;
            while (first < scan.size() && scan.get(first)[i] >= 0.0) {
                first++;
            }
            if (first == 0) {
                return new Ceiling.Crossing(limit, LOWEST, Ceiling.Reach.BELOW_RANGE, false);
            }
            if (first == scan.size()) {
                return new Ceiling.Crossing(limit, HIGHEST, Ceiling.Reach.ABOVE_RANGE, false);
            }
            boolean again = scan.subList(first, scan.size()).stream().anyMatch(row -> row[i] >= 0.0);
            double ambient = closed(limit, scan.get(first - 1), scan.get(first));
            return new Ceiling.Crossing(limit, ambient, Ceiling.Reach.FOUND, again);
        }

        private double closed(Limit limit, double[] holding, double[] failing) {
            int i = limit.ordinal() + 1;
            DoubleUnaryOperator room = ambient -> {
                trial.at(ambient);
                return headroom(limit);
            };
            return closed(room, holding[0], failing[0], holding[i], failing[i]);
        }

        /** Illinois between two tries; gives the last outside temperature at which there is room. */
        private double closed(
                DoubleUnaryOperator roomAt, double holding, double failing, double roomThere, double lackThere) {
            double low = holding;
            double high = failing;
            double atLow = roomThere;
            double atHigh = lackThere;
            int side = 0;
            while (high - low > TOLERANCE) {
                double middle = low + (high - low) * atLow / (atLow - atHigh);
                double edge = 0.25 * TOLERANCE;
                middle = Math.max(low + edge, Math.min(high - edge, middle));
                if (Math.abs(side) > 3) {
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

        List<Ceiling.Crossing> moving(double start) {
            closeMoving(start);
            tried.sort(Comparator.comparingDouble(row -> row[0]));
            List<Ceiling.Crossing> all = new ArrayList<>();
            for (Limit limit : LIMITS) {
                if (trial.judges(limit)) {
                    all.add(read(limit));
                }
            }
            return all;
        }

        /**
         * Secant over tries in time, each tens of thousands of steps: ends where the next would move less than the courses of fan and
         * clutch scatter.
         */
        double closeMoving(double guess) {
            double before = Math.max(LOWEST, Math.min(HIGHEST, guess));
            double roomBefore = least(before);
            double now = Math.max(LOWEST, Math.min(HIGHEST, before + limited(roomBefore)));
            for (int i = 1; i < MOST_TRIES && now != before; i++) {
                double room = least(now);
                double slope = Math.max(-2.0, Math.min(-0.4, (room - roomBefore) / (now - before)));
                double next = Math.max(LOWEST, Math.min(HIGHEST, now - limited(room / slope)));
                before = now;
                roomBefore = room;
                now = next;
                if (Math.abs(now - before) < CLOSE_MOVING) {
                    break;
                }
            }
            return now;
        }

        private double limited(double step) {
            return Math.max(-30.0, Math.min(30.0, step));
        }

        /** A limit's crossing on the line through the two tries next to it. */
        private Ceiling.Crossing read(Limit limit) {
            int i = limit.ordinal() + 1;
            double[] first = tried.get(0);
            if (tried.size() == 1) {
                boolean holds = first[i] >= 0.0;
                return new Ceiling.Crossing(
                        limit,
                        holds ? HIGHEST : LOWEST,
                        holds ? Ceiling.Reach.ABOVE_RANGE : Ceiling.Reach.BELOW_RANGE,
                        false);
            }
            int above = 1;
            while (above < tried.size() - 1 && tried.get(above)[i] >= 0.0) {
                above++;
            }
            double[] low = tried.get(above - 1);
            double[] high = tried.get(above);
            double slope = (low[i] - high[i]) / (high[0] - low[0]);
            double at = slope > 1e-9 ? high[0] + high[i] / slope : high[i] >= 0.0 ? HIGHEST : LOWEST;
            if (at >= HIGHEST) {
                return new Ceiling.Crossing(limit, HIGHEST, Ceiling.Reach.ABOVE_RANGE, false);
            }
            return at <= LOWEST
                    ? new Ceiling.Crossing(limit, LOWEST, Ceiling.Reach.BELOW_RANGE, false)
                    : new Ceiling.Crossing(limit, at, Ceiling.Reach.FOUND, false);
        }

        /** The outside temperature at which the first limit gives way, K; an end of the range when it lies beyond. */
        double close(double guess) {
            double now = Math.max(LOWEST, Math.min(HIGHEST, guess));
            double room = least(now);
            double before = now;
            double roomBefore = room;
            while (room >= 0.0 == roomBefore >= 0.0) {
                if (now == (room >= 0.0 ? HIGHEST : LOWEST)) {
                    return now;
                }
                before = now;
                roomBefore = room;
                now = onwards(now, room);
                room = least(now);
            }
            return room >= 0.0
                    ? closed(this::least, now, before, room, roomBefore)
                    : closed(this::least, before, now, roomBefore, room);
        }

        /** A step towards where room turns into lack. */
        private double onwards(double ambient, double room) {
            double step = Math.max(1.0, Math.min(30.0, 1.15 * Math.abs(room)));
            return Math.max(LOWEST, Math.min(HIGHEST, ambient + (room >= 0.0 ? step : -step)));
        }

        Ceiling result(List<Ceiling.Crossing> crossings, double day) {
            Ceiling.Crossing first = crossings.get(0);
            Ceiling.Crossing second = crossings.size() > 1 ? crossings.get(1) : first;
            OperatingPoint atCeiling = kase.steady() ? point(first.ambient()) : null;
            double[] worst = valuesOn(day);
            List<Ceiling.Headroom> rooms = new ArrayList<>();
            for (Limit limit : LIMITS) {
                if (trial.judges(limit)) {
                    double value = worst[limit.ordinal() + 1];
                    double miss = limit == Limit.COOLANT || limit == Limit.BOILING ? allowance : 0.0;
                    double room = limit.headroom(value, trial.limit(limit)) - miss;
                    rooms.add(new Ceiling.Headroom(limit, value, trial.limit(limit), room));
                }
            }
            double coolant = atCeiling == null ? worst[Limit.COOLANT.ordinal() + 1] : atCeiling.coolant();
            boolean settled = trial.settleBySchedule(day);
            OperatingPoint scheduled = OperatingPoint.of(trial.run(), settled);
            return new Ceiling(
                    kase,
                    first.ambient(),
                    first.reach(),
                    first.limit(),
                    second.limit(),
                    first.again(),
                    coolant,
                    trial.boiling(),
                    airToBoil(day),
                    crossings,
                    day,
                    rooms,
                    scheduled);
        }

        private OperatingPoint point(double ambient) {
            boolean found = trial.settle(ambient, 1.0);
            return OperatingPoint.of(trial.run(), found);
        }

        /**
         * Air-to-boil as field practice has it (SAE J1393, published summaries): thermostat blocked open, settled, fan at full speed;
         * boiling at the cap less coolant plus outside air, K.
         */
        private double airToBoil(double day) {
            double[] k = plant.coefficients();
            k[Coefficient.THERMOSTAT_OPENS.index()] = LOWEST - 100.0;
            Trial open = new Trial(spec, plant.with(k), kase);
            boolean found = open.settle(day, 1.0);
            double coolant = OperatingPoint.of(open.run(), found).coolant();
            return open.boiling() - coolant + day;
        }
    }
}
