package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.vehicle.sheet.Assumption;
import hotday.vehicle.sheet.BuildSheet;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A sheet, or its faults, for machines. Stands apart so that {@code --help} need not load the JSON library. */
final class CheckJson {
    private CheckJson() {}

    static void print(Console console, BuildSheet sheet) {
        ObjectNode root = Console.object();
        root.put("build", sheet.vehicle().name());
        root.put("in_order", true);
        ArrayNode all = root.putArray("assumptions");
        for (Assumption a : sheet.assumptions()) {
            all.addObject().put("key", a.key()).put("value", a.value()).put("reason", a.reason());
        }
        put(root.putArray("remarks"), sheet.remarks());
        console.json(root);
    }

    static void print(Console console, InputException wrong) {
        ObjectNode root = Console.object();
        root.put("in_order", false);
        put(root.putArray("faults"), wrong.findings());
        console.json(root);
    }

    private static void put(ArrayNode all, List<Finding> findings) {
        for (Finding finding : findings) {
            ObjectNode one = all.addObject().put("key", finding.key()).put("message", finding.message());
            finding.place()
                    .ifPresent(
                            p -> one.put("file", p.file()).put("line", p.line()).put("column", p.column()));
        }
    }
}
