package hotday.app.web;

import hotday.core.finding.InputException;
import hotday.core.unit.Display;
import hotday.core.unit.UnitSystem;
import hotday.study.design.Aim;
import hotday.study.design.ScheduleDesign;
import hotday.study.design.ScheduleReport;
import hotday.study.shop.Bench;
import hotday.vehicle.sheet.BuildSheet;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Designs the fan schedule of a saved sheet, as work that takes a while. What was designed is kept until the sheet, its parts or its cases change. */
final class ScheduleJobs {
    static final String KIND = "schedule";
    private static final long SEED = 1;

    private final KeptJudgings judgings;
    private final Map<String, Designed> designed = new ConcurrentHashMap<>();

    private record Designed(String basis, ObjectNode result) {}

    ScheduleJobs(KeptJudgings judgings) {
        this.judgings = judgings;
    }

    /** What a job of this kind does. */
    Job.Work work(Bench bench, JsonNode asked) {
        Aim aim = ScheduleRoutes.aim(asked);
        UnitSystem units = ScheduleRoutes.units(asked);
        return job -> result(bench, aim, units, job);
    }

    private ObjectNode result(Bench bench, Aim aim, UnitSystem units, Job job) {
        Bench.Opened opened = bench.open();
        BuildSheet sheet = opened.sheet().orElseThrow(() -> new InputException(opened.findings()));
        String basis = bench.basis();
        String key = bench.id() + " " + aim + " " + units;
        Designed known = designed.get(key);
        if (known != null && known.basis().equals(basis)) {
            return known.result();
        }
        job.at("what a fan at full speed holds", 0.0);
        ScheduleDesign design = new ScheduleDesign(sheet.vehicle(), bench.cases(), aim, new Display(units));
        ScheduleReport report =
                design.designed(SEED, share -> job.at("looking for the best schedule", share), job::cancelled);
        ObjectNode result = Reply.object().put("version", opened.version());
        result.put("vehicle", judgings.of(bench, sheet).vehicle());
        result.set("report", ScheduleRoutes.report(report));
        CurveJson.values(result.putArray("values"), report.schedule(), new Display(sheet.units()));
        designed.put(key, new Designed(basis, result));
        return result;
    }
}
