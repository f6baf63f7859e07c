package hotday.study.design;

import hotday.study.design.ScheduleReport.KeyOff;
import hotday.study.design.ScheduleReport.Line;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.controller.Hold;
import hotday.vehicle.spec.FanSchedule;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A judged schedule for machines. Keys: docs/schedule.md. */
public final class DesignJson {
    private static final String AIR_CONDITIONING = "air_conditioning";
    private static final double HOUR = 3600.0;
    private static final double CELSIUS = 273.15;

    private DesignJson() {}

    /** All of a report but its findings. */
    public static ObjectNode of(ScheduleReport report) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("aim", report.aim().word());
        root.put("holds", report.holds());
        root.put("fitted_runs", report.runs());
        root.put("cost_W", report.cost());
        root.put("energy_Wh_per_h", report.energy());
        root.put("starts_per_h", report.starts());
        ObjectNode plain = root.putObject("plain_switch");
        plain.put("energy_Wh_per_h", report.plain().energy());
        plain.put("starts_per_h", report.plain().starts());
        schedule(root.putObject("schedule"), report.schedule());
        ArrayNode cases = root.putArray("cases");
        report.lines().forEach(line -> line(cases.addObject(), line));
        ArrayNode reasons = root.putArray("reasons");
        report.reasons().forEach(r -> reasons.addObject().put("what", r.what()).put("why", r.why()));
        report.keyOff().ifPresentOrElse(k -> keyOff(root.putObject("after_run"), k), () -> root.putNull("after_run"));
        report.doubt()
                .ifPresent(d -> root.putObject("doubt")
                        .put("vehicles", d.draws())
                        .put("held_percent", 100 * d.held())
                        .put("worst_case", d.worst()));
        return root;
    }

    /** With what the compressor's rules do; all but findings. */
    public static ObjectNode of(ScheduleReport report, Optional<CompressorReport> compressor) {
        ObjectNode root = of(report);
        compressor.ifPresentOrElse(c -> root.set(AIR_CONDITIONING, of(c)), () -> root.putNull(AIR_CONDITIONING));
        return root;
    }

    /** What the compressor's rules do; all but findings. */
    public static ObjectNode of(CompressorReport report) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        ArrayNode cases = root.putArray("cases");
        report.lines().forEach(line -> {
            ObjectNode node = cases.addObject();
            node.put("case", line.kase().id());
            node.put("title", line.kase().title());
            node.put("clutch_per_min", line.clutchPerMinute());
            held(node.putObject("held_off_percent"), line.held());
            held(node.putObject("held_off_full_fan_percent"), line.fullFan());
        });
        cooling(root.putObject("soaked_cabin"), report.cooling());
        cooling(root.putObject("soaked_cabin_full_fan"), report.fullFan());
        return root;
    }

    private static void held(ObjectNode node, Map<Hold, Double> shares) {
        for (Hold hold : Hold.values()) {
            if (shares.containsKey(hold)) {
                node.put(hold.label(), 100 * shares.get(hold));
            }
        }
    }

    private static void cooling(ObjectNode node, CompressorReport.CoolingDown cooling) {
        node.put("to_degC", cooling.target() - CELSIUS);
        node.put("time_s", cooling.seconds().isPresent() ? cooling.seconds().getAsDouble() : null);
        node.put("vent_after_10_min_degC", cooling.vent() - CELSIUS);
        node.put("cabin_after_20_min_degC", cooling.cabin() - CELSIUS);
    }

    private static void keyOff(ObjectNode node, KeyOff k) {
        node.put("case", k.kase().id());
        node.put("title", k.kase().title());
        node.put("limit", k.limit().id());
        node.put("room" + unit(k.limit()), k.room() / scale(k.limit()));
        node.put("room_without" + unit(k.limit()), k.without() / scale(k.limit()));
        node.put("charge_Ah", k.charge() / HOUR);
        node.put("allowed_Ah", k.allowed() / HOUR);
        node.put("time_s", k.seconds());
        node.put("battery_V", k.voltage());
    }

    private static void schedule(ObjectNode node, FanSchedule s) {
        FanSchedule.Details d = s.details();
        curve(node.putArray("coolant"), "degC", s.coolantTemperature(), CELSIUS, 1, s.coolantDemand());
        node.put("on_degC", degrees(s.on()));
        node.put("off_degC", degrees(s.off()));
        curve(node.putArray("gearbox"), "degC", s.gearboxTemperature(), CELSIUS, 1, s.gearboxDemand());
        node.put("gearbox_hysteresis_K", d.gearboxHysteresis());
        s.chargeAir().ifPresent(c -> {
            curve(node.putArray("charge_air"), "degC", c.temperature(), CELSIUS, 1, c.demand());
            node.put("charge_air_hysteresis_K", c.hysteresis());
        });
        curve(node.putArray("head_pressure"), "kPa_abs", s.headPressure(), 0, 1e3, s.headDemand());
        node.put("head_hysteresis_kPa", d.headHysteresis() / 1e3);
        node.put("air_conditioning_percent", 100 * s.airConditioningDemand());
        curve(node.putArray("allowance"), "km_h", s.allowanceSpeed(), 0, 1 / 3.6, s.allowance());
        node.put("allowance_ends_degC", degrees(d.allowanceEnds()));
        node.putObject("floor")
                .put("demand_percent", 100 * d.floor().demand())
                .put("from_degC", degrees(d.floor().from()))
                .put("below_km_h", 3.6 * d.floor().below())
                .put("above_km_h", 3.6 * d.floor().above());
        node.putObject("switching")
                .put("start_delay_s", d.switching().startDelay())
                .put("on_percent", 100 * d.switching().on())
                .put("off_percent", 100 * d.switching().off())
                .put("least_percent", 100 * d.switching().least())
                .put("least_on_s", d.switching().leastOn())
                .put("least_off_s", d.switching().leastOff());
        node.putObject("slew")
                .put("up_percent_s", 100 * d.slew().up())
                .put("at_rest_percent_s", 100 * d.slew().upAtRest())
                .put("down_percent_s", 100 * d.slew().down())
                .put("drop_out_percent", 100 * d.slew().dropOut());
        ObjectNode after = node.putObject("after_run");
        curve(
                after.putArray("curve"),
                "degC",
                d.afterRun().temperature(),
                CELSIUS,
                1,
                d.afterRun().demand());
        after.put("from_degC", degrees(d.afterRun().from()))
                .put("until_degC", degrees(d.afterRun().until()))
                .put("longest_s", d.afterRun().longest())
                .put("battery_V", d.afterRun().battery());
    }

    private static void curve(
            ArrayNode points, String unit, List<Double> x, double zero, double scale, List<Double> demand) {
        for (int i = 0; i < x.size(); i++) {
            points.addObject().put(unit, tenths((x.get(i) - zero) / scale)).put("percent", 100 * demand.get(i));
        }
    }

    private static double degrees(double kelvin) {
        return tenths(kelvin - CELSIUS);
    }

    private static double tenths(double value) {
        return Math.round(10 * value) / 10.0;
    }

    /** One case of a report. */
    public static void line(ObjectNode node, Line line) {
        Passage p = line.passage();
        node.put("case", p.kase().id());
        node.put("title", p.kase().title());
        node.put("ambient_degC", p.ambient() - CELSIUS);
        node.put("share_percent", 100 * line.share());
        node.put("holds", line.holds());
        ObjectNode margins = node.putObject("margins");
        for (Limit limit : Limit.values()) {
            Double room = p.headroom().get(limit);
            if (room != null) {
                margins.put(limit.id().replace('-', '_') + unit(limit), room / scale(limit));
            }
        }
        ArrayNode must = node.putArray("must_hold");
        line.must().forEach(limit -> must.add(limit.id()));
        node.putObject("cycling")
                .put("amplitude_K", p.amplitude())
                .put("period_s", Double.isNaN(p.period()) ? null : p.period())
                .put("fan_swing_percent", 100 * p.fanSwing());
        node.put("fan_percent", 100 * p.fan());
        node.put("energy_Wh_per_h", p.energy());
        node.put("compressor_W", p.compressorPower());
        node.put("loudness", p.loudness());
        node.put("starts_per_h", p.startsPerHour());
        node.put("clutch_per_h", p.clutchPerHour());
        node.put("coolant_degC", p.coolant() - CELSIUS);
        node.put("battery_A", p.battery());
    }

    private static String unit(Limit limit) {
        return switch (limit) {
            case HEAD_PRESSURE -> "_kPa";
            case SUPPLY -> "_V";
            case COOLANT, BOILING, GEARBOX, CABIN_COOLING, CHARGE_AIR -> "_K";
        };
    }

    private static double scale(Limit limit) {
        return limit == Limit.HEAD_PRESSURE ? 1e3 : 1.0;
    }
}
