package hotday.vehicle.airpath;

import hotday.physics.component.AirPath;
import hotday.physics.fluid.Air;
import hotday.vehicle.airpath.Face.Core;
import hotday.vehicle.airpath.Face.Fan;
import hotday.vehicle.airpath.Face.Inlet;
import hotday.vehicle.airpath.Face.Opening;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A face ready to solve: which air goes where. Immutable, shared between threads; each thread brings its {@link TileFlow}.
 *
 * <p>For a pressure behind it every tile is closed-form. Two balances remain: plenum (shrouded tiles = fans + flaps + gaps) and bay
 * (all tiles = exit). Unknown in each is the mass flow that leaves, because pressures are smooth in flows where flows are not in
 * pressures; each balance then falls by at least one per unit, so its own residual brackets the root, and Newton inside that bracket always
 * ends. The plenum is solved inside the bay, a pushing fan inside both. Nothing is allocated. Equations: docs/physics/air-path.md.
 */
public final class TilePath {
    private static final double REFERENCE_DENSITY = 1.2; // kg/m3, of core resistances
    private static final double REFERENCE_VISCOSITY = Air.viscosity(293.15);
    private static final double BAY = 1e-12; // of what flows
    private static final double PLENUM = 3e-14;
    private static final double PUSHER = 1e-14;
    private static final double STILL = 1e-15; // mean face speed taken as none, m/s
    /** Keeps the flow of a tile smooth where nothing drives it, Pa s/m; 0.3 mPa at 3 m/s. */
    private static final double LEAST_LINEAR = 1e-4;

    private static final int MOST = 200; // steps of one root; Newton takes 2 to 5

    private final Face face;
    private final int cores;
    private final double faceArea;
    private final boolean pulled;
    private final int[] order; // tiles by group: for each pusher (none first) the shrouded, then the others
    private final int[] begin; // of each group in the order
    private final double[] area;
    private final double[] recovery;
    private final double[] loss; // half the loss coefficient
    private final double[] linear; // all cores of the tile
    private final double[] square;
    private final int[] firstLayer; // layers of a tile: cores that stand there
    private final int[] layerCore;
    private final int[] fanPlace; // place of a fan among those that pull or push

    private TilePath(Face face) {
        this.face = face;
        this.cores = face.cores().size();
        Grid grid = face.grid();
        int tiles = grid.tiles();
        this.pulled = face.fans().stream().anyMatch(fan -> !fan.pushes());
        List<Fan> pushers = face.fans().stream().filter(Fan::pushes).toList();
        int[] group = IntStream.range(0, tiles).map(t -> group(t, pushers)).toArray();
        this.order = IntStream.range(0, tiles)
                .boxed()
                .sorted((s, t) -> group[s] - group[t])
                .mapToInt(Integer::intValue)
                .toArray();
        this.begin = IntStream.rangeClosed(0, 2 * (pushers.size() + 1))
                .map(g -> (int) IntStream.of(group).filter(other -> other < g).count())
                .toArray();
        this.area = IntStream.of(order).mapToDouble(grid::area).toArray();
        this.faceArea = grid.width() * grid.height();
        this.recovery =
                IntStream.of(order).mapToDouble(t -> inlet(t).recovery()).toArray();
        this.loss = IntStream.of(order).mapToDouble(t -> 0.5 * inlet(t).loss()).toArray();
        int[][] layers = IntStream.of(order).mapToObj(this::coresAt).toArray(int[][]::new);
        this.linear = IntStream.range(0, tiles)
                .mapToDouble(i -> IntStream.of(layers[i])
                        .mapToDouble(c -> core(c).linear())
                        .sum())
                .toArray();
        this.square = IntStream.range(0, tiles)
                .mapToDouble(i -> IntStream.of(layers[i])
                        .mapToDouble(c -> core(c).square())
                        .sum())
                .toArray();
        this.layerCore =
                IntStream.range(0, tiles).flatMap(i -> IntStream.of(layers[i])).toArray();
        this.firstLayer = IntStream.rangeClosed(0, tiles)
                .map(i -> IntStream.range(0, i).map(j -> layers[j].length).sum())
                .toArray();
        this.fanPlace = IntStream.range(0, face.fans().size())
                .map(f -> (int) face.fans().stream()
                        .limit(f)
                        .filter(other -> other.pushes() == face.fans().get(f).pushes())
                        .count())
                .toArray();
    }

