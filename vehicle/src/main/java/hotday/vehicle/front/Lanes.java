package hotday.vehicle.front;

import hotday.physics.component.AirPath;
import hotday.physics.component.FanCurve;
import hotday.physics.fluid.Air;
import hotday.vehicle.airpath.Face;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.CoreKind;
import java.util.Arrays;

/**
 * The front as a few parallel lanes of air for time loops: tiles with the same cores in front of them, the same inlet and the
 * same rear are one lane, and what the tiled air path gives is tabulated once a build. Lanes below 2 % of the face belong to the most
 * alike of those with the same radiator cover; there are 10 at most, larger ones first. Immutable, shared between threads; {@link #look}
 * allocates nothing and costs about 0.15 us.
 *
 * <pre>
 *   double[] air = new double[lanes.columns()];
 *   lanes.look(speed, fan, face, pressure, rear / face, air);
 *   air[lanes.flow(lane)], air[lanes.conductance(lane, core)], air[Lanes.REVERSED] ...
 * </pre>
 *
 * Table over the two pressures that drive, ram and fan; air of another density and viscosity by Reynolds' similarity. Relations and limits:
 * docs/physics/front.md.
 */
public final class Lanes {
    /** Mass flow that comes out of the front, kg/s, 0 or more. */
    public static final int REVERSED = 0;
    /** Through all fans together, m3/s at the density behind the cores, 0 or more. */
    public static final int FAN_FLOW = 1;
    /** Mass flow through the relief flaps, kg/s, 0 or more. */
    public static final int FLAP_FLOW = 2;

    static final int REACHES = 18;
    static final int SHARES = 11;
    private static final double[] REAR_RATIOS = {1.0, 1.15, 1.3};
    private static final int REARS = REAR_RATIOS.length;
    private static final double COOLEST_REAR = 0.9;
    private static final double HOTTEST_REAR = 1.4;
    private static final double FASTEST = 70.0; // m/s
    private static final double MOST_FAN = 1.3;
    private static final double LEAST_RAM = 0.05; // coefficient
    private static final double LEAST_BALANCE = 10.0; // m/s
    private static final double ROUNDING = 0.01; // of the fan speed at which the rotor runs free
    private static final double NOTHING = 1e-30;
    private static final double FIRST_SHARED = 0.02; // air speed over the balance speed

    private final LaneColumns columns;
    private final double[] area;
    private final double[] exponent; // of each core
    private final double ram;
    private final double draughtHeight;
    private final double balanceSpeed;
    private final double reachStep;
    private final double leastShare;
    private final double shareStep;
    private final int width; // of a node: columns for each ratio of the rear
    private final double[] table;
    private final double[] windmilling;

    private Lanes(VehicleSpec spec) {
        Face face = FaceOf.face(spec);
        LikeTiles tiles = LikeTiles.of(face);
        int cores = face.cores().size();
        int[] laneOfKind = LaneMap.laneOfKind(tiles, radiator(spec));
        int lanes = 1 + Arrays.stream(laneOfKind).max().orElse(0);
        this.columns = new LaneColumns(lanes, cores, laneOfKind, tiles.kinds());
        this.area = new double[lanes];
        for (int kind = 0; kind < laneOfKind.length; kind++) {
            area[laneOfKind[kind]] += tiles.area(kind);
        }
        this.exponent = spec.stack().cores().stream()
                .mapToDouble(VehicleSpec.PlacedCore::airExponent)
                .toArray();
        this.ram = Math.max(
                LEAST_RAM, spec.frontEnd().ramRecovery() - spec.frontEnd().basePressure());
        this.draughtHeight = spec.frontEnd().draughtHeight();
        FanCurve curve = face.fans().get(0).curve();
        this.balanceSpeed =
                Math.max(LEAST_BALANCE, Math.sqrt(curve.stall() / AirPath.ram(ram, curve.referenceDensity(), 1.0)));
        this.reachStep = Math.sqrt(Math.hypot(FASTEST / balanceSpeed, MOST_FAN)) / (REACHES - 1);
        this.width = REARS * columns.size();
        LaneNode node = new LaneNode(spec, face, tiles, laneOfKind, columns);
        this.windmilling = windmilling(node);
        this.leastShare = leastShare();
        this.shareStep = (1.0 - leastShare) / (SHARES - 1);
        this.table = table(node);
    }

    /** Divides the face into lanes and fills the table: some 500 solutions of the air path. */
    public static Lanes compile(VehicleSpec spec) {
        return new Lanes(spec);
    }

    private static int radiator(VehicleSpec spec) {
        int radiator = 0;
        for (int i = 0; i < spec.stack().cores().size(); i++) {
            radiator = spec.stack().cores().get(i).kind() == CoreKind.RADIATOR ? i : radiator;
        }
        return radiator;
    }

    /** Number of lanes, 1..10. */
    public int lanes() {
        return columns.lanes();
    }

    /** Number of cores, those of the stack in its order (depth). */
    public int cores() {
        return columns.cores();
    }

