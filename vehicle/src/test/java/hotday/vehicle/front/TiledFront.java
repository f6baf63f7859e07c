package hotday.vehicle.front;

import hotday.physics.fluid.Air;
import hotday.vehicle.airpath.Face;
import hotday.vehicle.airpath.TileFlow;
import hotday.vehicle.airpath.TilePath;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.PlacedCore;
import java.nio.file.Path;

/** The whole tiled face of a vehicle beside its lanes, with the air in each core as warm as the table of lanes takes it. */
final class TiledFront {
    final VehicleSpec spec;
    final Face face;
    final LikeTiles likeTiles;
    final TilePath path;
    final TileFlow flow;
    final double[] way; // part of the warming, tile x cores + core
    final double[] coreTemperature;
    double density;

    TiledFront(VehicleSpec spec, boolean draught) {
        this.spec = spec;
        Face f = FaceOf.face(spec);
        this.face = new Face(
                f.grid(),
                f.cores(),
                f.openings(),
                f.blanked(),
                f.shroud(),
                f.fans(),
                f.flaps(),
                f.exit(),
                f.basePressure(),
                draught ? f.draughtHeight() : 0.0,
                f.sealing());
        this.likeTiles = LikeTiles.of(face);
        this.path = TilePath.compile(face);
        this.flow = path.start();
        this.way = new double[face.grid().tiles() * face.cores().size()];
        this.coreTemperature = new double[way.length];
        for (int i = 0; i < way.length; i++) {
            int tile = i / face.cores().size();
            way[i] = LaneNode.way(
                    spec.stack().cores(),
                    LikeTiles.kind(face, tile),
                    i % face.cores().size());
        }
    }

    static VehicleSpec demo(String name) {
        return BuildSheet.read(Path.of(
                        System.getProperty("hotday.root"),
                        "study/src/main/resources/hotday/study/demo/builds",
                        name,
                        "build.yaml"))
                .vehicle();
    }

    TileFlow solve(double speed, double fan, double temperature, double pressure, double rearRatio) {
        for (int i = 0; i < way.length; i++) {
            coreTemperature[i] = temperature * (1.0 + way[i] * (rearRatio - 1.0));
        }
        return solve(speed, fan, temperature, pressure, rearRatio, coreTemperature);
    }

    TileFlow solve(
            double speed, double fan, double temperature, double pressure, double rearRatio, double[] temperatures) {
        density = Air.density(pressure, temperature);
        flow.air(speed, temperature, pressure, rearRatio * temperature);
        for (int i = 0; i < face.fans().size(); i++) {
            flow.fan(i, fan);
        }
        path.solve(flow, temperatures);
        return flow;
    }

    /** Through all fans, m3/s. */
    double fanFlow() {
        double sum = 0.0;
        for (int i = 0; i < face.fans().size(); i++) {
            sum += flow.fanFlow(i);
        }
        return sum;
    }

    /** Air side of a core, W/K, without tiles that blow backward. */
    double conductance(int core) {
        double sum = 0.0;
        for (int tile = 0; tile < face.grid().tiles(); tile++) {
            sum += conductance(core, tile);
        }
        return sum;
    }

    /** Air side of a core at a tile, W/K; 0 where air comes back or the core does not stand. */
    double conductance(int core, int tile) {
        PlacedCore c = spec.stack().cores().get(core);
        double flux = Math.max(0.0, flow.velocity(tile) * density);
        return LikeTiles.kind(face, tile).covers(core)
                ? face.grid().area(tile) * c.airConductance() / c.place().area() * Math.pow(flux / 3.6, c.airExponent())
                : 0.0;
    }
}
