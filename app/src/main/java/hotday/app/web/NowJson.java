package hotday.app.web;

import hotday.core.unit.Quantity;
import hotday.vehicle.cases.Ceiling;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** How close every limit is on the design day. */
final class NowJson {
    private static final double CELSIUS = 273.15;
    private static final double BAR = 1e5;

    private NowJson() {}

    static void put(ArrayNode all, Ceiling c) {
        for (Ceiling.Headroom h : c.headrooms()) {
            ObjectNode node = all.addObject();
            node.put("limit", h.limit().id());
            node.put("title", h.limit().title());
            Quantity q = h.limit().quantity();
            boolean pressure = q == Quantity.PRESSURE_ABSOLUTE;
            double zero = q == Quantity.TEMPERATURE ? CELSIUS : 0.0;
            double one = pressure ? BAR : 1.0;
            Reply.number(node, "value", (h.value() - zero) / one);
            Reply.number(node, "bound", (h.bound() - zero) / one);
            Reply.number(node, "room", h.room() / one);
            node.put("unit", pressure ? "bar" : q == Quantity.TEMPERATURE ? "degC" : "V");
        }
    }
}
