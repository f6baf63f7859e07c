package hotday.vehicle.front;

import hotday.physics.fluid.Air;
import hotday.vehicle.airpath.Face;
import hotday.vehicle.airpath.TileFlow;
import hotday.vehicle.airpath.TilePath;
import hotday.vehicle.front.LikeTiles.Kind;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.PlacedCore;
import java.util.Arrays;
import java.util.List;

/** Solves one node of the table of lanes, at the reference air and without natural draught. Each solution begins at the last one. */
final class LaneNode {
    static final double TEMPERATURE = 308.15; // K, of the reference air
    static final double PRESSURE = 101325.0;
    static final double DENSITY = Air.density(PRESSURE, TEMPERATURE);
    static final double VISCOSITY = Air.viscosity(TEMPERATURE);

    private final LikeTiles tiles;
    private final int[] laneOfKind;
    private final LaneColumns columns;
    private final List<PlacedCore> cores;
    private final double windmillFlow; // of a fan at full speed, m3/s
    private final TilePath free;
    private final TilePath driven;
    private final TileFlow freeFlow;
    private final TileFlow drivenFlow;
    private final double[] coreTemperature;

    LaneNode(VehicleSpec spec, Face face, LikeTiles tiles, int[] laneOfKind, LaneColumns columns) {
        this.tiles = tiles;
        this.laneOfKind = laneOfKind;
        this.columns = columns;
        this.cores = spec.stack().cores();
        this.windmillFlow = face.fans().get(0).curve().windmillFlow(1.0);
        this.free = TilePath.compile(tiles.row(true));
        this.driven = TilePath.compile(tiles.row(false));
        this.freeFlow = free.start();
        this.drivenFlow = driven.start();
        int kinds = tiles.kinds().size();
        this.coreTemperature = new double[kinds * kinds * cores.size()];
    }

    /** Fan speed ratio up to which a stream of this speed turns the rotors by itself, 0 or more. */
    double windmilling(double speed, double rearRatio) {
        solve(free, freeFlow, speed, 0.0, rearRatio);
        return Math.max(0.0, freeFlow.fanFlow(0)) / windmillFlow;
    }

    /** Flows and conductances with fans that never run free. */
    void at(double speed, double fanRatio, double rearRatio, double[] out) {
        solve(driven, drivenFlow, speed, fanRatio, rearRatio);
        Arrays.fill(out, 0.0);
        out[Lanes.REVERSED] = drivenFlow.reversedMassFlow();
        out[Lanes.FLAP_FLOW] = drivenFlow.flapMassFlow();
        for (int fan = 0; fan < driven.face().fans().size(); fan++) {
            out[Lanes.FAN_FLOW] += drivenFlow.fanFlow(fan);
        }
        for (int kind = 0; kind < laneOfKind.length; kind++) {
            add(kind, Math.max(0.0, DENSITY * drivenFlow.velocity(kind)), out);
        }
    }

    private void add(int kind, double flux, double[] out) {
        int lane = laneOfKind[kind];
        out[columns.flow(lane)] += flux * tiles.area(kind);
        for (int i = 0; i < cores.size(); i++) {
            if (tiles.kinds().get(kind).covers(i)) {
                PlacedCore core = cores.get(i);
                double perArea = core.airConductance()
                        / core.place().area()
                        * Math.pow(flux / Front.REFERENCE_FLUX, core.airExponent());
                out[columns.conductance(lane, i)] += perArea * tiles.area(kind);
            }
        }
    }

    private void solve(TilePath path, TileFlow flow, double speed, double fanRatio, double rearRatio) {
        flow.air(speed, TEMPERATURE, PRESSURE, rearRatio * TEMPERATURE);
        for (int fan = 0; fan < path.face().fans().size(); fan++) {
            flow.fan(fan, fanRatio);
        }
        for (int kind = 0; kind < laneOfKind.length; kind++) {
            warm(kind, rearRatio);
        }
        path.solve(flow, coreTemperature);
    }

    private void warm(int kind, double rearRatio) {
        int kinds = laneOfKind.length;
        for (int i = 0; i < cores.size(); i++) {
            double way = way(cores, tiles.kinds().get(kind), i);
            coreTemperature[kind * kinds * cores.size() + i * kinds + kind] =
                    TEMPERATURE * (1.0 + way * (rearRatio - 1.0));
        }
    }

    /** Part of its warming that air has behind it in the middle of a core, 0..1: by conductance per face area, core after core. */
    static double way(List<PlacedCore> cores, Kind kind, int core) {
        double before = 0.0;
        double all = 0.0;
        for (int i = 0; i < cores.size(); i++) {
            double part = kind.covers(i)
                    ? cores.get(i).airConductance() / cores.get(i).place().area()
                    : 0.0;
            before += i < core ? part : i == core ? 0.5 * part : 0.0;
            all += part;
        }
        return all > 0.0 ? before / all : 0.0;
    }
}
