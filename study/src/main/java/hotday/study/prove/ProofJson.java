package hotday.study.prove;

import hotday.core.finding.Finding;
import hotday.core.finding.Wording;
import hotday.study.events.Estimate;
import hotday.study.events.Event;
import hotday.study.events.Summary;
import hotday.vehicle.cases.Ceiling;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A proof as JSON for machines; the contract is docs/formats.md. Every key of a physical value ends in its unit; what is
 * not known, or must not be given as a single number, is null.
 */
public final class ProofJson {
    private static final double CELSIUS = 273.15;
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private ProofJson() {}

    public static ObjectNode of(Proof proof) {
        return of(proof, Wording.FILE);
    }

    /** The same in the words of somewhere else. */
    public static ObjectNode of(Proof proof, Wording wording) {
        ObjectNode root = NODES.objectNode();
        root.put("build", proof.build());
        root.put("seed", proof.seed());
        root.put("converged", proof.converged());
        root.set("pooled", pooled(proof));
        ArrayNode runs = root.putArray("runs");
        proof.runs().forEach(run -> runs.add(run(run, wording)));
        ArrayNode parameters = root.putArray("parameters");
        proof.parameters().forEach(p -> parameters.add(parameter(p)));
        ArrayNode ceilings = root.putArray("ceilings");
        for (int i = 0; i < proof.ceilings().size(); i++) {
            ceilings.add(ceiling(proof.ceilings().get(i), proof.ceilingsBefore().get(i)));
        }
        ArrayNode events = root.putArray("events");
        proof.inferred().events().forEach(e -> events.add(event(e)));
        root.set("switching", switching(proof.inferred().summary()));
        ArrayNode next = root.putArray("next_tests");
        proof.nextTests().forEach(t -> next.add(next(t, wording)));
        root.set("findings", findings(proof.findings(), wording));
        return root;
    }

    /** What stands instead of a proof when the input cannot carry one: {@code refused} and the reasons. */
    public static ObjectNode refused(List<Finding> reasons) {
        ObjectNode root = NODES.objectNode();
        root.put("refused", true);
        root.set("findings", findings(reasons, Wording.FILE));
        return root;
    }

    /** Temperatures in degC, pressures in kPa, a share as it is. */
    private static ObjectNode event(Event e) {
        ObjectNode node = NODES.objectNode();
        node.put("run", e.run());
        number(node, "time_s", e.time());
        node.put("kind", e.kind().key());
        switch (e.unit()) {
            case "K" -> value(node, e.value() - CELSIUS, "degC");
            case "Pa" -> value(node, e.value() / 1e3, "kPa");
            default -> value(node, e.value(), e.unit());
        }
        number(node, "confidence", e.confidence());
        node.put("evidence", e.evidence());
        return node;
    }

    private static void value(ObjectNode node, double value, String unit) {
        number(node, "value", value);
        node.put("unit", unit);
    }

    private static ObjectNode switching(Summary s) {
        ObjectNode node = NODES.objectNode();
        node.put("fan_cycles", s.fanCycles());
        temperature(node, "fan_on_degC", s.fanOn());
        temperature(node, "fan_off_degC", s.fanOff());
        temperature(node, "peak_degC", s.peak());
        temperature(node, "trough_degC", s.trough());
        number(node, "fan_period_s", s.period().map(Estimate::mean).orElse(Double.NaN));
        node.put("compressor_starts", s.compressorStarts());
        number(node, "compressor_duty", s.compressorDuty().orElse(Double.NaN));
        return node;
    }

    private static void temperature(ObjectNode root, String key, Optional<Estimate> estimate) {
        if (estimate.isEmpty()) {
            root.putNull(key);
            return;
        }
        Estimate e = estimate.get();
        ObjectNode node = root.putObject(key);
        number(node, "value", e.mean() - CELSIUS);
        interval(node, "interval90", e.low() - CELSIUS, e.high() - CELSIUS);
        node.put("count", e.count());
    }

