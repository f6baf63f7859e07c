package hotday.app.cli;

import hotday.study.coverage.CarOutcome;
import hotday.study.coverage.CaseOutcome;
import hotday.study.coverage.Coverage;
import hotday.study.coverage.NextTestOutcome;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A coverage study for machines. Stands apart so that {@code --help} need not load the JSON library. Keys: docs/formats.md. */
final class CoverageJson {
    private static final double CELSIUS = 273.15;

    private CoverageJson() {}

    static ObjectNode of(Coverage coverage, long seed) {
        ObjectNode root = Console.object();
        root.put("cars_tried", coverage.cars().size());
        root.put("seed", seed);
        root.put("ceilings", coverage.asked());
        root.put("coverage", coverage.share());
        root.put("width_ratio", coverage.widthRatio());
        ObjectNode byCase = root.putObject("coverage_by_case");
        coverage.cases().forEach(kase -> byCase.put(kase, coverage.share(kase)));
        if (!coverage.nextTests().isEmpty()) {
            ObjectNode next = root.putObject("next_test");
            next.put("cars", coverage.nextTests().size());
            next.put("expected_percent", 100.0 * coverage.mean(NextTestOutcome::expected));
            next.put("narrowed_percent", 100.0 * coverage.mean(NextTestOutcome::narrowed));
            next.put("narrowed_by_random_percent", 100.0 * coverage.mean(NextTestOutcome::narrowedByRandom));
        }
        ArrayNode all = root.putArray("cars");
        coverage.cars().forEach(car -> add(all.addObject(), car));
        return root;
    }

    private static void add(ObjectNode node, CarOutcome car) {
        node.put("build", car.build());
        node.put("seed", car.seed());
        node.put("fit_rmse_K", car.fitRmse());
        ArrayNode cases = node.putArray("cases");
        for (CaseOutcome c : car.cases()) {
            ObjectNode each = cases.addObject();
            each.put("case", c.kase());
            each.put("truth_degC", c.truth() - CELSIUS);
            each.putArray("interval90_degC").add(c.low() - CELSIUS).add(c.high() - CELSIUS);
            each.putArray("without_run90_degC").add(c.lowBefore() - CELSIUS).add(c.highBefore() - CELSIUS);
            each.put("inside", c.inside());
        }
    }
}
