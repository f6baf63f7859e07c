package hotday.app.web;

import hotday.study.shop.AirAtCores;
import hotday.study.shop.Answer;
import hotday.vehicle.airpath.Rectangle;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.CoreKind;
import java.util.List;
import java.util.Locale;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The stack as it is drawn, every part with the keys of the sheet that move it. Lengths from the lower left corner, mm. */
final class StackJson {
    private static final double MILLIMETRES = 1e3; // in a metre
    private static final double CELSIUS = 273.15;
    private static final List<String> PLACE = List.of("left", "bottom", "width", "height");
    private static final List<String> OPENINGS = List.of("upper", "lower");

    private final VehicleSpec.Stack stack;
    private final AirAtCores air;

    private StackJson(VehicleSpec.Stack stack, AirAtCores air) {
        this.stack = stack;
        this.air = air;
    }

    static ObjectNode of(Answer answer) {
        return new StackJson(answer.sheet().vehicle().stack(), answer.air()).node();
    }

    private ObjectNode node() {
        ObjectNode root = Reply.object();
        Reply.number(root, "width_mm", MILLIMETRES * stack.width());
        Reply.number(root, "height_mm", MILLIMETRES * stack.height());
        cores(root.putArray("cores"));
        openings(root.putArray("openings"));
        ObjectNode shroud = root.putObject("shroud");
        place(shroud, stack.shroud());
        Reply.number(shroud, "gap_mm2", MILLIMETRES * MILLIMETRES * stack.shroudGap());
        edit(shroud, "stack.shroud");
        root.put("fans", stack.fans());
        Reply.number(root, "fan_diameter_mm", MILLIMETRES * stack.fanDiameter());
        Reply.number(root, "flap_area_mm2", MILLIMETRES * MILLIMETRES * stack.flapArea());
        root.putObject("edit")
                .put("fans", "stack.fans")
                .put("flap_area", "stack.flap_area")
                .put("fan_diameter", "fan.diameter");
        return root;
    }

    private void cores(ArrayNode all) {
        int layer = 0;
        for (VehicleSpec.PlacedCore core : stack.cores()) {
            ObjectNode node = all.addObject();
            node.put("id", id(core.kind()));
            node.put("title", core.kind().title());
            layer = core.kind() == CoreKind.RADIATOR ? layer + 1 : core.layer();
            node.put("layer", layer);
            place(node, core.place());
            Reply.number(node, "depth_mm", MILLIMETRES * core.depth());
            air.at(core.kind()).ifPresent(at -> {
                Reply.number(node, "air_speed_m_s", at.speed());
                Reply.number(node, "air_degC", at.temperature() - CELSIUS);
            });
            edit(node, core.kind());
        }
    }

    private static String id(CoreKind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static void edit(ObjectNode node, CoreKind kind) {
        String block = "stack." + kind.name().toLowerCase(Locale.ROOT);
        if (kind == CoreKind.RADIATOR) {
            node.putObject("edit")
                    .put("left", block + ".left")
                    .put("bottom", block + ".bottom")
                    .put("width", "radiator.width")
                    .put("height", "radiator.height")
                    .put("depth", "radiator.depth");
        } else {
            edit(node, block).put("depth", block + ".depth").put("layer", block + ".layer");
        }
    }

    private static ObjectNode edit(ObjectNode node, String block) {
        ObjectNode edit = node.putObject("edit");
        PLACE.forEach(word -> edit.put(word, block + "." + word));
        return edit;
    }

    private void openings(ArrayNode all) {
        for (int i = 0; i < OPENINGS.size(); i++) {
            ObjectNode node = all.addObject();
            String which = OPENINGS.get(i);
            node.put("id", which + "-opening");
            node.put("title", which + " opening");
            place(node, stack.openings().get(i));
            edit(node, "stack." + which + "_opening");
        }
    }

    private void place(ObjectNode node, Rectangle place) {
        Reply.number(node, "left_mm", MILLIMETRES * place.left());
        Reply.number(node, "bottom_mm", MILLIMETRES * (stack.height() - place.bottom()));
        Reply.number(node, "width_mm", MILLIMETRES * place.width());
        Reply.number(node, "height_mm", MILLIMETRES * place.height());
    }
}
