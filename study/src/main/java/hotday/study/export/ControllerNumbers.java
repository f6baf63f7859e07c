package hotday.study.export;

import hotday.vehicle.controller.CompressorLimits;
import hotday.vehicle.controller.DemandCurve;
import hotday.vehicle.controller.Schedule;

/** What is calibrated, as definitions in C. */
final class ControllerNumbers {
    private ControllerNumbers() {}

    static String of(Schedule s) {
        StringBuilder out = new StringBuilder();
        curve(out, "COOLANT", s.coolant().demand());
        number(out, "COOLANT_ON", s.coolant().on());
        number(out, "COOLANT_OFF", s.coolant().off());
        curve(out, "GEARBOX", s.gearbox().demand());
        number(out, "GEARBOX_ON", s.gearbox().on());
        number(out, "GEARBOX_OFF", s.gearbox().off());
        curve(out, "AC", s.airConditioning().demand());
        number(out, "AC_ON", s.airConditioning().on());
        number(out, "AC_OFF", s.airConditioning().off());
        if (s.hasChargeAir()) {
            curve(out, "CHARGE_AIR", s.chargeAir().demand());
            number(out, "CHARGE_AIR_ON", s.chargeAir().on());
            number(out, "CHARGE_AIR_OFF", s.chargeAir().off());
        }
        curve(out, "ALLOWANCE", s.allowance().demand());
        number(out, "ALLOWANCE_HOTTEST", s.allowance().hottest());
        number(out, "FLOOR_DEMAND", s.floor().demand());
        number(out, "FLOOR_COOLANT", s.floor().coolant());
        number(out, "FLOOR_BELOW", s.floor().below());
        number(out, "FLOOR_ABOVE", s.floor().above());
        number(out, "SENSOR_BAD", s.sensor().bad());
        number(out, "SENSOR_GOOD", s.sensor().good());
        number(out, "SENSOR_DEMAND", s.sensor().demand());
        number(out, "SENSOR_FIRST", s.sensor().first());
        switching(out, s);
        return out.toString();
    }

    private static void switching(StringBuilder out, Schedule s) {
        number(out, "START_DELAY", s.switching().startDelay());
        number(out, "DEMAND_ON", s.switching().on());
        number(out, "DEMAND_OFF", s.switching().off());
        number(out, "LEAST_OUTPUT", s.switching().least());
        number(out, "LEAST_ON", s.switching().leastOn());
        number(out, "LEAST_OFF", s.switching().leastOff());
        number(out, "SLEW_UP", s.slew().up());
        number(out, "SLEW_UP_AT_REST", s.slew().upAtRest());
        number(out, "SLEW_REST_SPEED", s.slew().restSpeed());
        number(out, "SLEW_DOWN", s.slew().down());
        number(out, "SLEW_STOP", s.slew().stop());
        curve(out, "AFTER_RUN", s.afterRun().demand());
        number(out, "AFTER_RUN_BEGIN", s.afterRun().begin());
        number(out, "AFTER_RUN_END", s.afterRun().end());
        number(out, "AFTER_RUN_LONGEST", s.afterRun().longest());
        number(out, "AFTER_RUN_BATTERY", s.afterRun().battery());
        number(out, "AFTER_RUN_LOW_TICKS", s.afterRun().lowTicks());
    }

    static String of(CompressorLimits l) {
        StringBuilder out = new StringBuilder();
        number(out, "REQUEST_TIMEOUT", l.timeOut());
        number(out, "START_DELAY", l.engine().startDelay());
        number(out, "SPEED_FROM", l.engine().speed().from());
        number(out, "SPEED_UNTIL", l.engine().speed().until());
        number(out, "FREEZE_USED", l.freeze().used() ? 1 : 0);
        number(out, "FREEZE_FROM", l.freeze().temperature().from());
        number(out, "FREEZE_UNTIL", l.freeze().temperature().until());
        number(out, "HIGH_FROM", l.headPressure().from());
        number(out, "HIGH_UNTIL", l.headPressure().until());
        number(out, "LOW_FROM", l.suction().pressure().from());
        number(out, "LOW_UNTIL", l.suction().pressure().until());
        number(out, "SUCTION_BLANKING", l.suction().blanking());
        number(out, "THROTTLE_FROM", l.throttle().load().from());
        number(out, "THROTTLE_UNTIL", l.throttle().load().until());
        number(out, "THROTTLE_LONGEST", l.throttle().longest());
        number(out, "COOLANT_FROM", l.coolant().from());
        number(out, "COOLANT_UNTIL", l.coolant().until());
        number(out, "LEAST_ON", l.clutch().leastOn());
        number(out, "LEAST_OFF", l.clutch().leastOff());
        number(out, "LEAD", l.clutch().lead());
        number(out, "TRAIL", l.clutch().trail());
        return out.toString();
    }

    private static void number(StringBuilder out, String name, int value) {
        out.append("#define ").append(name).append(' ');
        out.append(value < 0 ? "(" + value + ")" : String.valueOf(value)).append('\n');
    }

    private static void curve(StringBuilder out, String name, DemandCurve curve) {
        out.append("static const int32_t ").append(name).append("[][2] = {");
        for (int i = 0; i < curve.size(); i++) {
            out.append(i == 0 ? "{" : ", {")
                    .append(curve.x(i))
                    .append(", ")
                    .append(curve.y(i))
                    .append('}');
        }
        out.append("};\n");
    }
}
