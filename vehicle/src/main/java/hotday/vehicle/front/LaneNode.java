package hotday.vehicle.front;

import hotday.physics.fluid.Air;
import hotday.vehicle.airpath.TileFlow;
import hotday.vehicle.airpath.TilePath;
import hotday.vehicle.spec.VehicleSpec.CoreKind;
import hotday.vehicle.spec.VehicleSpec.PlacedCore;
import java.util.Arrays;
import java.util.List;

/**
 * The air path of a row of kinds at the reference air and without natural draught, for the nodes of the table of lanes. Each solution
 * begins at the last one.
 *
 * <p>The air in every core is as warm as cores at usual temperatures make it, all of them scaled so that the air behind has the temperature
 * asked for.
 */
final class LaneNode {
    static final double TEMPERATURE = 308.15; // K, of the reference air
    static final double PRESSURE = 101325.0;
    static final double DENSITY = Air.density(PRESSURE, TEMPERATURE);
    static final double VISCOSITY = Air.viscosity(TEMPERATURE);

    private static final double LEAST_FLUX = 1e-6; // kg/(s m2)
    private static final double MOST_WARMING = 3.0; // of that of the mean air
    private static final double LEAST_MEAN = 0.1; // K

    private final LikeTiles tiles;
    private final List<PlacedCore> cores;
    private final TilePath path;
    private final TileFlow flow;
    private final double[]
            warming; // kind x cores + core: of the air in the middle of a core, over that of all air behind
    private final double[] coreTemperature;

    /** @param free false for fans whose rotor is never turned by the stream */
    LaneNode(List<PlacedCore> cores, LikeTiles tiles, boolean free) {
        this.tiles = tiles;
        this.cores = cores;
        this.path = TilePath.compile(tiles.row(free));
        this.flow = path.start();
        int kinds = tiles.kinds().size();
        this.warming = new double[kinds * cores.size()];
        this.coreTemperature = new double[kinds * kinds * cores.size()];
    }

    /** Solves; twice where the air warms, because what warms it depends on its speed. */
    void solve(double speed, double fanRatio, double rearRatio) {
        flow.air(speed, TEMPERATURE, PRESSURE, rearRatio * TEMPERATURE);
        for (int fan = 0; fan < path.face().fans().size(); fan++) {
            flow.fan(fan, fanRatio);
        }
        Arrays.fill(warming, 0.5);
        temperatures(rearRatio);
        path.solve(flow, coreTemperature);
        if (rearRatio != 1.0) {
            warm();
            temperatures(rearRatio);
            path.solve(flow, coreTemperature);
        }
    }

    private void temperatures(double rearRatio) {
        int kinds = tiles.kinds().size();
        for (int kind = 0; kind < kinds; kind++) {
            for (int core = 0; core < cores.size(); core++) {
                coreTemperature[(kind * cores.size() + core) * kinds + kind] =
                        TEMPERATURE * (1.0 + warming(kind, core) * (rearRatio - 1.0));
            }
        }
    }

    private void warm() {
        double mass = 0.0;
        double carried = 0.0;
        for (int kind = 0; kind < tiles.kinds().size(); kind++) {
            double through = Math.max(LEAST_FLUX, flux(kind));
            double behind = march(kind, through);
            mass += tiles.area(kind) * through;
            carried += tiles.area(kind) * through * behind;
        }
        double mean = Math.max(LEAST_MEAN, carried / mass);
        for (int i = 0; i < warming.length; i++) {
            warming[i] = Math.min(MOST_WARMING, warming[i] / mean);
        }
    }

    /** Air of one kind through its cores, K over the face. */
    private double march(int kind, double flux) {
        double air = 0.0;
        for (int core = 0; core < cores.size(); core++) {
            double perArea = conductance(kind, core, flux) / tiles.area(kind);
            double given = -Math.expm1(-perArea / (flux * Front.SPECIFIC_HEAT))
                    * (excess(cores.get(core).kind()) - air);
            warming[kind * cores.size() + core] = air + 0.5 * given;
            air += given;
        }
        return air;
    }

    /** What a core's fluid is usually above outside air on a hot day, K; common practice, no source. */
    private static double excess(CoreKind kind) {
        return switch (kind) {
            case GEARBOX_COOLER -> 65.0;
            case CONDENSER -> 25.0;
            case CHARGE_AIR_COOLER -> 45.0;
            case RADIATOR -> 60.0;
        };
    }

    /** Air-side conductance of a core in all tiles of a kind, W/K, at a mass flux of either sign, kg/(s m2). */
    double conductance(int kind, int core, double flux) {
        if (!tiles.kinds().get(kind).covers(core)) {
            return 0.0;
        }
        PlacedCore c = cores.get(core);
        double grown = Math.pow(Math.abs(flux) / Front.REFERENCE_FLUX, c.airExponent());
        return Math.signum(flux)
                * grown
                * tiles.area(kind)
                * c.airConductance()
                / c.place().area();
    }

    /** Solved mass flux of a kind, kg/(s m2), below 0 where air comes out of the front. */
    double flux(int kind) {
        return DENSITY * flow.velocity(kind);
    }

    /** Warming of the air in the middle of a core over that of all air behind the cores. */
    double warming(int kind, int core) {
        return warming[kind * cores.size() + core];
    }

    TileFlow flow() {
        return flow;
    }

    /** Through all fans, m3/s. */
    double fanFlow() {
        double sum = 0.0;
        for (int fan = 0; fan < path.face().fans().size(); fan++) {
            sum += flow.fanFlow(fan);
        }
        return sum;
    }
}
