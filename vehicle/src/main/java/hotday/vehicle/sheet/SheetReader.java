package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.core.unit.UnitSystem;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.Fuel;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Walks a sheet block by block. Reasons behind the defaults: docs/build-sheet.md. */
final class SheetReader {
    private static final double LITRE = 1e-3;
    private static final double RPM = Math.PI / 30.0;
    private static final double GRAVITY = 9.80665;
    private static final double KELVIN = 273.15;
    private static final double PSI = 6894.757293168;

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
                "schedule",
                "limits");
        String name = name();
        UnitSystem units = UnitSystem.valueOf(
                root.text("units", "metric", "us", "mixed").orElse("metric").toUpperCase(Locale.ROOT));
        Section day = Section.required(root, "design_day", assumptions, "ambient", "altitude");
        double ambient = day.required("ambient", Quantity.TEMPERATURE, KELVIN + 10, KELVIN + 60);
        double altitude = day.value("altitude", Quantity.LENGTH, -430, 5000, 0.0, "sea level");
        VehicleSpec.Engine engine = engine();
        VehicleSpec.CoolantLoop coolant = coolant(engine);
        VehicleSpec.RoadLoad road = roadLoad();
        VehicleSpec vehicle = new VehicleSpec(
                name,
                ambient,
                altitude,
                road,
                engine,
                chargeAir(engine),
                gearbox(engine),
                coolant,
                thermostat(),
                new RadiatorSection(root, assumptions).radiator(coolant),
                heater(engine),
                fan(),
                airConditioning(),
                frontEnd(),
                schedule(),
                limits());
        return new BuildSheet(vehicle, units, assumptions);
    }

    private String name() {
        Section build = Section.required(root, "build", assumptions, "name", "note");
        return build.map().flatMap(m -> m.requiredText("name")).orElse("");
    }

    private VehicleSpec.RoadLoad roadLoad() {
        Section s = Section.required(
                root,
                "vehicle",
                assumptions,
                "mass",
                "trailer_mass",
                "drag_area",
                "rolling",
                "tyre_radius",
                "road_load");
        double mass = s.required("mass", Quantity.MASS, 200, 60_000);
        double trailer = s.value("trailer_mass", Quantity.MASS, 0, 60_000, 0.0, "no trailer");
        double radius = s.value(
                "tyre_radius", Quantity.LENGTH, 0.15, 0.8, 0.33, "common passenger tyre; common practice, no source");
        Optional<TypedMap> measured = s.map().flatMap(m -> m.map("road_load"));
        if (measured.isPresent()) {
            TypedMap m = measured.get();
            m.refuseUnknown("constant", "linear", "square");
            return new VehicleSpec.RoadLoad(
                    mass + trailer,
                    m.requiredQuantity("constant", Quantity.FORCE, 0, 20_000),
                    m.requiredQuantity("linear", Quantity.FORCE_PER_SPEED, -50, 500),
                    m.requiredQuantity("square", Quantity.FORCE_PER_SPEED_SQUARED, 0, 20),
                    radius);
        }
        double rolling = s.value(
                "rolling",
                Quantity.NUMBER,
                0.004,
                0.05,
                0.012,
                "rolling coefficient of a road tyre; common practice, no source");
        double area = s.value(
                "drag_area",
                Quantity.AREA,
                0.2,
                15,
                0.75,
                "drag coefficient times frontal area of a saloon; common practice, no source");
        return new VehicleSpec.RoadLoad(
                mass + trailer, rolling * (mass + trailer) * GRAVITY, 0.0, 0.5 * 1.2 * area, radius);
    }

    private VehicleSpec.Engine engine() {
        Section s = Section.required(
                root,
                "engine",
                assumptions,
                "fuel",
                "displacement",
                "cylinders",
                "bore",
                "rated_power",
                "rated_speed",
                "idle_speed",
                "charging",
                "boost",
                "heating_value",
                "fuel_density",
                "metal_mass",
                "oil_volume");
        if (s.present() && !s.has("fuel")) {
            s.fault("fuel", "engine.fuel is missing: petrol or diesel");
        }
        boolean diesel = s.has("fuel") && "diesel".equals(s.word("fuel", "petrol", "", "petrol", "diesel"));
        double displacement = s.required("displacement", Quantity.VOLUME, 0.2 * LITRE, 15 * LITRE);
        double litres = displacement / LITRE;
        int cylinders = s.integer(
                "cylinders",
                1,
                16,
                litres <= 1.1 ? 3 : litres <= 2.7 ? 4 : litres <= 4.0 ? 6 : 8,
                "usual for the displacement");
        double square = Math.cbrt(4.0 * displacement / (Math.PI * cylinders));
        double bore = s.value("bore", Quantity.LENGTH, 0.03, 0.2, square, "stroke equal to bore");
        double power = s.required("rated_power", Quantity.POWER, 5e3, 1e6);
        double ratedSpeed = s.value(
                "rated_speed",
                Quantity.ANGULAR_SPEED,
                1500 * RPM,
                12_000 * RPM,
                (diesel ? 4000 : 5500) * RPM,
                "usual for the fuel; common practice, no source");
        double idle = s.value(
                "idle_speed",
                Quantity.ANGULAR_SPEED,
                400 * RPM,
                1500 * RPM,
                (diesel ? 800 : 700) * RPM,
                "warm idle 600 to 850 rpm; common practice, no source");
        boolean turbo = "turbo".equals(s.word("charging", "none", "naturally aspirated", "none", "turbo"));
        double heating = s.value(
                "heating_value",
                Quantity.HEATING_VALUE,
                20e6,
                55e6,
                diesel ? 42.8e6 : 42.5e6,
                "lower heating value of road fuel; handbook value, from memory");
        double density = s.value(
                "fuel_density",
                Quantity.DENSITY,
                500,
                1000,
                diesel ? 835 : 745,
                "road fuel; handbook value, from memory");
        double metal = s.value(
                "metal_mass",
                Quantity.MASS,
                10,
                1500,
                50.0 * litres,
                "50 kg a litre of displacement warm with the coolant; from memory");
        double oil = s.value(
                "oil_volume",
                Quantity.VOLUME,
                0.5 * LITRE,
                60 * LITRE,
                (2.0 + 1.2 * litres) * LITRE,
                "2 l and 1.2 l a litre of displacement; from memory");
        return new VehicleSpec.Engine(
                diesel ? Fuel.DIESEL : Fuel.PETROL,
                displacement,
                cylinders,
                bore,
                power,
                ratedSpeed,
                idle,
                heating,
                density,
                diesel ? 14.5 : 14.7,
                turbo,
                metal,
                870.0 * oil,
                97e3,
                15e3,
                5e3,
                diesel ? 0.42 : 0.39,
                diesel ? 0.0 : 50e3);
    }

    private Optional<VehicleSpec.ChargeAir> chargeAir(VehicleSpec.Engine engine) {
        Section s = Section.optional(
                root, "charge_air_cooler", assumptions, "effectiveness", "compressor_efficiency", "boost");
        if (!engine.turbocharged()) {
            if (s.present()) {
                s.fault(
                        "effectiveness",
                        "charge_air_cooler is given but engine.charging is 'none': say 'charging: turbo' or take the block out");
            }
            return Optional.empty();
        }
        double effectiveness = s.value(
                "effectiveness",
                Quantity.RATIO,
                0.0,
                0.98,
                0.7,
                "air-to-air cooler in the stack; common practice, no source");
        double boost = s.value(
                "boost",
                Quantity.NUMBER,
                1.05,
                4.0,
                engine.fuel() == Fuel.DIESEL ? 2.2 : 1.8,
                "manifold over ambient pressure at rated power; common practice, no source");
        double efficiency = s.value(
                "compressor_efficiency",
                Quantity.RATIO,
                0.4,
                0.85,
                0.7,
                "turbocharger compressor; common practice, no source");
        return Optional.of(new VehicleSpec.ChargeAir(effectiveness, boost, efficiency));
    }

    private VehicleSpec.Gearbox gearbox(VehicleSpec.Engine engine) {
        Section s = Section.optional(
                root,
                "gearbox",
                assumptions,
                "ratios",
                "final_drive",
                "efficiency",
                "lowest_speed",
                "idle_drag",
                "cooler");
        List<Double> typed = s.map()
                .map(m -> m.quantities("ratios", Quantity.NUMBER, 0.2, 20))
                .orElse(List.of());
        List<Double> ratios = typed.isEmpty() ? List.of(4.17, 2.34, 1.52, 1.14, 0.87, 0.69) : typed;
        if (typed.isEmpty()) {
            assumptions.add(new Assumption(
                    "gearbox.ratios",
                    "4.17 2.34 1.52 1.14 0.87 0.69",
                    "a generic six-speed automatic; common practice, no source"));
        }
        for (int i = 1; i < ratios.size(); i++) {
            if (ratios.get(i) >= ratios.get(i - 1)) {
                s.fault(
                        "ratios",
                        "gear ratios must fall from first gear on; gear " + (i + 1) + " has " + ratios.get(i)
                                + " after " + ratios.get(i - 1));
            }
        }
        double finalDrive = s.value("final_drive", Quantity.NUMBER, 1.5, 15, 3.3, "common practice, no source");
        double efficiency = s.value(
                "efficiency", Quantity.RATIO, 0.5, 1.0, 0.88, "gearbox and axle together; common practice, no source");
        double lowest = s.value(
                "lowest_speed",
                Quantity.ANGULAR_SPEED,
                500 * RPM,
                4000 * RPM,
                1.7 * engine.idleSpeed(),
                "no lugging: 1.7 times idle speed; common practice, no source");
        double drag = s.value("idle_drag", Quantity.POWER, 0, 20e3, 900.0, "converter in gear at rest; from memory");
        String cooler = s.word("cooler", "none", "no gearbox cooler in front of the radiator", "none", "front");
        return new VehicleSpec.Gearbox(
                ratios,
                finalDrive,
                efficiency,
                0.6 * engine.ratedSpeed(),
                lowest,
                drag,
                "front".equals(cooler) ? 1.0 : 0.0);
    }

    private VehicleSpec.CoolantLoop coolant(VehicleSpec.Engine engine) {
        Section s =
                Section.optional(root, "coolant", assumptions, "glycol", "volume", "cap", "pump_flow", "pump_speed");
        double litres = engine.displacement() / LITRE;
        double glycol = s.value(
                "glycol", Quantity.RATIO, 0.0, 0.6, 0.5, "half ethylene glycol by volume; common practice, no source");
        double volume = s.value(
                "volume",
                Quantity.VOLUME,
                LITRE,
                80 * LITRE,
                (4.0 + 1.8 * litres) * LITRE,
                "4 l and 1.8 l a litre of displacement; from memory");
        double cap = s.value(
                "cap",
                Quantity.PRESSURE_GAUGE,
                0.0,
                250e3,
                15 * PSI,
                "common cap rating 13 to 16 psi; published service pages");
        double heat = 0.7 * engine.ratedPower();
        double flow = s.value(
                "pump_flow",
                Quantity.VOLUME_FLOW,
                5 * LITRE / 60,
                1500 * LITRE / 60,
                1.8 * LITRE / 60 * heat / 1000.0,
                "1.8 l/min a kW of coolant heat, taken as 0.7 of rated power; common practice, no source");
        double speed = s.value(
                "pump_speed",
                Quantity.ANGULAR_SPEED,
                500 * RPM,
                12_000 * RPM,
                engine.ratedSpeed(),
                "flow quoted at rated engine speed");
        return new VehicleSpec.CoolantLoop(glycol, volume, cap, flow, speed);
    }

    private VehicleSpec.Thermostat thermostat() {
        Section s = Section.optional(root, "thermostat", assumptions, "opens", "full", "hysteresis", "lag", "leak");
        double opens = s.value(
                "opens",
                Quantity.TEMPERATURE,
                KELVIN + 50,
                KELVIN + 120,
                KELVIN + 88,
                "common wax thermostat; published service data 74 to 88 degC");
        double full = s.value(
                "full",
                Quantity.TEMPERATURE,
                KELVIN + 52,
                KELVIN + 140,
                opens + 12.0,
                "full opening 11 to 15 K above start; published service data");
        if (full <= opens + 1.0) {
            s.fault("full", "thermostat.full must lie at least 1 K above thermostat.opens");
        }
        double hysteresis = s.value(
                "hysteresis",
                Quantity.TEMPERATURE_DIFFERENCE,
                0,
                15,
                4.0,
                "closing 3 to 6 K below opening; published service data");
        double lag = s.value("lag", Quantity.TIME, 0.5, 120, 10.0, "first-order lag of the wax; from memory");
        double leak = s.value("leak", Quantity.RATIO, 0, 0.2, 0.005, "jiggle pin; from memory");
        return new VehicleSpec.Thermostat(opens, full, hysteresis, lag, leak);
    }

    private VehicleSpec.Heater heater(VehicleSpec.Engine engine) {
        Section s = Section.optional(root, "heater", assumptions, "conductance", "flow_share");
        double conductance = s.value(
                "conductance",
                Quantity.CONDUCTANCE,
                1,
                1000,
                80.0,
                "6 kW at 75 K between coolant and cold air; from memory");
        double share = s.value("flow_share", Quantity.RATIO, 0.01, 0.5, 0.15, "common practice, no source");
        return new VehicleSpec.Heater(conductance, share, 2500.0);
    }

    private VehicleSpec.Fan fan() {
        Section s = Section.required(
                root,
                "fan",
                assumptions,
                "control",
                "free_flow",
                "stall_pressure",
                "shaft_power",
                "motor_efficiency",
                "ramp_up",
                "ramp_down");
        boolean unknown = "unknown"
                .equals(s.word(
                        "control", "schedule", "the schedule of this sheet drives the fan", "schedule", "unknown"));
        double free = s.required("free_flow", Quantity.VOLUME_FLOW, 0.01, 10);
        double stall = s.required("stall_pressure", Quantity.PRESSURE_DIFFERENCE, 10, 3000);
        double shaft = s.value(
                "shaft_power",
                Quantity.POWER,
                5,
                10e3,
                0.5 * free * stall / 0.4,
                "half of free flow times stall pressure at 40 % efficiency; common practice, no source");
        double motor = s.value(
                "motor_efficiency",
                Quantity.RATIO,
                0.2,
                0.98,
                0.75,
                "brushed 60 to 75 %, brushless 78 to 85 %; common practice, no source");
        double up = s.value(
                "ramp_up", Quantity.SHARE_RATE, 0.01, 10, 0.15, "0 to 100 % in 5 to 10 s; common practice, no source");
        double down = s.value(
                "ramp_down", Quantity.SHARE_RATE, 0.01, 10, 0.1, "100 to 0 % in 5 to 20 s; common practice, no source");
        return new VehicleSpec.Fan(
                unknown ? VehicleSpec.FanControl.UNKNOWN : VehicleSpec.FanControl.SCHEDULE,
                stall,
                0.0,
                -stall / (free * free),
                0.15 * stall / (free * free),
                shaft,
                motor,
                up,
                down);
    }

    private Optional<VehicleSpec.AirConditioning> airConditioning() {
        Section s = Section.optional(root, "air_conditioning", assumptions, "condenser_heat", "compressor_power");
        if (!s.present()) {
            return Optional.empty();
        }
        double heat = s.value(
                "condenser_heat",
                Quantity.POWER,
                500,
                40e3,
                6500.0,
                "cooling of 5 kW times 1.3; common practice, no source");
        double power = s.value(
                "compressor_power",
                Quantity.POWER,
                100,
                15e3,
                0.23 * heat,
                "condenser heat less cooling; common practice, no source");
        return Optional.of(new VehicleSpec.AirConditioning(heat, power));
    }

    private VehicleSpec.FrontEnd frontEnd() {
        Section s = Section.optional(
                root,
                "front_end",
                assumptions,
                "ram_recovery",
                "base_pressure",
                "opening_area",
                "exit_loss",
                "draught_height",
                "sealing",
                "stack_resistance");
        double ram = s.value(
                "ram_recovery",
                Quantity.RATIO,
                0.0,
                1.0,
                0.6,
                "0.3 to 0.7 over a real grille; textbook range, from memory");
        double base = s.value(
                "base_pressure",
                Quantity.NUMBER,
                -1.0,
                0.5,
                -0.1,
                "outlet region -0.1 to -0.5; textbook range, from memory");
        double opening = s.value("opening_area", Quantity.AREA, 0.005, 3, 0.15, "common practice, no source");
        double exit = s.value(
                "exit_loss",
                Quantity.NUMBER,
                0,
                100,
                12.0,
                "grille, bay and exit over the dynamic pressure at the core; from memory");
        double height =
                s.value("draught_height", Quantity.LENGTH, 0, 3, 0.4, "warm column behind the core; from memory");
        String sealing = s.word("sealing", "fair", "some gaps around the stack", "good", "fair", "poor");
        double stack = s.value(
                "stack_resistance",
                Quantity.PRESSURE_DIFFERENCE,
                0,
                200,
                4.0,
                "a condenser in front: 4 Pa at 1 m/s, growing with its square; from memory");
        return new VehicleSpec.FrontEnd(
                ram, base, opening, exit, height, VehicleSpec.Sealing.valueOf(sealing.toUpperCase(Locale.ROOT)), stack);
    }

    private VehicleSpec.FanSchedule schedule() {
        Section s = Section.optional(
                root, "schedule", assumptions, "coolant", "on", "off", "allowance", "air_conditioning");
        List<List<Double>> curve = pairs(s, "coolant", Quantity.TEMPERATURE);
        if (curve.isEmpty()) {
            curve = List.of(List.of(KELVIN + 94, 0.25), List.of(KELVIN + 100, 0.6), List.of(KELVIN + 106, 1.0));
            assumptions.add(new Assumption(
                    "schedule.coolant",
                    "25 % at 94 degC, 60 % at 100 degC, 100 % at 106 degC",
                    "common practice, no source"));
        }
        List<List<Double>> allowance = pairs(s, "allowance", Quantity.SPEED);
        if (allowance.isEmpty()) {
            allowance = List.of(List.of(30 / 3.6, 0.0), List.of(90 / 3.6, 0.5));
            assumptions.add(new Assumption(
                    "schedule.allowance",
                    "nothing at 30 km/h to 50 % at 90 km/h",
                    "ram air takes over; common practice, no source"));
        }
        double on = s.value(
                "on",
                Quantity.TEMPERATURE,
                KELVIN + 50,
                KELVIN + 130,
                KELVIN + 96,
                "fan starts 93 to 105 degC; published fan logic");
        double off = s.value(
                "off",
                Quantity.TEMPERATURE,
                KELVIN + 40,
                KELVIN + 130,
                on - 4.0,
                "off 3 to 7 K below on; published fan logic");
        if (off >= on) {
            s.fault("off", "schedule.off must lie below schedule.on");
        }
        double cooling = s.value(
                "air_conditioning",
                Quantity.RATIO,
                0,
                1,
                0.4,
                "least demand while the compressor runs; common practice, no source");
        return new VehicleSpec.FanSchedule(
                first(curve), second(curve), on, off, first(allowance), second(allowance), cooling);
    }

    private static List<List<Double>> pairs(Section s, String key, Quantity x) {
        return s.map().map(m -> m.pairs(key, x, Quantity.RATIO)).orElse(List.of());
    }

    private static List<Double> first(List<List<Double>> pairs) {
        return pairs.stream().map(p -> p.get(0)).toList();
    }

    private static List<Double> second(List<List<Double>> pairs) {
        return pairs.stream().map(p -> p.get(1)).toList();
    }

    private VehicleSpec.Limits limits() {
        Section s = Section.optional(root, "limits", assumptions, "coolant", "boil_margin");
        double coolant = s.value(
                "coolant",
                Quantity.TEMPERATURE,
                KELVIN + 80,
                KELVIN + 140,
                KELVIN + 112,
                "limit used in published limiting-ambient examples");
        double margin =
                s.value("boil_margin", Quantity.TEMPERATURE_DIFFERENCE, 0, 40, 3.0, "common practice, no source");
        return new VehicleSpec.Limits(coolant, margin);
    }
}
