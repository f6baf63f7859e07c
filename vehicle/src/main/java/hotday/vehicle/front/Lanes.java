package hotday.vehicle.front;

import hotday.physics.component.AirPath;
import hotday.physics.fluid.Air;
import hotday.vehicle.spec.VehicleSpec;
import java.util.Arrays;

/**
 * The front as a few parallel lanes of air for time loops: tiles with the same cores in front of them, the same inlet and the
 * same rear are one lane, and what the tiled air path gives is tabulated once a build. Lanes below 2 % of the face belong to the most
 * alike of those with the same radiator cover; there are 10 at most, larger ones first. Immutable, shared between threads; {@link #look}
 * allocates nothing and costs about 0.2 us, a table about 4 ms.
 *
 * <pre>
 *   double[] air = new double[lanes.columns()];
 *   lanes.look(speed, fan, face, pressure, rear / face, air);
 *   air[lanes.flow(lane)], air[lanes.conductance(lane, core)], air[Lanes.REVERSED]
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

    static final int FIRST_FLOW = 3;

    private static final double REAR_MIDDLE = LaneTable.rearRatio(1);
    private static final double PER_REAR_STEP = 1.0 / (LaneTable.rearRatio(1) - LaneTable.rearRatio(0));
    private static final double PER_VISCOSITY = 1.0 / LaneNode.VISCOSITY;
    private static final double COOLEST_REAR = 0.9;
    private static final double HOTTEST_REAR = 1.4;
    private static final double ROUNDING = 0.01; // of the fan speed at which the rotor runs free
    private static final double NOTHING = 1e-30;

    private final LaneColumns columns;
    private final double[] area;
    private final double[] exponent; // of each core
    private final double ram;
    private final double draughtHeight;
    private final double perBalanceSpeed;
    private final double perReachStep;
    private final double[] leastShare; // for each reach
    private final int size; // columns
    private final int width; // of a node: columns for each ratio of the rear
    private final double[][] nodes;
    private final double[] windmilling;

    private Lanes(VehicleSpec.Stack stack, LaneTable table) {
        this.columns = table.columns();
        this.area = table.areas();
        this.exponent = stack.cores().stream()
                .mapToDouble(VehicleSpec.PlacedCore::airExponent)
                .toArray();
        this.ram = table.ram();
        this.draughtHeight = table.draughtHeight();
        this.perBalanceSpeed = 1.0 / table.balanceSpeed();
        this.perReachStep = 1.0 / table.reachStep();
        this.leastShare = table.leastShare();
        this.size = columns.size();
        this.width = LaneTable.REARS * size;
        this.nodes = table.nodes();
        this.windmilling = table.windmilling();
    }

    /** Divides the face into lanes and fills the table: about a thousand solutions of the air path, some ms. */
    public static Lanes compile(VehicleSpec spec) {
        return of(spec, LaneTable.fill(spec));
    }

    static Lanes of(VehicleSpec spec, LaneTable table) {
        return new Lanes(spec.stack(), table);
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
        return width;
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
        return columns.conductance(lane, core) < size - 1;
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
        at(speedSquare(speed, rear), fanRatio, faceTemperature, pressure, rear, out);
    }

    /** The same from the square of a speed that holds all that drives besides the fan, m2/s2, 0 or more. */
    void at(double square, double fanRatio, double faceTemperature, double pressure, double rear, double[] out) {
        double sticky = Air.viscosity(faceTemperature) * PER_VISCOSITY;
        double kinematic = sticky * LaneNode.DENSITY / Air.density(pressure, faceTemperature);
        double reduced = 1.0 / kinematic;
        double away = (rear - REAR_MIDDLE) * PER_REAR_STEP;
        double cool = 0.5 * away * (away - 1.0);
        double warm = 1.0 - away * away;
        double hot = 0.5 * away * (away + 1.0);
        double air = Math.sqrt(square) * perBalanceSpeed * reduced;
        double fan = turning(Math.max(0.0, fanRatio) * reduced, air, cool, warm, hot);
        double fan2 = fan * fan;
        double reach2 = air * air + fan2 + NOTHING;
        double reach = Math.sqrt(reach2);
        blend(Math.sqrt(reach), fan2 / reach2, out);
        for (int c = 0; c < size; c++) {
            out[c] = cool * out[c] + warm * out[size + c] + hot * out[2 * size + c];
        }
        scale(sticky, kinematic, reach, out);
    }

    /** Square of the speed whose ram pressure is that of speed and natural draught together, m2/s2, 0 or more. */
    private double speedSquare(double speed, double rear) {
        return Math.max(0.0, speed * Math.abs(speed) + 2.0 * AirPath.draught(1.0, draughtHeight, 1.0, rear) / ram);
    }

    /** Fan speed that acts: its own, or the one at which the stream turns the rotor; smooth between. */
    private double turning(double fan, double air, double cool, double warm, double hot) {
        double at = Math.min(Math.sqrt(air) * perReachStep, LaneTable.REACHES - 1.0);
        int cell = Math.min((int) at, LaneTable.REACHES - 2);
        double u = at - cell;
        double free = air
                * (before(u) * windmilling(cell, cool, warm, hot)
                        + left(u) * windmilling(cell + 1, cool, warm, hot)
                        + left(1.0 - u) * windmilling(cell + 2, cool, warm, hot)
                        + before(1.0 - u) * windmilling(cell + 3, cool, warm, hot));
        double round = ROUNDING * free;
        return 0.5 * (fan + free + Math.sqrt((fan - free) * (fan - free) + round * round));
    }

    private double windmilling(int node, double cool, double warm, double hot) {
        int at = LaneTable.REARS * node;
        return cool * windmilling[at] + warm * windmilling[at + 1] + hot * windmilling[at + 2];
    }

    /** Catmull-Rom spline: weight of the node before the left one. */
    private static double before(double u) {
        return -0.5 * u * (1.0 - u) * (1.0 - u);
    }

    /** Catmull-Rom spline: weight of the left node. */
    private static double left(double u) {
        return 1.0 + u * u * (1.5 * u - 2.5);
    }

    /** All columns for each ratio of the rear. */
    private void blend(double root, double share, double[] out) {
        double down = Math.min(root * perReachStep, LaneTable.REACHES - 1.0);
        int row = Math.min((int) down, LaneTable.REACHES - 2);
        double v = down - row;
        double a = before(v);
        double b = left(v);
        double c = left(1.0 - v);
        double d = before(1.0 - v);
        double least =
                a * leastShare[row] + b * leastShare[row + 1] + c * leastShare[row + 2] + d * leastShare[row + 3];
        double along = Math.max(0.0, share - least) * (LaneTable.SHARES - 1.0) / (1.0 - least);
        int column = Math.min((int) along, LaneTable.SHARES - 2);
        double u = along - column;
        int first = row * (LaneTable.SHARES + 2) + column;
        int next = LaneTable.SHARES + 2;
        Arrays.fill(out, 0, width, 0.0);
        add(first, a, u, out);
        add(first + next, b, u, out);
        add(first + 2 * next, c, u, out);
        add(first + 3 * next, d, u, out);
    }

    private void add(int first, double weight, double u, double[] out) {
        double a = weight * before(u);
        double b = weight * left(u);
        double c = weight * left(1.0 - u);
        double d = weight * before(1.0 - u);
        double[] node0 = nodes[first];
        double[] node1 = nodes[first + 1];
        double[] node2 = nodes[first + 2];
        double[] node3 = nodes[first + 3];
        for (int i = 0; i < width; i++) {
            out[i] += a * node0[i] + b * node1[i] + c * node2[i] + d * node3[i];
        }
    }

    private void scale(double sticky, double kinematic, double reach, double[] out) {
        double reversed = 0.0;
        for (int lane = 0; lane < area.length; lane++) {
            double flow = sticky * reach * out[FIRST_FLOW + lane];
            double forward = Math.max(0.0, flow);
            out[FIRST_FLOW + lane] = forward;
            out[size + lane] = Math.sqrt(forward);
            reversed += forward - flow;
        }
        out[REVERSED] = reversed;
        out[FAN_FLOW] = Math.max(0.0, kinematic * reach * out[FAN_FLOW]);
        out[FLAP_FLOW] = Math.max(0.0, sticky * reach * out[FLAP_FLOW]);
        for (int core = 0; core < columns.cores(); core++) {
            double grown = power(sticky - 1.0, exponent[core] - 0.5);
            for (int c = columns.first(core); c < columns.first(core + 1); c++) {
                out[c] = Math.max(0.0, grown * out[c]) * out[size + columns.lane(c)];
            }
        }
    }

    /** (1 + x)^n by five terms of its series: within 2e-5 for x in -0.25..0.25. */
    private static double power(double x, double n) {
        return 1.0
                + n
                        * x
                        * (1.0
                                + 0.5
                                        * (n - 1.0)
                                        * x
                                        * (1.0 + (1.0 / 3.0) * (n - 2.0) * x * (1.0 + 0.25 * (n - 3.0) * x)));
    }
}
