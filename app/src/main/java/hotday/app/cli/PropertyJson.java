package hotday.app.cli;

import hotday.physics.refrigerant.FluidState;
import hotday.physics.refrigerant.PropertyTable;
import hotday.physics.refrigerant.Refrigerant;
import hotday.physics.refrigerant.TableError;
import hotday.study.property.BothPhases;
import hotday.study.property.Columns;
import hotday.study.property.SaturationChart;
import java.nio.file.Path;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Refrigerant properties for machines, SI. Stands apart so that text need not load the JSON library. */
final class PropertyJson {
    private PropertyJson() {}

    static void print(Console console, Refrigerant fluid, FluidState state, double air) {
        ObjectNode root = root(fluid, air, state.pressure());
        root.put("region", state.region().word());
        put(root, Columns.ofState(), Columns.values(fluid, state));
        console.json(root);
    }

    static void print(Console console, Refrigerant fluid, BothPhases both, double air) {
        ObjectNode root = root(fluid, air, both.pressure());
        put(root, Columns.ofBothPhases(), Columns.values(fluid, both));
        console.json(root);
    }

    private static ObjectNode root(Refrigerant fluid, double air, double pressure) {
        ObjectNode root = Console.object();
        root.put("fluid", fluid.label());
        root.put("air_Pa", air);
        root.put("gauge_Pa", pressure - air);
        return root;
    }

    private static void put(ObjectNode root, List<String> names, double[] values) {
        for (int i = 0; i < values.length; i++) {
            if (Double.isNaN(values[i])) {
                root.putNull(names.get(i));
            } else {
                root.put(names.get(i), values[i]);
            }
        }
    }

    static void print(Console console, SaturationChart chart) {
        ObjectNode root = Console.object();
        root.put("fluid", chart.fluid().label());
        root.put("altitude_m", chart.altitude());
        root.put("air_Pa", chart.air());
        ArrayNode rows = root.putArray("rows");
        for (SaturationChart.Row row : chart.rows()) {
            rows.addObject()
                    .put("T_K", row.temperature())
                    .put("p_Pa", row.pressure())
                    .put("gauge_Pa", row.gauge());
        }
        console.json(root);
    }

    static void print(Console console, PropertyTable table, TableError error) {
        ObjectNode root = Console.object();
        root.put("fluid", table.refrigerant().label());
        root.put("table", table.description());
        root.put("version", PropertyTable.VERSION);
        root.put("states", error.states());
        root.put("temperature_K", error.temperature());
        root.put("density_relative", error.density());
        root.put("enthalpy_J_kg", error.enthalpy());
        root.put("entropy_J_kgK", error.entropy());
        console.json(root);
    }

    static void print(Console console, Refrigerant fluid, long rows, Path to) {
        ObjectNode root = Console.object();
        root.put("fluid", fluid.label());
        root.put("rows", rows);
        root.put("written", to.toString());
        console.json(root);
    }
}
