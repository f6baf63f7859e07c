package hotday.study.shop;

import hotday.physics.fluid.Air;
import hotday.study.face.SettledFront;
import hotday.vehicle.airpath.Grid;
import hotday.vehicle.airpath.Rectangle;
import hotday.vehicle.cases.Case;
import hotday.vehicle.front.FrontView;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.CoreKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Air at every core, means over its face: design day, fan at full speed.
 *
 * @param settled false when this air cannot carry the heat that is asked of it
 */
public record AirAtCores(List<At> cores, boolean settled) {
    public AirAtCores {
        cores = List.copyOf(cores);
    }

    /**
     * Air at one core.
     *
     * @param speed at outside density, m/s
     * @param temperature of the air that reaches it, K
     */
    public record At(CoreKind kind, double speed, double temperature) {}

    static AirAtCores of(VehicleSpec spec, Plant plant, Case kase) {
        FrontView view = SettledFront.of(spec, plant, kase);
        double density = Air.density(Air.isaPressure(spec.altitude()), spec.designAmbient());
        List<At> all = new ArrayList<>();
        for (FrontView.CoreView core : view.cores()) {
            Rectangle place = core.core().place();
            double area = place.width() * place.height();
            all.add(new At(
                    core.core().kind(),
                    core.massFlow() / (density * area),
                    mean(view.face().grid(), core)));
        }
        return new AirAtCores(all, view.settled());
    }

    private static double mean(Grid grid, FrontView.CoreView core) {
        double area = 0.0;
        double sum = 0.0;
        for (int tile = 0; tile < grid.tiles(); tile++) {
            if (core.covers(tile)) {
                area += grid.area(tile);
                sum += grid.area(tile) * core.airIn().get(tile);
            }
        }
        return sum / area;
    }

    /** At a core of a kind, where there is one. */
    public Optional<At> at(CoreKind kind) {
        return cores.stream().filter(c -> c.kind() == kind).findFirst();
    }
}
