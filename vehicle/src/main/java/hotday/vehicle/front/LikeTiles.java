package hotday.vehicle.front;

import hotday.physics.component.FanCurve;
import hotday.vehicle.airpath.Face;
import hotday.vehicle.airpath.Grid;
import hotday.vehicle.airpath.Rectangle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Tiles with the same cores, inlet and rear see the same pressures and carry the same air speed: a face is solved just as well
 * with one wide tile for each kind, side by side in one row, the shrouded ones first.
 */
final class LikeTiles {
    private static final double SMALLEST_DISC = 1e-3; // m; in a row the place of a pulling fan says nothing

    /** @param cores bit i stands for core i */
    record Kind(long cores, Face.Inlet inlet, boolean shrouded) {
        static final Comparator<Kind> ORDER = Comparator.comparing(Kind::shrouded)
                .reversed()
                .thenComparing(Kind::cores)
                .thenComparing(kind -> kind.inlet().recovery())
                .thenComparing(kind -> kind.inlet().loss());

        boolean covers(int core) {
            return (cores >> core & 1L) != 0L;
        }
    }

    private final Face face;
    private final List<Kind> kinds;
    private final double[] area;

    private LikeTiles(Face face, Map<Kind, Double> areas) {
        this.face = face;
        this.kinds = List.copyOf(areas.keySet());
        this.area = areas.values().stream().mapToDouble(Double::doubleValue).toArray();
    }

    static LikeTiles of(Face face) {
        Map<Kind, Double> areas = new TreeMap<>(Kind.ORDER);
        for (int tile = 0; tile < face.grid().tiles(); tile++) {
            areas.merge(kind(face, tile), face.grid().area(tile), Double::sum);
        }
        return new LikeTiles(face, areas);
    }

    static Kind kind(Face face, int tile) {
        double x = face.grid().middleX(tile);
        double y = face.grid().middleY(tile);
        long cores = 0L;
        for (int core = 0; core < face.cores().size(); core++) {
            cores |= face.cores().get(core).place().holds(x, y) ? 1L << core : 0L;
        }
        Face.Inlet inlet = face.openings().stream()
                .filter(opening -> opening.place().holds(x, y))
                .map(Face.Opening::inlet)
                .findFirst()
                .orElse(face.blanked());
        boolean shrouded = !face.fans().isEmpty() && face.shroud().place().holds(x, y);
        return new Kind(cores, inlet, shrouded);
    }

    List<Kind> kinds() {
        return kinds;
    }

    /** m2. */
    double area(int kind) {
        return area[kind];
    }

    /** Pressure recovery, mean by area. */
    double recovery() {
        double sum = 0.0;
        double all = 0.0;
        for (int kind = 0; kind < area.length; kind++) {
            sum += area[kind] * kinds.get(kind).inlet().recovery();
            all += area[kind];
        }
        return sum / all;
    }

    /**
     * The face as a row of kinds, without natural draught; fans must pull. Every kind has every core's number: core i of kind k is i x
     * number of kinds + k.
     *
     * @param free false for fans whose rotor is never turned by the stream: they then go on along the driven curve
     */
    Face row(boolean free) {
        List<Double> x = new ArrayList<>(List.of(0.0));
        for (double each : area) {
            x.add(x.get(x.size() - 1) + each / face.grid().height());
        }
        Grid grid = new Grid(x, List.of(0.0, face.grid().height()));
        List<Face.Core> cores = new ArrayList<>();
        for (int core = 0; core < face.cores().size(); core++) {
            for (int kind = 0; kind < area.length; kind++) {
                cores.add(core(core, kind, column(grid, kind, kind + 1)));
            }
        }
        List<Face.Opening> openings = new ArrayList<>();
        for (int kind = 0; kind < area.length; kind++) {
            openings.add(new Face.Opening(
                    column(grid, kind, kind + 1), kinds.get(kind).inlet()));
        }
        int shrouded = (int) kinds.stream().filter(Kind::shrouded).count();
        return new Face(
                grid,
                cores,
                openings,
                face.blanked(),
                new Face.Shroud(
                        column(grid, 0, shrouded == 0 ? area.length : shrouded),
                        face.shroud().gap()),
                face.fans().stream().map(fan -> fan(fan.curve(), free)).toList(),
                face.flaps(),
                face.exit(),
                face.basePressure(),
                0.0,
                face.sealing());
    }

    private static Rectangle column(Grid grid, int from, int to) {
        double left = grid.x().get(from);
        return new Rectangle(left, 0.0, grid.x().get(to) - left, grid.height());
    }

    /** Where a core does not stand, one without resistance does. */
    private Face.Core core(int core, int kind, Rectangle place) {
        Face.Core there = face.cores().get(core);
        boolean stands = kinds.get(kind).covers(core);
        return new Face.Core(
                there.name(),
                there.depth() * face.cores().size() + core,
                place,
                stands ? there.linear() : 0.0,
                stands ? there.square() : 0.0);
    }

    private static Face.Fan fan(FanCurve c, boolean free) {
        FanCurve curve = new FanCurve(
                c.stall(),
                c.linear(),
                c.square(),
                free ? c.windmill() : -c.square(),
                c.power(),
                c.powerLinear(),
                c.powerSquare(),
                c.referenceDensity());
        return new Face.ElectricFan(curve, new Face.Disc(0.0, 0.0, SMALLEST_DISC), false);
    }
}
