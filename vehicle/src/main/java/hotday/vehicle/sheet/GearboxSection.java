package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.FluidCooler;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;

/** The gearbox block; all of it may be left out. */
final class GearboxSection {
    private static final List<Double> SIX_SPEED = List.of(4.17, 2.34, 1.52, 1.14, 0.87, 0.69);
    private static final double SHIFT_SHARE = 0.6;
    private static final double LUGGING = 1.7;

    private final Section s;
    private final List<FluidCooler> coolers;

    GearboxSection(TypedMap root, List<Assumption> assumptions) {
        this.s = Section.optional(
                root,
                "gearbox",
                assumptions,
                "ratios",
                "final_drive",
                "efficiency",
                "shift_up_speed",
                "lowest_speed",
                "idle_drag",
                "cooler",
                "low_range",
                "converter");
        this.coolers = readCoolers();
    }

    /** Where its fluid is cooled, in flow order. */
    List<FluidCooler> coolers() {
        return coolers;
    }

    private List<FluidCooler> readCoolers() {
        List<String> words = s.words("cooler", "none", "no gearbox cooler", "none", "front", "tank");
        if (new HashSet<>(words).size() < words.size() || (words.size() > 1 && words.contains("none"))) {
            s.fault("cooler", "'gearbox.cooler' is none, front, tank, or both in flow order such as [tank, front]");
            return List.of();
        }
        return words.stream()
                .filter(w -> !w.equals("none"))
                .map(w -> FluidCooler.valueOf(w.toUpperCase(Locale.ROOT)))
                .toList();
    }

    VehicleSpec.Gearbox gearbox(VehicleSpec.Engine engine) {
        List<Double> ratios = ratios();
        double finalDrive = s.value("final_drive", Quantity.NUMBER, "1.5", "15", "3.3", "common practice, no source");
        double efficiency = s.value(
                "efficiency",
                Quantity.RATIO,
                "50 %",
                "100 %",
                "88 %",
                "gearbox and axle together; common practice, no source");
        double shift = s.derived(
                "shift_up_speed",
                Quantity.ANGULAR_SPEED,
                "1000 rpm",
                "12000 rpm",
                SHIFT_SHARE * engine.ratedSpeed(),
                "0.6 of rated speed; common practice, no source");
        double lowest = s.derived(
                "lowest_speed",
                Quantity.ANGULAR_SPEED,
                "500 rpm",
                "4000 rpm",
                LUGGING * engine.idleSpeed(),
                "no lugging: 1.7 times idle speed; common practice, no source");
        if (lowest >= shift) {
            s.fault(
                    s.has("lowest_speed") ? "lowest_speed" : "shift_up_speed",
                    "'gearbox.lowest_speed' must lie below 'gearbox.shift_up_speed', else no gear fits");
        }
        double low = s.value("low_range", Quantity.NUMBER, "1", "6", "1", "no low range");
        VehicleSpec.Converter converter = new ConverterSection(s).converter(engine, ratios.size());
        double drag = converter.stallPower(engine.idleSpeed());
        double toAir = coolers.contains(FluidCooler.FRONT) ? 1.0 : 0.0;
        return new VehicleSpec.Gearbox(ratios, finalDrive, efficiency, shift, lowest, drag, toAir, low, converter);
    }

    private List<Double> ratios() {
        if (!s.has("ratios")) {
            s.assume(
                    "ratios",
                    "[4.17, 2.34, 1.52, 1.14, 0.87, 0.69]",
                    "a generic six-speed automatic; common practice, no source");
            return SIX_SPEED;
        }
        List<Double> ratios = s.list("ratios", Quantity.NUMBER, "0.2", "20");
        for (int i = 1; i < ratios.size(); i++) {
            if (ratios.get(i) >= ratios.get(i - 1)) {
                s.fault(
                        "ratios",
                        "gear ratios must fall from first gear on; gear " + (i + 1) + " has " + ratios.get(i)
                                + " after " + ratios.get(i - 1));
            }
        }
        return ratios;
    }
}
