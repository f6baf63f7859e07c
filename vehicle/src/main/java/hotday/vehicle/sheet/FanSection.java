package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;
import java.util.Locale;

/** The fan block: a parabola through stall pressure and free flow, checked against the core it stands behind. */
final class FanSection {
    private static final double EFFICIENCY = 0.4;
    /** Of the free-flow air through the swept disc; tip speeds of road fans allow 10 to 15 m/s; from memory. */
    private static final double FASTEST_STREAM = 25.0;

    private static final double USUAL_SHARE = 0.95;

    private final Section s;

    FanSection(TypedMap root, List<Assumption> assumptions) {
        this.s = Section.required(
                root,
                "fan",
                assumptions,
                "control",
                "diameter",
                "free_flow",
                "stall_pressure",
                "shaft_power",
                "motor_efficiency",
                "windmill",
                "ramp_up",
                "ramp_down");
    }

    VehicleSpec.Fan fan(VehicleSpec.Radiator core) {
        boolean unknown = "unknown"
                .equals(s.word(
                        "control", "schedule", "the schedule of this sheet drives the fan", "schedule", "unknown"));
        double free = s.required("free_flow", Quantity.VOLUME_FLOW, "0.01 m3/s", "10 m3/s");
        double stall = s.required("stall_pressure", Quantity.PRESSURE_DIFFERENCE, "10 Pa", "3000 Pa");
        double diameter = checkedDiameter(core, free);
        double shaft = s.derived(
                "shaft_power",
                Quantity.POWER,
                "5 W",
                "10 kW",
                0.5 * free * stall / EFFICIENCY,
                "half of free flow times stall pressure at 40 % efficiency; common practice, no source");
        double motor = s.value(
                "motor_efficiency",
                Quantity.RATIO,
                "20 %",
                "98 %",
                "75 %",
                "brushed 60 to 75 %, brushless 78 to 85 %; common practice, no source");
        double windmill = s.value(
                "windmill",
                Quantity.RATIO,
                "0 %",
                "200 %",
                "15 %",
                "drop of the free rotor at free flow over the stall pressure; from memory");
        double up = s.value(
                "ramp_up",
                Quantity.SHARE_RATE,
                "1 %/s",
                "1000 %/s",
                "15 %/s",
                "0 to 100 % in 5 to 10 s; common practice, no source");
        double down = s.value(
                "ramp_down",
                Quantity.SHARE_RATE,
                "1 %/s",
                "1000 %/s",
                "10 %/s",
                "100 to 0 % in 5 to 20 s; common practice, no source");
        double parabola = stall / (free * free);
        return new VehicleSpec.Fan(
                unknown ? VehicleSpec.FanControl.UNKNOWN : VehicleSpec.FanControl.SCHEDULE,
                stall,
                0.0,
                -parabola,
                windmill * parabola,
                shaft,
                motor,
                diameter,
                up,
                down);
    }

    /** As typed, or as large as fits; also catches a number from the wrong line of a catalogue. */
    private double checkedDiameter(VehicleSpec.Radiator core, double free) {
        double diameter = s.derived(
                "diameter",
                Quantity.LENGTH,
                "100 mm",
                "1500 mm",
                USUAL_SHARE * Math.min(core.width(), core.height()),
                "as large as the core takes; common practice, no source");
        if (!s.has("diameter")) {
            return diameter;
        }
        double room = Math.min(core.width(), core.height());
        if (diameter > room) {
            s.fault(
                    "diameter",
                    String.format(
                            Locale.ROOT,
                            "'fan.diameter' is %.0f mm, but the core is only %.0f mm x %.0f mm: a bigger fan than its core blows past it; two fans are typed as 'stack: {fans: 2}' with their flows added",
                            1e3 * diameter,
                            1e3 * core.width(),
                            1e3 * core.height()));
        }
        double speed = free / (0.25 * Math.PI * diameter * diameter);
        if (speed > FASTEST_STREAM) {
            s.fault(
                    "free_flow",
                    String.format(
                            Locale.ROOT,
                            "'fan.free_flow' through a disc of %.0f mm means air at %.0f m/s; road fans reach 10 to 15 m/s: look at the unit of the flow or at the diameter",
                            1e3 * diameter,
                            speed));
        }
        return diameter;
    }
}
