package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The limits block: what a car must keep; all of it may be left out. */
final class LimitsSection {
    private static final double HEAD = 2900e3; // Pa
    private static final double BELOW_CUT_OUT = 100e3; // Pa

    private final Section s;

    LimitsSection(TypedMap root, List<Assumption> assumptions) {
        this.s = Section.optional(
                root,
                "limits",
                assumptions,
                "coolant",
                "boil_margin",
                "gearbox",
                "head_pressure",
                "evaporating",
                "supply",
                "charge_air",
                "after_run_charge");
    }

    /** @param regulated voltage of the alternator, V */
    VehicleSpec.Limits limits(
            VehicleSpec.Thermostat thermostat,
            Optional<VehicleSpec.AirConditioning> conditioning,
            Optional<VehicleSpec.ChargeAir> cooler,
            double regulated) {
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
        double gearbox = s.value(
                "gearbox",
                Quantity.TEMPERATURE,
                "80 degC",
                "170 degC",
                "121 degC",
                "alarm at 250 degF; common practice, no source");
        double head = head(conditioning);
        double evaporating = evaporating(conditioning);
        double supply = s.value(
                "supply",
                Quantity.VOLTAGE,
                "10 V",
                "15 V",
                "12.6 V",
                "battery not drawn on; common practice, no source");
        if (supply >= regulated) {
            s.fault("supply", "'limits.supply' must lie below 'electrical.alternator.regulated', else it never holds");
        }
        return new VehicleSpec.Limits(
                coolant, margin, gearbox, head, evaporating, supply, chargeAir(cooler), afterRunShare());
    }

    /** No assumption about the vehicle. */
    private double afterRunShare() {
        return s.typedOr("after_run_charge", Quantity.RATIO, "1 %", "100 %", VehicleSpec.Limits.AFTER_RUN_SHARE);
    }

    /** Judged only where it is typed: what an engine stands depends on its fuel and its map. */
    private OptionalDouble chargeAir(Optional<VehicleSpec.ChargeAir> cooler) {
        String key = "charge_air";
        if (!s.has(key)) {
            return OptionalDouble.empty();
        }
        if (cooler.isEmpty()) {
            s.fault(
                    key,
                    "'limits.charge_air' is given but there is no charge-air cooler: say 'charging: turbo' in 'engine' or take it out");
        }
        double limit = s.required(key, Quantity.TEMPERATURE, "30 degC", "150 degC");
        return Double.isNaN(limit) ? OptionalDouble.empty() : OptionalDouble.of(limit);
    }

    private double head(Optional<VehicleSpec.AirConditioning> conditioning) {
        double cutOut = conditioning.map(a -> a.circuit().cutOut()).orElse(Double.POSITIVE_INFINITY);
        double head = s.derived(
                "head_pressure",
                Quantity.PRESSURE_ABSOLUTE,
                "1000 kPa abs",
                "4500 kPa abs",
                Math.min(HEAD, cutOut - BELOW_CUT_OUT),
                "29 bar abs, or 1 bar below 'air_conditioning.cut_out'; common practice, no source");
        if (head >= cutOut) {
            s.fault(
                    "head_pressure",
                    "'limits.head_pressure' must lie below 'air_conditioning.cut_out', which stops the compressor first");
        }
        return head;
    }

    private double evaporating(Optional<VehicleSpec.AirConditioning> conditioning) {
        double freeze = conditioning.map(a -> a.circuit().freezeLimit()).orElse(Double.NEGATIVE_INFINITY);
        double evaporating = s.value(
                "evaporating",
                Quantity.TEMPERATURE,
                "-10 degC",
                "30 degC",
                "12 degC",
                "still cools a cabin; common practice, no source");
        if (evaporating <= freeze) {
            s.fault(
                    "evaporating",
                    "'limits.evaporating' must lie above 'air_conditioning.freeze_limit', else no air conditioning holds it");
        }
        return evaporating;
    }
}
