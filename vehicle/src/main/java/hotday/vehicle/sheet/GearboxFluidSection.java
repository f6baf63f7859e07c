package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.CoreKind;
import hotday.vehicle.spec.VehicleSpec.FluidCooler;
import hotday.vehicle.spec.VehicleSpec.PlacedCore;
import java.util.List;
import java.util.Locale;

/** The gearbox_fluid block: fluid, its flow, and the coolers it goes through; all of it may be left out. */
final class GearboxFluidSection {
    private static final double DENSITY = 810.0; // kg/m3 at 80 degC; handbook value, from memory
    private static final double SPECIFIC_HEAT = 2090.0; // J/(kg K) at 80 degC; handbook value, from memory
    private static final double CASE_SPECIFIC_HEAT = 900.0; // J/(kg K), aluminium; handbook value, from memory
    private static final double LEAST_SPAN = 1.0; // K

    private static final String SPEED = "2000 rpm";
    private static final String LOW = "5 W/K";
    private static final String HIGH = "20 kW/K";

    private final Section s;

    GearboxFluidSection(TypedMap root, List<Assumption> assumptions) {
        this.s = Section.optional(
                root,
                "gearbox_fluid",
                assumptions,
                "mesh_loss",
                "spin_loss",
                "spin_speed",
                "volume",
                "case_mass",
                "viscosity_40",
                "viscosity_100",
                "flow",
                "flow_speed",
                "front_conductance",
                "tank_conductance",
                "bypass_opens",
                "bypass_full",
                "case_loss",
                "case_loss_per_speed");
    }

    /** @param coolers in flow order */
    VehicleSpec.GearboxFluid fluid(List<FluidCooler> coolers, VehicleSpec.Stack stack) {
        double mesh = s.value(
                "mesh_loss", Quantity.RATIO, "0 %", "10 %", "3 %", "of the power through the gears; from memory");
        double spin = s.value(
                "spin_loss", Quantity.POWER, "0 kW", "20 kW", "0.7 kW", "pump, clutches and gears; from memory");
        double spinSpeed = speed("spin_speed", "input speed of that loss");
        double capacity = capacity();
        double thick = viscosity("viscosity_40", "2 mm2/s", "300 mm2/s", "30 mm2/s");
        double thin = viscosity("viscosity_100", "1 mm2/s", "50 mm2/s", "6 mm2/s");
        if (thin >= thick) {
            s.fault(
                    s.has("viscosity_100") ? "viscosity_100" : "viscosity_40",
                    "'gearbox_fluid.viscosity_100' must be less than 'gearbox_fluid.viscosity_40': hot fluid is thinner");
        }
        double flow = DENSITY
                * s.value(
                        "flow",
                        Quantity.VOLUME_FLOW,
                        "0.5 l/min",
                        "60 l/min",
                        "8 l/min",
                        "4 to 10 l/min; common practice, no source");
        double flowSpeed = speed("flow_speed", "engine speed of that flow");
        double front = conductance("front", coolers.contains(FluidCooler.FRONT), placed(stack));
        double tank = conductance("tank", coolers.contains(FluidCooler.TANK), 250.0);
        double opens = s.value("bypass_opens", Quantity.TEMPERATURE, "-40 degC", "120 degC", "75 degC", "from memory");
        double full = s.value("bypass_full", Quantity.TEMPERATURE, "-39 degC", "130 degC", "85 degC", "from memory");
        if (full < opens + LEAST_SPAN) {
            s.fault(
                    s.has("bypass_full") ? "bypass_full" : "bypass_opens",
                    "'gearbox_fluid.bypass_full' must lie at least 1 K above 'gearbox_fluid.bypass_opens'");
        }
        double loss = s.value(
                "case_loss", Quantity.CONDUCTANCE, "0 W/K", "200 W/K", "8 W/K", "case to air at rest; from memory");
        double wind = s.value(
                "case_loss_per_speed",
                Quantity.CONDUCTANCE_PER_SPEED,
                "0 W/K/(m/s)",
                "10 W/K/(m/s)",
                "0.6 W/K/(m/s)",
                "further, with road speed; from memory");
        return new VehicleSpec.GearboxFluid(
                mesh, spin, spinSpeed, capacity, thick, thin, flow, flowSpeed, coolers, front, tank, opens, full, loss,
                wind);
    }

    private double speed(String key, String what) {
        return s.value(key, Quantity.ANGULAR_SPEED, "300 rpm", "10000 rpm", SPEED, what);
    }

    private double capacity() {
        double volume =
                s.value("volume", Quantity.VOLUME, "1 l", "60 l", "8 l", "of the fluid; common practice, no source");
        double metal = s.value(
                "case_mass",
                Quantity.MASS,
                "1 kg",
                "500 kg",
                "27 kg",
                "aluminium that warms with the fluid; from memory");
        return DENSITY * volume * SPECIFIC_HEAT + metal * CASE_SPECIFIC_HEAT;
    }

    private double viscosity(String key, String low, String high, String usual) {
        return s.value(
                key, Quantity.KINEMATIC_VISCOSITY, low, high, usual, "low-viscosity automatic fluid; from memory");
    }

    /** Zero without the cooler. */
    private double conductance(String where, boolean fitted, double usual) {
        String key = where + "_conductance";
        if (fitted) {
            String reason = where.equals("front")
                    ? "as conductive as its air side at 3 m/s; from memory"
                    : "cooler in the radiator tank; from memory";
            return s.derived(key, Quantity.CONDUCTANCE, LOW, HIGH, usual, reason);
        }
        if (s.has(key)) {
            s.fault(
                    key,
                    String.format(
                            Locale.ROOT,
                            "'gearbox_fluid.%s' belongs to a cooler this gearbox does not have: say 'gearbox: {cooler: %s}' or take it out",
                            key,
                            where));
        }
        return 0.0;
    }

    /** Air side of the core in the stack; of none, after a fault there, any. */
    private static double placed(VehicleSpec.Stack stack) {
        return stack.cores().stream()
                .filter(c -> c.kind() == CoreKind.GEARBOX_COOLER)
                .mapToDouble(PlacedCore::airConductance)
                .findFirst()
                .orElse(250.0);
    }
}