    /** Compiles a face. */
    public static TilePath compile(Face face) {
        return new TilePath(face);
    }

    /** Fresh arrays for one thread, fans at rest, still air of 20 degC. */
    public TileFlow start() {
        return new TileFlow(face);
    }

    public Face face() {
        return face;
    }

    private Core core(int core) {
        return face.cores().get(core);
    }

    private int group(int tile, List<Fan> pushers) {
        double x = face.grid().middleX(tile);
        double y = face.grid().middleY(tile);
        int pusher = 0;
        for (int p = pushers.size(); p > 0; p--) {
            Face.Disc disc = pushers.get(p - 1).disc();
            if (disc.holds(x, y) || face.grid().at(disc.x(), disc.y()) == tile) {
                pusher = p;
            }
        }
        boolean shrouded = pulled && face.shroud().place().holds(x, y);
        return 2 * pusher + (shrouded ? 0 : 1);
    }

    private Inlet inlet(int tile) {
        double x = face.grid().middleX(tile);
        double y = face.grid().middleY(tile);
        return face.openings().stream()
                .filter(opening -> opening.place().holds(x, y))
                .map(Opening::inlet)
                .findFirst()
                .orElse(face.blanked());
    }

    private int[] coresAt(int tile) {
        double x = face.grid().middleX(tile);
        double y = face.grid().middleY(tile);
        return IntStream.range(0, cores)
                .filter(c -> core(c).place().holds(x, y))
                .toArray();
    }

    /** Solves with all cores at outside temperature. */
    public void solve(TileFlow flow) {
        prepare(flow);
        double heavy = flow.density / REFERENCE_DENSITY;
        double sticky = Air.viscosity(flow.ambient) / REFERENCE_VISCOSITY;
        for (int i = 0; i < order.length; i++) {
            resist(flow, i, sticky * linear[i], heavy * square[i]);
        }
        balance(flow);
    }

    /**
     * Solves with each core's own air.
     *
     * @param coreTemperature mean air temperature in a core at a tile, K, at tile x number of cores + core; read where the core stands
     */
    public void solve(TileFlow flow, double[] coreTemperature) {
        prepare(flow);
        for (int i = 0; i < order.length; i++) {
            double a = 0.0;
            double b = 0.0;
            for (int layer = firstLayer[i]; layer < firstLayer[i + 1]; layer++) {
                int core = layerCore[layer];
                double temperature = coreTemperature[order[i] * cores + core];
                double thinner = temperature / flow.ambient; // velocity in the core over that at the face
                a += Air.viscosity(temperature)
                        / REFERENCE_VISCOSITY
                        * thinner
                        * core(core).linear();
                b += flow.density / REFERENCE_DENSITY * thinner * core(core).square();
            }
            resist(flow, i, a, b);
        }
        balance(flow);
    }

    private void prepare(TileFlow s) {
        double ram = AirPath.ram(1.0, s.density, s.speed);
        double draught = AirPath.draught(s.density, face.draughtHeight(), s.ambient, s.rearTemperature);
        for (int i = 0; i < order.length; i++) {
            s.front[i] = recovery[i] * ram + draught;
        }
        s.basePressure = face.basePressure() * ram;
        s.exitResistance =
                AirPath.opening(face.exit().loss(), s.rearDensity, face.exit().area())
                        / (s.rearDensity * s.rearDensity);
        s.outlet.density(s.rearDensity);
        s.evaluations = 0;
        for (int fan = 0; fan < fanPlace.length; fan++) {
            boolean pushes = face.fans().get(fan).pushes();
            TurningFan turning = pushes ? s.pushing[fanPlace[fan]] : s.outlet.fan(fanPlace[fan]);
            turning.turn(s.fanSpeed[fan], pushes ? s.density : s.rearDensity);
        }
    }

    private void resist(TileFlow s, int i, double a, double b) {
        s.linear[i] = Math.max(a, LEAST_LINEAR);
        s.square[i] = b + s.density * loss[i];
    }

