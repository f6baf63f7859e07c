package hotday.study.predict;

import hotday.core.unit.Quantity;
import hotday.study.prove.CeilingReport;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.cases.OperatingPoint;
import hotday.vehicle.cases.WarmUp;
import hotday.vehicle.plant.Unrest;
import hotday.vehicle.sheet.BuildSheet;
import java.util.List;
import java.util.Locale;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A prediction for machines. Keys: docs/formats.md. */
public final class PredictJson {
    private static final double CELSIUS = 273.15;
    private static final double KMH = 3.6;
    private static final double NANO = 1e9;

    private PredictJson() {}

    /** Ceilings and cold cases of a sheet. */
    public static ObjectNode of(BuildSheet sheet, List<CeilingReport> ceilings, List<WarmUp> cold) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("build", sheet.vehicle().name());
        ArrayNode all = root.putArray("cases");
        ceilings.forEach(c -> add(all.addObject(), c));
        ArrayNode colds = root.putArray("cold");
        cold.forEach(c -> add(colds.addObject(), c));
        return root;
    }

    private static void add(ObjectNode node, WarmUp w) {
        node.put("case", w.kase().id());
        node.put("title", w.kase().title());
        number(node, "ambient_degC", celsius(w.ambient()));
        node.put("verdict", w.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        ArrayNode reach = node.putArray("reach");
        for (WarmUp.Reached r : w.reached()) {
            ObjectNode mark = reach.addObject();
            number(mark, "degC", celsius(r.mark()));
            number(mark, "time_s", r.time().orElse(Double.NaN));
        }
        number(node, "warm_degC", celsius(w.warm()));
        number(node, "coldest_once_warm_degC", celsius(w.coldest()));
        number(node, "coolant_at_end_degC", celsius(w.coolant()));
        number(node, "cabin_at_end_degC", celsius(w.cabin()));
    }

    private static void unrest(ObjectNode node, Unrest u) {
        node.put("what", u.reason().id());
        node.put("part", u.state().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        String unit = "K".equals(u.state().unit()) ? "K" : "1";
        switch (u.reason()) {
            case RUNS_AWAY -> number(node, "degC", celsius(u.amount()));
            case HUNTS -> number(node, "swing_" + unit, u.amount());
            case NOT_FOUND -> number(node, "rate_" + unit + "_s", u.amount());
        }
    }

    private static void add(ObjectNode node, CeilingReport report) {
        Ceiling c = report.best();
        OperatingPoint p = c.scheduled();
        node.put("case", c.kase().id());
        node.put("title", c.kase().title());
        number(node, "ambient_ceiling_degC", celsius(c.ambient()));
        ArrayNode interval = node.putArray("interval90_degC");
        interval.add(celsius(report.low()));
        interval.add(celsius(report.high()));
        node.put("inside_searched_range", c.reach() == Ceiling.Reach.FOUND);
        node.put("binding_limit", c.binding().id());
        node.put("binding_title", c.binding().title());
        node.put("runner_up_limit", c.runnerUp().id());
        node.put("holds_again_above", c.again());
        number(node, "ambient_degC", celsius(c.day()));
        number(node, "chance_to_hold_there", report.holds());
        limits(node.putArray("limits"), c);
        number(node, "air_to_boil_K", c.airToBoil() - c.day());
        number(node, "air_to_boil_degC", celsius(c.airToBoil()));
        number(node, "limiting_ambient_degC", celsius(c.limitingAmbient()));
        node.put("settled", p.settled());
        p.unrest().ifPresent(u -> unrest(node.putObject("reason"), u));
        number(node, "fan_percent", 100.0 * p.fan());
        number(node, "fan_current_A", p.fanCurrent());
        number(node, "head_pressure_bar_abs", p.headPressure() / 1e5);
        number(node, "coolant_degC", celsius(p.coolant()));
        number(node, "gearbox_degC", celsius(p.gearbox()));
        number(node, "evaporating_degC", celsius(p.evaporating()));
        number(node, "cabin_degC", celsius(p.cabin()));
        number(node, "supply_V", p.supply());
        number(node, "engine_rpm", p.engineSpeed() * 30.0 / Math.PI);
        number(node, "brake_power_kW", p.brakePower() / 1e3);
        number(node, "radiator_heat_kW", p.radiatorHeat() / 1e3);
        number(node, "condenser_heat_kW", p.condenserHeat() / 1e3);
        number(node, "gearbox_heat_kW", p.gearboxHeat() / 1e3);
        number(node, "air_flow_kg_s", p.airFlow());
    }

    private static void limits(ArrayNode all, Ceiling c) {
        for (Ceiling.Headroom h : c.headrooms()) {
            ObjectNode node = all.addObject();
            Quantity q = h.limit().quantity();
            node.put("name", h.limit().id());
            number(node, "value", shown(q, h.value()));
            number(node, "limit", shown(q, h.bound()));
            node.put("unit", unit(q));
            number(node, "headroom", q == Quantity.PRESSURE_ABSOLUTE ? h.room() / 1e5 : h.room());
            c.crossings().stream().filter(x -> x.limit() == h.limit()).forEach(x -> {
                number(node, "ambient_ceiling_degC", celsius(x.ambient()));
                node.put("inside_searched_range", x.reach() == Ceiling.Reach.FOUND);
            });
        }
    }

    private static double shown(Quantity q, double si) {
        return switch (q) {
            case TEMPERATURE -> celsius(si);
            case PRESSURE_ABSOLUTE -> si / 1e5;
            default -> si;
        };
    }

    private static String unit(Quantity q) {
        return switch (q) {
            case TEMPERATURE -> "degC";
            case PRESSURE_ABSOLUTE -> "bar abs";
            default -> "V";
        };
    }

    /** Adds what other values would change. */
    public static void whatIf(ObjectNode root, List<String> texts, List<WhatIf> changes) {
        ObjectNode node = root.putObject("what_if");
        ArrayNode values = node.putArray("values");
        texts.forEach(values::add);
        ArrayNode all = node.putArray("cases");
        for (WhatIf w : changes) {
            ObjectNode each = all.addObject();
            each.put("case", w.kase().id());
            number(each, "ambient_ceiling_degC", celsius(w.after()));
            number(each, "change_K", w.change());
        }
    }

    /** Adds which values matter. */
    public static void sensitivity(ObjectNode root, List<Case> cases, List<Sensitivity.Row> rows) {
        ArrayNode all = root.putArray("sensitivity");
        for (Sensitivity.Row row : rows) {
            ObjectNode node = all.addObject();
            node.put("key", row.key());
            node.put("value", row.value());
            node.put("taken", row.taken());
            node.put("assumed", row.assumed());
            ObjectNode moves = node.putObject("change_K");
            for (int i = 0; i < cases.size(); i++) {
                number(moves, cases.get(i).id(), row.moves().get(i));
            }
        }
    }

    /** A map of ceilings over speed and grade; by grade, then speed. */
    public static ObjectNode map(RoadMap map) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("like", map.like().title());
        ArrayNode speeds = root.putArray("speeds_km_h");
        map.speeds().forEach(v -> speeds.add(Math.round(v * KMH)));
        ArrayNode grades = root.putArray("grades_percent");
        map.grades().forEach(g -> grades.add(Math.round(100.0 * g)));
        ArrayNode points = root.putArray("points");
        for (RoadMap.Point p : map.points()) {
            ObjectNode node = points.addObject();
            number(node, "ambient_ceiling_degC", celsius(p.ambient()));
            node.put("reach", p.reach().word());
            node.put("binding_limit", p.binding().map(Limit::id).orElse(null));
            node.put("binding_title", p.binding().map(Limit::title).orElse(null));
        }
        return root;
    }

    /** Without the dust of the subtraction: an end of the searched range is -20 exactly. */
    private static double celsius(double kelvin) {
        return Math.rint(NANO * (kelvin - CELSIUS)) / NANO;
    }

    private static void number(ObjectNode node, String key, double value) {
        if (Double.isFinite(value)) {
            node.put(key, value);
        } else {
            node.putNull(key);
        }
    }
}
