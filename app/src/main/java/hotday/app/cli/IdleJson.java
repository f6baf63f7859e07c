package hotday.app.cli;

import hotday.study.idle.IdleCell;
import hotday.study.idle.IdleCompensation;
import hotday.vehicle.idle.IdleRun;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A table of announcements for machines. Keys: docs/idle.md. */
final class IdleJson {
    private static final double RPM = Math.PI / 30.0;
    private static final double BAR = 1e5;

    private IdleJson() {}

    static void print(Console console, IdleCompensation made) {
        ObjectNode root = Console.object();
        root.put("build", made.vehicle().name());
        root.put("holds", made.holds());
        root.put("share_of", made.byAir() ? "air" : "fuel");
        ArrayNode cells = root.putArray("cells");
        made.cells().forEach(c -> cell(cells.addObject(), c));
        FindingJson.put(root.putArray("findings"), made.findings());
        console.json(root);
    }

    private static void cell(ObjectNode node, IdleCell c) {
        node.put("head_bar_abs", c.head() / BAR);
        node.put("suction_bar_abs", c.suction() / BAR);
        node.put("engine_rpm", c.speed() / RPM);
        node.put("load_N_m", c.load());
        node.put("announce_N_m", c.forward().torque());
        node.put("lead_s", c.forward().lead());
        node.put("share_percent", 100.0 * c.share());
        node.put("holds", c.holds());
        node.put("reserve_used_up", c.reserveUsedUp());
        run(node.putObject("without"), c.unannounced());
        run(node.putObject("with"), c.announced());
        run(node.putObject("lead_short_by_0.1_s"), c.tooShort());
        run(node.putObject("lead_long_by_0.1_s"), c.tooLong());
    }

    private static void run(ObjectNode node, IdleRun r) {
        node.put("sag_rpm", r.sag() / RPM);
        node.put("flare_rpm", r.flare() / RPM);
        node.put("settling_s", r.settling());
    }
}