    private static ObjectNode next(NextTest t, Wording wording) {
        ObjectNode node = NODES.objectNode();
        node.put("test", t.id());
        node.put("title", t.title());
        number(node, "duration_s", t.duration());
        node.put("case", t.kase());
        number(node, "narrows_percent", 100.0 * t.narrowing());
        node.put("caution", t.caution().said(wording));
        return node;
    }

    private static ObjectNode pooled(Proof proof) {
        ObjectNode node = NODES.objectNode();
        number(node, "fit_rmse_K", proof.pooledFit().rmse());
        number(node, "predict_rmse_K", proof.pooledPrediction().rmse());
        number(node, "predict_bias_K", proof.pooledPrediction().bias());
        number(node, "predict_max_error_K", proof.pooledPrediction().maxError());
        number(node, "predict_null_rmse_K", proof.pooledNull());
        number(node, "predict_warm_rmse_K", proof.pooledWarm().rmse());
        number(node, "predict_warm_null_rmse_K", proof.pooledWarmNull().rmse());
        number(node, "predict_coverage90", proof.pooledCoverage());
        score(node, "fit_oil_", proof.pooledOil(RunReport.Role.FIT));
        score(node, "predict_oil_", proof.pooledOil(RunReport.Role.PREDICT));
        number(node, "null_level_degC", proof.warmLevel() - CELSIUS);
        number(node, "correlation_time_s", proof.correlationTime());
        number(node, "discrepancy_K", proof.discrepancy());
        return node;
    }

    private static ObjectNode run(RunReport run, Wording wording) {
        ObjectNode node = NODES.objectNode();
        node.put("run", run.name());
        node.put("role", run.role() == RunReport.Role.FIT ? "fit" : "predict");
        node.put("single_number", run.single());
        ObjectNode coolant = node.putObject("coolant");
        number(coolant, "rmse_K", single(run, run.score().rmse()));
        number(coolant, "bias_K", single(run, run.score().bias()));
        number(coolant, "max_error_K", single(run, run.score().maxError()));
        ObjectNode warm = coolant.putObject("warm");
        number(warm, "from_s", RunReport.WARM_FROM);
        number(warm, "rmse_K", single(run, run.warm().rmse()));
        number(warm, "bias_K", single(run, run.warm().bias()));
        number(warm, "null_rmse_K", run.warmNull().rmse());
        ObjectNode peak = coolant.putObject("peak_degC");
        number(peak, "measured", run.peak().measured() - CELSIUS);
        number(peak, "predicted", single(run, run.peak().predicted() - CELSIUS));
        interval(peak, "interval90", run.peak().low() - CELSIUS, run.peak().high() - CELSIUS);
        ArrayNode reach = coolant.putArray("reach");
        for (RunReport.Reach r : run.reach()) {
            ObjectNode entry = reach.addObject();
            number(entry, "degC", r.level() - CELSIUS);
            number(entry, "measured_s", r.measured());
            number(entry, "predicted_s", single(run, r.predicted()));
            interval(entry, "interval90_s", r.low(), r.high());
        }
        run.oil().ifPresent(oil -> node.set("oil", oil(run, oil)));
        number(node, "coverage90", run.coverage());
        number(node, "band_half_width_K", run.bandHalfWidth());
        number(node, "null_rmse_K", run.nullRmse());
        ArrayNode brackets = node.putArray("brackets");
        run.brackets().forEach(b -> brackets.add(bracket(b)));
        node.set("findings", findings(run.findings(), wording));
        return node;
    }

    private static ObjectNode oil(RunReport run, RunReport.Oil oil) {
        ObjectNode node = NODES.objectNode();
        score(node, "", run.single() ? oil.score() : Score.NONE);
        number(node, "coverage90", oil.coverage());
        number(node, "band_half_width_K", oil.bandHalfWidth());
        return node;
    }

    private static void score(ObjectNode node, String which, Score score) {
        number(node, which + "rmse_K", score.rmse());
        number(node, which + "bias_K", score.bias());
        number(node, which + "max_error_K", score.maxError());
    }

