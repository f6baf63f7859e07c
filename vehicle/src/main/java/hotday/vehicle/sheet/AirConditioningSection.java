package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.physics.cycle.Charge;
import hotday.physics.refrigerant.Refrigerant;
import hotday.vehicle.spec.CompressorHolds;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.Expansion;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The air_conditioning block, and with it evaporator and cabin; without it a car has none of them. */
final class AirConditioningSection {
    private static final double COMPRESSOR_SHARE = 0.23;
    private static final double USUAL_HEAT = 6500.0;
    private static final double USUAL_DISPLACEMENT = 170e-6;
    private static final double USUAL_AIR_SIDE = 260.0;
    private static final double USUAL_REFRIGERANT_SIDE = 900.0;

    private static final double PEDAL_BAND = 0.1;

    private static final String SCALED = "in proportion to 'condenser_heat'; from memory";
    private static final String SWITCH = "published service data";

    private final TypedMap root;
    private final List<Assumption> assumptions;
    private final Section s;

    AirConditioningSection(TypedMap root, List<Assumption> assumptions) {
        this.root = root;
        this.assumptions = assumptions;
        this.s = Section.optional(
                root,
                "air_conditioning",
                assumptions,
                "condenser_heat",
                "compressor_power",
                "refrigerant",
                "displacement",
                "compressor",
                "pulley_ratio",
                "electric_speed",
                "clutch_current",
                "expansion",
                "superheat",
                "orifice",
                "charge",
                "freeze_limit",
                "cut_out",
                "cut_in",
                "low_cut_out",
                "start_delay",
                "throttle",
                "hot_coolant",
                "least_on",
                "least_off",
                "high_capacity",
                "low_capacity");
    }

    /** Empty when the block is left out: a car without air conditioning. */
    Optional<VehicleSpec.AirConditioning> airConditioning() {
        if (!s.present()) {
            refuseAlone("evaporator");
            refuseAlone("cabin");
            return Optional.empty();
        }
        double heat = s.value(
                "condenser_heat",
                Quantity.POWER,
                "0.5 kW",
                "40 kW",
                "6.5 kW",
                "cooling of 5 kW times 1.3; common practice, no source");
        double power = s.derived(
                "compressor_power",
                Quantity.POWER,
                "0.1 kW",
                "15 kW",
                COMPRESSOR_SHARE * heat,
                "condenser heat less cooling; common practice, no source");
        if (power >= heat) {
            s.fault(
                    "compressor_power",
                    "'air_conditioning.compressor_power' must be less than 'condenser_heat': the condenser gives away the cooling and the compressor power together");
        }
        VehicleSpec.RefrigerantCircuit circuit = circuit(heat / USUAL_HEAT);
        VehicleSpec.Cabin cabin = new CabinSection(root, assumptions).cabin();
        return Optional.of(new VehicleSpec.AirConditioning(
                heat, power, circuit, holds(), evaporator(heat / USUAL_HEAT, cabin), cabin));
    }

    private void refuseAlone(String block) {
        if (root.has(block)) {
            root.fault(
                    block,
                    "'" + block
                            + "' is given but there is no 'air_conditioning': add 'air_conditioning: {}' or take it out");
        }
    }

    /** @param size over a usual system */
    private VehicleSpec.RefrigerantCircuit circuit(double size) {
        String refrigerant = s.word("refrigerant", "r134a", "common practice, no source", "r134a", "r1234yf");
        double displacement = s.derived(
                "displacement", Quantity.VOLUME, "10 cm3", "1 l", USUAL_DISPLACEMENT * size, "a turn, " + SCALED);
        boolean variable =
                "variable".equals(s.word("compressor", "variable", "common practice, no source", "fixed", "variable"));
        boolean electric = s.has("electric_speed");
        double pulley = pulley(electric);
        double speed = electric ? s.required("electric_speed", Quantity.ANGULAR_SPEED, "300 rpm", "15000 rpm") : 0.0;
        double clutch = s.value(
                "clutch_current",
                Quantity.CURRENT,
                "0 A",
                "15 A",
                electric ? "0 A" : "4 A",
                electric ? "its own motor needs no clutch" : "common practice, no source");
        boolean orifice =
                "orifice".equals(s.word("expansion", "valve", "common practice, no source", "valve", "orifice"));
        double superheat = s.value(
                "superheat",
                Quantity.TEMPERATURE_DIFFERENCE,
                "0 K",
                "25 K",
                "6 K",
                "held by a thermostatic valve; from memory");
        double hole = s.value(
                "orifice", Quantity.LENGTH, "0.5 mm", "5 mm", "1.8 mm", "diameter of an orifice tube; from memory");
        String charge = s.word("charge", "right", "charged by weight", "low", "right", "high");
        double freeze = s.value(
                "freeze_limit",
                Quantity.TEMPERATURE,
                "-15 degC",
                "15 degC",
                "2 degC",
                "off at 0 to 1 degC, other cars hold 3 to 4 degC; " + SWITCH);
        double high = capacity("high_capacity", "4.5 kJ/K", "condenser, its pipes and what is in them");
        double low = capacity("low_capacity", "3 kJ/K", "evaporator, its pipes and what is in them");
        double out = pressure("cut_out", "1500 kPa", "4500 kPa", "3100 kPa", "2827 to 3140 kPa; " + SWITCH);
        double in = pressure("cut_in", "500 kPa", "4000 kPa", "2000 kPa", "common practice, no source");
        if (in >= out) {
            s.fault(
                    s.has("cut_in") ? "cut_in" : "cut_out",
                    "'air_conditioning.cut_in' must lie below 'air_conditioning.cut_out', else the compressor chatters");
        }
        double least = pressure("low_cut_out", "30 kPa", "500 kPa", "170 kPa", "120 to 255 kPa; " + SWITCH);
        return new VehicleSpec.RefrigerantCircuit(
                Refrigerant.valueOf(refrigerant.toUpperCase(Locale.ROOT)),
                displacement,
                variable,
                pulley,
                speed,
                clutch,
                orifice ? Expansion.ORIFICE : Expansion.THERMOSTATIC_VALVE,
                superheat,
                hole,
                Charge.valueOf(charge.toUpperCase(Locale.ROOT)),
                freeze,
                high,
                low,
                out,
                in,
                least);
    }

