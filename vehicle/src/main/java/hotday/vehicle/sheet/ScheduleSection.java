package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;
import java.util.Optional;

/** The fan schedule; all of it may be left out. */
final class ScheduleSection {
    private static final double KELVIN = 273.15;
    private static final double HYSTERESIS = 4.0;
    private static final List<List<Double>> COOLANT =
            List.of(List.of(KELVIN + 94, 0.25), List.of(KELVIN + 100, 0.6), List.of(KELVIN + 106, 1.0));
    private static final List<List<Double>> ALLOWANCE = List.of(List.of(30 / 3.6, 0.0), List.of(90 / 3.6, 0.5));

    private static final List<List<Double>> HEAD = List.of(
            List.of(1000e3, 0.25),
            List.of(1135e3, 0.3),
            List.of(1204e3, 0.4),
            List.of(1600e3, 0.7),
            List.of(2000e3, 1.0));
    private static final List<List<Double>> GEARBOX =
            List.of(List.of(KELVIN + 104, 0.25), List.of(KELVIN + 113, 0.6), List.of(KELVIN + 119, 1.0));
    private static final double TEMPERATURE_STEP = 0.2; // K, two steps of the controller
    private static final double PRESSURE_STEP = 2e3; // Pa
    private static final double SPEED_STEP = 0.2 / 3.6; // m/s

    private final Section s;

    ScheduleSection(TypedMap root, List<Assumption> assumptions) {
        this.s = Section.optional(
                root,
                "schedule",
                assumptions,
                "coolant",
                "on",
                "off",
                "allowance",
                "air_conditioning",
                "head_pressure",
                "head_hysteresis",
                "gearbox",
                "gearbox_hysteresis",
                "charge_air",
                "charge_air_hysteresis",
                "allowance_ends",
                "floor",
                "switching",
                "slew",
                "after_run");
    }

    /**
     * @param cooled true for a car with air conditioning
     * @param charged true for a car with a charge-air cooler
     */
    FanSchedule schedule(VehicleSpec.Limits limits, boolean cooled, boolean charged) {
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
        double cooling = constant();
        List<List<Double>> head = head(cooled);
        List<List<Double>> gearbox = gearbox();
        return new FanSchedule(
                Pairs.first(curve),
                Pairs.second(curve),
                on,
                off,
                Pairs.first(allowance),
                Pairs.second(allowance),
                cooling,
                Pairs.first(head),
                Pairs.second(head),
                Pairs.first(gearbox),
                Pairs.second(gearbox),
                chargeAir(charged),
                details(on));
    }

    /** What stands here is the standard schedule's where nothing is typed; it is no assumption about the vehicle. */
    private FanSchedule.Details details(double on) {
        FanSchedule.Details d = FanSchedule.Details.standard(on);
        return new FanSchedule.Details(
                s.typedOr(
                        "gearbox_hysteresis", Quantity.TEMPERATURE_DIFFERENCE, "0.1 K", "40 K", d.gearboxHysteresis()),
                s.typedOr("head_hysteresis", Quantity.PRESSURE_DIFFERENCE, "1 kPa", "1500 kPa", d.headHysteresis()),
                s.typedOr("allowance_ends", Quantity.TEMPERATURE, "50 degC", "150 degC", d.allowanceEnds()),
                s.inner("floor", "demand", "from", "below", "above")
                        .map(f -> floor(f, d.floor()))
                        .orElse(d.floor()),
                s.inner("switching", "start_delay", "on", "off", "least", "least_on", "least_off")
                        .map(w -> switching(w, d.switching()))
                        .orElse(d.switching()),
                s.inner("slew", "up", "at_rest", "down", "drop_out")
                        .map(w -> slew(w, d.slew()))
                        .orElse(d.slew()),
                s.inner("after_run", "curve", "from", "until", "longest", "battery")
                        .map(a -> afterRun(a, d.afterRun()))
                        .orElse(d.afterRun()));
    }

