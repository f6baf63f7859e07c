package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.core.unit.UnitSystem;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.Wiring;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Walks a sheet block by block. Keys, ranges and the reasons behind the defaults: docs/build-sheet.md. */
final class SheetReader {
    private final TypedMap root;
    private final List<Assumption> assumptions = new ArrayList<>();

    SheetReader(TypedMap root) {
        this.root = root;
    }

    BuildSheet sheet() {
        root.refuseUnknown(
                "build",
                "units",
                "design_day",
                "vehicle",
                "engine",
                "charge_air_cooler",
                "gearbox",
                "gearbox_fluid",
                "coolant",
                "thermostat",
                "radiator",
                "heater",
                "fan",
                "air_conditioning",
                "evaporator",
                "cabin",
                "electrical",
                "wiring",
                "front_end",
                "stack",
                "schedule",
                "limits");
        String name =
                Section.required(root, "build", assumptions, "name", "note").requiredText("name");
        UnitSystem units = UnitSystem.valueOf(
                root.text("units", "metric", "us", "mixed").orElse("metric").toUpperCase(Locale.ROOT));
        Section day = Section.required(root, "design_day", assumptions, "ambient", "altitude");
        double ambient = day.required("ambient", Quantity.TEMPERATURE, "10 degC", "60 degC");
        double altitude = day.value("altitude", Quantity.LENGTH, "-430 m", "5000 m", "0 m", "sea level");
        VehicleSpec.RoadLoad road = new RoadLoadSection(root, assumptions).roadLoad();
        EngineSection engines = new EngineSection(root, assumptions);
        VehicleSpec.Engine engine = engines.engine();
        Optional<VehicleSpec.ChargeAir> chargeAir = engines.chargeAir(engine);
        GearboxSection gearboxes = new GearboxSection(root, assumptions);
        VehicleSpec.Gearbox gearbox = gearboxes.gearbox(engine);
        CoolantSection loops = new CoolantSection(root, assumptions);
        VehicleSpec.CoolantLoop coolant = loops.loop(engine);
        VehicleSpec.Thermostat thermostat = loops.thermostat();
        VehicleSpec.Radiator radiator = new RadiatorSection(root, assumptions).radiator(coolant);
        VehicleSpec.Heater heater = loops.heater();
        VehicleSpec.Fan fan = new FanSection(root, assumptions).fan(radiator);
        Optional<VehicleSpec.AirConditioning> conditioning =
                new AirConditioningSection(root, assumptions).airConditioning();
        WiringSection wires = new WiringSection(root, assumptions);
        ElectricalSection supply = new ElectricalSection(root, assumptions);
        VehicleSpec.Electrical electrical = supply.electrical(fan, wires.resistance());
        Optional<Wiring> wiring = wires.wiring(electrical, fan, supply.loop());
        VehicleSpec.FrontEnd frontEnd = new FrontSection(root, assumptions).frontEnd();
        VehicleSpec.Stack stack = new StackSection(root, assumptions)
                .stack(radiator, fan, frontEnd, cooled(gearbox, conditioning, chargeAir));
        VehicleSpec.GearboxFluid fluid = new GearboxFluidSection(root, assumptions).fluid(gearboxes.coolers(), stack);
        VehicleSpec.Limits limits = new LimitsSection(root, assumptions)
                .limits(thermostat, conditioning, chargeAir, electrical.regulated());
        FanSchedule schedule = new ScheduleSection(root, assumptions)
                .schedule(limits, conditioning.isPresent(), chargeAir.isPresent());
        return new BuildSheet(
                new VehicleSpec(
                        name,
                        ambient,
                        altitude,
                        road,
                        engine,
                        chargeAir,
                        gearbox,
                        fluid,
                        coolant,
                        thermostat,
                        radiator,
                        heater,
                        fan,
                        conditioning,
                        electrical,
                        frontEnd,
                        stack,
                        schedule,
                        limits),
                wiring,
                units,
                assumptions,
                Map.of(),
                Map.of(),
                Map.of(),
                List.of());
    }

    /** The cores this vehicle has in front of its radiator. */
    private static List<VehicleSpec.CoreKind> cooled(
            VehicleSpec.Gearbox gearbox,
            Optional<VehicleSpec.AirConditioning> conditioning,
            Optional<VehicleSpec.ChargeAir> chargeAir) {
        List<VehicleSpec.CoreKind> kinds = new ArrayList<>();
        if (gearbox.heatToAir() > 0.0) {
            kinds.add(VehicleSpec.CoreKind.GEARBOX_COOLER);
        }
        if (conditioning.isPresent()) {
            kinds.add(VehicleSpec.CoreKind.CONDENSER);
        }
        if (chargeAir.isPresent()) {
            kinds.add(VehicleSpec.CoreKind.CHARGE_AIR_COOLER);
        }
        return kinds;
    }
}
