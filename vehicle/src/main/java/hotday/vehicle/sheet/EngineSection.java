package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.Fuel;
import java.util.List;
import java.util.Optional;

/** The engine block and the charge-air cooler. */
final class EngineSection {
    private static final double LITRE = 1e-3;
    private static final double OIL_DENSITY = 870.0; // kg/m3, warm engine oil; handbook value, from memory
    private static final double METAL_PER_LITRE = 50.0; // kg
    private static final double OIL_ALWAYS = 2.0 * LITRE;
    private static final double OIL_PER_LITRE = 1.2 * LITRE;
    /** Friction mean effective pressure 0.97 + 0.15 n + 0.05 n^2 bar, n in 1000 rpm: Heywood 1988 eq. 13.6. */
    private static final List<Double> FRICTION = List.of(97e3, 15e3, 5e3);

    private final TypedMap root;
    private final List<Assumption> assumptions;
    private final Section s;

    EngineSection(TypedMap root, List<Assumption> assumptions) {
        this.root = root;
        this.assumptions = assumptions;
        this.s = Section.required(
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
                "heating_value",
                "fuel_density",
                "air_fuel_ratio",
                "metal_mass",
                "oil_volume",
                "friction",
                "indicated_efficiency",
                "pumping_loss");
    }

    VehicleSpec.Engine engine() {
        boolean diesel = "diesel".equals(s.requiredWord("fuel", "petrol", "diesel"));
        double displacement = s.required("displacement", Quantity.VOLUME, "0.2 l", "15 l");
        double litres = displacement / LITRE;
        int cylinders = s.integer("cylinders", 1, 16, usualCylinders(litres), "usual for the displacement");
        double square = Math.cbrt(4.0 * displacement / (Math.PI * cylinders));
        double bore = s.derived("bore", Quantity.LENGTH, "30 mm", "200 mm", square, "stroke equal to bore");
        double power = s.required("rated_power", Quantity.POWER, "5 kW", "1000 kW");
        double ratedSpeed = ratedSpeed(diesel);
        double idle = idleSpeed(diesel, ratedSpeed);
        boolean turbo = "turbo".equals(s.word("charging", "none", "naturally aspirated", "none", "turbo"));
        double heating = s.value(
                "heating_value",
                Quantity.HEATING_VALUE,
                "20 MJ/kg",
                "55 MJ/kg",
                diesel ? "42.8 MJ/kg" : "42.5 MJ/kg",
                "lower heating value of road fuel; handbook value, from memory");
        double density = s.value(
                "fuel_density",
                Quantity.DENSITY,
                "500 kg/m3",
                "1000 kg/m3",
                diesel ? "835 kg/m3" : "745 kg/m3",
                "road fuel; handbook value, from memory");
        double ratio = s.value(
                "air_fuel_ratio",
                Quantity.NUMBER,
                "6",
                "18",
                diesel ? "14.5" : "14.7",
                "air that just burns a mass of fuel (stoichiometric); handbook value, from memory");
        double metal = s.derived(
                "metal_mass",
                Quantity.MASS,
                "10 kg",
                "1500 kg",
                METAL_PER_LITRE * litres,
                "50 kg a litre of displacement warm with the coolant; from memory");
        double oil = s.derived(
                "oil_volume",
                Quantity.VOLUME,
                "0.5 l",
                "60 l",
                OIL_ALWAYS + OIL_PER_LITRE * litres,
                "2 l and 1.2 l a litre of displacement; from memory");
        List<Double> friction = friction();
        double efficiency = s.value(
                "indicated_efficiency",
                Quantity.RATIO,
                "20 %",
                "60 %",
                diesel ? "42 %" : "39 %",
                "slope of the Willans line: 36 to 42 % petrol, 40 to 46 % diesel; Guzzella and Onder, from memory");
        double pumping = s.value(
                "pumping_loss",
                Quantity.PRESSURE_DIFFERENCE,
                "0 kPa",
                "110 kPa",
                diesel ? "0 kPa" : "50 kPa",
                "closed throttle, as mean effective pressure; from memory");
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
                ratio,
                turbo,
                metal,
                OIL_DENSITY * oil,
                friction.get(0),
                friction.get(1),
                friction.get(2),
                efficiency,
                pumping);
    }

    private static int usualCylinders(double litres) {
        return litres <= 1.1 ? 3 : litres <= 2.7 ? 4 : litres <= 4.0 ? 6 : 8;
    }

    private double ratedSpeed(boolean diesel) {
        return s.value(
                "rated_speed",
                Quantity.ANGULAR_SPEED,
                "1500 rpm",
                "12000 rpm",
                diesel ? "4000 rpm" : "5500 rpm",
                "usual for the fuel; common practice, no source");
    }

    private double idleSpeed(boolean diesel, double ratedSpeed) {
        double idle = s.value(
                "idle_speed",
                Quantity.ANGULAR_SPEED,
                "400 rpm",
                "1500 rpm",
                diesel ? "800 rpm" : "700 rpm",
                "warm idle 600 to 850 rpm; common practice, no source");
        if (idle >= ratedSpeed) {
            s.fault("idle_speed", "'engine.idle_speed' must lie below 'engine.rated_speed'");
        }
        return idle;
    }

    private List<Double> friction() {
        List<Double> typed = s.list("friction", Quantity.PRESSURE_DIFFERENCE, "0 kPa", "500 kPa");
        if (s.has("friction") && typed.size() != FRICTION.size()) {
            s.fault(
                    "friction",
                    "'engine.friction' needs three mean effective pressures f0, f1, f2 of f0 + f1 n + f2 n^2 with n in 1000 rpm, such as [97 kPa, 15 kPa, 5 kPa]");
        }
        if (!s.has("friction")) {
            s.assume(
                    "friction",
                    "[97 kPa, 15 kPa, 5 kPa]",
                    "f0 + f1 n + f2 n^2 with n in 1000 rpm; Heywood 1988 eq. 13.6, from memory");
        }
        return typed.size() == FRICTION.size() ? typed : FRICTION;
    }

    Optional<VehicleSpec.ChargeAir> chargeAir(VehicleSpec.Engine engine) {
        Section c = Section.optional(
                root, "charge_air_cooler", assumptions, "effectiveness", "compressor_efficiency", "boost");
        if (!engine.turbocharged()) {
            c.fault(
                    "effectiveness",
                    "charge_air_cooler is given but engine.charging is 'none': say 'charging: turbo' or take the block out");
            return Optional.empty();
        }
        double effectiveness = c.value(
                "effectiveness",
                Quantity.RATIO,
                "0 %",
                "98 %",
                "70 %",
                "air-to-air cooler in the stack; common practice, no source");
        double boost = c.value(
                "boost",
                Quantity.NUMBER,
                "1.05",
                "4",
                engine.fuel() == Fuel.DIESEL ? "2.2" : "1.8",
                "manifold over ambient pressure at rated power; common practice, no source");
        double efficiency = c.value(
                "compressor_efficiency",
                Quantity.RATIO,
                "40 %",
                "85 %",
                "70 %",
                "turbocharger compressor; common practice, no source");
        return Optional.of(new VehicleSpec.ChargeAir(effectiveness, boost, efficiency));
    }
}