    private static FanSchedule.Floor floor(Section f, FanSchedule.Floor d) {
        double below = f.typedOr("below", Quantity.SPEED, "0 km/h", "100 km/h", d.below());
        double above = f.typedOr("above", Quantity.SPEED, "0 km/h", "100 km/h", Math.max(below, d.above()));
        if (above < below) {
            f.fault("above", "'schedule.floor.above' must not lie below 'schedule.floor.below'");
        }
        return new FanSchedule.Floor(
                share(f, "demand", d.demand()),
                f.typedOr("from", Quantity.TEMPERATURE, "-50 degC", "150 degC", d.from()),
                below,
                above);
    }

    private static FanSchedule.Switching switching(Section w, FanSchedule.Switching d) {
        double on = w.typedOr("on", Quantity.RATIO, "1 %", "100 %", d.on());
        double off = share(w, "off", Math.min(on, d.off()));
        if (off > on) {
            w.fault("off", "'schedule.switching.off' must not lie above 'schedule.switching.on'");
        }
        return new FanSchedule.Switching(
                w.typedOr("start_delay", Quantity.TIME, "0 s", "10 min", d.startDelay()),
                on,
                off,
                share(w, "least", d.least()),
                w.typedOr("least_on", Quantity.TIME, "0 s", "10 min", d.leastOn()),
                w.typedOr("least_off", Quantity.TIME, "0 s", "10 min", d.leastOff()));
    }

    private static FanSchedule.Slew slew(Section w, FanSchedule.Slew d) {
        return new FanSchedule.Slew(
                rate(w, "up", d.up()),
                rate(w, "at_rest", d.upAtRest()),
                rate(w, "down", d.down()),
                share(w, "drop_out", d.dropOut()));
    }

    private static FanSchedule.AfterRun afterRun(Section a, FanSchedule.AfterRun d) {
        List<List<Double>> curve =
                a.pairs("curve", Quantity.TEMPERATURE, "40 degC", "150 degC", Quantity.RATIO, "0 %", "100 %");
        Pairs.mustStandApart(a, "curve", curve, TEMPERATURE_STEP, "0.1 K");
        double from = a.typedOr("from", Quantity.TEMPERATURE, "40 degC", "150 degC", d.from());
        double until = a.typedOr("until", Quantity.TEMPERATURE, "40 degC", "150 degC", Math.min(from - 0.1, d.until()));
        if (until > from - 0.1 + 1e-9) {
            a.fault("until", "'schedule.after_run.until' must lie below 'schedule.after_run.from'");
        }
        return new FanSchedule.AfterRun(
                curve.isEmpty() ? d.temperature() : Pairs.first(curve),
                curve.isEmpty() ? d.demand() : Pairs.second(curve),
                from,
                until,
                a.typedOr("longest", Quantity.TIME, "0 s", "1 h", d.longest()),
                a.typedOr("battery", Quantity.VOLTAGE, "0 V", "30 V", d.battery()));
    }

    private static double share(Section section, String key, double otherwise) {
        return section.typedOr(key, Quantity.RATIO, "0 %", "100 %", otherwise);
    }

    private static double rate(Section section, String key, double otherwise) {
        return section.typedOr(key, Quantity.SHARE_RATE, "0.1 %/s", "1000 %/s", otherwise);
    }

    /** Instead of the curve, for a controller that does not know the head pressure; 0 when it is not typed. */
    private double constant() {
        return s.has("air_conditioning") ? s.required("air_conditioning", Quantity.RATIO, "0 %", "100 %") : 0.0;
    }

