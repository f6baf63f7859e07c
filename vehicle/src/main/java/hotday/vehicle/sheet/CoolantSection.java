package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;

/** The coolant loop: coolant, thermostat and heater blocks; all of them may be left out. */
final class CoolantSection {
    private static final double LITRE = 1e-3;
    private static final double LOOP_ALWAYS = 4.0 * LITRE;
    private static final double LOOP_PER_LITRE = 1.8 * LITRE;
    private static final double HEAT_SHARE = 0.7;
    /** 1.8 l/min a kW of heat, m3/s a W. */
    private static final double FLOW_PER_HEAT = 1.8 * LITRE / 60.0 / 1000.0;

    private static final double OPENING_SPAN = 12.0;
    private static final double LEAST_SPAN = 1.0;

    private final TypedMap root;
    private final List<Assumption> assumptions;

    CoolantSection(TypedMap root, List<Assumption> assumptions) {
        this.root = root;
        this.assumptions = assumptions;
    }

    VehicleSpec.CoolantLoop loop(VehicleSpec.Engine engine) {
        Section s =
                Section.optional(root, "coolant", assumptions, "glycol", "volume", "cap", "pump_flow", "pump_speed");
        double glycol = s.value(
                "glycol",
                Quantity.RATIO,
                "0 %",
                "60 %",
                "50 %",
                "half ethylene glycol by volume; common practice, no source");
        double volume = s.derived(
                "volume",
                Quantity.VOLUME,
                "1 l",
                "80 l",
                LOOP_ALWAYS + LOOP_PER_LITRE * engine.displacement() / LITRE,
                "4 l and 1.8 l a litre of displacement; from memory");
        double cap = s.value(
                "cap",
                Quantity.PRESSURE_GAUGE,
                "0 bar",
                "2.5 bar",
                "15 psi",
                "common cap rating 13 to 16 psi; published service pages");
        double flow = s.derived(
                "pump_flow",
                Quantity.VOLUME_FLOW,
                "5 l/min",
                "1500 l/min",
                FLOW_PER_HEAT * HEAT_SHARE * engine.ratedPower(),
                "1.8 l/min a kW of coolant heat, taken as 0.7 of rated power; common practice, no source");
        double speed = s.derived(
                "pump_speed",
                Quantity.ANGULAR_SPEED,
                "500 rpm",
                "12000 rpm",
                engine.ratedSpeed(),
                "flow quoted at rated engine speed");
        return new VehicleSpec.CoolantLoop(glycol, volume, cap, flow, speed);
    }

    VehicleSpec.Thermostat thermostat() {
        Section s = Section.optional(root, "thermostat", assumptions, "opens", "full", "hysteresis", "lag", "leak");
        double opens = s.value(
                "opens",
                Quantity.TEMPERATURE,
                "50 degC",
                "120 degC",
                "88 degC",
                "common wax thermostat; published service data 74 to 88 degC");
        double full = s.derived(
                "full",
                Quantity.TEMPERATURE,
                "52 degC",
                "140 degC",
                opens + OPENING_SPAN,
                "full opening 11 to 15 K above start; published service data");
        if (full < opens + LEAST_SPAN) {
            s.fault("full", "'thermostat.full' must lie at least 1 K above 'thermostat.opens'");
        }
        double hysteresis = s.value(
                "hysteresis",
                Quantity.TEMPERATURE_DIFFERENCE,
                "0 K",
                "15 K",
                "4 K",
                "closing 3 to 6 K below opening; published service data");
        double lag = s.value("lag", Quantity.TIME, "0.5 s", "120 s", "10 s", "first-order lag of the wax; from memory");
        double leak = s.value("leak", Quantity.RATIO, "0 %", "20 %", "0.5 %", "jiggle pin; from memory");
        return new VehicleSpec.Thermostat(opens, full, hysteresis, lag, leak);
    }

    VehicleSpec.Heater heater() {
        Section s = Section.optional(root, "heater", assumptions, "conductance", "flow_share", "heat_capacity");
        double conductance = s.value(
                "conductance",
                Quantity.CONDUCTANCE,
                "1 W/K",
                "1000 W/K",
                "80 W/K",
                "6 kW at 75 K between coolant and cold air; from memory");
        double share = s.value(
                "flow_share", Quantity.RATIO, "1 %", "50 %", "15 %", "of the pump flow; common practice, no source");
        double capacity = s.value(
                "heat_capacity",
                Quantity.HEAT_CAPACITY,
                "0.2 kJ/K",
                "50 kJ/K",
                "2.5 kJ/K",
                "core and the coolant in it; from memory");
        return new VehicleSpec.Heater(conductance, share, capacity);
    }
}
