package hotday.vehicle.front;

import hotday.physics.component.AirPath;
import hotday.physics.component.FanCurve;
import hotday.vehicle.airpath.Face;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.CoreKind;
import java.util.Arrays;

/**
 * Nodes of the table of lanes. Ram pressure goes with the square of the air speed, fan pressure with that of the fan speed: with the air
 * speed a in balance speeds (whose ram pressure is that of the standing fan) and the fan ratio s,
 *
 * <pre>
 *   reach = sqrt(a^2 + s^2), nodes equally far apart in its root; share = s^2 / (a^2 + s^2) of the fan in what drives,
 *   nodes equally far apart from where the stream begins to turn the rotor to 1
 * </pre>
 *
 * Flow over reach and conductance over the root of the flow change little from node to node. Fans are driven ones everywhere, so that nothing has a kink
 * where the stream begins to turn the rotor; that boundary is a line of its own.
 */
final class LaneTable {
    static final int REACHES = 20;
    static final int SHARES = 11;
    private static final double[] REAR_RATIOS = {1.0, 1.15, 1.3};
    static final int REARS = REAR_RATIOS.length;
    private static final double FASTEST = 70.0; // m/s
    private static final double MOST_FAN = 1.3;
    private static final double LEAST_RAM = 0.05; // coefficient
    private static final double LEAST_BALANCE = 10.0; // m/s
    private static final double STILL = 1e-12; // kg/s
    private static final double MARGIN = 0.95;
    private static final int BOUNDARY_STEPS = 8;

    private final LikeTiles tiles;
    private final int[] laneOfKind;
    private final LaneColumns columns;
    private final double ram;
    private final double draughtHeight;
    private final double balanceSpeed;
    private final double reachStep;
    private final double[] leastShare;
    private final double[] windmilling;
    private final double[][] nodes;

    private LaneTable(VehicleSpec spec) {
        Face face = FaceOf.face(spec);
        this.tiles = LikeTiles.of(face);
        this.laneOfKind = LaneMap.laneOfKind(tiles, radiator(spec));
        int lanes = 1 + Arrays.stream(laneOfKind).max().orElse(0);
        this.columns = new LaneColumns(lanes, face.cores().size(), laneOfKind, tiles.kinds());
        this.ram = Math.max(LEAST_RAM, tiles.recovery() - face.basePressure());
        this.draughtHeight = face.draughtHeight();
        FanCurve curve = face.fans().get(0).curve();
        this.balanceSpeed =
                Math.max(LEAST_BALANCE, Math.sqrt(curve.stall() / AirPath.ram(ram, curve.referenceDensity(), 1.0)));
        LaneNode node = new LaneNode(spec.stack().cores(), tiles, true);
        double free = windmillRatio(node, curve, FASTEST, REAR_RATIOS[REARS - 1]);
        this.reachStep = Math.sqrt(Math.hypot(FASTEST / balanceSpeed, Math.max(MOST_FAN, free))) / (REACHES - 1);
        this.windmilling = windmilling(node, curve);
        this.leastShare = leastShares(node, curve);
        this.nodes = nodes(new LaneNode(spec.stack().cores(), tiles, false));
    }

    static LaneTable fill(VehicleSpec spec) {
        return new LaneTable(spec);
    }

    private static int radiator(VehicleSpec spec) {
        int radiator = 0;
        for (int i = 0; i < spec.stack().cores().size(); i++) {
            radiator = spec.stack().cores().get(i).kind() == CoreKind.RADIATOR ? i : radiator;
        }
        return radiator;
    }

    /** Fan ratio at which the rotors run free. */
    private static double windmillRatio(LaneNode node, FanCurve curve, double speed, double rearRatio) {
        node.solve(speed, 0.0, rearRatio);
        return Math.max(0.0, node.flow().fanFlow(0)) / curve.windmillFlow(1.0);
    }

    /** The same over air speed in balance speeds: reach x ratios of the rear, one reach more at both ends. */
    private double[] windmilling(LaneNode node, FanCurve curve) {
        double[] ratios = new double[(REACHES + 2) * REARS];
        for (int i = 1; i < REACHES; i++) {
            for (int r = 0; r < REARS; r++) {
                ratios[(i + 1) * REARS + r] =
                        windmillRatio(node, curve, reach(i) * balanceSpeed, REAR_RATIOS[r]) / reach(i);
            }
        }
        for (int r = 0; r < REARS; r++) {
            ratios[r] = beyond(ratios[r + REARS], ratios[r + 2 * REARS], ratios[r + 3 * REARS]);
            int last = REACHES * REARS + r;
            ratios[last + REARS] = beyond(ratios[last], ratios[last - REARS], ratios[last - 2 * REARS]);
        }
        return ratios;
    }