    private List<List<Double>> head(boolean cooled) {
        String key = "head_pressure";
        if (s.has(key)) {
            if (s.has("air_conditioning")) {
                s.fault(
                        "air_conditioning",
                        "'schedule.air_conditioning' and 'schedule.head_pressure' both say what the fan does for the air conditioning; take one of them out");
            }
            List<List<Double>> typed = s.pairs(
                    key, Quantity.PRESSURE_ABSOLUTE, "300 kPa abs", "4500 kPa abs", Quantity.RATIO, "0 %", "100 %");
            Pairs.mustNotFall(s, key, typed, "'schedule.head_pressure' must not ask for less fan at a higher pressure");
            Pairs.mustStandApart(s, key, typed, PRESSURE_STEP, "1 kPa");
            return typed;
        }
        if (!cooled || s.has("air_conditioning")) {
            return List.of();
        }
        s.assume(
                key,
                "[[1000 kPa abs, 25 %], [1135 kPa abs, 30 %], [1204 kPa abs, 40 %], [1600 kPa abs, 70 %], [2000 kPa abs, 100 %]]",
                "full fan by 1800 to 2000 kPa; common practice, no source");
        return HEAD;
    }

    private List<List<Double>> gearbox() {
        if (!s.has("gearbox")) {
            s.assume(
                    "gearbox", "[[104 degC, 25 %], [113 degC, 60 %], [119 degC, 100 %]]", "common practice, no source");
            return GEARBOX;
        }
        List<List<Double>> typed =
                s.pairs("gearbox", Quantity.TEMPERATURE, "40 degC", "170 degC", Quantity.RATIO, "0 %", "100 %");
        Pairs.mustNotFall(s, "gearbox", typed, "'schedule.gearbox' must not ask for less fan when the fluid is hotter");
        Pairs.mustStandApart(s, "gearbox", typed, TEMPERATURE_STEP, "0.1 K");
        return typed;
    }

    /** None unless it is typed. */
    private Optional<FanSchedule.ChargeAirCurve> chargeAir(boolean charged) {
        String key = "charge_air";
        String hysteresis = "charge_air_hysteresis";
        if (!s.has(key)) {
            if (s.has(hysteresis)) {
                s.fault(hysteresis, "'schedule.charge_air_hysteresis' belongs to a curve 'schedule.charge_air'");
            }
            return Optional.empty();
        }
        if (!charged) {
            s.fault(
                    key,
                    "'schedule.charge_air' is given but there is no charge-air cooler: say 'charging: turbo' in 'engine' or take it out");
        }
        List<List<Double>> typed =
                s.pairs(key, Quantity.TEMPERATURE, "0 degC", "170 degC", Quantity.RATIO, "0 %", "100 %");
        Pairs.mustNotFall(s, key, typed, "'schedule.charge_air' must not ask for less fan when the air is hotter");
        Pairs.mustStandApart(s, key, typed, TEMPERATURE_STEP, "0.1 K");
        double counts = s.typedOr(
                hysteresis, Quantity.TEMPERATURE_DIFFERENCE, "0.1 K", "40 K", FanSchedule.ChargeAirCurve.HYSTERESIS);
        return typed.isEmpty()
                ? Optional.empty()
                : Optional.of(new FanSchedule.ChargeAirCurve(Pairs.first(typed), Pairs.second(typed), counts));
    }

    private List<List<Double>> coolant() {
        if (!s.has("coolant")) {
            s.assume("coolant", "[[94 degC, 25 %], [100 degC, 60 %], [106 degC, 100 %]]", "common practice, no source");
            return COOLANT;
        }
        List<List<Double>> curve =
                s.pairs("coolant", Quantity.TEMPERATURE, "40 degC", "150 degC", Quantity.RATIO, "0 %", "100 %");
        Pairs.mustNotFall(
                s, "coolant", curve, "'schedule.coolant' must not ask for less fan when the coolant is hotter");
        Pairs.mustStandApart(s, "coolant", curve, TEMPERATURE_STEP, "0.1 K");
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
        List<List<Double>> typed =
                s.pairs("allowance", Quantity.SPEED, "0 km/h", "400 km/h", Quantity.RATIO, "0 %", "100 %");
        Pairs.mustStandApart(s, "allowance", typed, SPEED_STEP, "0.1 km/h");
        return typed;
    }
}
