package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.physics.component.CatalogueCore;
import hotday.physics.exchanger.FaceGrid;
import hotday.physics.exchanger.Passes;
import hotday.physics.exchanger.Rescaling;
import hotday.physics.exchanger.TestPoint;
import hotday.physics.fluid.Air;
import hotday.physics.fluid.Coolant;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The radiator block: catalogue dimensions are enough. A test point (heat at two flows and an inlet difference) rescales
 * both conductances by one factor; measured pressure drops replace the resistance; conductances known from elsewhere
 * replace what follows from the dimensions.
 */
final class RadiatorSection {
    private static final double REFERENCE_FACE_SPEED = 3.0;
    private static final double REFERENCE_DENSITY = 1.2;
    private static final double WARM = 368.15;
    private static final double AIR_TEMPERATURE = 313.15;
    /** A test point further from the dimensions than this does not belong to them; from the scatter of the relations. */
    private static final double LARGEST_FACTOR = 2.5;
    /** Of heat; beyond what a careful bench measures (4 % has been reported) and the powers of the relations explain. */
    private static final double LARGEST_MISFIT = 0.08;

    /** In place of a core with a fault in its dimensions, so that the rest is read too; such a sheet is refused. */
    private static final CatalogueCore STAND_IN = new CatalogueCore(0.6, 0.4, 0.032, 590.0, 1, 0.01);