    /** The bay: air that leaves by the exit is what came in. */
    private void balance(TileFlow s) {
        s.exitRoot.begin(1.0);
        double underhood = underhood(s, s.exitFlow);
        for (int i = 0; i < MOST; i++) {
            plenum(s, underhood);
            double surplus = s.shrouded + s.unshrouded - s.exitFlow;
            if (Math.abs(surplus) <= BAY * s.gross + still(s)) {
                break;
            }
            double slope = byUnderhood(s) * 2.0 * s.exitResistance * Math.abs(s.exitFlow) - 1.0;
            double next = s.exitRoot.next(s.exitFlow, surplus, slope);
            if (next == s.exitFlow) {
                break;
            }
            s.exitFlow = next;
            double moved = underhood(s, next);
            s.plenumFlow += s.plenumFlowByUnderhood * (moved - underhood);
            underhood = moved;
        }
        publish(s, underhood);
    }

    private double still(TileFlow s) {
        return STILL * s.density * faceArea;
    }

    private static double underhood(TileFlow s, double exitFlow) {
        return s.basePressure + s.exitResistance * exitFlow * Math.abs(exitFlow);
    }

    /** All tiles against underhood pressure with the plenum in balance, kg/(s Pa). */
    private static double byUnderhood(TileFlow s) {
        double plenumByUnderhood = 1.0 - s.outlet.slope() * s.plenumFlowByUnderhood;
        return s.plenumFlowByUnderhood + s.crossed * plenumByUnderhood + s.unshroudedByUnderhood;
    }

    /** The plenum at one underhood pressure: shrouded tiles give what fans, flaps and gaps take. */
    private void plenum(TileFlow s, double underhood) {
        if (!pulled) {
            tiles(s, underhood, underhood);
            s.plenumPressure = underhood;
            return;
        }
        s.plenumRoot.begin(1.0);
        for (int i = 0; i < MOST; i++) {
            s.outlet.pass(s.plenumFlow);
            s.plenumPressure = underhood - s.outlet.rise();
            tiles(s, s.plenumPressure, underhood);
            double surplus = s.shrouded - s.plenumFlow;
            if (Math.abs(surplus) <= PLENUM * s.gross + still(s)) {
                break;
            }
            double slope = -s.shroudedByPlenum * s.outlet.slope() - 1.0;
            double next = s.plenumRoot.next(s.plenumFlow, surplus, slope);
            if (next == s.plenumFlow) {
                break;
            }
            s.plenumFlow = next;
        }
        s.plenumFlowByUnderhood = (s.shroudedByPlenum + s.crossed) / (1.0 + s.shroudedByPlenum * s.outlet.slope());
    }

    /** Mass flows of all tiles at plenum and underhood pressure, with their slopes. */
    private void tiles(TileFlow s, double plenum, double underhood) {
        s.evaluations++;
        s.gross = 0.0;
        sum(s, 0, -plenum);
        s.shrouded = s.volume;
        s.shroudedByPlenum = -s.volumeSlope;
        sum(s, 1, -underhood);
        s.unshrouded = s.volume;
        s.unshroudedByUnderhood = -s.volumeSlope;
        s.crossed = 0.0;
        for (int p = 0; p < s.pushing.length; p++) {
            pusher(s, p, plenum, underhood);
        }
        s.shrouded *= s.density;
        s.unshrouded *= s.density;
        s.gross *= s.density;
        s.shroudedByPlenum *= s.density;
        s.unshroudedByUnderhood *= s.density;
        s.crossed *= s.density;
    }

    /** Tiles behind a pushing fan: what they take is what it gives. */
    private void pusher(TileFlow s, int p, double plenum, double underhood) {
        TurningFan fan = s.pushing[p];
        double before = s.gross;
        s.pusherRoot.begin(1.0);
        for (int i = 0; i < MOST; i++) {
            s.gross = before;
            double surplus = pushed(s, p, plenum, underhood);
            if (Math.abs(surplus) <= PUSHER * (s.gross - before) + STILL * faceArea) {
                break;
            }
            double slope = (s.pushedShroudedSlope + s.volumeSlope) * fan.slope(s.pusherFlow[p]) - 1.0;
            double next = s.pusherRoot.next(s.pusherFlow[p], surplus, slope);
            if (next == s.pusherFlow[p]) {
                break;
            }
            s.pusherFlow[p] = next;
        }
        addPushed(s, fan.slope(s.pusherFlow[p]));
    }

