package hotday.app.cli;

import hotday.study.findings.FaultOutcome;
import hotday.study.findings.FaultReport;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A study of faults for machines. Stands apart so that {@code --help} need not load the JSON library. Keys: docs/formats.md. */
final class FaultsJson {
    private static final double CELSIUS = 273.15;

    private FaultsJson() {}

    static ObjectNode of(FaultReport report, long seed) {
        ObjectNode root = Console.object();
        root.put("seed", seed);
        root.put("faulty_cars", report.faults());
        root.put("sound_cars", report.sound().size());
        share(root, "named_first", report.named(1));
        share(root, "named_first_or_second", report.named(2));
        share(root, "false_alarms", report.falseAlarms());
        ObjectNode kinds = root.putObject("by_kind");
        for (String kind : report.kinds()) {
            ObjectNode node = kinds.putObject(kind);
            share(node, "named_first", report.named(kind, 1));
            share(node, "named_first_or_second", report.named(kind, 2));
        }
        ArrayNode cars = root.putArray("cars");
        report.cars().forEach(car -> add(cars.addObject(), car));
        return root;
    }

    private static void share(ObjectNode node, String key, double share) {
        if (Double.isNaN(share)) {
            node.putNull(key);
        } else {
            node.put(key, share);
        }
    }

    private static void add(ObjectNode node, FaultOutcome car) {
        node.put("build", car.build());
        node.put("seed", car.seed());
        node.put("fault", car.fault());
        node.put("size", car.size());
        node.put("ambient_degC", car.ambient() - CELSIUS);
        node.put("run_s", car.seconds());
        node.put("rank", car.rank());
        ArrayNode named = node.putArray("named");
        car.named().forEach(named::add);
    }
}
