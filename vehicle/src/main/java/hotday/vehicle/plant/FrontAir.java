package hotday.vehicle.plant;

import hotday.physics.exchanger.Decay;
import hotday.vehicle.front.Lanes;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.CoreKind;
import hotday.vehicle.spec.VehicleSpec.PlacedCore;
import java.util.List;

/**
 * The air of the stack during one evaluation: lanes side by side, cores one behind the other. A core asks for its
 * conductance to the air that reaches it, and gives its heat back, which warms the air for the next.
 */
final class FrontAir {
    private static final double SPECIFIC_HEAT = 1007.0; // J/(kg K) of air, 20..60 degC
    /** Inside of gearbox and charge-air coolers, as conductive as their air side at 3 m/s; from memory. */
    private static final double INSIDE_SHARE = 1.0;

    private final Lanes lanes;
    private final int count;
    private final CoreKind[] kinds;
    private final double[] inside;
    private final double[] areaShare; // of a core in a lane, by lane and core

    FrontAir(VehicleSpec spec, Lanes lanes) {
        this.lanes = lanes;
        this.count = lanes.lanes();
        List<PlacedCore> cores = spec.stack().cores();
        areaShare = new double[count * cores.size()];
        for (int c = 0; c < cores.size(); c++) {
            shareOut(c, cores.size());
        }
        kinds = cores.stream().map(PlacedCore::kind).toArray(CoreKind[]::new);
        inside = cores.stream()
                .mapToDouble(core -> INSIDE_SHARE * core.airConductance())
                .toArray();
    }

    private void shareOut(int core, int cores) {
        double whole = 0.0;
        for (int l = 0; l < count; l++) {
            whole += lanes.covers(l, core) ? lanes.area(l) : 0.0;
        }
        for (int l = 0; l < count; l++) {
            areaShare[l * cores + core] = lanes.covers(l, core) ? lanes.area(l) / whole : 0.0;
        }
    }

    int cores() {
        return kinds.length;
    }

    CoreKind kind(int core) {
        return kinds[core];
    }

    /** Inside conductance of a core whose fluid side the sheet does not know, W/K. */
    double inside(int core) {
        return inside[core];
    }

    /** Takes the flows of this instant; every lane starts at the air in front. */
    void start(double equivalentSpeed, double fanRatio, double face, double pressure, double rearRatio, Work work) {
        lanes.look(equivalentSpeed, fanRatio, face, pressure, rearRatio, work.air);
        double total = 0.0;
        for (int l = 0; l < count; l++) {
            double rate = work.air[lanes.flow(l)] * SPECIFIC_HEAT;
            work.rate[l] = rate;
            work.lane[l] = face;
            total += rate;
        }
        work.rateOfAll = total;
    }

    /** Sets the air in front of every lane again, flows as they are. */
    void startAt(double face, Work work) {
        for (int l = 0; l < count; l++) {
            work.lane[l] = face;
        }
    }

    double massFlow(Work work) {
        return work.rateOfAll / SPECIFIC_HEAT;
    }

    /** Mass flow that comes out of the front over what goes in. */
    double reversedShare(Work work) {
        double forward = Math.max(1e-6, massFlow(work));
        double reversed = work.air[Lanes.REVERSED];
        return reversed / (reversed + forward);
    }

    /**
     * Heat per kelvin between a fluid at one temperature and the air that reaches the core, W/K; fills the parts of the
     * lanes and their mean air temperature.
     *
     * @param insideConductance fluid side of the whole core, W/K
     * @param level multiplier on the air side
     */
    double conductance(int core, double insideConductance, double level, Work work) {
        double sum = 0.0;
        double weighted = 0.0;
        for (int l = 0; l < count; l++) {
            double airSide = level * work.air[lanes.conductance(l, core)];
            double part = 0.0;
            if (airSide > 0.0 && work.rate[l] > 0.0) {
                double fluidSide = insideConductance * areaShare[l * kinds.length + core];
                double ua = airSide * fluidSide / (airSide + fluidSide);
                part = work.rate[l] * Decay.gone(ua / work.rate[l]);
            }
            work.part[l] = part;
            sum += part;
            weighted += part * work.lane[l];
        }
        work.mean = sum > 0.0 ? weighted / sum : work.lane[0];
        work.sum = sum;
        return sum;
    }

    /** Air side of a core as one, W/K, and the capacity rate of the air through it, W/K. */
    double airSide(int core, Work work) {
        double side = 0.0;
        double rate = 0.0;
        for (int l = 0; l < count; l++) {
            double part = work.air[lanes.conductance(l, core)];
            side += part;
            rate += part > 0.0 ? work.rate[l] : 0.0;
        }
        work.coreRate = rate;
        return side;
    }

    /** Warms the lanes by a heat, shared as a fluid of one temperature would share it; after {@link #conductance}. */
    void give(double heat, Work work) {
        if (!(work.sum > 0.0)) {
            return;
        }
        double fluid = work.mean + heat / work.sum;
        for (int l = 0; l < count; l++) {
            if (work.part[l] > 0.0) {
                work.lane[l] += work.part[l] * (fluid - work.lane[l]) / work.rate[l];
            }
        }
    }
}
