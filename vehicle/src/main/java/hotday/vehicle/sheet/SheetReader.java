package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.core.unit.UnitSystem;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
                "coolant",
                "thermostat",
                "radiator",
                "heater",
                "fan",
                "air_conditioning",
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
        VehicleSpec.Gearbox gearbox = new GearboxSection(root, assumptions).gearbox(engine);
        CoolantSection loops = new CoolantSection(root, assumptions);
        VehicleSpec.CoolantLoop coolant = loops.loop(engine);
        VehicleSpec.Thermostat thermostat = loops.thermostat();
        VehicleSpec.Radiator radiator = new RadiatorSection(root, assumptions).radiator(coolant);
        VehicleSpec.Heater heater = loops.heater();
        VehicleSpec.Fan fan = new FanSection(root, assumptions).fan(radiator);
        FrontSection front = new FrontSection(root, assumptions);
        Optional<VehicleSpec.AirConditioning> conditioning = front.airConditioning();
        VehicleSpec.FrontEnd frontEnd = front.frontEnd();
        VehicleSpec.Stack stack = new StackSection(root, assumptions)
                .stack(radiator, fan, frontEnd, cooled(gearbox, conditioning, chargeAir));
        VehicleSpec.Limits limits = limits(thermostat);
        VehicleSpec.FanSchedule schedule = new ScheduleSection(root, assumptions).schedule(limits);
        return new BuildSheet(
                new VehicleSpec(
                        name,
                        ambient,
                        altitude,
                        road,
                        engine,
                        chargeAir,
                        gearbox,
                        coolant,
                        thermostat,
                        radiator,
                        heater,
                        fan,
                        conditioning,
                        frontEnd,
                        stack,
                        schedule,
                        limits),
                units,
                assumptions,
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

    private VehicleSpec.Limits limits(VehicleSpec.Thermostat thermostat) {
        Section s = Section.optional(root, "limits", assumptions, "coolant", "boil_margin");
        double coolant = s.value(
                "coolant",
                Quantity.TEMPERATURE,
                "80 degC",
                "140 degC",
                "112 degC",
                "limit used in published limiting-ambient examples");
        if (coolant <= thermostat.opens()) {
            s.fault("coolant", "'limits.coolant' must lie above 'thermostat.opens', else no outside temperature holds");
        }
        double margin = s.value(
                "boil_margin", Quantity.TEMPERATURE_DIFFERENCE, "0 K", "40 K", "3 K", "common practice, no source");
        return new VehicleSpec.Limits(coolant, margin);
    }
}