    /** Face area of a lane, m2. */
    public double area(int lane) {
        return area[lane];
    }

    /** Length of the array for {@link #look}; what no index method names is its own. */
    public int columns() {
        return columns.size() + width;
    }

    /** Column of a lane's mass flow rearwards, kg/s, 0 or more. */
    public int flow(int lane) {
        return columns.flow(lane);
    }

    /** Column of the air-side conductance of a core in a lane, W/K, fins included, 0 or more; one that is always 0 where it does not stand. */
    public int conductance(int lane, int core) {
        return columns.conductance(lane, core);
    }

    /** True where a core stands in a lane. */
    public boolean covers(int lane, int core) {
        return columns.conductance(lane, core) < columns.size() - 1;
    }

    /**
     * Air at one moment; continuous everywhere. Beyond 70 m/s or a fan ratio of 1.3 (at 35 degC, 1013 hPa) flows grow in proportion.
     *
     * @param speed of the air against the face, m/s, times the root of a fitted ram factor; below 0 (from behind) counts against the draught
     * @param fanRatio fan speed over full speed, 0..1.3
     * @param faceTemperature of the air in front of the cores, K, above 0
     * @param pressure of the air, Pa absolute, above 0
     * @param rearRatio absolute temperature behind the cores over that in front; kept within 0.9..1.4
     * @param out {@link #columns()} long
     */
    public void look(
            double speed, double fanRatio, double faceTemperature, double pressure, double rearRatio, double[] out) {
        double rear = Math.max(COOLEST_REAR, Math.min(HOTTEST_REAR, rearRatio));
        at(square(speed, rear), fanRatio, faceTemperature, pressure, rear, out);
    }

    /** The same from the square of a speed that holds all that drives besides the fan, m2/s2, 0 or more. */
    void at(double square, double fanRatio, double faceTemperature, double pressure, double rear, double[] out) {
        double sticky = Air.viscosity(faceTemperature) / LaneNode.VISCOSITY;
        double kinematic = sticky * LaneNode.DENSITY / Air.density(pressure, faceTemperature);
        double air = Math.sqrt(square) / (balanceSpeed * kinematic);
        double fan = turning(Math.max(0.0, fanRatio) / kinematic, air, rear);
        double reach = Math.sqrt(air * air + fan * fan + NOTHING);
        double root = Math.sqrt(reach);
        blend(root, fan * fan / (reach * reach), rear, out);
        scale(sticky, kinematic, reach, root, out);
    }

    /** Square of the speed whose ram pressure is that of speed and natural draught together, m2/s2, 0 or more. */
    private double square(double speed, double rear) {
        return Math.max(0.0, speed * Math.abs(speed) + 2.0 * AirPath.draught(1.0, draughtHeight, 1.0, rear) / ram);
    }

    /** Fan speed that acts: its own, or the one at which the stream turns the rotor; smooth between. */
    private double turning(double fan, double air, double rear) {
        double at = Math.min(Math.sqrt(air) / reachStep, REACHES - 1.0);
        int cell = Math.min((int) at, REACHES - 2);
        double u = at - cell;
        double free = 0.0;
        for (int r = 0; r < REARS; r++) {
            int first = cell * REARS + r;
            free += rear(r, rear)
                    * (before(u) * windmilling[first]
                            + left(u) * windmilling[first + REARS]
                            + left(1.0 - u) * windmilling[first + 2 * REARS]
                            + before(1.0 - u) * windmilling[first + 3 * REARS]);
        }
        free *= air;
        double round = ROUNDING * free;
        return 0.5 * (fan + free + Math.sqrt((fan - free) * (fan - free) + round * round));
    }

    /** Catmull-Rom spline: weight of the node before the left one. */
    private static double before(double u) {
        return -0.5 * u * (1.0 - u) * (1.0 - u);
    }

    /** Catmull-Rom spline: weight of the left node. */
    private static double left(double u) {
        return 1.0 + u * u * (1.5 * u - 2.5);
    }

    /** Weight of a ratio in the parabola through the three. */
    private static double rear(int which, double rear) {
        double x = (rear - REAR_RATIOS[1]) / (REAR_RATIOS[1] - REAR_RATIOS[0]);
        return which == 1 ? 1.0 - x * x : 0.5 * x * (which == 0 ? x - 1.0 : x + 1.0);
    }

    private void blend(double root, double share, double rear, double[] out) {
        double down = Math.min(root / reachStep, REACHES - 1.0);
        int row = Math.min((int) down, REACHES - 2);
        double v = down - row;
        double along = Math.max(0.0, Math.min((share - leastShare) / shareStep, SHARES - 1.0));
        int column = Math.min((int) along, SHARES - 2);
        double u = along - column;
        int first = (row * (SHARES + 2) + column) * width;
        int next = (SHARES + 2) * width;
        Arrays.fill(out, columns.size(), columns.size() + width, 0.0);
        add(first, before(v), u, out);
        add(first + next, left(v), u, out);
        add(first + 2 * next, left(1.0 - v), u, out);
        add(first + 3 * next, before(1.0 - v), u, out);
        int size = columns.size();
        double cool = rear(0, rear);
        double warm = rear(1, rear);
        double hot = rear(2, rear);
        for (int c = 0; c < size; c++) {
            out[c] = Math.max(0.0, cool * out[size + c] + warm * out[2 * size + c] + hot * out[3 * size + c]);
        }
    }

