package hotday.app.web;

import hotday.core.finding.InputException;
import hotday.study.predict.PredictJson;
import hotday.study.predict.RoadMap;
import hotday.study.predict.Sensitivity;
import hotday.study.prove.CeilingReport;
import hotday.study.prove.HotDay;
import hotday.study.shop.Bench;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.WarmUp;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import tools.jackson.databind.node.ObjectNode;

/** What the saved sheet of a build predicts, as work that takes seconds. What was worked out is kept until the sheet, its parts or its cases change. */
final class PredictionJobs {
    private static final double CELSIUS = 273.15;
    private static final long SEED = 1;

    private final Map<String, Kept> kept = new ConcurrentHashMap<>();

    private record Kept(String basis, ObjectNode result) {}

    /** One of the questions. */
    @FunctionalInterface
    private interface Question {
        ObjectNode answer(BuildSheet sheet, Bench.Opened opened, Bench bench, Job job);
    }

    /** By name. */
    static Map<String, JobKind> all() {
        PredictionJobs jobs = new PredictionJobs();
        return Map.of(
                "intervals", jobs.kind("intervals", PredictionJobs::intervals),
                "map", jobs.kind("map", PredictionJobs::map),
                "sensitivity", jobs.kind("sensitivity", PredictionJobs::sensitivity));
    }

    private JobKind kind(String name, Question question) {
        return (bench, asked) -> job -> result(name, question, bench, job);
    }

    private ObjectNode result(String name, Question question, Bench bench, Job job) {
        Bench.Opened opened = bench.open();
        BuildSheet sheet = opened.sheet().orElseThrow(() -> new InputException(opened.findings()));
        String basis = bench.basis();
        String key = name + "/" + bench.id();
        Kept known = kept.get(key);
        if (known != null && known.basis().equals(basis)) {
            return known.result();
        }
        ObjectNode result = question.answer(sheet, opened, bench, job);
        result.put("version", opened.version());
        kept.put(key, new Kept(basis, result));
        return result;
    }

    private static ObjectNode intervals(BuildSheet sheet, Bench.Opened opened, Bench bench, Job job) {
        VehicleSpec spec = sheet.vehicle();
        job.at("ceilings", 0.0);
        List<Case> hot = bench.cases().stream().filter(c -> !c.forCold()).toList();
        List<CeilingReport> ceilings = HotDay.ofSheet(
                spec, hot, spec.designAmbient(), SEED, share -> job.at("ceilings", 0.95 * share), job::cancelled);
        List<WarmUp> cold = bench.cases().stream()
                .filter(Case::forCold)
                .map(c -> {
                    job.endWhenCancelled();
                    return WarmUp.of(spec, Plant.compile(spec), c);
                })
                .toList();
        ObjectNode result = PredictJson.of(sheet, ceilings, cold);
        Reply.number(result, "day_degC", spec.designAmbient() - CELSIUS);
        return result;
    }

    private static ObjectNode map(BuildSheet sheet, Bench.Opened opened, Bench bench, Job job) {
        VehicleSpec spec = sheet.vehicle();
        job.at("speeds and grades", 0.0);
        ObjectNode result =
                PredictJson.map(RoadMap.of(spec, Plant.compile(spec), RoadMap.like(bench.cases()), job::cancelled));
        Reply.number(result, "day_degC", spec.designAmbient() - CELSIUS);
        return result;
    }

    private static ObjectNode sensitivity(BuildSheet sheet, Bench.Opened opened, Bench bench, Job job) {
        List<Case> steady =
                bench.cases().stream().filter(c -> c.steady() && !c.forCold()).toList();
        ObjectNode result = Reply.object();
        List<Sensitivity.Row> rows = Sensitivity.of(
                bench.path(),
                opened.text(),
                steady,
                share -> job.at("one value after the other", share),
                job::cancelled);
        PredictJson.sensitivity(result, steady, rows);
        Map<String, String> titles = new LinkedHashMap<>();
        steady.forEach(c -> titles.put(c.id(), c.title()));
        titles.forEach(result.putObject("titles")::put);
        return result;
    }
}
