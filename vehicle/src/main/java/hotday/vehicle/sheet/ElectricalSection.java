package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.physics.component.Cable;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The electrical block: alternator, battery, cable and limits of the fan; all of it may be left out. */
final class ElectricalSection {
    private static final double RPM = Math.PI / 30.0;
    /** Rotor speed, rpm. */
    private static final double[] ROTOR = {1300, 1500, 1800, 2200, 3000, 4000, 6000};
    /** Current over the rating at those; shape of a worked problem, 35 % at 1500 rpm. */
    private static final double[] SHARE = {28.0 / 150, 52.0 / 150, 76.0 / 150, 98.0 / 150, 124.0 / 150, 140.0 / 150, 1.0
    };

    private static final double WARM_CABLE = 333.15; // K
    private static final double FAN_VOLTAGE = 13.0;
    private static final double FAN_RESERVE = 1.15;

    private final Section s;
    private double[] loop = {Double.NaN, Double.NaN};

    ElectricalSection(TypedMap root, List<Assumption> assumptions) {
        this.s = Section.optional(
                root,
                "electrical",
                assumptions,
                "alternator",
                "battery",
                "base_load",
                "fan_cable",
                "fan_current_limit",
                "fan_electronics",
                "fan_derated",
                "fan_full");
    }

    private record Alternator(
            List<Double> speed,
            List<Double> current,
            double coefficient,
            double ratio,
            double efficiency,
            double regulated) {}

    private record Battery(double voltage, double resistance, double capacity) {}

    /** Length, m, and cross-section, m2, of the fan's cable both ways; NaN where the wiring block has it. */
    double[] loop() {
        return loop.clone();
    }

    /** @param wired resistance of the fan's cables where the wiring block has them, ohm */
    VehicleSpec.Electrical electrical(VehicleSpec.Fan fan, Optional<Double> wired) {
        Alternator alternator = alternator();
        Battery battery = battery(alternator.regulated());
        double base = s.value(
                "base_load",
                Quantity.CURRENT,
                "0 A",
                "300 A",
                "25 A",
                "ignition, fuel pump, lights and the rest; common practice, no source");
        double cable = wired.map(this::elsewhere).orElseGet(this::cable);
        double limit = s.derived(
                "fan_current_limit",
                Quantity.CURRENT,
                "1 A",
                "1500 A",
                FAN_RESERVE * fan.shaftPower() / fan.motorEfficiency() / FAN_VOLTAGE,
                "1.15 of what the fan takes at 13 V; common practice, no source");
        double electronics =
                s.value("fan_electronics", Quantity.POWER, "0 W", "500 W", "12 W", "beside the motor; from memory");
        double derated = s.value(
                "fan_derated", Quantity.VOLTAGE, "5 V", "13 V", "9 V", "no power left; common practice, no source");
        double full = s.value(
                "fan_full", Quantity.VOLTAGE, "6 V", "14 V", "10.5 V", "all of its power; common practice, no source");
        if (derated >= full) {
            s.fault(
                    s.has("fan_derated") ? "fan_derated" : "fan_full",
                    "'electrical.fan_derated' must lie below 'electrical.fan_full'");
        }
        return new VehicleSpec.Electrical(
                alternator.speed(),
                alternator.current(),
                alternator.coefficient(),
                alternator.ratio(),
                alternator.efficiency(),
                alternator.regulated(),
                battery.voltage(),
                battery.resistance(),
                battery.capacity(),
                base,
                cable,
                electronics,
                limit,
                derated,
                full);
    }

    private Alternator alternator() {
        List<Assumption> own = new ArrayList<>();
        Section a = s.part(
                "alternator", own, "rating", "curve", "ratio", "efficiency", "temperature_coefficient", "regulated");
        List<List<Double>> curve = curve(a);
        double ratio = a.value(
                "ratio", Quantity.NUMBER, "1", "6", "2.9", "alternator over engine speed; common practice, no source");
        double efficiency = a.value("efficiency", Quantity.RATIO, "20 %", "95 %", "58 %", "from memory");
        double coefficient = a.value(
                "temperature_coefficient",
                Quantity.SHARE_PER_KELVIN,
                "0 %/K",
                "1 %/K",
                "0.25 %/K",
                "loss of current above 25 degC; from memory");
        double regulated = a.value(
                "regulated", Quantity.VOLTAGE, "12 V", "16 V", "13.9 V", "13.4 to 14.6 V warm; published service data");
        s.settle(a, own, "a usual alternator; common practice, no source");
        return new Alternator(Pairs.first(curve), Pairs.second(curve), coefficient, ratio, efficiency, regulated);
    }

    /** Current against rotor speed, SI. */
    private static List<List<Double>> curve(Section a) {
        if (!a.has("curve")) {
            double rating = a.value(
                    "rating",
                    Quantity.CURRENT,
                    "10 A",
                    "600 A",
                    "150 A",
                    "at 6000 rpm of the rotor; common practice, no source");
            List<List<Double>> usual = new ArrayList<>();
            for (int i = 0; i < ROTOR.length; i++) {
                usual.add(List.of(RPM * ROTOR[i], rating * SHARE[i]));
            }
            return usual;
        }
        if (a.has("rating")) {
            a.fault(
                    "rating",
                    "'electrical.alternator.rating' and 'electrical.alternator.curve' say the same thing twice; take one of them out");
        }
        List<List<Double>> typed =
                a.pairs("curve", Quantity.ANGULAR_SPEED, "300 rpm", "30000 rpm", Quantity.CURRENT, "0 A", "1000 A");
        Pairs.mustNotFall(
                a, "curve", typed, "'electrical.alternator.curve' must not give less current at a higher rotor speed");
        return typed;
    }

    private Battery battery(double regulated) {
        List<Assumption> own = new ArrayList<>();
        Section b = s.part("battery", own, "voltage", "resistance", "capacity");
        double voltage =
                b.value("voltage", Quantity.VOLTAGE, "10 V", "14 V", "12.6 V", "open circuit, charged; textbook value");
        double resistance = b.value(
                "resistance",
                Quantity.RESISTANCE,
                "0.5 mohm",
                "200 mohm",
                "8 mohm",
                "inside, with its cables; from memory");
        double capacity =
                b.value("capacity", Quantity.CHARGE, "5 Ah", "1000 Ah", "80 Ah", "common practice, no source");
        s.settle(b, own, "a usual starter battery; from memory");
        if (voltage >= regulated) {
            b.faultNear(
                    "voltage",
                    s,
                    "'electrical.battery.voltage' must lie below 'electrical.alternator.regulated', else it is never charged");
        }
        return new Battery(voltage, resistance, capacity);
    }

    private double elsewhere(double resistance) {
        if (s.has("fan_cable")) {
            s.fault(
                    "fan_cable",
                    "'electrical.fan_cable' and 'wiring.feed' say the same thing twice; take one of them out");
        }
        return resistance;
    }

    private double cable() {
        List<Assumption> own = new ArrayList<>();
        Section c = s.part("fan_cable", own, "length", "area");
        double length =
                c.value("length", Quantity.LENGTH, "0.1 m", "40 m", "5 m", "both ways; common practice, no source");
        double area =
                c.value("area", Quantity.AREA, "0.3 mm2", "300 mm2", "16 mm2", "copper; common practice, no source");
        s.settle(c, own, "both ways, copper at 60 degC (IEC 60228); common practice, no source");
        loop = new double[] {length, area};
        boolean readable = area > 0.0 && length > 0.0;
        return readable ? Cable.ofCopper(area, length).resistance(WARM_CABLE) : Double.NaN;
    }
}
