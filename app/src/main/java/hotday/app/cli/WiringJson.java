package hotday.app.cli;

import hotday.study.wiring.FanLoop;
import hotday.study.wiring.IdleBalance;
import hotday.study.wiring.Rule;
import hotday.study.wiring.WiringCheck;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A checked wiring for machines. Keys: docs/wiring.md. */
final class WiringJson {
    private static final double HOUR = 3600.0;
    private static final double KELVIN = 273.15;

    private WiringJson() {}

    static void print(Console console, WiringCheck check) {
        ObjectNode root = Console.object();
        root.put("build", check.sheet().vehicle().name());
        root.put("holds", check.holds());
        loop(root.putObject("fan"), check.loop());
        balance(root, "hot_idle", check.idle());
        balance(root, "hot_idle_full_fan", check.fullFan());
        root.putObject("after_run")
                .put("current_A", check.afterRun().current())
                .put("longest_s", check.afterRun().time())
                .put("charge_Ah", check.afterRun().charge() / HOUR)
                .put("battery_V", check.afterRun().voltage())
                .put("stop_V", check.afterRun().stop());
        ArrayNode rules = root.putArray("rules");
        check.rules().forEach(r -> rule(rules.addObject(), r));
        FindingJson.put(root.putArray("findings"), check.findings());
        console.json(root);
    }

    private static void loop(ObjectNode node, FanLoop l) {
        node.put("supply_V", l.supply());
        node.put("current_A", l.current());
        node.put("feed_V", l.feedDrop());
        node.put("ground_V", l.groundDrop());
        node.put("drop_percent", 100 * l.share());
        node.put("feed_copper_degC", l.feedTemperature() - KELVIN);
        node.put("back_copper_degC", l.backTemperature() - KELVIN);
        node.put("ampacity_A", l.ampacity());
    }

    private static void balance(ObjectNode root, String key, Optional<IdleBalance> balance) {
        if (balance.isEmpty()) {
            root.putNull(key);
            return;
        }
        IdleBalance b = balance.get();
        root.putObject(key)
                .put("alternator_A", b.capacity())
                .put("loads_A", b.load())
                .put("base_A", b.base())
                .put("blower_A", b.blower())
                .put("fan_A", b.fan())
                .put("clutch_A", b.clutch())
                .put("deficit_A", b.deficit());
    }

    /** Values in SI. */
    private static void rule(ObjectNode node, Rule r) {
        node.put("key", r.key());
        node.put("what", r.what());
        node.put("value", r.value());
        node.put("limit", r.limit());
        node.put("limit_is", r.least() ? "least" : "most");
        node.put("unit", r.quantity().units().get(0).symbol());
        node.put("holds", r.holds());
        node.put("source", r.source());
    }
}
