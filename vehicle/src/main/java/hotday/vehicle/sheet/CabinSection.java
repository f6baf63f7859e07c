package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;

/** The cabin block; all of it may be left out. */
final class CabinSection {
    private static final double FULL_BLOWER = 0.13; // kg/s

    private static final String MEMORY = "saloon; from memory";

    private final Section s;

    CabinSection(TypedMap root, List<Assumption> assumptions) {
        this.s = Section.optional(
                root,
                "cabin",
                assumptions,
                "volume",
                "heat_capacity",
                "interior_conductance",
                "shell",
                "shell_per_speed",
                "glass",
                "leakage",
                "leakage_per_speed",
                "people",
                "blower",
                "blower_power");
    }

    VehicleSpec.Cabin cabin() {
        double volume = s.value("volume", Quantity.VOLUME, "0.5 m3", "30 m3", "3.2 m3", MEMORY);
        double capacity = s.value(
                "heat_capacity",
                Quantity.HEAT_CAPACITY,
                "5 kJ/K",
                "1000 kJ/K",
                "60 kJ/K",
                "seats, trim and glass that follow the air; from memory");
        double inside = s.value(
                "interior_conductance",
                Quantity.CONDUCTANCE,
                "5 W/K",
                "5 kW/K",
                "120 W/K",
                "air to seats and trim; from memory");
        double shell = s.value(
                "shell", Quantity.CONDUCTANCE, "1 W/K", "1000 W/K", "35 W/K", "cabin to outside at rest; from memory");
        double wind = s.value(
                "shell_per_speed",
                Quantity.CONDUCTANCE_PER_SPEED,
                "0 W/K/(m/s)",
                "20 W/K/(m/s)",
                "0.9 W/K/(m/s)",
                "further, with road speed; from memory");
        double glass =
                s.value("glass", Quantity.AREA, "0 m2", "20 m2", "1.4 m2", "area times transmittance; from memory");
        double leak = s.value(
                "leakage", Quantity.MASS_FLOW, "0 g/s", "100 g/s", "4 g/s", "through gaps at rest; from memory");
        double leakWind = s.value(
                "leakage_per_speed",
                Quantity.MASS_FLOW_PER_SPEED,
                "0 g/s/(m/s)",
                "10 g/s/(m/s)",
                "0.3 g/s/(m/s)",
                "further, with road speed; from memory");
        int people = s.integer("people", 0, 60, 2, "driver and one more");
        double blower = new Flow(s)
                .derived("blower", "0.01 kg/s", "2 kg/s", FULL_BLOWER, "at full blower; common practice, no source");
        double power = s.value(
                "blower_power", Quantity.POWER, "10 W", "3 kW", "220 W", "at full blower; common practice, no source");
        return new VehicleSpec.Cabin(
                volume, capacity, inside, shell, wind, glass, leak, leakWind, people, blower, power);
    }
}
