package hotday.vehicle.front;

import hotday.physics.fluid.Air;
import hotday.vehicle.airpath.Face;
import hotday.vehicle.airpath.TileFlow;
import hotday.vehicle.airpath.TilePath;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.PlacedCore;
import java.nio.file.Path;
import java.util.Arrays;

/** The whole tiled face of a vehicle beside its lanes, with the air in each core as warm as the table of lanes takes it. */
final class TiledFront {
    static final double SPECIFIC_HEAT = 1007.0; // J/(kg K) of air
    private static final int SWEEPS = 60;

    final VehicleSpec spec;
    final Face face;
    final LikeTiles likeTiles;
    final TilePath path;
    final TileFlow flow;
    final LaneNode node;
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
        this.coreTemperature = new double[face.grid().tiles() * face.cores().size()];
        this.node = new LaneNode(spec.stack().cores(), likeTiles, true);
    }

    static VehicleSpec demo(String name) {
        return BuildSheet.read(Path.of(
                        System.getProperty("hotday.root"),
                        "study/src/main/resources/hotday/study/demo/builds",
                        name,
                        "build.yaml"))
                .vehicle();
    }

    /** With the air in the cores as warm as lanes take it, which goes by the speeds of the same Reynolds number. */
    TileFlow solve(double speed, double fan, double temperature, double pressure, double rearRatio) {
        double reduced =
                LaneNode.VISCOSITY / LaneNode.DENSITY * Air.density(pressure, temperature) / Air.viscosity(temperature);
        node.solve(speed * reduced, fan * reduced, rearRatio);
        int cores = face.cores().size();
        for (int i = 0; i < coreTemperature.length; i++) {
            int kind = likeTiles.kinds().indexOf(LikeTiles.kind(face, i / cores));
            coreTemperature[i] = temperature * (1.0 + node.warming(kind, i % cores) * (rearRatio - 1.0));
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

    private double conductance(int core, int tile) {
        return conductance(core, tile, Math.max(0.0, density * face.grid().area(tile) * flow.velocity(tile)));
    }

    /** Air side of a core at a tile that passes a mass flow, W/K; 0 where the core does not stand. */
    private double conductance(int core, int tile, double massFlow) {
        PlacedCore c = spec.stack().cores().get(core);
        double area = face.grid().area(tile);
        return LikeTiles.kind(face, tile).covers(core)
                ? area
                        * c.airConductance()
                        / c.place().area()
                        * Math.pow(massFlow / area / Front.REFERENCE_FLUX, c.airExponent())
                : 0.0;
    }

    /**
     * Heat of each core, W, with one temperature all over its fluid: tile by tile, each core's own air, the air behind settled; tiles
     * that blow backward take air from behind and pass the cores in reverse.
     */
    double[] heats(double speed, double fan, double temperature, double pressure, double[] fluid) {
        double[] heats = new double[fluid.length];
        double[] local = new double[coreTemperature.length];
        Arrays.fill(local, temperature);
        double rear = temperature + 20.0;
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            solve(speed, fan, temperature, pressure, rear / temperature, local);
            Arrays.fill(heats, 0.0);
            double mass = 0.0;
            double carried = 0.0;
            for (int tile = 0; tile < face.grid().tiles(); tile++) {
                double through = density * face.grid().area(tile) * flow.velocity(tile);
                double behind = march(tile, through, through >= 0.0 ? temperature : rear, fluid, local, heats);
                mass += Math.max(0.0, through);
                carried += Math.max(0.0, through) * behind;
            }
            rear += 0.5 * (mass > 0.0 ? carried / mass - rear : 0.0);
        }
        return heats;
    }

    private double march(int tile, double flow, double entering, double[] fluid, double[] local, double[] heats) {
        double air = entering;
        double capacity = SPECIFIC_HEAT * Math.abs(flow);
        for (int place = 0; place < fluid.length; place++) {
            int core = flow >= 0.0 ? place : fluid.length - 1 - place;
            double given = capacity > 0.0
                    ? (1.0 - Math.exp(-conductance(core, tile, Math.abs(flow)) / capacity)) * (fluid[core] - air)
                    : 0.0;
            local[tile * fluid.length + core] = air + 0.5 * given;
            heats[core] += capacity * given;
            air += given;
        }
        return air;
    }
}