    /** What the tiles behind a pushing fan take at its present flow, less that flow, m3/s. */
    private double pushed(TileFlow s, int p, double plenum, double underhood) {
        int group = 2 * (p + 1);
        double rise = s.pushing[p].pressure(s.pusherFlow[p]);
        s.pusherPressure[p] = rise;
        sum(s, group, rise - plenum);
        s.pushedShrouded = s.volume;
        s.pushedShroudedSlope = s.volumeSlope;
        sum(s, group + 1, rise - underhood);
        return s.pushedShrouded + s.volume - s.pusherFlow[p];
    }

    /** Adds the tiles of a pushing fan; the fan gives way when they take more, which couples both sides of the shroud. */
    private static void addPushed(TileFlow s, double fanSlope) {
        double inside = s.pushedShroudedSlope;
        double outside = s.volumeSlope;
        double yields = fanSlope / ((inside + outside) * fanSlope - 1.0);
        s.shrouded += s.pushedShrouded;
        s.unshrouded += s.volume;
        s.shroudedByPlenum -= inside - yields * inside * inside;
        s.unshroudedByUnderhood -= outside - yields * outside * outside;
        s.crossed += yields * inside * outside;
    }

    /** Volume flow of one group at outside density and its slope against the lift, pushing fan less rear pressure. */
    private void sum(TileFlow s, int group, double lift) {
        double volume = 0.0;
        double slope = 0.0;
        double gross = 0.0;
        for (int i = begin[group]; i < begin[group + 1]; i++) {
            double drop = s.front[i] + lift;
            double a = s.linear[i];
            double root = Math.sqrt(a * a + 4.0 * s.square[i] * Math.abs(drop));
            double flow = 2.0 * area[i] * drop / (a + root);
            volume += flow;
            gross += Math.abs(flow);
            slope += area[i] / root;
        }
        s.volume = volume;
        s.volumeSlope = slope;
        s.gross += gross;
    }

    private void publish(TileFlow s, double underhood) {
        s.underhoodPressure = underhood;
        s.intake = 0.0;
        s.reversed = 0.0;
        Arrays.fill(s.coreMassFlow, 0.0);
        for (int group = 0; group < begin.length - 1; group++) {
            double push = group < 2 ? 0.0 : s.pusherPressure[group / 2 - 1];
            double rear = group % 2 == 0 ? s.plenumPressure : underhood;
            for (int i = begin[group]; i < begin[group + 1]; i++) {
                publishTile(s, i, s.front[i] + push - rear);
            }
        }
        for (int fan = 0; fan < fanPlace.length; fan++) {
            publishFan(s, fan);
        }
    }

    private void publishTile(TileFlow s, int i, double drop) {
        double a = s.linear[i];
        double root = Math.sqrt(a * a + 4.0 * s.square[i] * Math.abs(drop));
        double velocity = 2.0 * drop / (a + root);
        double mass = s.density * area[i] * velocity;
        s.velocity[order[i]] = velocity;
        s.intake += Math.max(0.0, mass);
        s.reversed += Math.max(0.0, -mass);
        for (int layer = firstLayer[i]; layer < firstLayer[i + 1]; layer++) {
            s.coreMassFlow[layerCore[layer]] += mass;
        }
    }

    private void publishFan(TileFlow s, int fan) {
        int place = fanPlace[fan];
        boolean pushes = face.fans().get(fan).pushes();
        TurningFan turning = pushes ? s.pushing[place] : s.outlet.fan(place);
        s.fanFlow[fan] = pushes ? s.pusherFlow[place] : s.outlet.fanFlow(place);
        s.fanPressure[fan] = pushes ? s.pusherPressure[place] : s.outlet.rise();
        s.fanState[fan] = turning.state(s.fanFlow[fan]);
        s.shaftPower[fan] = turning.shaftPower(s.fanFlow[fan]);
    }
}
