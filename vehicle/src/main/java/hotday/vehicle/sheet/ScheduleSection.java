package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;

/** The fan schedule; all of it may be left out. */
final class ScheduleSection {
    private static final double KELVIN = 273.15;
    private static final double HYSTERESIS = 4.0;
    private static final List<List<Double>> COOLANT =
            List.of(List.of(KELVIN + 94, 0.25), List.of(KELVIN + 100, 0.6), List.of(KELVIN + 106, 1.0));
    private static final List<List<Double>> ALLOWANCE = List.of(List.of(30 / 3.6, 0.0), List.of(90 / 3.6, 0.5));

    private final Section s;

    ScheduleSection(TypedMap root, List<Assumption> assumptions) {
        this.s = Section.optional(
                root, "schedule", assumptions, "coolant", "on", "off", "allowance", "air_conditioning");
    }

    VehicleSpec.FanSchedule schedule(VehicleSpec.Limits limits) {
        List<List<Double>> curve = coolant();
        List<List<Double>> allowance = allowance();
        double on = s.value(
                "on",
                Quantity.TEMPERATURE,
                "50 degC",
                "130 degC",
                "96 degC",
                "fan starts 93 to 105 degC; published fan logic");
        double off = s.derived(
                "off",
                Quantity.TEMPERATURE,
                "40 degC",
                "130 degC",
                on - HYSTERESIS,
                "off 3 to 7 K below on; published fan logic");
        if (off >= on) {
            s.fault("off", "'schedule.off' must lie below 'schedule.on', else the fan chatters");
        }
        if (on >= limits.coolant()) {
            s.fault("on", "'schedule.on' must lie below 'limits.coolant', else the fan starts when it is too late");
        }
        double cooling = s.value(
                "air_conditioning",
                Quantity.RATIO,
                "0 %",
                "100 %",
                "40 %",
                "least demand while the compressor runs; common practice, no source");
        return new VehicleSpec.FanSchedule(
                first(curve), second(curve), on, off, first(allowance), second(allowance), cooling);
    }

    private List<List<Double>> coolant() {
        if (!s.has("coolant")) {
            s.assume("coolant", "[[94 degC, 25 %], [100 degC, 60 %], [106 degC, 100 %]]", "common practice, no source");
            return COOLANT;
        }
        List<List<Double>> curve =
                s.pairs("coolant", Quantity.TEMPERATURE, "40 degC", "150 degC", Quantity.RATIO, "0 %", "100 %");
        for (int i = 1; i < curve.size(); i++) {
            if (curve.get(i).get(1) < curve.get(i - 1).get(1)) {
                s.fault(
                        "coolant",
                        "'schedule.coolant' must not ask for less fan when the coolant is hotter; pair " + (i + 1)
                                + " does");
            }
        }
        return curve;
    }

    private List<List<Double>> allowance() {
        if (!s.has("allowance")) {
            s.assume(
                    "allowance",
                    "[[30 km/h, 0 %], [90 km/h, 50 %]]",
                    "demand taken off because ram air takes over; common practice, no source");
            return ALLOWANCE;
        }
        return s.pairs("allowance", Quantity.SPEED, "0 km/h", "400 km/h", Quantity.RATIO, "0 %", "100 %");
    }

    private static List<Double> first(List<List<Double>> pairs) {
        return pairs.stream().map(p -> p.get(0)).toList();
    }

    private static List<Double> second(List<List<Double>> pairs) {
        return pairs.stream().map(p -> p.get(1)).toList();
    }
}
