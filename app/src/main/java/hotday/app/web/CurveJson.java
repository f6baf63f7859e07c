package hotday.app.web;

import hotday.core.typed.TypedFile;
import hotday.core.unit.Display;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.ScheduleText;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.util.Map;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The curves of a fan schedule for a page that draws them, and every value of it as it is typed. Keys: docs/page.md. */
final class CurveJson {
    private static final double CELSIUS = 273.15;
    private static final double BAR = 1e5;
    /** The controller tells two points apart that lie two of its steps from each other. */
    private static final double APART_K = 0.2;

    private static final double APART_BAR = 0.02;
    private static final double APART_KM_H = 0.2;

    private CurveJson() {}

    /** Every value of a schedule, curves too, as a sheet of these units has it. */
    static void values(ArrayNode to, FanSchedule schedule, Display display) {
        Map<String, String> values = TypedFile.of("schedule", ScheduleText.of(schedule, display))
                .root()
                .inLine();
        values.forEach((key, typed) -> to.addObject().put("key", key).put("typed", typed));
    }

    /** Curves a vehicle may have, with what they must stay clear of. */
    static void curves(ArrayNode to, VehicleSpec vehicle, Case kase) {
        VehicleSpec.Limits limits = vehicle.limits();
        double boiling = new Trial(vehicle, Plant.compile(vehicle), kase).boiling() - limits.boilMargin();
        ObjectNode coolant = curve(to, "coolant", "Coolant", "degC", APART_K);
        mark(coolant, "on", "on");
        mark(coolant, "off", "off");
        mark(coolant, "allowance_ends", "allowance ends");
        bound(coolant, "thermostat opens", vehicle.thermostat().opens() - CELSIUS);
        bound(coolant, "limit", Math.min(limits.coolant(), boiling) - CELSIUS);
        if (vehicle.airConditioning().isPresent()) {
            ObjectNode head = curve(to, "head_pressure", "A/C head pressure", "bar abs", APART_BAR);
            head.put("hysteresis", "schedule.head_hysteresis");
            bound(head, "limit", limits.headPressure() / BAR);
        }
        ObjectNode gearbox = curve(to, "gearbox", "Gearbox fluid", "degC", APART_K);
        gearbox.put("hysteresis", "schedule.gearbox_hysteresis");
        bound(gearbox, "limit", limits.gearbox() - CELSIUS);
        if (vehicle.schedule().chargeAir().isPresent() || limits.chargeAir().isPresent()) {
            ObjectNode charge = curve(to, "charge_air", "Charge air", "degC", APART_K);
            charge.put("hysteresis", "schedule.charge_air_hysteresis");
            limits.chargeAir().ifPresent(at -> bound(charge, "limit", at - CELSIUS));
        }
        curve(to, "allowance", "Road-speed allowance", "km/h", APART_KM_H).put("taken_off", true);
    }

    private static ObjectNode curve(ArrayNode to, String key, String title, String unit, double apart) {
        ObjectNode curve = to.addObject();
        curve.put("key", "schedule." + key)
                .put("title", title)
                .put("unit", unit)
                .put("apart", apart)
                .put("taken_off", false)
                .putNull("hysteresis");
        curve.putArray("marks");
        curve.putArray("bounds");
        return curve;
    }

    private static void mark(ObjectNode curve, String key, String title) {
        curve.withArray("marks").addObject().put("key", "schedule." + key).put("title", title);
    }

    private static void bound(ObjectNode curve, String title, double at) {
        curve.withArray("bounds").addObject().put("title", title).put("at", at);
    }
}