    private static double single(RunReport run, double value) {
        return run.single() ? value : Double.NaN;
    }

    private static ObjectNode bracket(Bracket bracket) {
        ObjectNode node = NODES.objectNode();
        node.put("state", bracket.state().id());
        node.put("branch", bracket.branch());
        number(node, "rmse_K", bracket.score().rmse());
        number(node, "bias_K", bracket.score().bias());
        number(node, "peak_degC", bracket.peak() - CELSIUS);
        number(node, "likelihood", bracket.likelihood());
        return node;
    }

    private static ObjectNode parameter(ParameterReport p) {
        ObjectNode node = NODES.objectNode();
        node.put("name", p.id());
        node.put("label", p.label());
        node.put("unit", p.unit());
        ObjectNode prior = node.putObject("prior");
        number(prior, "value", p.sheet());
        interval(prior, "interval90", p.priorLow(), p.priorHigh());
        ObjectNode posterior = node.putObject("posterior");
        number(posterior, "value", p.fitted());
        interval(posterior, "interval90", p.low(), p.high());
        number(node, "narrowed", p.narrowed());
        node.put("informed", p.informed());
        return node;
    }

    private static ObjectNode ceiling(CeilingReport after, CeilingReport before) {
        ObjectNode node = ceiling(after);
        ObjectNode sheet = node.putObject("without_run");
        ceilingNumbers(sheet, before);
        return node;
    }

    /** One ambient ceiling with its interval. */
    public static ObjectNode ceiling(CeilingReport report) {
        ObjectNode node = NODES.objectNode();
        node.put("case", report.best().kase().id());
        node.put("title", report.best().kase().title());
        ceilingNumbers(node, report);
        node.put("runner_up_limit", report.best().runnerUp().id());
        number(node, "coolant_degC", report.best().coolant() - CELSIUS);
        number(node, "boiling_degC", report.best().boiling() - CELSIUS);
        number(node, "design_ambient_degC", report.designAmbient() - CELSIUS);
        number(node, "holds_at_design", report.holds());
        number(node, "air_to_boil_degC", report.best().airToBoil() - CELSIUS);
        return node;
    }

    private static void ceilingNumbers(ObjectNode node, CeilingReport report) {
        number(node, "degC", report.best().ambient() - CELSIUS);
        interval(node, "interval90", report.low() - CELSIUS, report.high() - CELSIUS);
        node.put("binding_limit", report.best().binding().id());
        node.put("binding_title", report.best().binding().title());
        node.put("inside_searched_range", report.best().reach() == Ceiling.Reach.FOUND);
    }

    /** Findings with key, severity, place, message and values. */
    private static ArrayNode findings(List<Finding> findings, Wording wording) {
        ArrayNode all = NODES.arrayNode();
        for (Finding f : findings) {
            ObjectNode node = all.addObject();
            node.put("key", f.key());
            node.put("severity", f.severity().name().toLowerCase(java.util.Locale.ROOT));
            f.place().ifPresent(p -> node.put("place", p.toString()));
            node.put("message", f.sentence().said(wording));
            if (!f.values().isEmpty()) {
                ObjectNode values = node.putObject("values");
                f.values().forEach((k, v) -> {
                    if (v instanceof Number n) {
                        number(values, k, n.doubleValue());
                    } else {
                        values.put(k, String.valueOf(v));
                    }
                });
            }
        }
        return all;
    }

    private static void interval(ObjectNode node, String key, double low, double high) {
        ArrayNode pair = node.putArray(key);
        pair.add(finite(low));
        pair.add(finite(high));
    }

    private static void number(ObjectNode node, String key, double value) {
        node.set(key, finite(value));
    }

    /** Six significant digits, null for what is not a number. */
    private static tools.jackson.databind.JsonNode finite(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return NODES.nullNode();
        }
        return NODES.numberNode(new java.math.BigDecimal(value)
                .round(new java.math.MathContext(6))
                .doubleValue());
    }
}
