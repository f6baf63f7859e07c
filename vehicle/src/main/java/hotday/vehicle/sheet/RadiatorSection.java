package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.physics.component.CatalogueCore;
import hotday.physics.fluid.Coolant;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;
import java.util.stream.IntStream;

/** The radiator block: catalogue dimensions are enough; a measured conductance replaces what follows from them. */
final class RadiatorSection {
    private static final double MILLIMETRE = 1e-3;
    private static final double PER_INCH = 1 / 0.0254;
    private static final double REFERENCE_FACE_SPEED = 3.0;
    private static final double WARM = 368.15;

    private static final List<Double> FLOW_SHARES =
            IntStream.rangeClosed(0, 32).mapToObj(i -> i == 0 ? 1e-3 : 0.05 * i).toList();

    private final Section s;

    RadiatorSection(TypedMap root, List<Assumption> assumptions) {
        this.s = Section.required(
                root,
                "radiator",
                assumptions,
                "width",
                "height",
                "depth",
                "fins",
                "tube_rows",
                "tube_pitch",
                "air_conductance",
                "coolant_conductance");
    }

    VehicleSpec.Radiator radiator(VehicleSpec.CoolantLoop coolant) {
        double width = s.required("width", Quantity.LENGTH, 0.1, 2.5);
        double height = s.required("height", Quantity.LENGTH, 0.1, 2.0);
        double depth = s.value(
                "depth",
                Quantity.LENGTH,
                8 * MILLIMETRE,
                150 * MILLIMETRE,
                32 * MILLIMETRE,
                "single-row brazed core; common practice, no source");
        double fins = s.value(
                "fins",
                Quantity.PER_LENGTH,
                5 * PER_INCH,
                30 * PER_INCH,
                15 * PER_INCH,
                "fins per length; common practice, no source");
        int rows = s.integer("tube_rows", 1, 4, 1, "single row");
        double pitch = s.value(
                "tube_pitch",
                Quantity.LENGTH,
                6 * MILLIMETRE,
                20 * MILLIMETRE,
                10 * MILLIMETRE,
                "common brazed core; from memory");
        CatalogueCore core = new CatalogueCore(width, height, depth, fins, rows, pitch);
        double flow = coolant.pumpFlow() * Coolant.density(WARM, coolant.glycolVolumeShare());
        double[] resistance = core.resistance();
        double air = s.value(
                "air_conductance",
                Quantity.CONDUCTANCE,
                20,
                50_000,
                core.airConductance(REFERENCE_FACE_SPEED),
                "from the dimensions: louvered-fin relation at 3 m/s");
        double inside = s.value(
                "coolant_conductance",
                Quantity.CONDUCTANCE,
                20,
                500_000,
                core.coolantConductance(flow, coolant.glycolVolumeShare()),
                "from the dimensions: flow in flat tubes at pump flow");
        return new VehicleSpec.Radiator(
                width,
                height,
                depth,
                air,
                core.airExponent(),
                inside,
                flow,
                FLOW_SHARES,
                conductanceShares(core, flow, coolant.glycolVolumeShare()),
                resistance[0],
                resistance[1],
                core.heatCapacity(coolant.glycolVolumeShare()));
    }

    /** Coolant side at shares of the reference flow, over its value there. */
    private static List<Double> conductanceShares(CatalogueCore core, double flow, double glycol) {
        double reference = core.coolantConductance(flow, glycol);
        return FLOW_SHARES.stream()
                .map(share -> core.coolantConductance(share * flow, glycol) / reference)
                .toList();
    }
}