    /** What stands here is the standard's where nothing is typed; it is no assumption about the vehicle. */
    private CompressorHolds holds() {
        CompressorHolds d = CompressorHolds.standard();
        return new CompressorHolds(
                s.typedOr("start_delay", Quantity.TIME, "0 s", "120 s", d.startDelay()),
                s.inner("throttle", "wide_open", "released", "longest")
                        .map(t -> throttle(t, d.throttle()))
                        .orElse(d.throttle()),
                s.inner("hot_coolant", "cut_out", "cut_in").map(AirConditioningSection::hotCoolant),
                s.typedOr("least_on", Quantity.TIME, "0 s", "120 s", d.leastOn()),
                s.typedOr("least_off", Quantity.TIME, "0 s", "120 s", d.leastOff()));
    }

    private static CompressorHolds.Throttle throttle(Section t, CompressorHolds.Throttle d) {
        double open = t.typedOr("wide_open", Quantity.RATIO, "10 %", "100 %", d.wideOpen());
        double released =
                t.typedOr("released", Quantity.RATIO, "5 %", "99 %", Math.min(d.released(), open - PEDAL_BAND));
        if (released >= open) {
            t.fault(
                    t.has("released") ? "released" : "wide_open",
                    "'air_conditioning.throttle.released' must lie below 'air_conditioning.throttle.wide_open'");
        }
        return new CompressorHolds.Throttle(
                open, released, t.typedOr("longest", Quantity.TIME, "0 s", "60 s", d.longest()));
    }

    private static CompressorHolds.HotCoolant hotCoolant(Section h) {
        double out = h.required("cut_out", Quantity.TEMPERATURE, "80 degC", "150 degC");
        double in =
                h.typedOr("cut_in", Quantity.TEMPERATURE, "60 degC", "150 degC", out - CompressorHolds.HotCoolant.BAND);
        if (in >= out) {
            h.fault(
                    "cut_in",
                    "'air_conditioning.hot_coolant.cut_in' must lie below 'air_conditioning.hot_coolant.cut_out', else the compressor chatters");
        }
        return new CompressorHolds.HotCoolant(out, in);
    }

    /** Of a compressor with its own motor 1; nobody asks. */
    private double pulley(boolean electric) {
        if (!electric) {
            return s.value("pulley_ratio", Quantity.NUMBER, "0.3", "4", "1.3", "common practice, no source");
        }
        if (s.has("pulley_ratio")) {
            s.fault(
                    "pulley_ratio",
                    "'air_conditioning.pulley_ratio' and 'air_conditioning.electric_speed' are two drives of one compressor; take one out");
        }
        return 1.0;
    }

    private double pressure(String key, String low, String high, String usual, String reason) {
        String abs = " abs";
        return s.value(key, Quantity.PRESSURE_ABSOLUTE, low + abs, high + abs, usual + abs, reason);
    }

    private double capacity(String key, String usual, String what) {
        return s.value(key, Quantity.HEAT_CAPACITY, "0.2 kJ/K", "100 kJ/K", usual, what + "; from memory");
    }

    private VehicleSpec.Evaporator evaporator(double size, VehicleSpec.Cabin cabin) {
        Section e = Section.optional(
                root, "evaporator", assumptions, "air_conductance", "refrigerant_conductance", "air_flow");
        double air = e.derived(
                "air_conductance",
                Quantity.CONDUCTANCE,
                "10 W/K",
                "10 kW/K",
                USUAL_AIR_SIDE * size,
                "dry, at 'air_flow', " + SCALED);
        double inside = e.derived(
                "refrigerant_conductance",
                Quantity.CONDUCTANCE,
                "20 W/K",
                "50 kW/K",
                USUAL_REFRIGERANT_SIDE * size,
                SCALED);
        double flow =
                new Flow(e).derived("air_flow", "0.01 kg/s", "2 kg/s", cabin.blowerFlow(), "that of the full blower");
        return new VehicleSpec.Evaporator(air, inside, flow);
    }
}