    private void add(int at, double weight, double u, double[] out) {
        double a = weight * before(u);
        double b = weight * left(u);
        double c = weight * left(1.0 - u);
        double d = weight * before(1.0 - u);
        int size = columns.size();
        for (int i = 0; i < width; i++) {
            out[size + i] += a * table[at + i]
                    + b * table[at + width + i]
                    + c * table[at + 2 * width + i]
                    + d * table[at + 3 * width + i];
        }
    }

    private void scale(double sticky, double kinematic, double reach, double root, double[] out) {
        double mass = sticky * reach;
        out[REVERSED] *= mass;
        out[FAN_FLOW] *= kinematic * reach;
        out[FLAP_FLOW] *= mass;
        for (int lane = 0; lane < columns.lanes(); lane++) {
            out[columns.flow(lane)] *= mass;
        }
        for (int core = 0; core < columns.cores(); core++) {
            double grown = root * power(sticky - 1.0, exponent[core]);
            for (int c = columns.first(core); c < columns.first(core + 1); c++) {
                out[c] *= grown;
            }
        }
    }

    /** (1 + x)^n by five terms of its series: within 2e-5 for x in -0.25..0.25. */
    private static double power(double x, double n) {
        return 1.0 + n * x * (1.0 + 0.5 * (n - 1.0) * x * (1.0 + (n - 2.0) / 3.0 * x * (1.0 + 0.25 * (n - 3.0) * x)));
    }

    /** Air speed at a node of the table at the reference air, m/s. */
    double nodeSpeed(int reach, int share) {
        double length = reachStep * reach * reachStep * reach;
        return balanceSpeed * length * Math.sqrt(1.0 - nodeShare(share));
    }

    /** Fan ratio at a node of the table at the reference air. */
    double nodeFan(int reach, int share) {
        double length = reachStep * reach * reachStep * reach;
        return length * Math.sqrt(nodeShare(share));
    }

    private double nodeShare(int share) {
        return Math.min(1.0, leastShare + shareStep * share);
    }

    /** Fan ratio at which the rotors run free, over air speed in balance speeds; node by node, with one more at both ends. */
    private double[] windmilling(LaneNode node) {
        double[] ratios = new double[(REACHES + 2) * REARS];
        for (int i = 1; i < REACHES; i++) {
            double air = reachStep * i * reachStep * i;
            for (int r = 0; r < REARS; r++) {
                ratios[(i + 1) * REARS + r] = node.windmilling(air * balanceSpeed, REAR_RATIOS[r]) / air;
            }
        }
        extend(ratios, 0, REARS, REARS);
        extend(ratios, (REACHES + 1) * REARS, -REARS, REARS);
        return ratios;
    }

    /** Below this share of the fan in what drives, rotors run free, but at a walking pace. */
    private double leastShare() {
        double least = 1.0;
        for (int i = 1; i < REACHES; i++) {
            for (int r = 0; r < REARS; r++) {
                double ratio = windmilling[(i + 1) * REARS + r];
                boolean walking = reachStep * i * reachStep * i < FIRST_SHARED;
                least = walking ? least : Math.min(least, ratio * ratio / (1.0 + ratio * ratio));
            }
        }
        return least;
    }

    private double[] table(LaneNode node) {
        double[] all = new double[(REACHES + 2) * (SHARES + 2) * width];
        double[] found = new double[columns.size()];
        int row = (SHARES + 2) * width;
        for (int i = 1; i < REACHES; i++) {
            for (int r = 0; r < REARS; r++) {
                for (int j = 0; j < SHARES; j++) {
                    node.at(nodeSpeed(i, j), nodeFan(i, j), REAR_RATIOS[r], found);
                    put(found, i, all, (i + 1) * row + (j + 1) * width + r * columns.size());
                }
            }
        }
        for (int i = 1; i <= REACHES; i++) {
            extend(all, i * row, width, width);
            extend(all, i * row + (SHARES + 1) * width, -width, width);
        }
        extend(all, 0, row, row);
        extend(all, (REACHES + 1) * row, -row, row);
        return all;
    }

    /** Flows are kept over the reach, conductances over its root: both then change little. */
    private void put(double[] found, int reach, double[] all, int at) {
        double root = reachStep * reach;
        for (int c = 0; c < found.length; c++) {
            all[at + c] = found[c] / (c < columns.first(0) ? root * root : root);
        }
    }

    /** One node more at an end, along the parabola through three. */
    private static void extend(double[] all, int at, int step, int count) {
        for (int c = at; c < at + count; c++) {
            all[c] = 3.0 * all[c + step] - 3.0 * all[c + 2 * step] + all[c + 3 * step];
        }
    }
}