    /** Share at which rotors begin to run free, for each reach, one more at both ends: little less than with cold air behind. */
    private double[] leastShares(LaneNode node, FanCurve curve) {
        double[] least = new double[REACHES + 2];
        for (int i = 1; i < REACHES; i++) {
            double ratio = 0.0;
            for (int step = 0; step < BOUNDARY_STEPS; step++) {
                double air = reach(i) / Math.sqrt(1.0 + ratio * ratio);
                ratio = windmillRatio(node, curve, air * balanceSpeed, REAR_RATIOS[0]) / air;
            }
            least[i + 1] = MARGIN * ratio * ratio / (1.0 + ratio * ratio);
        }
        least[0] = beyond(least[1], least[2], least[3]);
        least[REACHES + 1] = beyond(least[REACHES], least[REACHES - 1], least[REACHES - 2]);
        return least;
    }

    /** One node a row: reach x share, with one more at each end; in it the columns for each ratio of the rear. */
    private double[][] nodes(LaneNode node) {
        int row = SHARES + 2;
        double[][] all = new double[(REACHES + 2) * row][REARS * columns.size()];
        for (int i = 1; i < REACHES; i++) {
            for (int r = 0; r < REARS; r++) {
                for (int j = 0; j < SHARES; j++) {
                    node.solve(speed(i, j), fan(i, j), REAR_RATIOS[r]);
                    put(node, reach(i), all[(i + 1) * row + j + 1], r * columns.size());
                }
            }
        }
        for (int j = 1; j <= SHARES; j++) {
            still(all[row + j], all[2 * row + j]);
        }
        for (int i = 1; i <= REACHES; i++) {
            extend(all, i * row, 1);
            extend(all, i * row + SHARES + 1, -1);
        }
        for (int j = 0; j < row; j++) {
            extend(all, j, row);
            extend(all, (REACHES + 1) * row + j, -row);
        }
        return all;
    }

    /** Flows over the reach; conductances over the root of the lane's flow, so that both vanish and grow together. */
    private void put(LaneNode node, double reach, double[] out, int at) {
        out[at + Lanes.FAN_FLOW] = node.fanFlow() / reach;
        out[at + Lanes.FLAP_FLOW] = node.flow().flapMassFlow() / reach;
        double[] passing = new double[columns.lanes()];
        for (int kind = 0; kind < laneOfKind.length; kind++) {
            double flow = node.flux(kind) * tiles.area(kind);
            out[at + columns.flow(laneOfKind[kind])] += flow / reach;
            passing[laneOfKind[kind]] += Math.max(STILL, Math.abs(flow));
        }
        for (int kind = 0; kind < laneOfKind.length; kind++) {
            int lane = laneOfKind[kind];
            for (int core = 0; core < columns.cores(); core++) {
                out[at + columns.conductance(lane, core)] +=
                        node.conductance(kind, core, node.flux(kind)) / Math.sqrt(passing[lane]);
            }
        }
    }

    /** Without reach nothing flows; conductance over root of flow is that of the nearest node. */
    private void still(double[] none, double[] nearest) {
        for (int c = 0; c < none.length; c++) {
            none[c] = c % columns.size() < columns.first(0) ? 0.0 : nearest[c];
        }
    }

    private static void extend(double[][] all, int at, int step) {
        for (int c = 0; c < all[at].length; c++) {
            all[at][c] = beyond(all[at + step][c], all[at + 2 * step][c], all[at + 3 * step][c]);
        }
    }

    /** One place further along the parabola through three. */
    private static double beyond(double nearest, double next, double farthest) {
        return 3.0 * (nearest - next) + farthest;
    }

    static double rearRatio(int which) {
        return REAR_RATIOS[which];
    }

    private double reach(int node) {
        return reachStep * node * reachStep * node;
    }

    private double share(int reach, int share) {
        double least = leastShare[reach + 1];
        return Math.min(1.0, least + (1.0 - least) * share / (SHARES - 1));
    }

    /** Air speed at a node, m/s. */
    double speed(int reach, int share) {
        return balanceSpeed * reach(reach) * Math.sqrt(1.0 - share(reach, share));
    }

    /** Fan ratio at a node. */
    double fan(int reach, int share) {
        return reach(reach) * Math.sqrt(share(reach, share));
    }

    LaneColumns columns() {
        return columns;
    }

    /** Face area of every lane, m2. */
    double[] areas() {
        double[] areas = new double[columns.lanes()];
        for (int kind = 0; kind < laneOfKind.length; kind++) {
            areas[laneOfKind[kind]] += tiles.area(kind);
        }
        return areas;
    }

    /** Mean recovery of the face less base pressure coefficient. */
    double ram() {
        return ram;
    }

    /** m. */
    double draughtHeight() {
        return draughtHeight;
    }

    /** Air speed whose mean ram pressure is that of the fan at full speed without flow, m/s. */
    double balanceSpeed() {
        return balanceSpeed;
    }

    /** Between two nodes, of the root of the reach. */
    double reachStep() {
        return reachStep;
    }

    double[] leastShare() {
        return leastShare;
    }

    double[][] nodes() {
        return nodes;
    }

    double[] windmilling() {
        return windmilling;
    }
}
