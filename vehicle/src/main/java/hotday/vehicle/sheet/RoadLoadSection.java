package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;
import java.util.Optional;

/** The vehicle block: mass and what the car needs to roll, measured or from rolling coefficient and drag area. */
final class RoadLoadSection {
    private static final double GRAVITY = 9.80665;
    private static final double REFERENCE_DENSITY = 1.2;

    private final Section s;

    RoadLoadSection(TypedMap root, List<Assumption> assumptions) {
        this.s = Section.required(
                root,
                "vehicle",
                assumptions,
                "mass",
                "trailer_mass",
                "drag_area",
                "rolling",
                "tyre_radius",
                "road_load");
    }

    VehicleSpec.RoadLoad roadLoad() {
        double mass = s.required("mass", Quantity.MASS, "200 kg", "60 t");
        double trailer = s.value("trailer_mass", Quantity.MASS, "0 kg", "60 t", "0 kg", "no trailer");
        double radius = s.value(
                "tyre_radius",
                Quantity.LENGTH,
                "150 mm",
                "800 mm",
                "330 mm",
                "common passenger tyre; common practice, no source");
        Optional<Section> measured = s.inner("road_load", "constant", "linear", "square");
        return measured.isPresent()
                ? measured(measured.get(), mass + trailer, radius)
                : estimated(mass + trailer, radius);
    }

    private VehicleSpec.RoadLoad measured(Section load, double mass, double radius) {
        for (String other : new String[] {"rolling", "drag_area"}) {
            if (s.has(other)) {
                s.fault(
                        other,
                        "'vehicle." + other
                                + "' and 'vehicle.road_load' say the same thing twice; take one of them out");
            }
        }
        return new VehicleSpec.RoadLoad(
                mass,
                load.required("constant", Quantity.FORCE, "0 N", "20000 N"),
                load.required("linear", Quantity.FORCE_PER_SPEED, "-50 N/(m/s)", "500 N/(m/s)"),
                load.required("square", Quantity.FORCE_PER_SPEED_SQUARED, "0 N/(m/s)2", "20 N/(m/s)2"),
                radius);
    }

    private VehicleSpec.RoadLoad estimated(double mass, double radius) {
        double rolling = s.value(
                "rolling",
                Quantity.NUMBER,
                "0.004",
                "0.05",
                "0.012",
                "rolling coefficient of a road tyre; common practice, no source");
        double area = s.value(
                "drag_area",
                Quantity.AREA,
                "0.2 m2",
                "15 m2",
                "0.75 m2",
                "drag coefficient times frontal area of a saloon; common practice, no source");
        return new VehicleSpec.RoadLoad(mass, rolling * mass * GRAVITY, 0.0, 0.5 * REFERENCE_DENSITY * area, radius);
    }
}
