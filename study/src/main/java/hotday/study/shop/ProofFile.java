package hotday.study.shop;

import hotday.core.finding.Wording;
import hotday.study.prove.CeilingReport;
import hotday.study.prove.Proof;
import hotday.study.prove.ProofJson;
import hotday.study.prove.RunReport;
import hotday.study.signoff.ProgramVersion;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What {@code proof.json} of a build holds. Keys: docs/page.md. */
final class ProofFile {
    static final JsonMapper MAPPER = JsonMapper.builder().build();
    private static final double CELSIUS = 273.15;
    private static final double DIGITS = 1e3;
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private ProofFile() {}

    /**
     * @param basis what the proof stands on, as it was then
     * @param wording of whoever reads it
     * @param pdf name of its document, in the same folder
     */
    static ObjectNode of(ProofOrder order, ProofBasis basis, Proof proof, Wording wording, String pdf) {
        ObjectNode root = NODES.objectNode();
        root.put("hotday", ProgramVersion.NUMBER);
        root.put("sheet_version", basis.sheet());
        root.put("beside_version", basis.beside());
        root.put("made", Instant.now().truncatedTo(ChronoUnit.SECONDS).toString());
        names(root.putArray("fit"), order.fit());
        names(root.putArray("predict"), order.predict());
        ObjectNode runs = root.putObject("run_versions");
        basis.runs().forEach(runs::put);
        root.put("observe_oil", order.observeOil());
        root.put("pdf", pdf);
        root.set("proof", ProofJson.of(proof, wording));
        ArrayNode traces = root.putArray("traces");
        proof.runs().forEach(run -> traces.add(trace(run, proof)));
        ArrayNode before = root.putArray("ceilings_before");
        for (CeilingReport each : proof.ceilingsBefore()) {
            before.add(ProofJson.ceiling(each));
        }
        return root;
    }

    private static void names(ArrayNode array, List<String> names) {
        names.forEach(array::add);
    }

    /** Names and versions of the runs that a proof was made from. */
    static Map<String, String> runs(JsonNode root) {
        Map<String, String> all = new TreeMap<>();
        root.path("run_versions")
                .properties()
                .forEach(e -> all.put(e.getKey(), e.getValue().asString("")));
        return all;
    }

    private static ObjectNode trace(RunReport run, Proof proof) {
        ObjectNode node = NODES.objectNode();
        node.put("run", run.name());
        node.put("role", run.role() == RunReport.Role.FIT ? "fit" : "predict");
        numbers(node.putArray("time_s"), run.time(), 0.0);
        numbers(node.putArray("measured_degC"), run.measured(), CELSIUS);
        numbers(node.putArray("fitted_degC"), run.predicted(), CELSIUS);
        numbers(node.putArray("low_degC"), run.lower(), CELSIUS);
        numbers(node.putArray("high_degC"), run.upper(), CELSIUS);
        double[] residual = new double[run.time().length];
        for (int i = 0; i < residual.length; i++) {
            residual[i] = run.predicted()[i] - run.measured()[i];
        }
        numbers(node.putArray("residual_K"), residual, 0.0);
        ArrayNode events = node.putArray("events");
        proof.inferred().events().stream()
                .filter(e -> e.run().equals(run.name()))
                .forEach(e -> events.addObject()
                        .put("time_s", rounded(e.time()))
                        .put("kind", e.kind().key()));
        return node;
    }

    private static void numbers(ArrayNode array, double[] values, double zero) {
        for (double value : values) {
            if (Double.isFinite(value)) {
                array.add(rounded(value - zero));
            } else {
                array.addNull();
            }
        }
    }

    private static double rounded(double value) {
        return Math.round(DIGITS * value) / DIGITS;
    }
}