    private static final String CONDUCTANCE_LOW = "20 W/K";
    private static final String CONDUCTANCE_HIGH = "500 kW/K";

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
                "coolant_conductance",
                "test",
                "pressure_drop");
    }

    VehicleSpec.Radiator radiator(VehicleSpec.CoolantLoop coolant) {
        Optional<CatalogueCore> found = core();
        CatalogueCore core = found.orElse(STAND_IN);
        found.ifPresent(known -> Fins.remark(s, known));
        double flow = coolant.pumpFlow() * Coolant.density(WARM, coolant.glycolVolumeShare());
        double factor = testFactor(found, coolant);
        String reason = factor == 1.0 ? "from the dimensions: " : "from the dimensions, rescaled to the test point: ";
        double air = s.derived(
                "air_conductance",
                Quantity.CONDUCTANCE,
                CONDUCTANCE_LOW,
                CONDUCTANCE_HIGH,
                factor * core.airConductance(REFERENCE_FACE_SPEED),
                reason + "louvered-fin relation at 3 m/s (Chang and Wang 1997)");
        double inside = s.derived(
                "coolant_conductance",
                Quantity.CONDUCTANCE,
                CONDUCTANCE_LOW,
                CONDUCTANCE_HIGH,
                factor * core.coolantConductance(flow, coolant.glycolVolumeShare()),
                reason + "flow in flat tubes at pump flow (laminar, or Gnielinski 1976)");
        double[] resistance = resistance(core);
        return new VehicleSpec.Radiator(
                found.map(CatalogueCore::width).orElse(Double.NaN),
                found.map(CatalogueCore::height).orElse(Double.NaN),
                core.depth(),
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

    /** Empty after a fault in a dimension. */
    private Optional<CatalogueCore> core() {
        double width = s.required("width", Quantity.LENGTH, "100 mm", "2500 mm");
        double height = s.required("height", Quantity.LENGTH, "100 mm", "2000 mm");
        double depth = s.value(
                "depth",
                Quantity.LENGTH,
                "8 mm",
                "150 mm",
                "32 mm",
                "single-row brazed core; common practice, no source");
        double fins = s.value(
                "fins",
                Quantity.PER_LENGTH,
                "5 /in",
                "30 /in",
                "15 /in",
                "fins per length; common practice, no source");
        int rows = s.integer("tube_rows", 1, 4, 1, "single row");
        double pitch =
                s.value("tube_pitch", Quantity.LENGTH, "6 mm", "20 mm", "10 mm", "common brazed core; from memory");
        return Double.isNaN(width + height + depth + fins + pitch)
                ? Optional.empty()
                : Optional.of(new CatalogueCore(width, height, depth, fins, rows, pitch));
    }

    /** How much better (or worse) than its dimensions the core was measured; 1 without a test point or after a fault. */
    private double testFactor(Optional<CatalogueCore> found, VehicleSpec.CoolantLoop coolant) {
        List<Section> tests = s.inners("test", "heat", "air_speed", "coolant_flow", "inlet_difference");
        if (tests.isEmpty()) {
            return 1.0;
        }
        for (String other : new String[] {"air_conductance", "coolant_conductance"}) {
            if (s.has(other)) {
                s.fault(other, "'radiator." + other + "' and 'radiator.test' say the same thing twice; take one out");
            }
        }
        List<TestPoint> points = new ArrayList<>();
        for (Section test : tests) {
            point(test, found, coolant).ifPresent(points::add);
        }
        return points.size() < tests.size() ? 1.0 : factor(found.orElseThrow(), points);
    }

    private Optional<TestPoint> point(Section t, Optional<CatalogueCore> found, VehicleSpec.CoolantLoop coolant) {
        double heat = t.required("heat", Quantity.POWER, "1 kW", "1000 kW");
        double speed = t.required("air_speed", Quantity.SPEED, "0.5 m/s", "15 m/s");
        double flow = t.required("coolant_flow", Quantity.VOLUME_FLOW, "2 l/min", "1500 l/min");
        double difference = t.required("inlet_difference", Quantity.TEMPERATURE_DIFFERENCE, "10 K", "110 K");
        if (found.isEmpty() || Double.isNaN(heat + speed + flow + difference + coolant.glycolVolumeShare())) {
            return Optional.empty();
        }
        CatalogueCore core = found.get();
        double glycol = coolant.glycolVolumeShare();
        double massFlow = flow * Coolant.density(WARM, glycol);
        TestPoint point = new TestPoint(
                core.width() * core.height() * speed * REFERENCE_DENSITY * Air.specificHeat(AIR_TEMPERATURE),
                massFlow * Coolant.specificHeat(WARM, glycol),
                difference,
                heat,
                core.airConductance(speed),
                core.coolantConductance(massFlow, glycol));
        Rescaling rescaling = rescaling(core);
        if (rescaling.factor(point).isEmpty()) {
            t.fault(
                    "heat",
                    String.format(
                            Locale.ROOT,
                            "'radiator.test' gives %.1f kW, but %.1f kW is all that these two flows can exchange at that inlet difference: look at the units of the flows",
                            heat / 1e3,
                            rescaling.most(point) / 1e3));
            return Optional.empty();
        }
        return Optional.of(point);
    }

    /** A cross-flow core under even air gives the same heat on any number of tiles. */
    private static Rescaling rescaling(CatalogueCore core) {
        FaceGrid face = FaceGrid.even(1, 1, core.height(), core.width());
        return new Rescaling(Passes.crossFlow(face.whole(), Passes.Side.LEFT));
    }

    private double factor(CatalogueCore core, List<TestPoint> points) {
        Rescaling.Scale scale = rescaling(core).scale(points);
        double factor = scale.factor();
        if (factor > LARGEST_FACTOR || factor < 1.0 / LARGEST_FACTOR) {
            s.fault(
                    "test",
                    String.format(
                            Locale.ROOT,
                            "'radiator.test' means %.2f times the conductance that follows from the dimensions (scatter of the relations: 0.7 to 1.4): test and dimensions do not belong together",
                            factor));
            return 1.0;
        }
        double worst = scale.misfits().stream().mapToDouble(Math::abs).max().orElse(0.0);
        if (worst > LARGEST_MISFIT) {
            s.remark(
                    "test",
                    "test-points-disagree",
                    String.format(
                            Locale.ROOT,
                            "one factor on the dimensions leaves %.0f %% of heat at the worst of %d test points: look at their units and at the dimensions",
                            100.0 * worst,
                            points.size()));
        }
        return factor;
    }

    private double[] resistance(CatalogueCore core) {
        if (!s.has("pressure_drop")) {
            double[] resistance = core.resistance();
            s.assume(
                    "pressure_drop",
                    String.format(
                            Locale.ROOT,
                            "[[3 m/s, %.0f Pa], [6 m/s, %.0f Pa]]",
                            core.pressureDrop(3),
                            core.pressureDrop(6)),
                    "from the dimensions: louvered-fin friction (Chang, Hsu, Lin and Wang 2000)");
            return resistance;
        }
        List<List<Double>> points = s.pairs(
                "pressure_drop", Quantity.SPEED, "0.3 m/s", "20 m/s", Quantity.PRESSURE_DIFFERENCE, "1 Pa", "5000 Pa");
        double[] resistance = Resistance.through(points);
        if (!points.isEmpty() && (resistance[0] < 0 || resistance[1] < 0)) {
            s.fault(
                    "pressure_drop",
                    "'radiator.pressure_drop' must grow with the air speed, but less than its square: these points do not look like a core");
        }
        return resistance;
    }
}
