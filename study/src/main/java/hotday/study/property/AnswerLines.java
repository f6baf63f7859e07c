package hotday.study.property;

import hotday.physics.refrigerant.FluidState;
import hotday.physics.refrigerant.Refrigerant;
import hotday.signals.log.Row;
import java.util.ArrayList;
import java.util.List;

/** Lines of an answered points file: carried columns, then those of a state, of both phases, or of both kinds. */
final class AnswerLines {
    private static final int SHARED = 3; // T_K, T_degC and p_Pa stand once in a file with both kinds of row

    private final Refrigerant fluid;
    private final PointsHeader header;
    private final boolean states;
    private final boolean saturations;

    AnswerLines(Refrigerant fluid, PointsHeader header, boolean states, boolean saturations) {
        this.fluid = fluid;
        this.header = header;
        this.states = states;
        this.saturations = saturations;
    }

    /** The first line. */
    String names() {
        List<String> names = new ArrayList<>(header.carried());
        if (states) {
            names.addAll(Columns.STATE);
            names.add(header.carried().size() + Columns.REGION, "region");
        }
        if (saturations) {
            names.addAll(Columns.BOTH_PHASES.subList(states ? SHARED : 0, Columns.BOTH_PHASES.size()));
        }
        return String.join(",", names) + "\n";
    }

    String state(Row row, FluidState state) {
        StringBuilder out = carried(row);
        double[] values = Columns.values(fluid, state);
        for (int i = 0; i < values.length; i++) {
            if (i == Columns.REGION) {
                out.append(state.region().word()).append(',');
            }
            cell(out, values[i]);
        }
        if (saturations) {
            empty(out, Columns.BOTH_PHASES.size() - SHARED);
        }
        return ended(out);
    }

    String bothPhases(Row row, BothPhases both) {
        StringBuilder out = carried(row);
        double[] values = Columns.values(fluid, both);
        if (states) {
            cell(out, both.pressure());
            cell(out, both.temperature());
            cell(out, values[1]);
            empty(out, 1 + Columns.STATE.size() - SHARED);
        }
        for (int i = states ? SHARED : 0; i < values.length; i++) {
            cell(out, values[i]);
        }
        return ended(out);
    }

    private StringBuilder carried(Row row) {
        StringBuilder out = new StringBuilder(400);
        for (int cell : header.carriedCells()) {
            String text = row.text(cell);
            boolean quoted = text.indexOf(',') >= 0 || text.indexOf('"') >= 0;
            out.append(quoted ? '"' + text.replace("\"", "\"\"") + '"' : text).append(',');
        }
        return out;
    }

    private static void cell(StringBuilder out, double value) {
        Digits.append(out, value);
        out.append(',');
    }

    private static void empty(StringBuilder out, int cells) {
        out.append(",".repeat(cells));
    }

    private static String ended(StringBuilder out) {
        out.setCharAt(out.length() - 1, '\n');
        return out.toString();
    }
}
