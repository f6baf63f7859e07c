package hotday.app.cli;

import hotday.study.prove.CeilingReport;
import hotday.study.prove.ProofJson;
import hotday.vehicle.sheet.BuildSheet;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Ceilings from the sheet alone, for machines. Stands apart so that {@code --help} need not load the JSON library. */
final class PredictJson {
    private PredictJson() {}

    static void print(Console console, BuildSheet sheet, List<CeilingReport> ceilings) {
        ObjectNode root = Console.object();
        root.put("build", sheet.vehicle().name());
        ArrayNode all = root.putArray("cases");
        ceilings.forEach(c -> all.add(ProofJson.ceiling(c)));
        console.json(root);
    }
}
